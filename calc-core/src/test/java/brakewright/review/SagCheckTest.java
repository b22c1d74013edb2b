package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.Protection;
import brakewright.spec.RoundFigures;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** 10 A of a hard pull take 0.5 V from each of ten cells of 3 V to 4 V; hand-worked. */
class SagCheckTest {

    private static final OptionalDouble UNKNOWN = OptionalDouble.empty();
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

    private static Check check(double trip, Optional<Taper> taper) {
        Protection protection = new Protection(UNKNOWN, UNKNOWN, UNKNOWN, OptionalDouble.of(trip));
        Build build =
                RoundFigures.fed(RoundFigures.CELL, protection)
                        .withSettings(DRAWING.withLowVoltageTaper(taper));
        Limits limits = Limits.of(build);
        Operation trusted = Operation.of(build, limits).trusted(limits);
        return new SagCheck(build, limits, trusted, 25.0).check();
    }
}
