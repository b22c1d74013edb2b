package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.limit.Limits;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.ride.Stop;
import brakewright.ride.StopOutcome;
import brakewright.ride.Surroundings;
import brakewright.road.FrictionBrake;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Protection;
import java.util.OptionalDouble;

/**
 * The first stop with the fullest pack in use, from the highest speed: the classic accident.
 *
 * @param speed at the beginning [m/s]
 * @param charge the fullest pack in use [1]
 * @param cellsC cell temperature [°C]
 * @param outcome how the stop ends if nothing opens
 * @param packCurrent highest into the pack, braking in full or in part [A]
 * @param cellVoltage at that current [V]
 * @param mayTake what the pack may take then [A]
 * @param opening what opens first; {@code NOTHING} where all stays below the trips
 * @param leftDeceleration what road and friction brake give once the electric brake is gone [m/s²]
 * @param chargeTo the charge state up to which this stop is safe [1]; empty where it is safe
 *     already, and the lowest in use where it is at none
 * @param rideFirst distance at the highest speed in use that brings the pack there [m]; empty where
 *     it is safe already
 * @param safeRegen the pack regen current per controller that would be safe [A]
 */
public record FirstStop(
        double speed,
        double charge,
        double cellsC,
        StopOutcome outcome,
        double packCurrent,
        double cellVoltage,
        double mayTake,
        Opening opening,
        double leftDeceleration,
        OptionalDouble chargeTo,
        OptionalDouble rideFirst,
        double safeRegen) {

    /** What interrupts the pack, and how soon such a device typically acts. */
    public enum Opening {
        /** Nothing opens. */
        NOTHING(Double.POSITIVE_INFINITY),
        /**
         * The charge over-current trip.
         *
         * <p>Source of the delay: ABLIC S-8211C data sheet rev. 5.0, table 14, charge over-current
         * detection, typical; others are set from milliseconds to seconds.
         */
        CHARGE_TRIP(9e-3),
        /**
         * The cell over-voltage trip.
         *
         * <p>Source of the delay: ABLIC S-8211C data sheet rev. 5.0, overcharge detection, typical.
         */
        OVERVOLTAGE_TRIP(1.2);

        private final double typicalDelay;

        Opening(double typicalDelay) {
            this.typicalDelay = typicalDelay;
        }

        /**
         * Returns how soon it typically acts.
         *
         * @return the delay [s]
         */
        public double typicalDelay() {
            return typicalDelay;
        }
    }

    /**
     * Returns whether the pack may take what this stop sends.
     *
     * @return true if no constraint is exceeded
     */
    public boolean isSafe() {
        return packCurrent <= mayTake;
    }

    /**
     * Computes the first stop.
     *
     * @param build the vehicle
     * @param limits what the pack may take
     * @param operation its settings in effect
     * @param cellsC cell temperature [°C]
     * @return the first stop
     */
    public static FirstStop of(Build build, Limits limits, Operation operation, double cellsC) {
        BatteryModel pack = new BatteryModel(build.battery());
        ElectricBrake brake = operation.brake();
        double speed = operation.topSpeed();
        double charge = build.use().chargeFrom();
        double current =
                operation
                        .trusted(limits)
                        .brake()
                        .greatestReturn(speed, PackState.of(pack, charge, cellsC));
        double cellVoltage = pack.cellVoltage(current, charge, cellsC);
        double mayTake = limits.packRegen().valueAt(charge, cellsC);
        OptionalDouble safe = SafeCharge.firstExcess(build, limits, operation, cellsC);
        RoadLoad load = RoadLoad.of(build);
        return new FirstStop(
                speed,
                charge,
                cellsC,
                new Stop(build, brake, Surroundings.of(build).withCells(cellsC))
                        .from(speed, charge),
                current,
                cellVoltage,
                mayTake,
                opening(pack, current, charge, cellsC),
                (load.force(speed, 0.0, 0.0)
                                + FrictionBrake.force(build, build.vehicle().grip(), 0.0))
                        / build.inertia(),
                safe,
                safe.isPresent()
                        ? OptionalDouble.of(
                                distance(build, pack, load, charge, safe.getAsDouble(), brake))
                        : OptionalDouble.empty(),
                mayTake / build.controllers().count());
    }

    /** The bare trips, without margin: what really opens. */
    private static Opening opening(
            BatteryModel battery, double current, double charge, double cellsC) {
        Opening first = Opening.NOTHING;
        for (int place = 0; place < battery.packs().size() && current > 0.0; place++) {
            PackModel pack = battery.packs().get(place);
            double own = current * battery.share(place, charge, cellsC);
            double cellVoltage =
                    pack.highestCellVoltage(own, battery.chargeOf(place, charge), cellsC, 0.0);
            Protection protection = pack.pack().protection();
            if (own > protection.chargeTrip().orElse(Double.POSITIVE_INFINITY)) {
                return Opening.CHARGE_TRIP;
            }
            if (cellVoltage > protection.cellOvervoltageTrip().orElse(Double.POSITIVE_INFINITY)) {
                first = Opening.OVERVOLTAGE_TRIP;
            }
        }
        return first;
    }

    /**
     * Energy between both charge states over the energy a metre takes at the highest speed in use.
     */
    private static double distance(
            Build build,
            BatteryModel pack,
            RoadLoad load,
            double from,
            double to,
            ElectricBrake brake) {
        double speed = build.use().speedMax();
        Powertrain powertrain = brake.powertrain();
        double current = powertrain.thrustCurrent(load.force(speed, 0.0, 0.0), speed);
        double perMetre = powertrain.drawnPower(current, speed) / speed;
        double coulombs = (from - to) * 3600.0 * pack.capacityAh();
        return coulombs * pack.openCircuitVoltage(0.5 * (from + to)) / perMetre;
    }
}
