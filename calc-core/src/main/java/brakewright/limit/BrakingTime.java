package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;

/**
 * How long braking sends a current back, at the most: as long as the rider brakes hard, or as long
 * as the energy lasts that a stop from the highest speed or the steepest slope in use sets free.
 *
 * <p>{@code t = max(t_hard, ½·m·(1 + j)·v²/(U·I), L·m·g·(sinθ − crr·cosθ)/(U·I))}, U at rest at the
 * lowest charge in use.
 *
 * <p>Source: conservation of energy. A slower descent sends less for longer; the resistance grows
 * more slowly with time than the current falls, so the set current is the case to look at.
 *
 * <p>Assumption: nothing of the energy is lost in motors, air and controllers, which errs on the
 * long side. The charge that braking adds meanwhile shifts no limit here, it is told beside them; a
 * descent counts it.
 *
 * @param seconds the time [s]; infinite where nothing is sent back
 * @param reason which of them it is
 * @param charge what the current adds to the charge of the packs in that time [1]; 0 where nothing
 *     is sent back
 */
public record BrakingTime(double seconds, Reason reason, double charge) {

    /**
     * Braking that adds no charge worth telling.
     *
     * @param seconds the time [s]
     * @param reason which of them it is
     */
    public BrakingTime(double seconds, Reason reason) {
        this(seconds, reason, 0.0);
    }

    /** What makes braking last. */
    public enum Reason {
        /** The rider brakes as long as that. */
        HARD_BRAKE("hard-brake"),
        /** A stop from the highest speed. */
        STOP("stop"),
        /** The steepest slope in use over its length. */
        SLOPE("slope");

        private final String key;

        Reason(String key) {
            this.key = key;
        }

        /**
         * Returns the word that worksheets use.
         *
         * @return lower case with hyphens
         */
        public String key() {
            return key;
        }
    }

    /**
     * Finds how long a current is sent back.
     *
     * @param build the vehicle
     * @param model its packs, all together or the one that takes the current
     * @param current into them [A], not negative
     * @return the time
     */
    static BrakingTime of(Build build, BatteryModel model, double current) {
        double power = model.openCircuitVoltage(build.use().chargeTo()) * current;
        double hard = build.use().effort().hardBrake();
        double stop = lasting(kineticEnergy(build), power);
        double slope = lasting(slopeEnergy(build), power);
        double longest = Math.max(hard, Math.max(stop, slope));
        Reason reason =
                slope > Math.max(hard, stop)
                        ? Reason.SLOPE
                        : stop > hard ? Reason.STOP : Reason.HARD_BRAKE;
        return new BrakingTime(
                longest,
                reason,
                current > 0.0 ? longest * current / (3600.0 * model.capacityAh()) : 0.0);
    }

    private static double lasting(double energy, double power) {
        return energy > 0.0 ? energy / power : 0.0;
    }

    /** {@code ½·m·(1 + j)·v²} [J]. */
    static double kineticEnergy(Build build) {
        double speed = build.highestSpeed();
        return 0.5 * build.inertia() * speed * speed;
    }

    /** What the slope gives beyond what rolling takes; none where it does not [J]. */
    static double slopeEnergy(Build build) {
        double pull = -RoadLoad.of(build).force(0.0, -build.use().slope(), 0.0);
        return build.use().slopeLength() * Math.max(0.0, pull);
    }
}
