package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.heat.PackHeat;
import brakewright.heat.WarmRide;
import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.ChargingWindow;
import brakewright.spec.Climate;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Settings;
import brakewright.spec.WhichPack;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** An ordinary ride that warms the cells beyond the temperature at which they may be charged. */
class WarmCellsTest {

    private static final double WARM = 43.0;
    private static final double REGEN = 1.0;

    @Test
    void brakingIntoCellsThatARideWarmsTooFarIsConditional() {
        Build hot = board(WARM, REGEN);
        PackHeat heat = ride(hot).heat();
        assertThat(heat.highestC()).isGreaterThan(heat.chargeLimitC());
        Review review = review(hot);
        Finding finding = warmed(review).get(0);
        assertThat(finding.value()).hasValue(heat.highestC());
        assertThat(finding.limit()).hasValue(45.0);
        Condition.RiddenUpTo ridden = (Condition.RiddenUpTo) finding.condition().orElseThrow();
        assertThat(ridden.time()).isEqualTo(heat.warmAfter().orElseThrow());
        assertThat(ridden.time()).isGreaterThan(0.0).isLessThan(heat.time());
        assertThat(review.verdict().outcome()).isEqualTo(Verdict.Outcome.CONDITIONAL);
        Evaluation evaluation = Evaluation.of(hot);
        assertThat(evaluation.outcome()).isEqualTo(Verdict.Outcome.CONDITIONAL);
        assertThat(evaluation.worst()).isEqualTo(ConstraintId.TEMPERATURE_WINDOW);
    }

    @Test
    void inCoolAirNothingIsFound() {
        Build cool = board(20.0, REGEN);
        assertThat(ride(cool).heat().warmAfter()).isEmpty();
        assertThat(warmed(review(cool))).isEmpty();
        assertThat(Evaluation.of(cool).outcome()).isEqualTo(Verdict.Outcome.WITHIN_LIMITS);
    }

    @Test
    void whatSendsNothingBackIsNotAsked() {
        assertThat(warmed(review(board(WARM, 0.0)))).isEmpty();
        Build rolling = board(WARM, REGEN);
        assertThat(
                        warmed(
                                review(
                                        rolling.withSettings(
                                                rolling.settings().withMotorBrakeCurrent(0.0)))))
                .isEmpty();
    }

    /** No setting but none at all mends it, so it gates no search for one. */
    @Test
    void itGatesNoSearchForASetting() {
        Set<LimitId> regen = Set.of(LimitId.PACK_REGEN_CURRENT);
        assertThat(Evaluation.of(board(WARM, REGEN), regen).severity()).isNegative();
    }

    /** What is stated tells it already where the cells are too warm before they are ridden. */
    @Test
    void cellsStatedTooWarmAreToldOnce() {
        Review review = review(board(47.0, REGEN));
        assertThat(warmed(review)).isEmpty();
        assertThat(review.verdict().outcome()).isNotEqualTo(Verdict.Outcome.WITHIN_LIMITS);
    }

    /** Alike packs warm alike: one that bears 43.2 °C is too warm sooner than at 43.5 °C. */
    @Test
    void everyPackThatARideWarmsTooFarIsToldTheFirstToBeSoFirst() {
        List<Finding> told = warmed(review(beside(43.5, 43.2)));
        assertThat(told)
                .extracting(Finding::pack)
                .containsExactly(WhichPack.of(2), WhichPack.of(1));
        assertThat(told).extracting(each -> each.limit().orElseThrow()).containsExactly(43.2, 43.5);
        assertThat(told)
                .extracting(each -> ((Condition.RiddenUpTo) each.condition().orElseThrow()).time())
                .isSorted()
                .doesNotHaveDuplicates();
    }

    /** The first may not be charged from 42 °C on and is at 43 °C before it is ridden. */
    @Test
    void aPackStatedTooWarmDoesNotHideThatARideWarmsAnotherTooFar() {
        assertThat(warmed(review(beside(42.0, 43.5))))
                .singleElement()
                .satisfies(each -> assertThat(each.pack()).isEqualTo(WhichPack.of(2)));
    }

    @Test
    void cellsThatBeginWhereTheyMayJustBeChargedAreTooWarmAtOnce() {
        List<Finding> told = warmed(review(beside(WARM, 60.0)));
        assertThat(told).extracting(Finding::pack).containsExactly(WhichPack.of(1));
        Condition.RiddenUpTo ridden = (Condition.RiddenUpTo) told.get(0).condition().orElseThrow();
        assertThat(ridden.time()).isCloseTo(0.0, within(1e-6));
    }

    /** Two packs at 43 °C that may be charged up to these temperatures. */
    private static Build beside(double one, double other) {
        Build board = board(WARM, REGEN);
        Pack pack = Builds.pack(board);
        return board.withBattery(
                Builds.joined(
                        Joining.PARALLEL,
                        List.of(chargedUpTo(pack, one), chargedUpTo(pack, other))));
    }

    private static Pack chargedUpTo(Pack pack, double highestC) {
        ChargingWindow window =
                new ChargingWindow(0.0, highestC, 10.0, 0.2, ChargingWindow.WHATEVER_THE_CHARGE);
        return Builds.withCell(pack, Builds.charged(pack.cell(), window));
    }

    @Test
    void theSeverityIsContinuousWhereTheCellsJustReachTheirWindow() {
        double low = 20.0;
        double high = WARM;
        for (int halving = 0; halving < 40; halving++) {
            double middle = 0.5 * (low + high);
            if (warmed(review(board(middle, REGEN))).isEmpty()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        assertThat(Evaluation.of(board(high, REGEN)).severity()).isCloseTo(0.0, within(1e-6));
    }

    @Test
    void theBrakeIsLookedAtAsWarmAsTheRideMakesTheCells() {
        Build hot = board(WARM, REGEN);
        Operation operation = Operation.of(hot, Limits.of(hot));
        assertThat(WarmRide.temperatures(hot, operation.drive()))
                .containsExactly(WARM, ride(hot).heat().highestC());
    }

    private static Build board(double airC, double regen) {
        Build board = Builds.trailBoard();
        Climate climate = board.use().climate();
        return board.withBattery(board.battery().at(airC))
                .withUse(
                        board.use()
                                .withChargeFrom(0.7)
                                .withClimate(
                                        new Climate(airC, airC, airC, climate.altitude(), airC)))
                .withSettings(
                        new Settings(
                                OptionalDouble.of(20.0),
                                OptionalDouble.of(20.0),
                                OptionalDouble.of(10.0),
                                OptionalDouble.of(regen),
                                Optional.empty(),
                                Optional.empty(),
                                OptionalDouble.empty()));
    }

    private static WarmRide ride(Build build) {
        return WarmRide.of(build, Operation.of(build, Limits.of(build)).drive()).orElseThrow();
    }

    private static Review review(Build build) {
        Limits limits = Limits.of(build);
        return Review.of(build, limits, Operation.of(build, limits));
    }

    private static List<Finding> warmed(Review review) {
        return review.findings().stream()
                .filter(each -> each.topic() == Topic.RETURN_INTO_WARM_CELLS)
                .toList();
    }
}
