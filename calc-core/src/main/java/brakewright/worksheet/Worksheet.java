package brakewright.worksheet;

import brakewright.battery.PackModel;
import brakewright.limit.Limits;
import brakewright.review.FirstStop;
import brakewright.review.Operation;
import brakewright.review.Review;
import brakewright.spec.Build;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The worksheet of one vehicle.
 *
 * @param build the vehicle
 * @param limits what is permitted
 * @param operation the settings in effect
 * @param review the settings held against the limits
 * @param pack the pack over its charge state
 * @param drive what the drive achieves
 * @param heat how the motor warms
 * @param firstStops the first stop after a full charge: cells at their own temperature, then the
 *     coldest and the warmest in use where they differ
 */
public record Worksheet(
        Build build,
        Limits limits,
        Operation operation,
        Review review,
        List<PackRow> pack,
        DriveSheet drive,
        HeatSheet heat,
        List<FirstStop> firstStops) {

    /** Copies the rows. */
    public Worksheet {
        pack = List.copyOf(pack);
        firstStops = List.copyOf(firstStops);
    }

    /**
     * Computes the worksheet of a vehicle.
     *
     * @param build the vehicle
     * @return its worksheet
     */
    public static Worksheet of(Build build) {
        Limits limits = Limits.of(build);
        Operation operation = Operation.of(build, limits);
        PackModel model = new PackModel(build.pack());
        return new Worksheet(
                build,
                limits,
                operation,
                Review.of(build, limits, operation),
                PackRow.all(build, model, limits, operation),
                DriveSheet.of(build, model, operation),
                HeatSheet.of(build, operation),
                firstStops(build, limits, operation));
    }

    /**
     * Computes the electric brake over speed and charge state.
     *
     * @return the map, made anew each time
     */
    public BrakeMap brakeMap() {
        return BrakeMap.of(build, new PackModel(build.pack()), limits, operation);
    }

    /**
     * Computes stops from 10 km/h to the highest speed over the charge in use.
     *
     * @return the stops, made anew each time
     */
    public List<StopTable.Row> stops() {
        return StopTable.of(
                build,
                operation,
                BrakeMap.charges(build.use().chargeTo(), build.use().chargeFrom()));
    }

    private static List<FirstStop> firstStops(Build build, Limits limits, Operation operation) {
        double own = build.pack().temperatureC();
        return DoubleStream.of(
                        own,
                        build.use().climate().coldestPackC(),
                        build.use().climate().warmestPackC())
                .distinct()
                .mapToObj(cells -> FirstStop.of(build, limits, operation, cells))
                .toList();
    }
}
