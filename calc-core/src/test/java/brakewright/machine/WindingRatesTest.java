package brakewright.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.spec.MotorHeat;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * A winding and a case of 1 J/K each, 1 W/K from one to the other and 1.5 W/K from there to the
 * air. Without a current {@code w' = s − w} and {@code s' = w − 2.5·s}: half as warm a case makes
 * both fall with 0.5/s, a case twice as cold as the winding is warm with 3/s. Hand-worked.
 */
@Tag("law")
class WindingRatesTest {

    private static final Offset<Double> ROUNDING = within(1e-12);

    /** Copper that resists by 1 Ω more for every kelvin. */
    private static final double OHM_PER_KELVIN = 1.0 / 3.93e-3;

    private static final MotorHeat HEAT = heat(1.0);

    @Test
    void bothPartsOfARiseFallWithTheirOwnRate() {
        WindingRates rates = WindingRates.of(HEAT, 1.0, 0.0);
        assertThat(rates.slow()).isCloseTo(-0.5, ROUNDING);
        assertThat(rates.fast()).isCloseTo(-3.0, ROUNDING);
        assertThat(rates.slowly(7.0, 1.0)).isCloseTo(6.0, ROUNDING);
        assertThat(rates.fastly(7.0, 1.0)).isCloseTo(1.0, ROUNDING);
    }

    /**
     * 7 K/s in the winding and 1 K/s in the case are 6 K/s of the slow part and 1 K/s of the fast
     * one. In {@code 4 s·ln 2} they add up to {@code 6·(1 − 1/4)/0.5} and {@code (1 − 1/4096)/3}.
     */
    @Test
    void steadyHeatingAddsUpInBothParts() {
        assertThat(WindingRates.of(HEAT, 1.0, 0.0).heated(7.0, 1.0, 4.0 * Math.log(2.0)))
                .isCloseTo(9.0 + 4095.0 / 4096.0 / 3.0, ROUNDING);
    }

    /**
     * 6 K that fall with 0.5/s and 1 K with 3/s change alike at once; {@code 0.5·6 K·e^(−t/2)} and
     * {@code 3·6 K·e^(−3t)} after {@code ln 6/2.5} seconds.
     */
    @Test
    void theSlowPartRulesOnceTheFastOneHasDied() {
        WindingResponse even = cooling(7.0, 1.0);
        assertThat(even.isRuledSlowly(0.0)).isTrue();
        WindingResponse alike = cooling(12.0, -9.0);
        double changes = Math.log(6.0) / 2.5;
        assertThat(alike.amplitudes().slow()).isCloseTo(6.0, ROUNDING);
        assertThat(alike.amplitudes().fast()).isCloseTo(6.0, ROUNDING);
        assertThat(alike.isRuledSlowly(changes - 1e-9)).isFalse();
        assertThat(alike.isRuledSlowly(changes + 1e-9)).isTrue();
    }

    /**
     * What the winding holds is soon in both: a share of the heat capacities is left of its rise.
     */
    @Test
    void aVeryLightWindingLeavesItsHeatInTheCase() {
        WindingRates light = WindingRates.of(heat(1e-12), 1.0, 0.0);
        assertThat(light.slowly(1.0, 0.0)).isCloseTo(1e-12, within(1e-21));
    }

    /**
     * 10 kA heat the winding by 100 MW more for every kelvin. The case takes {@code s' = w} beside
     * {@code w' = 1e8/s·w}, a hundred millionth of the winding's rise.
     */
    @Test
    void theCaseHardlyFollowsAWindingThatRunsAway() {
        WindingRates rates = WindingRates.of(HEAT, OHM_PER_KELVIN, 1e4);
        assertThat(rates.slow()).isCloseTo(1e8, within(2.0));
        assertThat(rates.belowSlow()).isCloseTo(1e-8, within(1e-15));
        assertThat(rates.slowly(1.0, 0.0)).isCloseTo(1.0, ROUNDING);
    }

    private static WindingResponse cooling(double windingK, double caseK) {
        WindingHeat still = new WindingHeat(HEAT, 1.0, 120.0, 20.0, 0.0);
        return still.response(new WindingHeat.Temperatures(20.0 + windingK, 20.0 + caseK), 0.0);
    }

    private static MotorHeat heat(double windingHeatCapacity) {
        return new MotorHeat(1.0, 1.0 / 1.5, windingHeatCapacity, 1.0);
    }
}
