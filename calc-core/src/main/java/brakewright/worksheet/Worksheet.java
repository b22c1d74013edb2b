package brakewright.worksheet;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.operation.FirstStop;
import brakewright.operation.Operation;
import brakewright.operation.Sag;
import brakewright.operation.Sharing;
import brakewright.review.Review;
import brakewright.spec.Build;
import java.util.Arrays;
import java.util.Comparator;
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

    private static final double[] QUARTERS = {1.0, 0.75, 0.5, 0.25, 0.1};

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
        BatteryModel model = limits.battery();
        DriveSheet drive = DriveSheet.of(build, operation, build.use().chargeFrom());
        return new Worksheet(
                build,
                limits,
                operation,
                Review.of(build, limits, operation),
                PackRow.all(build, model, limits, operation),
                drive,
                HeatSheet.of(build, operation, drive),
                firstStops(build, limits, operation));
    }

    /**
     * Computes the electric brake over speed and charge state.
     *
     * @return the map, made anew each time
     */
    public BrakeMap brakeMap() {
        return BrakeMap.of(build, limits.battery(), limits, operation);
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

    /**
     * Computes what the drive achieves quarter by quarter of the charge, as far as it is in use.
     *
     * @return at 100, 75, 50, 25 and 10 %, and at both ends of the charge in use, fullest first;
     *     made anew each time
     */
    public List<DriveSheet> driveByCharge() {
        double from = build.use().chargeFrom();
        double to = build.use().chargeTo();
        return DoubleStream.concat(DoubleStream.of(from, to), DoubleStream.of(QUARTERS))
                .filter(charge -> charge <= from && charge >= to)
                .distinct()
                .boxed()
                .sorted(Comparator.reverseOrder())
                .map(charge -> DriveSheet.of(build, operation, charge))
                .toList();
    }

    /**
     * Computes the thrust over speed and charge state.
     *
     * @return the map, made anew each time
     */
    public ThrustMap thrustMap() {
        return ThrustMap.of(build, operation, drive);
    }

    /**
     * Computes how the voltage sags and what it meets first.
     *
     * @return the sag, made anew each time
     */
    public Sag sag() {
        return Sag.of(build, limits, operation);
    }

    /**
     * Computes how several packs share the current.
     *
     * @return the sharing, empty for one pack; made anew each time
     */
    public Sharing sharing() {
        return Sharing.of(build, limits, operation);
    }

    /**
     * Computes how far the vehicle goes.
     *
     * @return the range, made anew each time
     */
    public RangeSheet range() {
        return RangeSheet.of(build, operation);
    }

    private static List<FirstStop> firstStops(Build build, Limits limits, Operation operation) {
        return Arrays.stream(build.cellTemperatures())
                .mapToObj(cells -> FirstStop.of(build, limits, operation, cells))
                .toList();
    }
}
