package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.charge.ChargeSearch;
import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What is held against a limit, in figures that can be worked out on paper. */
class CheckTest {

    private static final Held HELD =
            Held.setting(
                            Topic.PACK_RETURN_OVER,
                            LimitId.PACK_REGEN_CURRENT,
                            ConstraintId.VOLTAGE_CEILING)
                    .withCells(25.0);

    private static final ChargeSearch CHARGES = new ChargeSearch(new double[] {0.0, 0.5, 1.0});

    private static final double TEN = 10.0;

    /** 20 A at empty less 16 A for all of the charge are 10 A at 5/8. */
    @Test
    void whatFlowsIsTooMuchFromTheChargeOnAtWhichItIsJustPermitted() {
        ChargeCheck check = full(charge -> 20.0 - 16.0 * charge);
        assertThat(check.isExceeded()).isTrue();
        assertThat(check.severity()).isCloseTo(0.6, within(1e-15));
        assertThat(check.charge()).hasValue(1.0);
        assertThat(check.isEverywhere()).isFalse();
        assertThat(check.isNever()).isFalse();
        assertThat(check.begins()).isCloseTo(0.625, within(1e-9));
        assertThat(check.mostAt()).isEqualTo(1.0);
        assertThat(check.value()).isEqualTo(TEN);
        assertThat(check.limit()).isEqualTo(4.0);
    }

    /** 4 A at empty and 16 A more for all of the charge are 10 A at 3/8. */
    @Test
    void whatIsDrawnIsTooMuchUpToTheChargeAtWhichItIsJustPermitted() {
        ChargeCheck check = empty(charge -> 4.0 + 16.0 * charge);
        assertThat(check.severity()).isCloseTo(0.6, within(1e-15));
        assertThat(check.charge()).hasValue(0.0);
        assertThat(check.isEverywhere()).isFalse();
        assertThat(check.begins()).isCloseTo(0.375, within(1e-9));
        assertThat(check.mostAt()).isEqualTo(0.0);
        assertThat(check.limit()).isEqualTo(4.0);
    }

    @Test
    void itIsEverywhereWhereTheHarmlessEndExceedsItAndNeverUnlessThatIsMended() {
        assertThat(full(charge -> 9.0 - charge).isEverywhere()).isTrue();
        assertThat(full(charge -> TEN - charge).isEverywhere()).isFalse();
        assertThat(empty(charge -> 8.0 + charge).isEverywhere()).isTrue();
        assertThat(empty(charge -> 9.0 + charge).isEverywhere()).isFalse();
        assertThat(full(charge -> 9.0 - charge).isNever()).isTrue();
        assertThat(check(charge -> 9.0 - charge, ChargeCheck.Harm.FULL, () -> true).isNever())
                .isFalse();
    }

    @Test
    void ofEqualExcessesTheOneFarthestIntoTheHarmIsTold() {
        ChargeCheck full = full(charge -> 8.0);
        assertThat(full.mostAt()).isEqualTo(1.0);
        assertThat(full.charge()).hasValue(0.0);
        assertThat(empty(charge -> 8.0).mostAt()).isEqualTo(0.0);
    }

    /** Half of 2 A is too much, 1 A; of 10 A a fifth, but 2 A. */
    @Test
    void theGreatestExcessIsToldWhereItIsMoreThanTheFarthestShare() {
        double[] flows = {TEN, 4.0, 2.0};
        double[] permitted = {8.0, 2.5, 1.0};
        ChargeCheck check =
                new ChargeCheck(
                        HELD,
                        CHARGES,
                        flows,
                        permitted,
                        new ChargeCheck.Course(charge -> TEN, charge -> 8.0),
                        ChargeCheck.Harm.FULL,
                        () -> false,
                        each -> each.held().finding().build());
        assertThat(check.severity()).isCloseTo(0.5, within(1e-15));
        assertThat(check.charge()).hasValue(1.0);
        assertThat(check.mostAt()).isEqualTo(0.0);
        assertThat(check.value()).isEqualTo(TEN);
        assertThat(check.limit()).isEqualTo(8.0);
    }

    @Test
    void whatBeginsNoEarlierIsNoWorse() {
        ChargeCheck early = full(charge -> 18.0 - 16.0 * charge);
        ChargeCheck late = full(charge -> 20.0 - 16.0 * charge);
        assertThat(late.isNoWorseThan(early)).isTrue();
        assertThat(early.isNoWorseThan(early)).isTrue();
        assertThat(early.isNoWorseThan(late)).isFalse();
        ChargeCheck low = empty(charge -> 4.0 + 16.0 * charge);
        ChargeCheck high = empty(charge -> 2.0 + 16.0 * charge);
        assertThat(low.isNoWorseThan(high)).isTrue();
        assertThat(low.isNoWorseThan(low)).isTrue();
        assertThat(high.isNoWorseThan(low)).isFalse();
        assertThat(late.isNoWorseThan(full(charge -> 20.0))).isFalse();
        assertThat(late.isNoWorseThan(plain(12.0, TEN))).isFalse();
    }

    @Test
    void ofPlainChecksTheHigherLimitIsNoWorseThanOneThatIsExceeded() {
        assertThat(plain(12.0, TEN).isNoWorseThan(plain(12.0, 8.0))).isTrue();
        assertThat(plain(12.0, TEN).isNoWorseThan(plain(12.0, TEN))).isTrue();
        assertThat(plain(12.0, 8.0).isNoWorseThan(plain(12.0, TEN))).isFalse();
        assertThat(plain(12.0, 14.0).isNoWorseThan(plain(12.0, 13.0))).isFalse();
        assertThat(plain(12.0, TEN).isNoWorseThan(full(charge -> 8.0))).isFalse();
    }

    @Test
    void aPlainCheckTellsWhatItHolds() {
        Finding always = plain(12.0, TEN).finding();
        assertThat(always.value()).hasValue(12.0);
        assertThat(always.limit()).hasValue(TEN);
        assertThat(always.unit()).isEqualTo(Unit.AMPERE);
        assertThat(always.subject()).contains(LimitId.PACK_REGEN_CURRENT);
        assertThat(always.constraint()).contains(ConstraintId.VOLTAGE_CEILING);
        assertThat(always.condition()).contains(new Condition.Never());
        assertThat(always.charge()).isEmpty();
        assertThat(always.temperatureC()).isEmpty();
        assertThat(always.pack().isWhole()).isTrue();
        Finding rest =
                PlainCheck.at(0.9, HELD.ofPack(WhichPack.of(2)), 61.0, 60.0, Unit.VOLT).finding();
        assertThat(rest.charge()).hasValue(0.9);
        assertThat(rest.pack()).isEqualTo(WhichPack.of(2));
        Condition upTo = new Condition.CellsUpTo(45.0, new Condition.Excess(true, 12.0, TEN, 25.0));
        PlainCheck unless = PlainCheck.unless(() -> upTo, HELD, 12.0, TEN, Unit.AMPERE);
        assertThat(unless.isNever()).isFalse();
        assertThat(unless.finding().temperatureC()).hasValue(25.0);
        assertThat(unless.finding().condition()).contains(upTo);
    }

    @Test
    void alikeIsWhatDiffersInNothingButTheTemperatureOfTheCells() {
        assertThat(HELD.isAlike(HELD.withCells(0.0))).isTrue();
        assertThat(HELD.isAlike(HELD.ofPack(WhichPack.of(1)))).isFalse();
        assertThat(
                        HELD.isAlike(
                                new Held(
                                        Topic.PACK_DRAW_OVER,
                                        HELD.setting(),
                                        HELD.against(),
                                        WhichPack.WHOLE,
                                        25.0)))
                .isFalse();
        assertThat(
                        HELD.isAlike(
                                new Held(
                                        HELD.topic(),
                                        Optional.empty(),
                                        HELD.against(),
                                        WhichPack.WHOLE,
                                        25.0)))
                .isFalse();
        assertThat(
                        HELD.isAlike(
                                new Held(
                                        HELD.topic(),
                                        HELD.setting(),
                                        ConstraintId.MAIN_WIRE,
                                        WhichPack.WHOLE,
                                        25.0)))
                .isFalse();
    }

    /** A pack has its number before the name of the constraint, or of the setting without one. */
    @Test
    void aFindingIsNamedByWhatItIsHeldAgainstOrElseByItsSetting() {
        assertThat(HELD.finding().build().id())
                .isEqualTo("pack-return-over:" + ConstraintId.VOLTAGE_CEILING.key());
        assertThat(HELD.ofPack(WhichPack.of(2)).finding().build().id())
                .isEqualTo("pack-return-over:pack-2:" + ConstraintId.VOLTAGE_CEILING.key());
        assertThat(
                        Finding.of(Topic.THIN_MARGIN, ConstraintId.VOLTAGE_CEILING.signal())
                                .about(LimitId.SPEED_CAP)
                                .build()
                                .id())
                .isEqualTo("thin-margin:speed-cap");
    }

    @Test
    void aSpeedThatIsNeverReachedIsNotTold() {
        assertThat(HELD.finding().atSpeed(7.0).build().speed()).hasValue(7.0);
        assertThat(HELD.finding().atSpeed(Double.POSITIVE_INFINITY).build().speed()).isEmpty();
    }

    private static PlainCheck plain(double value, double limit) {
        return PlainCheck.always(HELD, value, limit, Unit.AMPERE);
    }

    private static ChargeCheck full(DoubleUnaryOperator permitted) {
        return check(permitted, ChargeCheck.Harm.FULL, () -> false);
    }

    private static ChargeCheck empty(DoubleUnaryOperator permitted) {
        return check(permitted, ChargeCheck.Harm.EMPTY, () -> false);
    }

    /** 10 A flow at every charge. */
    private static ChargeCheck check(
            DoubleUnaryOperator permitted, ChargeCheck.Harm harm, BooleanSupplier mended) {
        double[] flows = {TEN, TEN, TEN};
        double[] limits = {
            permitted.applyAsDouble(0.0), permitted.applyAsDouble(0.5), permitted.applyAsDouble(1.0)
        };
        return new ChargeCheck(
                HELD,
                CHARGES,
                flows,
                limits,
                new ChargeCheck.Course(charge -> TEN, permitted),
                harm,
                mended,
                check -> check.held().finding().build());
    }
}
