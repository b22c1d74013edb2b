package brakewright.cli.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class UnitSystemTest {

    /** 1 mi = 1609.344 m and 1 ft = 0.3048 m, exact (international yard, 1959). */
    @Test
    void convertsByTheDefinitions() {
        assertThat(UnitSystem.SI.speedText(25 / 3.6)).isEqualTo("25.0 km/h");
        assertThat(UnitSystem.IMPERIAL.speedText(20 * 1609.344 / 3600)).isEqualTo("20.0 mi/h");
        assertThat(UnitSystem.SI.lengthText(12.34)).isEqualTo("12.3 m");
        assertThat(UnitSystem.IMPERIAL.lengthText(100 * 0.3048)).isEqualTo("100.0 ft");
    }

    @Test
    void roundsASpeedThatMustNotBeExceededDown() {
        assertThat(UnitSystem.SI.speedDown(10.0 / 3.6 - 1e-4)).isEqualTo("9.9 km/h");
    }

    @ParameterizedTest
    @EnumSource
    void convertsBack(UnitSystem units) {
        assertThat(units.metresPerSecond(units.speed(7.7))).isCloseTo(7.7, within(1e-15 * 10));
    }
}
