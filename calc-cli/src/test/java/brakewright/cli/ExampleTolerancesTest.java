package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.driving.Cruise;
import brakewright.driving.Road;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.profile.Distribution;
import brakewright.profile.Quantity;
import brakewright.profile.Tolerances;
import brakewright.propertyruns.PropertyRuns;
import brakewright.review.Evaluation;
import brakewright.review.Verdict;
import brakewright.spec.Build;
import brakewright.worksheet.DriveSheet;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is told of the tolerances of the example vehicles, held against many drawn by lot. */
class ExampleTolerancesTest {

    private static final int VERDICTS = PropertyRuns.tries(1_000);
    private static final int LOTS = PropertyRuns.tries(4_000);
    private static final int READINGS = PropertyRuns.tries(150);

    /** Charge states are sought to 1e-9 each, and count five times in an order of verdicts. */
    private static final double BADNESS_ACCURACY = 1e-8;

    /** The accuracy to which the least exact of the readings, a ride, is summed. */
    private static final double READING_ACCURACY = 1e-6;

    private static final Set<Quantity> READ =
            EnumSet.of(Quantity.STOP_DRY, Quantity.TOP_SPEED, Quantity.RANGE, Quantity.SAFE_CHARGE);

    private static final Map<Doubted, Tolerances> KNOWN = new IdentityHashMap<>();
    private static final Map<Doubted, List<Evaluation>> DRAWN = new IdentityHashMap<>();
    private static final List<Named<Doubted>> VEHICLES = made();

    static List<Named<Doubted>> vehicles() {
        return VEHICLES;
    }

    private static Tolerances tolerances(Doubted doubted) {
        return KNOWN.computeIfAbsent(doubted, each -> Tolerances.of(each.inputs(), each));
    }

    /** Verdicts within the tolerances, all values equally likely. */
    private static List<Evaluation> lots(Doubted doubted) {
        return DRAWN.computeIfAbsent(
                doubted,
                each ->
                        LongStream.range(0, LOTS)
                                .parallel()
                                .mapToObj(seed -> Evaluation.of(each.with(each.evenSample(seed))))
                                .toList());
    }

    private static List<Named<Doubted>> made() {
        List<Named<Doubted>> vehicles = new ArrayList<>();
        for (Example example : Example.values()) {
            vehicles.add(Named.of(example + " as set", Doubted.of(example)));
            vehicles.add(Named.of(example + " just within", Doubted.justWithin(example)));
        }
        return vehicles;
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void nothingWithinTheTolerancesIsWorseThanTheUnfavourableCorner(Doubted doubted) {
        Tolerances.Corner corner = Tolerances.unfavourable(doubted.inputs(), doubted);
        double worst = Tolerances.badness(corner.evaluation());
        assertThat(corner.evaluation())
                .isEqualTo(
                        Evaluation.of(
                                doubted.with(
                                        corner.values().stream()
                                                .mapToDouble(Double::doubleValue)
                                                .toArray())));
        double drawn =
                Stream.concat(
                                LongStream.range(0, VERDICTS)
                                        .parallel()
                                        .mapToObj(doubted::sample)
                                        .map(values -> Evaluation.of(doubted.with(values))),
                                lots(doubted).stream())
                        .mapToDouble(Tolerances::badness)
                        .max()
                        .orElseThrow();
        assertThat(drawn).isLessThanOrEqualTo(worst + BADNESS_ACCURACY);
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void noReadingWithinTheTolerancesLiesOutsideItsSpread(Doubted doubted) {
        Tolerances tolerances = tolerances(doubted);
        assertThat(tolerances.nominal()).isEqualTo(Evaluation.of(doubted.with(doubted.nominal())));
        int looked = 0;
        for (Tolerances.Spread spread : tolerances.spreads()) {
            if (!READ.contains(spread.measure().quantity())) {
                continue;
            }
            looked++;
            double worst = spread.worst().orElseThrow();
            double best = spread.best().orElseThrow();
            double slack = READING_ACCURACY * Math.max(Math.abs(worst), Math.abs(best));
            double[] drawn =
                    LongStream.range(0, READINGS)
                            .parallel()
                            .mapToObj(seed -> doubted.with(doubted.sample(seed)))
                            .map(build -> reading(build, spread))
                            .filter(OptionalDouble::isPresent)
                            .mapToDouble(OptionalDouble::getAsDouble)
                            .sorted()
                            .toArray();
            assertThat(drawn).as("%s", spread.measure()).isNotEmpty();
            assertThat(drawn[0])
                    .as("least of %s", spread.measure())
                    .isGreaterThanOrEqualTo(Math.min(worst, best) - slack);
            assertThat(drawn[drawn.length - 1])
                    .as("greatest of %s", spread.measure())
                    .isLessThanOrEqualTo(Math.max(worst, best) + slack);
        }
        assertThat(looked).isGreaterThanOrEqualTo(READ.size());
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void knowingAnInputThatDecidesImprovesTheOutcome(Doubted doubted) {
        Tolerances tolerances = tolerances(doubted);
        Verdict.Outcome worst = tolerances.worst().evaluation().outcome();
        for (Tolerances.Influence influence : tolerances.influences()) {
            int index = doubted.inputs().indexOf(influence.input());
            double[] values =
                    tolerances.worst().values().stream().mapToDouble(Double::doubleValue).toArray();
            values[index] = influence.input().nominal();
            assertThat(influence.decides())
                    .as("%s", influence.input())
                    .isEqualTo(Evaluation.of(doubted.with(values)).outcome().compareTo(worst) < 0);
        }
    }

    /** The standard error of 4,000 lots is at most 0.008, two fifths of what is allowed. */
    @ParameterizedTest
    @MethodSource("vehicles")
    void sharesAgreeWithDrawingLots(Doubted doubted) {
        long[] counts = new long[3];
        lots(doubted).forEach(each -> counts[each.outcome().ordinal()]++);
        Distribution shares = Distribution.of(doubted.inputs(), doubted, 2048, 7L);
        assertThat(shares.within()).isCloseTo((double) counts[0] / LOTS, within(0.02));
        assertThat(shares.conditional()).isCloseTo((double) counts[1] / LOTS, within(0.02));
        assertThat(shares.outside()).isCloseTo((double) counts[2] / LOTS, within(0.02));
    }

    @Test
    void anotherSeedDrawsOtherCases() {
        Doubted doubted = Doubted.justWithin(Example.TRIKE);
        Distribution first = Distribution.of(doubted.inputs(), doubted, 500, 1L);
        assertThat(Distribution.of(doubted.inputs(), doubted, 500, 1L)).isEqualTo(first);
        assertThat(Distribution.of(doubted.inputs(), doubted, 500, 2L)).isNotEqualTo(first);
    }

    private static OptionalDouble reading(Build build, Tolerances.Spread spread) {
        Operation operation = Operation.of(build, Limits.of(build));
        double full = build.use().chargeFrom();
        double speed = spread.measure().speed().orElse(0.0);
        return switch (spread.measure().quantity()) {
            case STOP_DRY ->
                    new Stop(
                                                    build,
                                                    operation.brake(),
                                                    Surroundings.of(build)
                                                            .withGrip(build.vehicle().grip()))
                                            .from(speed, full)
                                    instanceof StopOutcome.Stopped stopped
                            ? OptionalDouble.of(stopped.distance())
                            : OptionalDouble.empty();
            case TOP_SPEED ->
                    OptionalDouble.of(DriveSheet.of(build, operation, full).topSpeedFlat().speed());
            case RANGE ->
                    OptionalDouble.of(
                            Cruise.of(
                                            build,
                                            operation.drive(),
                                            new Road(0.0, build.use().riding().headwind()),
                                            speed)
                                    .distance());
            case SAFE_CHARGE -> OptionalDouble.of(Evaluation.of(build).safeCharge());
            default -> throw new IllegalArgumentException(spread.measure().toString());
        };
    }
}
