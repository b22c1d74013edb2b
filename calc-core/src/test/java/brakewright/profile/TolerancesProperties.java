package brakewright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.operation.SetBuild;
import brakewright.review.Evaluation;
import brakewright.review.Verdict;
import brakewright.spec.Build;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(SetBuild.class)
@Domain(DomainContext.Global.class)
class TolerancesProperties {

    private static final int SAMPLES = 500;

    /** Charge states are sought to 1e-9 each, and count five times in an order of verdicts. */
    private static final double BADNESS_ACCURACY = 1e-8;

    /**
     * Where a little more mass makes what is outside of limits safe at some charge, the edge
     * between the outcomes runs across the box: the place before it that is the worst by the sum is
     * found only if it lies where one input at a time leads to.
     */
    @Property(tries = 30, shrinking = ShrinkingMode.OFF)
    void noSampleIsWorseThanTheUnfavourableCorner(
            @ForAll Build build,
            @ForAll @Scale(3) @DoubleRange(min = 0.05, max = 0.2) double tolerance,
            @ForAll Random seed) {
        Doubted doubted = Doubted.of(build, tolerance);
        Evaluation worst = Tolerances.unfavourable(doubted.inputs(), doubted).evaluation();
        SplittableRandom random = new SplittableRandom(seed.nextLong());
        List<Evaluation> samples =
                Stream.generate(() -> Evaluation.of(doubted.with(doubted.sample(random))))
                        .limit(SAMPLES)
                        .toList();
        assertThat(samples)
                .allSatisfy(
                        sample ->
                                assertThat(sample.outcome()).isLessThanOrEqualTo(worst.outcome()));
        if (samples.stream().allMatch(sample -> sample.outcome() == worst.outcome())) {
            assertThat(samples)
                    .allSatisfy(
                            sample ->
                                    assertThat(Tolerances.badness(sample))
                                            .isLessThanOrEqualTo(
                                                    Tolerances.badness(worst) + BADNESS_ACCURACY));
        }
    }

    /** One search of a vehicle serves three laws. */
    @Property(tries = 20, shrinking = ShrinkingMode.OFF)
    void whatTolerancesDoIsInOrder(
            @ForAll Build build,
            @ForAll @Scale(3) @DoubleRange(min = 0.05, max = 0.2) double tolerance) {
        Doubted doubted = Doubted.of(build, tolerance);
        Tolerances tolerances = Tolerances.of(doubted.inputs(), doubted);
        whatIsNominalLiesBetweenWorstAndBest(build, tolerances);
        theWeightiestInfluenceComesFirst(doubted, tolerances.influences());
        knowingAnInputThatDecidesImprovesTheOutcome(doubted, tolerances);
    }

    private static void whatIsNominalLiesBetweenWorstAndBest(Build build, Tolerances tolerances) {
        double nominal = Tolerances.badness(tolerances.nominal());
        assertThat(tolerances.nominal()).isEqualTo(Evaluation.of(build));
        assertThat(Tolerances.badness(tolerances.worst().evaluation()))
                .isGreaterThanOrEqualTo(nominal);
        assertThat(Tolerances.badness(tolerances.best().evaluation())).isLessThanOrEqualTo(nominal);
        for (Tolerances.Spread spread : tolerances.spreads()) {
            if (spread.nominal().isEmpty()) {
                continue;
            }
            double own = spread.nominal().getAsDouble();
            double worst = spread.worst().orElseThrow();
            double best = spread.best().orElseThrow();
            assertThat(own)
                    .as("%s", spread.measure())
                    .isBetween(Math.min(worst, best), Math.max(worst, best));
            boolean more = spread.measure().quantity().sense() == Quantity.Sense.HIGHER;
            assertThat(more ? worst <= best : worst >= best)
                    .as("%s has its worst at the worse end", spread.measure())
                    .isTrue();
        }
    }

    private static void theWeightiestInfluenceComesFirst(
            Doubted doubted, List<Tolerances.Influence> influences) {
        assertThat(influences)
                .hasSameSizeAs(doubted.inputs())
                .isSortedAccordingTo(
                        Comparator.comparing(Tolerances.Influence::decides)
                                .thenComparingDouble(Tolerances.Influence::weight)
                                .reversed());
        for (Tolerances.Influence influence : influences) {
            int index = doubted.inputs().indexOf(influence.input());
            double[] values = nominal(doubted);
            values[index] = influence.input().low();
            Evaluation low = Evaluation.of(doubted.with(values));
            assertThat(influence.severityAtLow()).isEqualTo(low.severity());
            assertThat(influence.safeChargeAtLow()).isEqualTo(low.safeCharge());
            values[index] = influence.input().high();
            Evaluation high = Evaluation.of(doubted.with(values));
            assertThat(influence.severityAtHigh()).isEqualTo(high.severity());
            assertThat(influence.safeChargeAtHigh()).isEqualTo(high.safeCharge());
        }
    }

    private static void knowingAnInputThatDecidesImprovesTheOutcome(
            Doubted doubted, Tolerances tolerances) {
        Verdict.Outcome worst = tolerances.worst().evaluation().outcome();
        for (Tolerances.Influence influence : tolerances.influences()) {
            if (influence.decides()) {
                Doubted known = doubted.knowing(doubted.inputs().indexOf(influence.input()));
                assertThat(Tolerances.unfavourable(known.inputs(), known).evaluation().outcome())
                        .as("%s known", influence.input())
                        .isLessThan(worst);
            }
        }
    }

    @Property(tries = 12, shrinking = ShrinkingMode.OFF)
    void withoutTolerancesEverythingIsNominal(@ForAll Build build) {
        Doubted doubted = Doubted.of(build, 0.0);
        Tolerances tolerances = Tolerances.of(doubted.inputs(), doubted);
        Evaluation nominal = Evaluation.of(build);
        assertThat(tolerances.nominal()).isEqualTo(nominal);
        assertThat(tolerances.worst().evaluation()).isEqualTo(nominal);
        assertThat(tolerances.best().evaluation()).isEqualTo(nominal);
        assertThat(tolerances.spreads())
                .isNotEmpty()
                .allSatisfy(
                        spread -> {
                            assertThat(spread.worst()).isEqualTo(spread.nominal());
                            assertThat(spread.best()).isEqualTo(spread.nominal());
                        });
        assertThat(tolerances.influences())
                .allMatch(each -> each.weight() == 0.0 && !each.decides());
        Distribution distribution = Distribution.of(doubted.inputs(), doubted, 8, 1L);
        assertThat(
                        List.of(
                                        distribution.within(),
                                        distribution.conditional(),
                                        distribution.outside())
                                .get(nominal.outcome().ordinal()))
                .isEqualTo(1.0);
    }

    @Property(tries = 40, shrinking = ShrinkingMode.OFF)
    void sharesAreWhatTheCornersAllow(
            @ForAll Build build,
            @ForAll @Scale(3) @DoubleRange(min = 0.0, max = 0.2) double tolerance,
            @ForAll long seed) {
        Doubted doubted = Doubted.of(build, tolerance);
        Distribution shares = Distribution.of(doubted.inputs(), doubted, 200, seed);
        assertThat(shares).isEqualTo(Distribution.of(doubted.inputs(), doubted, 200, seed));
        // three roundings of numbers up to one
        assertThat(shares.within() + shares.conditional() + shares.outside())
                .isCloseTo(1.0, within(1e-15));
        switch (Tolerances.unfavourable(doubted.inputs(), doubted).evaluation().outcome()) {
            case WITHIN_LIMITS -> assertThat(shares.within()).isEqualTo(1.0);
            case CONDITIONAL -> assertThat(shares.outside()).isZero();
            case OUTSIDE_LIMITS -> assertThat(shares.within()).isBetween(0.0, 1.0);
        }
    }

    private static double[] nominal(Doubted doubted) {
        return doubted.inputs().stream().mapToDouble(Uncertain::nominal).toArray();
    }
}
