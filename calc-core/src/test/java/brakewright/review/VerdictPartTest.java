package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.limit.BrakingTime;
import brakewright.limit.ConstraintId;
import brakewright.limit.Signal;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Which conditions a part of a verdict keeps; all are made up. */
class VerdictPartTest {

    /** What the maker of the cells and the protection say. */
    private static final Set<ConstraintId> OF_THE_PACK =
            EnumSet.of(
                    ConstraintId.CELL_CHARGE_RATING,
                    ConstraintId.CELL_CHARGE_RATING_AT_CHARGE,
                    ConstraintId.CELL_DISCHARGE_RATING,
                    ConstraintId.VOLTAGE_CEILING,
                    ConstraintId.VOLTAGE_FLOOR,
                    ConstraintId.PROTECTION_CHARGE_TRIP,
                    ConstraintId.REGEN_OVERSHOOT,
                    ConstraintId.PROTECTION_DISCHARGE_TRIP,
                    ConstraintId.PROTECTION_OVERVOLTAGE_TRIP,
                    ConstraintId.PROTECTION_UNDERVOLTAGE_TRIP,
                    ConstraintId.TEMPERATURE_WINDOW);

    @ParameterizedTest
    @EnumSource
    void everyConstraintCountsInOnePart(ConstraintId constraint) {
        Finding never = finding(constraint, new Condition.Never());
        Finding below = finding(constraint, below(0.9, 25.0));
        VerdictPart pack = VerdictPart.of(List.of(never, below), true);
        VerdictPart parts = VerdictPart.of(List.of(never, below), false);
        boolean isOfPack = OF_THE_PACK.contains(constraint);
        VerdictPart own = isOfPack ? pack : parts;
        assertThat(own.exceeded()).containsExactly(never);
        assertThat(own.conditions()).containsExactly(below(0.9, 25.0));
        assertThat(own.isWell()).isFalse();
        assertThat((isOfPack ? parts : pack).isWell()).isTrue();
    }

    @Test
    void whatIsHeldAgainstNoConstraintIsNoMatterOfThePack() {
        Finding fuse =
                Finding.of(Topic.FUSE_BREAKING_OVER, Signal.DANGER)
                        .unless(new Condition.Never())
                        .build();
        assertThat(VerdictPart.of(List.of(fuse), true).isWell()).isTrue();
        assertThat(VerdictPart.of(List.of(fuse), false).exceeded()).containsExactly(fuse);
    }

    @Test
    void aFindingWithoutAConditionLeavesAPartWell() {
        Finding told =
                Finding.of(Topic.THIN_MARGIN, Signal.CAUTION)
                        .against(ConstraintId.VOLTAGE_CEILING)
                        .build();
        assertThat(VerdictPart.of(List.of(told), true))
                .isEqualTo(new VerdictPart(List.of(), List.of()));
    }

    @Test
    void aPartWithOnlyConditionsOrOnlyExcessesIsNotWell() {
        Finding never = finding(ConstraintId.VOLTAGE_CEILING, new Condition.Never());
        Finding below = finding(ConstraintId.VOLTAGE_CEILING, below(0.9, 25.0));
        assertThat(VerdictPart.of(List.of(never), true).isWell()).isFalse();
        assertThat(VerdictPart.of(List.of(below), true).isWell()).isFalse();
    }

    @Test
    void theWholeHasTheExcessesAndTheStrictestConditions() {
        Finding never = finding(ConstraintId.GRIP, new Condition.Never());
        Finding strict = finding(ConstraintId.VOLTAGE_CEILING, below(0.8, 25.0));
        Finding loose = finding(ConstraintId.MAIN_WIRE, below(0.9, 25.0));
        List<Finding> all = List.of(loose, never, strict);
        assertThat(VerdictPart.of(all, Verdict.of(all)))
                .isEqualTo(new VerdictPart(List.of(never), List.of(below(0.8, 25.0))));
        Review review = new Review(Verdict.of(all), BRAKE, all, NO_BRAKING, 0.8);
        assertThat(review.all()).isEqualTo(VerdictPart.of(all, Verdict.of(all)));
        assertThat(review.pack()).isEqualTo(VerdictPart.of(List.of(strict), true));
        assertThat(review.parts()).isEqualTo(VerdictPart.of(List.of(loose, never), false));
    }

    @Test
    void theLowestOfTheChargesAtOneTemperatureIsKept() {
        assertOnly(below(0.8, 25.0), below(0.9, 25.0));
        assertBoth(below(0.8, 25.0), below(0.9, 40.0));
        assertBoth(below(0.8, 25.0), below(0.8, 25.0));
    }

    @Test
    void theHighestOfTheChargesAboveAtOneTemperatureIsKept() {
        assertOnly(above(0.3, 25.0), above(0.2, 25.0));
        assertBoth(above(0.3, 25.0), above(0.2, 0.0));
        assertBoth(above(0.3, 25.0), above(0.3, 25.0));
    }

    @Test
    void theWarmestOfTheLeastTemperaturesIsKept() {
        assertOnly(from(10.0, true), from(5.0, true));
        assertOnly(from(10.0, false), from(5.0, false));
        assertBoth(from(10.0, true), from(5.0, false));
        assertBoth(from(10.0, false), from(5.0, true));
        assertBoth(from(10.0, true), from(10.0, true));
    }

    @Test
    void theColdestOfTheGreatestTemperaturesIsKept() {
        assertOnly(upTo(40.0, true), upTo(45.0, true));
        assertOnly(upTo(40.0, false), upTo(45.0, false));
        assertBoth(upTo(40.0, true), upTo(45.0, false));
        assertBoth(upTo(40.0, true), upTo(40.0, true));
    }

    /** Cells that must be at 10 °C to take anything ask nothing more at 0 °C. */
    @Test
    void whatHoldsOfColderCellsThanArePermittedIsLeftOut() {
        assertOnly(from(10.0, true), below(0.9, 0.0));
        assertBoth(from(10.0, true), below(0.9, 10.0));
        assertBoth(from(10.0, true), below(0.9, 20.0));
        assertBoth(from(10.0, false), below(0.9, 0.0));
        assertOnly(from(10.0, false), above(0.2, 0.0));
        assertBoth(from(10.0, false), above(0.2, 10.0));
        assertBoth(from(10.0, false), above(0.2, 20.0));
        assertBoth(from(10.0, true), above(0.2, 0.0));
    }

    /** A pack that bears less warmth may be reached by it later; then both count. */
    @Test
    void theSoonestOfTheRidesAndTheLowestOfTheirTemperaturesAreKept() {
        assertOnly(ridden(600.0, 45.0), ridden(900.0, 45.0));
        assertOnly(ridden(600.0, 45.0), ridden(900.0, 50.0));
        assertOnly(ridden(600.0, 45.0), ridden(600.0, 50.0));
        assertBoth(ridden(600.0, 50.0), ridden(900.0, 45.0));
        assertBoth(ridden(600.0, 45.0), ridden(600.0, 45.0));
    }

    @Test
    void conditionsOfDifferentKindsStandBesideEachOther() {
        List<Condition> all =
                List.of(
                        ridden(600.0, 45.0),
                        upTo(45.0, true),
                        upTo(50.0, false),
                        from(0.0, true),
                        from(-20.0, false),
                        below(0.9, 25.0),
                        above(0.2, 25.0));
        assertThat(kept(all.toArray(Condition[]::new))).isEqualTo(all);
        assertBoth(above(0.5, 25.0), below(0.9, 25.0));
        assertBoth(above(0.9, 25.0), below(0.5, 25.0));
    }

    private static final BrakingTime NO_BRAKING =
            new BrakingTime(0.0, BrakingTime.Reason.HARD_BRAKE);

    private static final BrakeVerdict BRAKE =
            new BrakeVerdict(BrakeVerdict.Word.ENOUGH, 3.0, 2.0, 0.5, 25.0, 5.0, 3.0, 1.0);

    private static void assertOnly(Condition strict, Condition loose) {
        assertThat(kept(strict, loose)).containsExactly(strict);
        assertThat(kept(loose, strict)).containsExactly(strict);
    }

    private static void assertBoth(Condition one, Condition other) {
        assertThat(kept(one, other)).containsExactly(one, other);
        assertThat(kept(other, one)).containsExactly(other, one);
    }

    private static List<Condition> kept(Condition... conditions) {
        return VerdictPart.of(
                        Arrays.stream(conditions)
                                .map(each -> finding(ConstraintId.VOLTAGE_CEILING, each))
                                .toList(),
                        true)
                .conditions();
    }

    private static Finding finding(ConstraintId constraint, Condition condition) {
        return Finding.of(Topic.PACK_RETURN_OVER, constraint.signal())
                .against(constraint)
                .unless(condition)
                .build();
    }

    private static Condition below(double charge, double cellsC) {
        return new Condition.ChargeBelow(charge, 1.0, OptionalDouble.empty(), cellsC);
    }

    private static Condition above(double charge, double cellsC) {
        return new Condition.ChargeAbove(charge, 0.1, cellsC);
    }

    private static Condition from(double cellsC, boolean isReturned) {
        return new Condition.CellsFrom(cellsC, new Condition.Excess(isReturned, 10.0, 0.0, -10.0));
    }

    private static Condition upTo(double cellsC, boolean isReturned) {
        return new Condition.CellsUpTo(cellsC, new Condition.Excess(isReturned, 10.0, 0.0, 60.0));
    }

    private static Condition ridden(double time, double limitC) {
        return new Condition.RiddenUpTo(time, 6.0, limitC, 40.0, 55.0);
    }
}
