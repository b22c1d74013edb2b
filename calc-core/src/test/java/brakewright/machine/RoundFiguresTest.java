package brakewright.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.spec.CurrentBasis;
import brakewright.spec.Motor;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Hand-worked: a motor of 0.1 V·s/rad, 0.2 Ω at 20 °C, seven pole pairs and 1 mH. */
@Tag("law")
class RoundFiguresTest {

    private static final double ROUNDING = 1e-12;

    /** At 100 rad/s 0.1 Ω and 0.7 Ω are at right angles, and 10 V·0.2 Ω/(2·√3). */
    @Test
    void aPhaseHasAResistanceAndAReactance() {
        Motor motor =
                new Motor(
                        60.0 / (2.0 * Math.PI) / 0.1,
                        0.2,
                        7,
                        1e-3,
                        0.0,
                        0.0,
                        OptionalDouble.empty(),
                        120.0,
                        Optional.empty());
        MotorModel.Phase phase = new MotorModel(motor, CurrentBasis.PHASE_PEAK).phase(100.0, 20.0);
        assertThat(phase.impedanceSquare()).isCloseTo(0.5, within(ROUNDING));
        assertThat(phase.backEmfTimesResistance())
                .isCloseTo(1.0 / Math.sqrt(3.0), within(ROUNDING));
    }

    /** What has no temperature any more is lost, too. */
    @Test
    void aWindingIsLostFromWhereCopperMelts() {
        assertThat(winding(Copper.MELTING_C).isMolten()).isTrue();
        assertThat(winding(Double.NaN).isMolten()).isTrue();
        assertThat(winding(Math.nextDown(Copper.MELTING_C)).isMolten()).isFalse();
    }

    private static WindingHeat.Temperatures winding(double windingC) {
        return new WindingHeat.Temperatures(windingC, 20.0);
    }
}
