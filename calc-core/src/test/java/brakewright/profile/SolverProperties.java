package brakewright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.operation.SetBuild;
import brakewright.review.Evaluation;
import brakewright.review.Review;
import brakewright.review.Verdict;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Pack;
import brakewright.spec.Settings;
import brakewright.spec.Use;
import brakewright.spec.WhichPack;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.IntFunction;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(SetBuild.class)
@Domain(DomainContext.Global.class)
class SolverProperties {

    /** One part in a thousand. */
    private static final double STEP = 1e-3;

    @Property(tries = 150)
    void theHighestBrakeCurrentJustDoes(@ForAll Build build) {
        justDoes(
                current -> overlaid(build, OptionalDouble.of(current), OptionalDouble.empty()),
                0.0,
                3.0 * Limits.of(build).motorBrake().value() + 1.0);
    }

    @Property(tries = 150)
    void theHighestRegenCurrentJustDoes(@ForAll Build build) {
        justDoes(
                current -> overlaid(build, OptionalDouble.empty(), OptionalDouble.of(current)),
                0.0,
                200.0);
    }

    /**
     * The speed cap is left out, whose check is milder the fuller the pack, and so are the tapers,
     * which let less flow the fuller or emptier it is.
     */
    @Property(tries = 150)
    void theHighestChargeJustDoes(@ForAll Build build) {
        Settings settings = build.settings();
        Build plain =
                build.withSettings(
                        settings.withLowVoltageTaper(Optional.empty())
                                .withHighVoltageTaper(Optional.empty())
                                .withSpeedCap(OptionalDouble.empty()));
        justDoes(charge -> chargedTo(plain, charge), build.use().chargeTo() + 0.01, 1.0);
    }

    @Property(tries = 100)
    void theSmallestPackJustDoes(@ForAll Build build) {
        IntFunction<Build> with = count -> inParallel(build, count);
        Solution solution = Solver.smallest(count -> Evaluation.of(with.apply(count)), 1, 20);
        if (solution instanceof Solution.Found found) {
            int count = (int) found.value();
            assertThat(found.there()).isEqualTo(Evaluation.of(with.apply(count)));
            assertThat(found.there().severity()).isNotPositive();
            assertThat(found.beyond()).isEqualTo(Evaluation.of(with.apply(count - 1)));
            assertThat(found.beyond().severity()).isPositive();
        } else if (solution instanceof Solution.All all) {
            assertThat(all.value()).isEqualTo(1.0);
            assertThat(all.there()).isEqualTo(Evaluation.of(with.apply(1)));
            assertThat(all.there().severity()).isNotPositive();
        } else if (solution instanceof Solution.None none) {
            assertThat(none.value()).isEqualTo(20.0);
            assertThat(none.there()).isEqualTo(Evaluation.of(with.apply(20)));
            namesTheCheck(with.apply(20), none.there());
        } else {
            throw new AssertionError(solution);
        }
    }

    /** Within limits from 0 to 2 and from 6 to 7. */
    private static Evaluation twice(double value) {
        double severity =
                value <= 2.0 || (value >= 6.0 && value <= 7.0)
                        ? -0.1
                        : Math.min(
                                1.0,
                                0.01 + Math.min(Math.abs(value - 2.0), Math.abs(value - 7.0)) / 9);
        return new Evaluation(
                Verdict.Outcome.CONDITIONAL,
                severity,
                ConstraintId.GRIP,
                WhichPack.WHOLE,
                OptionalDouble.empty(),
                1.0,
                severity);
    }

    @Example
    void anIslandOfPermittedValuesIsFoundWhereOrderIsNotKnown() {
        Solution solution = Solver.highestOfAny(SolverProperties::twice, 3.0, 10.0);
        assertThat(((Solution.Found) solution).value()).isCloseTo(7.0, within(1e-6));
        assertThat(Solver.highest(SolverProperties::twice, 3.0, 10.0))
                .as("an order taken for granted")
                .isInstanceOf(Solution.None.class);
        Solution none = Solver.highestOfAny(SolverProperties::twice, 8.0, 10.0);
        assertThat(none.value()).isEqualTo(8.0);
    }

    /** Another check, of which nothing is asked or permitted, is on its limit throughout. */
    @Example
    void aLimitNextToTheLowestValueIsFoundHoweverHighTheHighestIs() {
        double limit = 5e-4;
        DoubleFunction<Evaluation> verdict =
                value ->
                        new Evaluation(
                                value > limit
                                        ? Verdict.Outcome.CONDITIONAL
                                        : Verdict.Outcome.WITHIN_LIMITS,
                                value > limit ? 1.0 - limit / value : 0.0,
                                ConstraintId.GRIP,
                                WhichPack.WHOLE,
                                OptionalDouble.empty(),
                                1.0,
                                0.0);
        Solution solution = Solver.highest(verdict, 0.0, 5000.0);
        assertThat(((Solution.Found) solution).value()).isCloseTo(limit, within(2e-9));
    }

    @Property(tries = 50)
    void whereLowerIsMilderBothSearchesAgree(@ForAll Build build) {
        double high = 3.0 * Limits.of(build).motorBrake().value() + 1.0;
        DoubleFunction<Evaluation> verdict =
                current ->
                        Evaluation.of(
                                overlaid(
                                        build, OptionalDouble.of(current), OptionalDouble.empty()));
        Solution one = Solver.highest(verdict, 0.0, high);
        Solution other = Solver.highestOfAny(verdict, 0.0, high);
        assertThat(other.getClass()).isEqualTo(one.getClass());
        if (one instanceof Solution.Found found) {
            assertThat(((Solution.Found) other).value())
                    .isCloseTo(found.value(), within(1e-7 * high));
        }
    }

    @Example
    void aRangeThatDoesNotAscendIsRejected() {
        Build board = Builds.trailBoard();
        assertThatThrownBy(() -> Solver.highest(value -> Evaluation.of(board), 2.0, 1.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("values asked about");
        assertThatThrownBy(() -> Solver.highest(value -> Evaluation.of(board), Double.NaN, 1.0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Solver.smallest(value -> Evaluation.of(board), 3, 2))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static void justDoes(DoubleFunction<Build> with, double low, double high) {
        DoubleFunction<Evaluation> verdict = value -> Evaluation.of(with.apply(value));
        Solution solution = Solver.highest(verdict, low, high);
        if (solution instanceof Solution.Found found) {
            double value = found.value();
            assertThat(value).isBetween(low, high);
            assertThat(found.there()).isEqualTo(verdict.apply(value));
            assertThat(found.there().severity()).isNotPositive();
            assertThat(found.beyond().severity()).isPositive();
            double more = value == 0.0 ? STEP * high : (1.0 + STEP) * value;
            assertThat(verdict.apply(Math.min(high, more)).severity()).isPositive();
            assertThat(verdict.apply(Math.max(low, (1.0 - STEP) * value)).severity())
                    .isNotPositive();
        } else if (solution instanceof Solution.All all) {
            assertThat(all.value()).isEqualTo(high);
            assertThat(all.there()).isEqualTo(verdict.apply(high));
            for (int step = 0; step <= 10; step++) {
                assertThat(verdict.apply(low + step / 10.0 * (high - low)).severity())
                        .isNotPositive();
            }
        } else if (solution instanceof Solution.None none) {
            assertThat(none.value()).isEqualTo(low);
            assertThat(none.there()).isEqualTo(verdict.apply(low));
            namesTheCheck(with.apply(low), none.there());
            for (int step = 0; step <= 10; step++) {
                assertThat(verdict.apply(low + step / 10.0 * (high - low)).severity()).isPositive();
            }
        } else {
            throw new AssertionError(solution);
        }
    }

    private static void namesTheCheck(Build build, Evaluation evaluation) {
        Limits limits = Limits.of(build);
        assertThat(evaluation.severity()).isPositive();
        assertThat(Review.of(build, limits, Operation.of(build, limits)).findings())
                .anyMatch(
                        each ->
                                each.condition().isPresent()
                                        && each.constraint()
                                                .equals(Optional.of(evaluation.worst())));
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

    private static Build chargedTo(Build build, double charge) {
        Use use = build.use();
        return build.withUse(use.withChargeFrom(charge));
    }

    /** The settings stay those made for the vehicle as it was. */
    private static Build inParallel(Build build, int count) {
        Battery old = build.battery();
        return build.withBattery(
                old.withPacks(old.packs().stream().map(pack -> inParallel(pack, count)).toList()));
    }

    private static Pack inParallel(Pack pack, int count) {
        return pack.withParallel(count);
    }
}
