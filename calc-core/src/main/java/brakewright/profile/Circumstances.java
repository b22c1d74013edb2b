package brakewright.profile;

import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.review.Condition;
import brakewright.review.Evaluation;
import brakewright.review.Finding;
import brakewright.review.Review;
import brakewright.spec.Build;
import brakewright.spec.Climate;
import brakewright.spec.Use;
import java.util.List;
import java.util.Optional;

/**
 * Under which circumstances the settings of a vehicle are safe for its packs: the part of its use
 * that is left when every condition of its verdict is kept.
 */
final class Circumstances {

    /**
     * A condition is solved for to a thousand millionth; so far inside it is surely kept, of the
     * charge state [1] and of a temperature [K].
     */
    private static final double INSIDE = 1e-6;

    private Circumstances() {}

    /**
     * Returns the use that is left.
     *
     * @param build the vehicle
     * @return its use with fewer charge states and temperatures, the same where it is safe
     *     throughout; empty where it is safe for the packs at no charge in use
     */
    static Optional<Use> of(Build build) {
        Build tempered = build.withUse(build.use().withClimate(climate(build)));
        Limits limits = Limits.of(tempered);
        Operation operation = Operation.of(tempered, limits);
        Use use = tempered.use();
        double ceiling = Evaluation.of(tempered, limits, operation).safeCharge();
        double from = ceiling < use.chargeFrom() ? ceiling - INSIDE : ceiling;
        double to = use.chargeTo();
        for (Condition condition : conditions(tempered, limits, operation)) {
            if (condition instanceof Condition.ChargeAbove above) {
                to = Math.max(to, above.charge() + INSIDE);
            }
        }
        return ceiling == 0.0 || !(from > to)
                ? Optional.empty()
                : Optional.of(use.withChargeTo(to).withChargeFrom(from));
    }

    /** The packs' own temperature is looked at always. */
    private static Climate climate(Build build) {
        Limits limits = Limits.of(build);
        Climate climate = build.use().climate();
        double own = build.battery().temperatureC();
        double coldest = climate.coldestPackC();
        double warmest = climate.warmestPackC();
        for (Condition condition : conditions(build, limits, Operation.of(build, limits))) {
            if (condition instanceof Condition.CellsFrom from) {
                coldest = Math.max(coldest, Math.min(own, from.temperatureC() + INSIDE));
            } else if (condition instanceof Condition.CellsUpTo upTo) {
                warmest = Math.min(warmest, Math.max(own, upTo.temperatureC() - INSIDE));
            }
        }
        return climate.withPackC(coldest, Math.max(coldest, warmest));
    }

    private static List<Condition> conditions(Build build, Limits limits, Operation operation) {
        return Review.of(build, limits, operation).findings().stream()
                .map(Finding::condition)
                .flatMap(Optional::stream)
                .toList();
    }
}
