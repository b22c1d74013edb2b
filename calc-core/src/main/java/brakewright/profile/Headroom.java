package brakewright.profile;

import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.review.Evaluation;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.spec.Use;
import java.util.Optional;
import java.util.Set;
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
     * Finds the highest motor brake current, whatever the settings that drive exceed.
     *
     * @param situation the vehicle in its use
     * @param present its present settings
     * @param proposed those proposed
     * @return the highest values, per motor, at the unfavourable side of the tolerances [A]
     */
    static Headroom ofMotorBrake(Situation situation, Settings present, Settings proposed) {
        return new Search(
                        situation,
                        Set.of(LimitId.MOTOR_BRAKE_CURRENT),
                        proposed::withMotorBrakeCurrent,
                        beyond(Limits.of(situation.nominal(proposed)).motorBrake().value()))
                .headroom(present);
    }

    /**
     * Finds the highest pack regen current, likewise.
     *
     * @param situation the vehicle in its use
     * @param present its present settings
     * @param proposed those proposed
     * @return the highest values, per controller [A]
     */
    static Headroom ofPackRegen(Situation situation, Settings present, Settings proposed) {
        Build build = situation.nominal(proposed);
        double rating =
                Limits.of(build).packRegen().staticPart(build.battery().temperatureC()).value();
        return new Search(
                        situation,
                        Set.of(LimitId.PACK_REGEN_CURRENT),
                        proposed::withPackRegenCurrent,
                        beyond(rating / build.controllers().count()))
                .headroom(present);
    }

    /**
     * Returns whether the present settings are safe in a part of the use only.
     *
     * @param build the vehicle
     * @return true where the circumstances are fewer charge states or cell temperatures than its
     *     use has; what else they have, such as the headwind, may be that of the tolerances' corner
     */
    public boolean isNarrowed(Build build) {
        return circumstances.isEmpty() || isPart(circumstances.get(), build.use());
    }

    private static boolean isPart(Use part, Use whole) {
        return part.chargeFrom() < whole.chargeFrom()
                || part.chargeTo() > whole.chargeTo()
                || part.climate().coldestPackC() > whole.climate().coldestPackC()
                || part.climate().warmestPackC() < whole.climate().warmestPackC();
    }

    /** A setting above its own limit is exceeded, so this brackets every answer. */
    private static double beyond(double limit) {
        return 2.0 * limit + 1.0;
    }

    private record Search(
            Situation situation,
            Set<LimitId> about,
            DoubleFunction<Settings> setting,
            double high) {

        Headroom headroom(Settings present) {
            Build worst =
                    situation.worst(present, build -> Tolerances.badness(Evaluation.of(build)));
            Optional<Use> circumstances = Circumstances.of(worst);
            Solution throughout = highest(situation);
            return new Headroom(
                    circumstances,
                    circumstances.map(
                            use ->
                                    use.equals(worst.use())
                                            ? throughout
                                            : highest(situation.in(whole -> use))),
                    throughout);
        }

        private Solution highest(Situation there) {
            return there.highest(setting, build -> Evaluation.of(build, about), 0.0, high);
        }
    }
}
