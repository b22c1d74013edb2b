package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.operation.SetBuild;
import brakewright.spec.Build;
import brakewright.spec.Climate;
import brakewright.spec.Settings;
import brakewright.spec.Use;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(SetBuild.class)
@Domain(DomainContext.Global.class)
class EvaluationProperties {

    /** A few roundings of numbers of the order of one. */
    private static final double ROUNDING = 1e-12;

    /** Twice the accuracy to which charge states are sought. */
    private static final double CHARGE_ACCURACY = 2e-9;

    @Property(tries = 400)
    void theOutcomeIsThatOfTheReview(@ForAll Build build) {
        assertThat(Evaluation.of(build).outcome()).isEqualTo(review(build).verdict().outcome());
    }

    @Property(tries = 400)
    void theSeverityIsPositiveExactlyWhereALimitIsExceeded(@ForAll Build build) {
        Evaluation evaluation = Evaluation.of(build);
        assertThat(evaluation.severity()).isBetween(-1.0, 1.0);
        assertThat(evaluation.severity() > 0.0)
                .isEqualTo(review(build).verdict().outcome() != Verdict.Outcome.WITHIN_LIMITS);
    }

    @Property(tries = 400)
    void theWorstCheckIsOneThatTheReviewReports(@ForAll Build build) {
        Evaluation evaluation = Evaluation.of(build);
        if (evaluation.severity() <= 0.0) {
            return;
        }
        assertThat(review(build).findings())
                .anyMatch(
                        each ->
                                each.condition().isPresent()
                                        && each.constraint().equals(Optional.of(evaluation.worst()))
                                        && each.pack().equals(evaluation.pack()));
    }

    /**
     * The ceiling looks at the coldest and the warmest pack in use even where the pack's own
     * temperature lies beyond them, the evaluation then does not.
     */
    @Property(tries = 400)
    void theSafeChargeIsThatOfTheReview(@ForAll Build build) {
        double own = build.battery().temperatureC();
        Climate climate = build.use().climate();
        Assume.that(own >= climate.coldestPackC() && own <= climate.warmestPackC());
        Limits limits = Limits.of(build);
        double ceiling = Review.of(build, limits, Operation.of(build, limits)).safeCharge();
        assertThat(Evaluation.of(build).safeCharge()).isCloseTo(ceiling, within(1e-9));
    }

    @Property(tries = 400)
    void brakingHarderIsNeverLessSevere(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double share,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 2.0) double most) {
        double greatest = most * Limits.of(build).motorBrake().value();
        Evaluation softer = Evaluation.of(withBrake(build, share * greatest));
        Evaluation harder = Evaluation.of(withBrake(build, greatest));
        assertThat(harder.severity()).isGreaterThanOrEqualTo(softer.severity() - ROUNDING);
        assertThat(harder.outcome()).isGreaterThanOrEqualTo(softer.outcome());
    }

    @Property(tries = 400)
    void returningMoreIsNeverLessSevere(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double share,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 200.0) double greatest) {
        Evaluation less = Evaluation.of(withRegen(build, share * greatest));
        Evaluation more = Evaluation.of(withRegen(build, greatest));
        assertThat(more.severity()).isGreaterThanOrEqualTo(less.severity() - ROUNDING);
        assertThat(more.outcome()).isGreaterThanOrEqualTo(less.outcome());
    }

    /**
     * The speed cap is left out: a fuller pack holds back the motors at a higher speed, so that
     * check is milder. The lower charge state is one that is looked at whatever the highest is.
     */
    @Property(tries = 400)
    void chargingFullerIsNeverLessSevere(
            @ForAll Build build,
            @ForAll @IntRange(min = 10, max = 20) int twentieths,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double share) {
        double low = twentieths / 20.0;
        double high = low + share * (1.0 - low);
        Build uncapped = withoutCap(build);
        Evaluation emptier = Evaluation.of(chargedTo(uncapped, low));
        Evaluation fuller = Evaluation.of(chargedTo(uncapped, high));
        assertThat(fuller.severity()).isGreaterThanOrEqualTo(emptier.severity() - ROUNDING);
    }

    @Property(tries = 400)
    void theGridHasTheVerdictOnTheWhole(@ForAll Build build) {
        assertThat(VerdictGrid.of(build).evaluation()).isEqualTo(Evaluation.of(build));
    }

    @Property(tries = 400)
    void aFasterBrakeIsNeverLessSevere(@ForAll Build build) {
        for (double[] row : VerdictGrid.of(build).severities()) {
            for (int column = 1; column < row.length; column++) {
                assertThat(row[column]).isGreaterThanOrEqualTo(row[column - 1] - ROUNDING);
            }
        }
    }

    @Property(tries = 400)
    void belowTheSafeChargeNoSpeedSendsTooMuch(@ForAll Build build) {
        VerdictGrid grid = VerdictGrid.of(build);
        double safe = grid.evaluation().safeCharge();
        for (int row = 0; row < grid.charges().length; row++) {
            if (grid.charges()[row] < safe - CHARGE_ACCURACY) {
                assertThat(Arrays.stream(grid.severities()[row]))
                        .allMatch(severity -> severity <= ROUNDING);
            }
        }
    }

    @Property(tries = 400)
    void theGridSpansTheUse(@ForAll Build build) {
        VerdictGrid grid = VerdictGrid.of(build);
        Operation operation = Operation.of(build, Limits.of(build));
        assertThat(grid.charges()).hasSize(21).startsWith(build.use().chargeTo()).isSorted();
        assertThat(grid.charges()[20]).isCloseTo(build.use().chargeFrom(), within(ROUNDING));
        assertThat(grid.speeds()).hasSize(41).startsWith(0.0).isSorted();
        assertThat(grid.speeds()[40])
                .isCloseTo(operation.topSpeed(), within(ROUNDING * operation.topSpeed()));
        assertThat(grid.severities()).hasDimensions(21, 41);
        assertThat(Arrays.stream(grid.severities()).flatMapToDouble(Arrays::stream))
                .allMatch(severity -> severity >= -1.0 && severity <= 1.0);
    }

    private static Review review(Build build) {
        Limits limits = Limits.of(build);
        return Review.of(build, limits, Operation.of(build, limits));
    }

    private static Build withBrake(Build build, double current) {
        return overlaid(build, OptionalDouble.of(current), OptionalDouble.empty());
    }

    private static Build withRegen(Build build, double current) {
        return overlaid(build, OptionalDouble.empty(), OptionalDouble.of(current));
    }

    private static Build overlaid(Build build, OptionalDouble brake, OptionalDouble regen) {
        return build.withSettings(
                build.settings()
                        .overlaidBy(
                                new Settings(
                                        OptionalDouble.empty(),
                                        brake,
                                        OptionalDouble.empty(),
                                        regen,
                                        Optional.empty(),
                                        Optional.empty(),
                                        OptionalDouble.empty())));
    }

    private static Build withoutCap(Build build) {
        Settings settings = build.settings();
        return build.withSettings(settings.withSpeedCap(OptionalDouble.empty()));
    }

    private static Build chargedTo(Build build, double charge) {
        Use use = build.use();
        return build.withUse(use.withChargeFrom(charge));
    }
}
