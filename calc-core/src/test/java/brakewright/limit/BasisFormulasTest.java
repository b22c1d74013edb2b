package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.spec.CurrentBasis;
import org.junit.jupiter.api.Test;

class BasisFormulasTest {

    /** The effective value of a sine is 1/√2 of its peak. */
    @Test
    void onlyAnEffectiveCurrentHasAnotherPeak() {
        assertThat(BasisFormulas.peak(CurrentBasis.PHASE_RMS, "I")).isEqualTo("√2·I");
        assertThat(BasisFormulas.peak(CurrentBasis.PHASE_PEAK, "I")).isEqualTo("I");
    }
}
