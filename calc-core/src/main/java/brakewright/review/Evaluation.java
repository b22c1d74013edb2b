package brakewright.review;

import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.WhichPack;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The verdict on a vehicle in numbers, without the words: for comparing, searching and sweeping,
 * where thousands are asked for.
 *
 * <p>The severity of a check is {@code (value − limit)/max(value, limit)}: from −1, nothing asked
 * of it, over 0, on the limit, to 1, where nothing is permitted. The severity of a vehicle is that
 * of its worst check, over the charge states in use and at the pack's own, the coldest and the
 * warmest temperature. It is a continuous function of the inputs, positive exactly where the
 * verdict is not {@code within-limits}.
 *
 * @param outcome the verdict in a word, the same as that of {@link Review}
 * @param severity of the worst check [1], from −1 to 1
 * @param worst which check that is
 * @param pack which of several packs it is about, or the whole
 * @param charge the charge state where it is worst; empty where it does not depend on it [1]
 * @param safeCharge up to which braking in full or in part is safe for the packs; 0 where it is at
 *     no charge in use [1]
 * @param meanSeverity of all checks [1], from −1 to 1; tells apart what the worst check does not
 */
public record Evaluation(
        Verdict.Outcome outcome,
        double severity,
        ConstraintId worst,
        WhichPack pack,
        OptionalDouble charge,
        double safeCharge,
        double meanSeverity) {

    /**
     * Evaluates a vehicle.
     *
     * @param build the vehicle with its settings
     * @return the evaluation
     */
    public static Evaluation of(Build build) {
        Limits limits = Limits.of(build);
        return of(build, limits, Operation.of(build, limits));
    }

    /**
     * Evaluates a vehicle whose limits are known.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param operation its settings in effect
     * @return the evaluation
     */
    public static Evaluation of(Build build, Limits limits, Operation operation) {
        return fold(Checks.all(build, limits, operation));
    }

    /**
     * Evaluates what a change of some settings can move alone, so that one can be searched for
     * whatever the others exceed.
     *
     * @param build the vehicle
     * @param settings which
     * @return the evaluation; of no severity where nothing bears on them, its safe charge that of
     *     the checks made
     */
    public static Evaluation of(Build build, Set<LimitId> settings) {
        Limits limits = Limits.of(build);
        return fold(Checks.about(build, limits, Operation.of(build, limits), settings));
    }

    /**
     * Evaluates what a hard grab sends before a late regen limiter acts, at every charge state.
     *
     * @param build the vehicle
     * @return the evaluation; of no severity where every over-voltage trip waits longer, or is not
     *     known to wait less long
     */
    public static Evaluation ofHardGrab(Build build) {
        Limits limits = Limits.of(build);
        return fold(Checks.ofHardGrab(build, limits, Operation.of(build, limits)));
    }

    private static Evaluation fold(Checks checks) {
        double safeCharge = checks.safeCharge();
        Check worst = null;
        boolean outside = false;
        double sum = 0.0;
        for (Check check : checks.list()) {
            if (worst == null || check.severity() > worst.severity()) {
                worst = check;
            }
            sum += check.severity();
            outside |= check.isExceeded() && check.isNever();
        }
        if (worst == null) {
            return new Evaluation(
                    Verdict.Outcome.WITHIN_LIMITS,
                    -1.0,
                    ConstraintId.CELL_CHARGE_RATING,
                    WhichPack.WHOLE,
                    OptionalDouble.empty(),
                    safeCharge,
                    -1.0);
        }
        return new Evaluation(
                outside
                        ? Verdict.Outcome.OUTSIDE_LIMITS
                        : worst.isExceeded()
                                ? Verdict.Outcome.CONDITIONAL
                                : Verdict.Outcome.WITHIN_LIMITS,
                worst.severity(),
                worst.held().against(),
                worst.held().pack(),
                worst.charge(),
                safeCharge,
                sum / checks.list().size());
    }
}
