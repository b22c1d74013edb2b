package brakewright.profile;

import brakewright.limit.ConstraintId;
import brakewright.limit.Limit;
import brakewright.limit.Limits;
import brakewright.limit.Standing;
import brakewright.review.BrakeVerdict;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The motor brake current and the verdict on the brake where the road is wet, beside those on a dry
 * one: the grip alone is another. Each is at the unfavourable side of the tolerances.
 *
 * @param motorBrake the highest motor brake current by itself, per motor [A]
 * @param heldBy what holds it down, at nominal inputs
 * @param brake the verdict on the brake with the settings as they are
 * @param enter the motor brake current of the recommended set that a wet road bears, per motor [A]
 * @param entered the verdict on the brake with the recommended set and that current
 */
public record WetRoad(
        double motorBrake,
        ConstraintId heldBy,
        BrakeVerdict brake,
        double enter,
        BrakeVerdict entered) {

    /**
     * Looks at a vehicle.
     *
     * @param situation the vehicle in its use
     * @param settings as they are
     * @param recommended the set that is recommended for a dry road
     * @param entry how finely settings are entered
     * @return what a wet road leaves
     */
    public static WetRoad of(
            Situation situation, Settings settings, Recommendation recommended, Entry entry) {
        Settings set = recommended.settings();
        double enter =
                Math.min(
                        set.motorBrakeCurrent().orElse(Double.POSITIVE_INFINITY),
                        entry.currentDown(situation.least(set, WetRoad::highest)));
        return new WetRoad(
                situation.least(settings, WetRoad::highest),
                limit(situation.nominal(settings)).binding().id(),
                situation.brakeOnWetRoad(settings),
                enter,
                situation.brakeOnWetRoad(set.withMotorBrakeCurrent(enter)));
    }

    /**
     * Returns whether a wet road bears a lower motor brake current.
     *
     * @param dry the highest on a dry road, by itself [A]
     * @return true where it does
     */
    public boolean bindsCurrent(double dry) {
        return motorBrake < dry;
    }

    /**
     * Returns how a motor brake current stands to what a wet road bears.
     *
     * @param set per motor [A]; empty where none is set
     * @return how it stands
     */
    public Standing standing(OptionalDouble set) {
        return Standing.of(set, motorBrake);
    }

    /**
     * Returns whether a wet road leaves less of the brake.
     *
     * @param dry the verdict on a dry road
     * @return true where it does
     */
    public boolean bindsBrake(BrakeVerdict dry) {
        return isLess(brake, dry);
    }

    /**
     * Judges the brake on a wet road.
     *
     * @param situation the vehicle in its use
     * @param settings all settings
     * @return the verdict at the unfavourable side of the tolerances; empty where a wet road leaves
     *     no less of the brake than a dry one
     */
    public static Optional<BrakeVerdict> less(Situation situation, Settings settings) {
        BrakeVerdict wet = situation.brakeOnWetRoad(settings);
        return isLess(wet, situation.brake(settings)) ? Optional.of(wet) : Optional.empty();
    }

    private static boolean isLess(BrakeVerdict wet, BrakeVerdict dry) {
        return wet.deceleration() < dry.deceleration()
                || wet.left() < dry.left()
                || wet.word() != dry.word();
    }

    private static double highest(Build build) {
        return limit(build).value();
    }

    private static Limit limit(Build build) {
        return Limits.of(build.onWetRoad()).motorBrake();
    }
}
