package brakewright.operation;

import brakewright.battery.BatteryModel;
import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.limit.Limits;
import brakewright.limit.Severity;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.road.FrictionBrake;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The first stop with the fullest pack in use, from the highest speed: the classic accident.
 *
 * <p>Where the protection opens on the way, the electric brake is gone from then on: what is left
 * is the road, the friction brake and the motors' own drag.
 *
 * @param speed at the beginning [m/s]
 * @param charge the fullest pack in use [1]
 * @param cellsC cell temperature [°C]
 * @param outcome how the stop ends if nothing opens
 * @param packCurrent highest into the pack, braking in full or in part [A]
 * @param cellVoltage at that current [V]
 * @param mayTake what the pack may take then [A]
 * @param opening what opens first; {@code NOTHING} where all stays below the trips
 * @param opensAfter how soon after that current began: once the voltage of the cells passes the
 *     trip, and the delay that is known, or the typical one, is over; infinite where nothing opens
 *     [s]
 * @param isDelayTypical whether the delay is the typical one of such a trip: false where the build
 *     tells it, or nothing opens
 * @param passed how the trip that opens first is passed; empty where nothing opens
 * @param leftDeceleration what road and friction brake give once the electric brake is gone, at the
 *     speed of the beginning [m/s²]
 * @param leftSlow the same at a crawl, where it is least [m/s²]
 * @param opened the same stop with the protection opening on the way; empty where nothing opens
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
        double opensAfter,
        boolean isDelayTypical,
        Optional<Passed> passed,
        double leftDeceleration,
        double leftSlow,
        Optional<Opened> opened,
        OptionalDouble chargeTo,
        OptionalDouble rideFirst,
        double safeRegen) {

    /** So often is the share halved that is sought: to 1e-12. */
    private static final int SHARE_HALVINGS = 40;

    /** What interrupts the pack, and how soon such a device typically acts. */
    public enum Opening {
        /** Nothing opens. */
        NOTHING(Double.POSITIVE_INFINITY, Recovery.NONE),
        /**
         * The charge over-current trip.
         *
         * <p>Source of the delay: ABLIC S-8211C data sheet rev. 5.0, table 14, charge over-current
         * detection, typical; others are set from milliseconds to seconds.
         */
        CHARGE_TRIP(9e-3, Recovery.DRAWN_FROM),
        /**
         * The cell over-voltage trip.
         *
         * <p>Source of the delay: ABLIC S-8211C data sheet rev. 5.0, overcharge detection, typical.
         */
        OVERVOLTAGE_TRIP(1.2, Recovery.DRAWN_FROM_OR_LOWER);

        private final double typicalDelay;
        private final Recovery recovery;

        Opening(double typicalDelay, Recovery recovery) {
            this.typicalDelay = typicalDelay;
            this.recovery = recovery;
        }

        /**
         * Returns how soon it typically acts.
         *
         * @return the delay [s]
         */
        public double typicalDelay() {
            return typicalDelay;
        }

        /**
         * Returns what it typically waits for before it closes again.
         *
         * @return what must happen
         */
        public Recovery recovery() {
            return recovery;
        }
    }

    /**
     * How a trip is passed.
     *
     * @param place of its pack, from 0
     * @param current of that pack [A]
     * @param share what of the pulse resistance must be there for its voltage to reach the trip
     *     [1]; 0 or less where it is beyond it at rest, and for a current trip
     * @param after that current began [s]
     * @param delay for which the trip then waits [s]
     */
    public record Passed(int place, double current, double share, double after, double delay) {}

    /**
     * The stop with the protection opening on the way.
     *
     * @param after the brakes begin to act the protection opens: what flows has passed its trip,
     *     and its typical delay is over [s]
     * @param outcome how it ends
     */
    public record Opened(double after, StopOutcome outcome) {}

    /**
     * Returns whether the pack may take what this stop sends.
     *
     * @return true if no constraint is exceeded
     */
    public boolean isSafe() {
        return packCurrent <= mayTake;
    }

    /**
     * Returns whether it sends more than the pack may take, by more than rounding.
     *
     * @return true if it is too much
     */
    public boolean isExceeded() {
        return Severity.isExceeded(packCurrent, mayTake);
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
        BatteryModel pack = limits.battery();
        ElectricBrake brake = operation.brake();
        double speed = operation.topSpeed();
        double charge = build.use().chargeFrom();
        PackState state = PackState.of(pack, charge, cellsC);
        ElectricBrake trusted = operation.trusted(limits).brake();
        double current = trusted.greatestReturn(speed, state);
        double cellVoltage = pack.cellVoltage(current, charge, cellsC);
        double mayTake = limits.packRegen().valueAt(charge, cellsC);
        double buildUp = build.use().effort().buildUp();
        Optional<Tripped> tripped = first(pack, trusted, speed, state, current, buildUp);
        OptionalDouble safe = SafeCharge.firstExcess(build, limits, operation, cellsC);
        RoadLoad load = RoadLoad.of(build);
        Stop stop = new Stop(build, brake, Surroundings.of(build).withCells(cellsC));
        Optional<Tripping.Trip> trip = tripped.map(Tripped::trip);
        return new FirstStop(
                speed,
                charge,
                cellsC,
                stop.from(speed, charge),
                current,
                cellVoltage,
                mayTake,
                trip.map(Tripping.Trip::opening).orElse(Opening.NOTHING),
                trip.map(each -> each.passedAfter() + each.delay())
                        .orElse(Double.POSITIVE_INFINITY),
                trip.isPresent() && trip.get().told().isEmpty(),
                trip.map(Tripping.Trip::passed),
                left(build, load, speed),
                left(build, load, 0.0),
                tripped.map(
                        each -> new Opened(each.after(), stop.from(speed, charge, each.after()))),
                safe,
                safe.isPresent()
                        ? OptionalDouble.of(
                                distance(build, pack, load, charge, safe.getAsDouble(), brake))
                        : OptionalDouble.empty(),
                mayTake / build.controllers().count());
    }

    private static double left(Build build, RoadLoad load, double speed) {
        return (load.force(speed, 0.0, 0.0)
                        + FrictionBrake.force(build, build.vehicle().grip(), 0.0))
                / build.inertia();
    }

    /** What opens first, and when after the brakes began to act [s]. */
    private record Tripped(Tripping.Trip trip, double after) {}

    private static Optional<Tripped> first(
            BatteryModel pack,
            ElectricBrake brake,
            double speed,
            PackState state,
            double current,
            double buildUp) {
        Tripping tripping = new Tripping(pack, state.charge(), state.temperatureC());
        return tripping.passedBy(current).stream()
                .map(
                        trip -> {
                            double built = buildUp * share(tripping, trip, brake, speed, state);
                            return new Tripped(
                                    trip, Math.max(built, trip.passedAfter()) + trip.delay());
                        })
                .min(Comparator.comparingDouble(Tripped::after));
    }

    /**
     * The share of the brake current, as it builds up, from which on the trip would be passed after
     * a pulse. It is passed no earlier, as the current was less meanwhile.
     *
     * <p>Assumption: the speed is still that of the beginning. It falls by less than half a metre
     * per second meanwhile, and the trip is passed a little later than this at most.
     */
    private static double share(
            Tripping tripping,
            Tripping.Trip trip,
            ElectricBrake brake,
            double speed,
            PackState state) {
        double below = 0.0;
        double passed = 1.0;
        for (int halving = 0; halving < SHARE_HALVINGS; halving++) {
            double share = 0.5 * (below + passed);
            double current =
                    new ElectricBrake(
                                    brake.powertrain(),
                                    share * brake.motorCurrent(),
                                    brake.packCurrent(),
                                    brake.taper(),
                                    brake.endsBelow())
                            .greatestReturn(speed, state);
            if (tripping.passes(trip.opening(), trip.place(), current)) {
                passed = share;
            } else {
                below = share;
            }
        }
        return passed;
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
