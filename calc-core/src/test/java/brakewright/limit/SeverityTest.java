package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hand-worked. */
@Tag("law")
class SeverityTest {

    @ParameterizedTest(name = "{0} of {1}")
    @CsvSource({
        "0, 10, -1",
        "5, 10, -0.5",
        "10, 10, 0",
        "20, 10, 0.5",
        "10, 0, 1",
        "0, 0, 0",
        "5, Infinity, -1"
    })
    void itIsTheExcessAsAShareOfTheGreater(double value, double limit, double severity) {
        assertThat(Severity.of(value, limit)).isCloseTo(severity, within(1e-15));
        assertThat(Severity.isExceeded(value, limit)).isEqualTo(severity > 0.0);
    }

    /** Worksheets carry these words, which are never changed. */
    @Test
    void signalWordsKeepTheirNames() {
        assertThat(Signal.values())
                .extracting(Signal::key)
                .containsExactly("danger", "warning", "caution", "notice");
    }

    /** One in 10^12 is rounding, two are not. */
    @Test
    void whatDiffersByRoundingAloneIsEqual() {
        assertThat(Severity.excess(1e12, 1e12 - 1.0)).isZero();
        assertThat(Severity.excess(1e12, 1e12 + 1.0)).isZero();
        assertThat(Severity.excess(1e12, 1e12 - 2.0)).isEqualTo(2.0);
        assertThat(Severity.excess(1e12, 1e12 + 2.0)).isEqualTo(-2.0);
        assertThat(Severity.isExceeded(1e12, 1e12 - 1.0)).isFalse();
    }
}
