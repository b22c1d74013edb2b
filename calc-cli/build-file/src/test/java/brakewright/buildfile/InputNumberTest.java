package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brakewright.spec.Input;
import org.junit.jupiter.api.Test;

class InputNumberTest {

    /** 203 lb are 203 times 0.45359237 kg by definition (international pound, 1959). */
    @Test
    void readsANumberInAnyUnitOfItsKind() throws BuildFileException {
        double mass = InputNumber.read("your weight", Input.RIDER_MASS, "203 lb");
        assertThat(mass).isCloseTo(203 * 0.45359237, within(Math.ulp(mass)));
    }

    @Test
    void tellsWhatIsNotPossibleUnderTheNameThatWasAsked() {
        double tooMuch = InputNumber.highest(Input.RIDER_MASS) + 1.0;
        assertThatThrownBy(() -> InputNumber.read("your weight", Input.RIDER_MASS, tooMuch + " kg"))
                .isInstanceOf(BuildFileException.class)
                .hasMessageContainingAll("your weight", "outside what is possible", "kg");
    }

    @Test
    void takesBothEndsOfWhatIsPossible() throws BuildFileException {
        for (double end :
                new double[] {
                    InputNumber.lowest(Input.RIDER_MASS), InputNumber.highest(Input.RIDER_MASS)
                }) {
            assertThat(InputNumber.read("", Input.RIDER_MASS, end + " kg")).isEqualTo(end);
        }
    }

    @Test
    void knowsCountsFromMeasures() {
        assertThat(InputNumber.isCount(Input.PACK_SERIES)).isTrue();
        assertThat(InputNumber.isCount(Input.RIDER_MASS)).isFalse();
    }
}
