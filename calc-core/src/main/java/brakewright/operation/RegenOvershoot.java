package brakewright.operation;

import brakewright.battery.BatteryModel;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.limit.PackConstraint;
import brakewright.limit.Severity;
import brakewright.limit.TripDelay;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.WhichPack;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a hard grab of the brake sends into the packs before the limiter of the pack regen current
 * acts, where that is more than a trip of the protection permits though the limiter, once it acts,
 * keeps within it.
 *
 * @param trip of the protection
 * @param pack which of several packs; the whole where there is one
 * @param current the most that the motors return at the highest speed, of all packs [A]
 * @param let what the limiter then leaves of it [A]
 * @param permitted what the trip permits, with its margin, of all packs [A]
 * @param speed from which on it is more than that [m/s]
 * @param charge where it is worst in the use [1]
 * @param cellsC the cell temperature there [°C]
 * @param response how long it lasts [s]
 * @param delay how long the trip waits [s]; empty where not known
 */
public record RegenOvershoot(
        ConstraintId trip,
        WhichPack pack,
        double current,
        double let,
        double permitted,
        double speed,
        double charge,
        double cellsC,
        double response,
        OptionalDouble delay) {

    /**
     * Returns whether it outlasts the delay of the trip.
     *
     * @return false where the delay is not known
     */
    public boolean opens() {
        return delay.isPresent() && response > delay.getAsDouble();
    }

    /**
     * Returns what goes into the packs beside what the limiter then leaves.
     *
     * @return the surge [A]
     */
    public double surplus() {
        return current - let;
    }

    /**
     * Returns how long such a trip typically waits.
     *
     * @return the delay [s]
     */
    public double typicalDelay() {
        return (trip == ConstraintId.PROTECTION_CHARGE_TRIP
                        ? FirstStop.Opening.CHARGE_TRIP
                        : FirstStop.Opening.OVERVOLTAGE_TRIP)
                .typicalDelay();
    }

    /**
     * Looks at a vehicle.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param operation its settings in effect
     * @return the worst of every trip of every pack; none for a limiter that acts at once
     */
    public static List<RegenOvershoot> of(Build build, Limits limits, Operation operation) {
        List<RegenOvershoot> all = new ArrayList<>();
        if (build.controllers().regenResponse() > 0.0) {
            BatteryModel model = limits.battery();
            Operation trusted = operation.trusted(limits);
            double[] charges = trusted.bends(build, limits);
            for (PackConstraint constraint : limits.packRegen().brief().constraints()) {
                if (isTrip(constraint.id())) {
                    worst(build, model, trusted, charges, constraint).ifPresent(all::add);
                }
            }
        }
        return all;
    }

    private static boolean isTrip(ConstraintId id) {
        return id == ConstraintId.PROTECTION_CHARGE_TRIP
                || id == ConstraintId.PROTECTION_OVERVOLTAGE_TRIP;
    }

    private static Optional<RegenOvershoot> worst(
            Build build,
            BatteryModel model,
            Operation trusted,
            double[] charges,
            PackConstraint trip) {
        ElectricBrake brake = trusted.brake();
        double top = trusted.topSpeed();
        Optional<RegenOvershoot> worst = Optional.empty();
        double most = 0.0;
        for (double cellsC : build.cellTemperatures()) {
            for (double charge : charges) {
                PackState state = PackState.of(model, charge, cellsC);
                double asked = brake.greatestAsked(top, state);
                double let = brake.greatestReturn(top, state);
                double permitted = trip.limitAt(charge, cellsC);
                double excess = Severity.excess(asked, permitted);
                if (excess > most && !Severity.isExceeded(let, permitted)) {
                    most = excess;
                    worst =
                            Optional.of(
                                    new RegenOvershoot(
                                            trip.id(),
                                            trip.pack(),
                                            asked,
                                            let,
                                            permitted,
                                            brake.speedAsking(permitted, state),
                                            charge,
                                            cellsC,
                                            build.controllers().regenResponse(),
                                            TripDelay.of(build, trip)));
                }
            }
        }
        return worst;
    }
}
