package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.Limits;
import brakewright.powertrain.ElectricBrake;
import brakewright.spec.Build;
import brakewright.spec.RoundFigures;
import brakewright.spec.Taper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** 4 A raise the pack's 30 V to 40 V by 2 V; hand-worked. */
@Tag("law")
class TaperReachTest {

    private static final Build BUILD =
            RoundFigures.vehicle().withSettings(RoundFigures.set(0.0, 20.0, 4.0, 4.0));

    @Test
    void aTaperWeakensTheBrakeFromWhereTheWholeCurrentReachesItsBeginning() {
        assertThat(TaperReach.from(BUILD, set(), new Taper(36.0, 44.0)).orElseThrow())
                .isCloseTo(0.4, within(1e-8));
    }

    @Test
    void aTaperAboveAllThatThePackReachesWeakensNothing() {
        assertThat(TaperReach.from(BUILD, set(), new Taper(42.5, 50.0))).isEmpty();
    }

    @Test
    void aTaperThatBeginsBelowTheEmptyPackWeakensTheBrakeThroughout() {
        assertThat(TaperReach.from(BUILD, set(), new Taper(31.0, 50.0))).hasValue(0.0);
    }

    private static ElectricBrake set() {
        return Operation.of(BUILD, Limits.of(BUILD)).brake();
    }
}
