package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Climate;
import brakewright.spec.Effort;
import brakewright.spec.Protection;
import brakewright.spec.Relaxation;
import brakewright.spec.RoundFigures;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** 10 A of a hard pull take 0.5 V from each of ten cells of 3 V to 4 V; hand-worked. */
class SagCheckTest {

    private static final Settings DRAWING = RoundFigures.set(30.0, 0.0, 10.0, 10.0);

    /** 3.2 V are left of 3.7 V, at a charge of 0.7. */
    @Test
    void withoutATaperDrivingIsSafeAboveTheChargeAtWhichThePullMeetsTheTrip() {
        Check check = check(3.2, Optional.empty());
        assertThat(check.isNever()).isFalse();
        Finding finding = check.finding();
        assertThat(finding.value()).isEmpty();
        assertThat(finding.limit()).hasValue(32.0);
        assertThat(finding.charge().orElseThrow()).isCloseTo(0.7, within(1e-8));
        Condition.ChargeAbove above = (Condition.ChargeAbove) finding.condition().orElseThrow();
        assertThat(above.charge()).isCloseTo(0.7, within(1e-8));
        assertThat(above.lowestCharge()).isZero();
        assertThat(above.temperatureC()).isEqualTo(25.0);
    }

    /**
     * Down from 38 V the taper lets {@code (U − 32.6 V)/1.04 Ω} flow, which leave the cells 3.265 V
     * at {@code 32.6 V + 0.05 V·1.04/0.54}. It would have to end at 32.65 V.
     */
    @Test
    void aTaperThatEndsTooLateIsToldWithTheEndThatItNeeds() {
        Finding finding = check(3.265, Optional.of(new Taper(38.0, 32.6))).finding();
        assertThat(finding.value()).hasValue(32.6);
        assertThat(finding.limit().orElseThrow()).isCloseTo(32.65, within(1e-9));
        assertThat(finding.charge().orElseThrow())
                .isCloseTo(0.26 + 0.005 * 1.04 / 0.54, within(1e-8));
    }

    /** Full cells of 4 V are at 3.5 V. */
    @Test
    void aTripThatThePullMeetsWithFullCellsLeavesNoSafeCharge() {
        Check check = check(3.6, Optional.empty());
        assertThat(check.isNever()).isTrue();
        assertThat(check.finding().condition().orElseThrow()).isInstanceOf(Condition.Never.class);
    }

    @Test
    void aTripThatEmptyCellsDoNotMeetIsNotExceeded() {
        assertThat(check(2.49, Optional.empty()).isExceeded()).isFalse();
    }

    /** At 5 °C twice the resistance takes 1 V of 3.9 V, where 0.5 V of 3.4 V leave the same. */
    @Test
    void coldCellsMeetTheTripAtAHigherChargeAndWarmOnesAreNotAsked() {
        Build mild = resistingCold(2.9);
        assertThat(told(mild))
                .extracting(each -> each.temperatureC().orElseThrow())
                .containsOnly(25.0);
        List<Finding> told =
                told(mild.withUse(mild.use().withClimate(new Climate(20.0, 5.0, 35.0, 0.0, 20.0))));
        assertThat(told)
                .extracting(each -> each.temperatureC().orElseThrow())
                .containsExactly(25.0, 5.0);
        assertThat(told.get(0).charge().orElseThrow()).isCloseTo(0.4, within(1e-8));
        assertThat(told.get(1).charge().orElseThrow()).isCloseTo(0.9, within(1e-8));
    }

    /**
     * After 10 s and 60 s·ln 2 half of a rise by as much again is there, and 10 A take 0.75 V of
     * the 3 V of an empty cell: more than the trip at 2.3 V bears, which a pulse does not meet.
     * Whoever looks for a setting that moves the draw keeps it closed, no one else.
     */
    @Test
    void aLongPullMeetsATripThatAShortOneDoesNot() {
        double half = 10.0 + 60.0 * Math.log(2.0);
        Build brief =
                RoundFigures.fed(
                                Builds.relaxing(RoundFigures.CELL, new Relaxation(1.0, 60.0)),
                                undervoltage(2.3))
                        .withSettings(DRAWING);
        Build lasting = brief.withUse(brief.use().withEffort(new Effort(half, 10.0, 1.0, 0.0)));
        assertThat(told(brief)).isEmpty();
        assertThat(told(lasting))
                .singleElement()
                .satisfies(
                        each ->
                                assertThat(each.charge().orElseThrow())
                                        .isCloseTo(0.05, within(1e-8)));
        assertThat(about(brief, LimitId.PACK_DISCHARGE_CURRENT)).isNegative();
        assertThat(about(lasting, LimitId.PACK_DISCHARGE_CURRENT)).isPositive();
        assertThat(about(lasting, LimitId.LOW_VOLTAGE_TAPER)).isPositive();
        assertThat(about(lasting, LimitId.PACK_REGEN_CURRENT)).isNegative();
    }

    private static double about(Build build, LimitId setting) {
        return Evaluation.of(build, Set.of(setting)).severity();
    }

    private static List<Finding> told(Build build) {
        Limits limits = Limits.of(build);
        return Review.of(build, limits, Operation.of(build, limits)).findings().stream()
                .filter(each -> each.topic() == Topic.PROTECTION_BEFORE_TAPER)
                .toList();
    }

    /** Cells of 25 °C that are warmer at times. */
    private static Build resistingCold(double trip) {
        Build build = RoundFigures.fed(RoundFigures.resistingCold(2.0), undervoltage(trip));
        return build.withUse(build.use().withClimate(new Climate(20.0, 25.0, 35.0, 0.0, 20.0)))
                .withSettings(DRAWING);
    }

    private static Check check(double trip, Optional<Taper> taper) {
        Protection protection =
                Protection.UNKNOWN.withCellUndervoltageTrip(OptionalDouble.of(trip));
        Build build =
                RoundFigures.fed(RoundFigures.CELL, protection)
                        .withSettings(DRAWING.withLowVoltageTaper(taper));
        Limits limits = Limits.of(build);
        Operation trusted = Operation.of(build, limits).trusted(limits);
        return new SagCheck(build, limits, trusted, 25.0)
                .check(limits.battery().along(new double[] {0.0, 1.0}));
    }

    private static Protection undervoltage(double trip) {
        return Protection.UNKNOWN.withCellUndervoltageTrip(OptionalDouble.of(trip));
    }
}
