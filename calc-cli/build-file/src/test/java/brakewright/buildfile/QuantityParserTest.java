package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brakewright.assembly.Quantity;
import brakewright.buildfile.QuantityParser.NotAQuantity;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityParserTest {

    static List<ListedUnit> units() {
        return ListedUnit.all();
    }

    /** Factors are exact; the double next to one is allowed, no more. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("units")
    void takesEachUnitAtItsDefinition(ListedUnit unit) throws NotAQuantity {
        double one = QuantityParser.parse("1 " + unit.symbol(), unit.dimension()).value();
        double expected = unit.factor() + unit.offset();
        assertThat(one).isCloseTo(expected, within(Math.ulp(expected)));
        double zero = QuantityParser.parse("0 " + unit.symbol(), unit.dimension()).value();
        assertThat(zero).isCloseTo(unit.offset(), within(Math.ulp(unit.offset())));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("units")
    void needsNoBlankBeforeTheUnit(ListedUnit unit) throws NotAQuantity {
        assertThat(QuantityParser.parse("2.5" + unit.symbol(), unit.dimension()))
                .isEqualTo(QuantityParser.parse("2.5 " + unit.symbol(), unit.dimension()));
    }

    @Test
    void knowsAUnitOfEveryDimension() {
        assertThat(units().stream().map(ListedUnit::dimension).collect(Collectors.toSet()))
                .containsExactlyInAnyOrderElementsOf(Arrays.asList(Dimension.values()));
    }

    /** Fixed points of the scales: freezing and boiling water, and where both scales meet. */
    @ParameterizedTest
    @CsvSource({
        "32 °F, 0",
        "212 °F, 100",
        "-40 °F, -40",
        "-40 degF, -40",
        "273.15 K, 0",
        "293.15 K, 20",
        "0 K, -273.15"
    })
    void convertsTemperatures(String text, double celsius) throws NotAQuantity {
        assertThat(QuantityParser.parse(text, Dimension.TEMPERATURE).value())
                .isCloseTo(celsius, within(1e-13 * 273.15));
    }

    @ParameterizedTest
    @CsvSource({
        "9 °F, 5",
        "10 K, 10",
        "10 °C, 10",
    })
    void aDifferenceHasNoOffset(String text, double kelvin) throws NotAQuantity {
        assertThat(QuantityParser.parse(text, Dimension.TEMPERATURE_DIFFERENCE).value())
                .isCloseTo(kelvin, within(Math.ulp(kelvin)));
    }

    @ParameterizedTest
    @CsvSource({
        "1e3 mm, 1",
        "1E-3 km, 1",
        "+1 m, 1",
        ".5 m, 0.5",
        "5. m, 5",
        "-2 m, -2",
        "  1   m  , 1"
    })
    void readsNumbersAsTheyAreWritten(String text, double metres) throws NotAQuantity {
        assertThat(QuantityParser.parse(text, Dimension.LENGTH).value())
                .isCloseTo(metres, within(Math.ulp(metres)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "m",
                "1",
                "1 m m",
                "1 2 m",
                "1,5 m",
                "1,5m",
                "1 m ± 2,5 %",
                ",5 m",
                "1.5.5 m",
                "one m",
                "0x10 m",
                "1_000 m",
                "1 m ±",
                "1 m ± 10",
                "± 1 m",
                "1 m ± 1 m ± 1 m",
                "1e400 m",
                "Infinity m",
                "NaN m",
                "1 kg",
                "1 M",
                "- 1 m",
                "--1 m",
                "1 ± 1 m",
                "1 m ± 100 %",
                "1 m ± -1 m",
                "1 m ± 1 s"
            })
    void refusesWhatIsNoLength(String text) {
        assertThatThrownBy(() -> QuantityParser.parse(text, Dimension.LENGTH))
                .isInstanceOf(NotAQuantity.class)
                .hasMessageMatching("(?s).{8,}");
    }

    @ParameterizedTest
    @CsvSource({
        "68 mΩ ± 10 %, 0.068, 0.0068",
        "68 mohm +- 5 mohm, 0.068, 0.005",
        "68 mohm +/- 5000 uohm, 0.068, 0.005",
        "68mΩ±10%, 0.068, 0.0068",
        "-68 mΩ ± 10 %, -0.068, 0.0068",
        "68 mΩ ± 0 %, 0.068, 0"
    })
    void readsTolerances(String text, double value, double tolerance) throws NotAQuantity {
        Quantity quantity = QuantityParser.parse(text, Dimension.RESISTANCE);
        assertThat(quantity.value()).isCloseTo(value, within(2.0 * Math.ulp(value)));
        assertThat(quantity.tolerance()).isCloseTo(tolerance, within(2.0 * Math.ulp(0.0068)));
    }

    @Test
    void aToleranceOfATemperatureIsADifference() throws NotAQuantity {
        assertThat(QuantityParser.parse("68 °F ± 9 °F", Dimension.TEMPERATURE).tolerance())
                .isCloseTo(5.0, within(Math.ulp(5.0)));
        assertThatThrownBy(() -> QuantityParser.parse("20 °C ± 10 %", Dimension.TEMPERATURE))
                .isInstanceOf(NotAQuantity.class);
    }

    @ParameterizedTest
    @CsvSource({"50 %, 0.5", "0.5, 0.5", "12.5%, 0.125", "0, 0", "100 %, 1"})
    void readsRatios(String text, double ratio) throws NotAQuantity {
        assertThat(QuantityParser.parseRatio(text).value())
                .isCloseTo(ratio, within(Math.ulp(ratio)));
    }

    /** A percentage is the double next to it: a hundredth times 70 would not be 0.7. */
    @ParameterizedTest
    @CsvSource({"70 %, 0.7", "7 %, 0.07", "29 %, 0.29", "57 %, 0.57", "58 %, 0.58", "0.1 %, 0.001"})
    void aPercentageIsWhatTheDecimalFractionIs(String text, double ratio) throws NotAQuantity {
        assertThat(QuantityParser.parseRatio(text).value()).isEqualTo(ratio);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "%", "50 V", "1,5 %", "50 % %", "5 ± 1 V"})
    void refusesWhatIsNoRatio(String text) {
        assertThatThrownBy(() -> QuantityParser.parseRatio(text)).isInstanceOf(NotAQuantity.class);
    }
}
