package brakewright.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import brakewright.spec.Input;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** One symbol and one wording for every input. */
@Tag("law")
class NotationTest {

    private static Notation of(Reading reading) {
        Term term = reading.of(1.0);
        return new Notation(term.symbol(), term.meaning(), term.unit());
    }

    @Test
    void whatIsReadInAnotherWayIsWrittenInAnotherWay() {
        for (Reading reading : Reading.values()) {
            Origin.Given from = (Origin.Given) reading.of(1.0).origin();
            if (from.input() != Input.SETTINGS_LOW_VOLTAGE_TAPER) {
                assertThat(of(reading).meaning()).isNotEqualTo(Notation.of(from.input()).meaning());
            }
            for (Reading other : Reading.values()) {
                assertThat(of(reading).equals(of(other))).isEqualTo(reading == other);
            }
        }
    }

    /** A taper is a pair, and told as its two ends alone. */
    @Test
    void whatStandsInNoFormulaHasNoSymbol() {
        for (Input input :
                new Input[] {
                    Input.SETTINGS_LOW_VOLTAGE_TAPER, Input.RIDER_STANCE, Input.WIRING_WIRE
                }) {
            assertThatThrownBy(() -> Notation.of(input)).hasMessageContaining(input.key());
        }
    }
}
