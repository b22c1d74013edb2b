package brakewright.profile;

import brakewright.limit.Limits;
import brakewright.review.Evaluation;
import brakewright.spec.Build;
import brakewright.spec.Use;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * How high one setting of a proposal may be while all else stays: under the circumstances in which
 * the present settings are safe, and over the whole of the use.
 *
 * @param circumstances the part of the use in which the present settings are safe for the packs;
 *     empty where that is nowhere
 * @param there the highest value within all limits under them; empty likewise
 * @param throughout the highest value within all limits over the whole of the use
 */
public record Headroom(Optional<Use> circumstances, Optional<Solution> there, Solution throughout) {

    /**
     * Finds the highest motor brake current.
     *
     * @param present the vehicle with its present settings
     * @param proposed the vehicle with those proposed
     * @return the highest values, per motor [A]
     */
    public static Headroom ofMotorBrake(Build present, Build proposed) {
        return of(
                present,
                proposed,
                beyond(Limits.of(proposed).motorBrake().value()),
                (build, value) ->
                        build.withSettings(build.settings().withMotorBrakeCurrent(value)));
    }

    /**
     * Finds the highest pack regen current.
     *
     * @param present the vehicle with its present settings
     * @param proposed the vehicle with those proposed
     * @return the highest values, per controller [A]
     */
    public static Headroom ofPackRegen(Build present, Build proposed) {
        double rating =
                Limits.of(proposed)
                        .packRegen()
                        .staticPart(proposed.battery().temperatureC())
                        .value();
        return of(
                present,
                proposed,
                beyond(rating / proposed.controllers().count()),
                (build, value) -> build.withSettings(build.settings().withPackRegenCurrent(value)));
    }

    /**
     * Returns whether the present settings are safe in a part of the use only.
     *
     * @param build the vehicle
     * @return true where the circumstances are not the whole of its use
     */
    public boolean isNarrowed(Build build) {
        return circumstances.isEmpty() || !circumstances.get().equals(build.use());
    }

    /** A setting above its own limit is exceeded, so this brackets every answer. */
    private static double beyond(double limit) {
        return 2.0 * limit + 1.0;
    }

    /** Sets a value. */
    private interface Setting {
        Build with(Build build, double value);
    }

    private static Headroom of(Build present, Build proposed, double high, Setting setting) {
        Optional<Use> circumstances = Circumstances.of(present);
        Solution throughout = highest(proposed, high, setting);
        return new Headroom(
                circumstances,
                circumstances.map(
                        use ->
                                use.equals(proposed.use())
                                        ? throughout
                                        : highest(proposed.withUse(use), high, setting)),
                throughout);
    }

    private static Solution highest(Build build, double high, Setting setting) {
        DoubleFunction<Evaluation> verdict = value -> Evaluation.of(setting.with(build, value));
        return Solver.highest(verdict, 0.0, high);
    }
}
