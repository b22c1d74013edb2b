package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Curve;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.Settings;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * Alike packs of ten cells in series, from 3 V to 4 V, 0.05 Ω and 10 A each, 60 % of the resistance
 * ohmic; hand-worked.
 */
class SharingReviewTest {

    private static final Cell CELL =
            Builds.rated(
                    Builds.withVoltage(
                            Builds.flatCell(4.0, 0.05, 3.0, 4.2),
                            Curve.of(new double[] {0.0, 1.0}, new double[] {3.0, 4.0})),
                    10.0,
                    10.0);

    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();

    @Test
    void onePackSharesWithNone() {
        assertThat(told(Joining.PARALLEL, pack(UNKNOWN, 1.0, 1.0), 1)).isEmpty();
    }

    /** 0.3 Ω each at the first instant: 10 A flow from one into the other at 6 V. */
    @Test
    void twoPacksHaveOneDifferenceToBeJoinedAt() {
        assertThat(told(Joining.PARALLEL, pack(UNKNOWN, 100.0, 100.0), 2))
                .singleElement()
                .satisfies(
                        each -> {
                            assertThat(each.topic()).isEqualTo(Topic.JOINING_DIFFERENCE);
                            assertThat(each.signal()).isEqualTo(Signal.CAUTION);
                            assertThat(each.pack()).isEqualTo(WhichPack.of(1));
                            assertThat(each.value().orElseThrow()).isCloseTo(6.0, within(1e-12));
                            assertThat(each.limit()).isEmpty();
                            assertThat(each.unit()).isEqualTo(Unit.VOLT);
                        });
    }

    /** One into two of 0.15 Ω together: 10 A at 4.5 V. */
    @Test
    void eachOfThreePacksHasItsOwn() {
        assertThat(told(Joining.PARALLEL, pack(UNKNOWN, 100.0, 100.0), 3))
                .hasSize(3)
                .allSatisfy(
                        each ->
                                assertThat(each.value().orElseThrow())
                                        .isCloseTo(4.5, within(1e-12)))
                .extracting(Finding::pack)
                .containsExactly(WhichPack.of(1), WhichPack.of(2), WhichPack.of(3));
    }

    /** At a charge of 0.3 and 0.6 they are 3 V apart, over 0.6 Ω. */
    @Test
    void packsThatAreJoinedAtKnownChargesAreHeldAgainstTheirRating() {
        assertThat(joined(0.6, 0.3, 4.9))
                .satisfies(
                        each -> {
                            assertThat(each.topic()).isEqualTo(Topic.JOINING_CURRENT);
                            assertThat(each.signal()).isEqualTo(Signal.DANGER);
                            assertThat(each.value().orElseThrow()).isCloseTo(5.0, within(1e-12));
                            assertThat(each.limit().orElseThrow()).isCloseTo(4.9, within(1e-12));
                            assertThat(each.unit()).isEqualTo(Unit.AMPERE);
                        });
        assertThat(joined(0.6, 0.3, 5.1).topic()).isEqualTo(Topic.JOINING_DIFFERENCE);
    }

    /** 12 A drawn from two packs; either of them alone opens at 8 A. */
    @Test
    void aPackThatOpensLeavesTheOtherMoreThanItsTrip() {
        List<Finding> told = lost(told(Joining.PARALLEL, pack(UNKNOWN, 8.0, 100.0), 2));
        assertThat(told)
                .hasSize(2)
                .allSatisfy(
                        each -> {
                            assertThat(each.signal()).isEqualTo(Signal.DANGER);
                            assertThat(each.subject()).contains(LimitId.PACK_DISCHARGE_CURRENT);
                            assertThat(each.value().orElseThrow()).isCloseTo(1.5, within(1e-9));
                            assertThat(each.limit()).hasValue(1.0);
                            assertThat(each.unit()).isEqualTo(Unit.RATIO);
                            assertThat(each.charge()).isPresent();
                        });
        assertThat(lost(told(Joining.PARALLEL, pack(UNKNOWN, 12.5, 100.0), 2))).isEmpty();
    }

    /** 6 A sent into two packs; either of them alone opens at 4 A. */
    @Test
    void whatBrakesIsLostInTheSameWay() {
        assertThat(lost(told(Joining.PARALLEL, pack(UNKNOWN, 100.0, 4.0), 2)))
                .hasSize(2)
                .allSatisfy(
                        each -> {
                            assertThat(each.subject()).contains(LimitId.PACK_REGEN_CURRENT);
                            assertThat(each.value().orElseThrow()).isCloseTo(1.5, within(1e-9));
                        });
    }

    @Test
    void inSeriesTheLossOfAnyIsToldOnceAsTheLossOfTheBrake() {
        assertThat(told(Joining.SERIES, pack(UNKNOWN, 8.0, 4.0), 3))
                .singleElement()
                .satisfies(
                        each -> {
                            assertThat(each.topic()).isEqualTo(Topic.PACK_LOSS_CASCADES);
                            assertThat(each.signal()).isEqualTo(Signal.CAUTION);
                            assertThat(each.subject()).contains(LimitId.PACK_REGEN_CURRENT);
                            assertThat(each.pack()).isEqualTo(WhichPack.of(1));
                            assertThat(each.value()).isEmpty();
                        });
    }

    private static Finding joined(double one, double other, double rating) {
        Cell cell = Builds.rated(CELL, rating, rating);
        return told(Builds.joined(
                        Joining.PARALLEL,
                        List.of(
                                pack(cell, OptionalDouble.of(one), 100.0, 100.0),
                                pack(cell, OptionalDouble.of(other), 100.0, 100.0))))
                .get(0);
    }

    private static List<Finding> lost(List<Finding> findings) {
        return findings.stream().filter(each -> each.topic() == Topic.PACK_LOSS_CASCADES).toList();
    }

    private static Pack pack(OptionalDouble joinedAt, double opensGiving, double opensTaking) {
        return pack(CELL, joinedAt, opensGiving, opensTaking);
    }

    private static Pack pack(
            Cell cell, OptionalDouble joinedAt, double opensGiving, double opensTaking) {
        return Builds.barePack(cell, 10, 1, 0.0)
                .withJoinedAt(joinedAt)
                .withProtection(
                        Protection.UNKNOWN
                                .withDischargeTrip(OptionalDouble.of(opensGiving))
                                .withChargeTrip(OptionalDouble.of(opensTaking)));
    }

    private static List<Finding> told(Joining joining, Pack pack, int count) {
        return told(Builds.joined(joining, Collections.nCopies(count, pack)));
    }

    /** Two controllers draw 6 A and send back 3 A each. */
    private static List<Finding> told(Battery battery) {
        Build board =
                Builds.withMargins(Builds.trailBoard(), Builds.NO_MARGINS)
                        .withBattery(battery)
                        .withSettings(
                                Settings.NONE
                                        .withMotorDriveCurrent(50.0)
                                        .withMotorBrakeCurrent(50.0)
                                        .withPackDischargeCurrent(6.0)
                                        .withPackRegenCurrent(3.0));
        Limits limits = Limits.of(board);
        return new SharingReview(board, limits, Operation.of(board, limits)).findings();
    }
}
