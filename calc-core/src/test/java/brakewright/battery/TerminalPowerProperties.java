package brakewright.battery;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

@Tag("law")
class TerminalPowerProperties {

    /** Two roundings of each way, amplified at most by the slope of the square root. */
    private static final double ROUNDING = 1e-12;

    @Property
    void aDrawnPowerLeadsBackToItsCurrent(
            @ForAll @Scale(9) @DoubleRange(min = 5.0, max = 130.0) double voltage,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double resistance,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 0.999) double share) {
        double current = share * shortCircuitHalf(voltage, resistance);
        double power = TerminalPower.drawnPower(voltage, resistance, current);
        double nearness = 1.0 / (1.0 - share);
        assertThat(TerminalPower.drawnCurrent(voltage, resistance, power))
                .isCloseTo(current, within(ROUNDING * nearness * nearness * current));
    }

    @Property
    void aDrawnCurrentLeadsBackToItsPower(
            @ForAll @Scale(9) @DoubleRange(min = 5.0, max = 130.0) double voltage,
            @ForAll @Scale(9) @DoubleRange(min = 1e-4, max = 1.0) double resistance,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 0.999999) double share) {
        double power = share * TerminalPower.greatestDrawnPower(voltage, resistance);
        double current = TerminalPower.drawnCurrent(voltage, resistance, power);
        assertThat(TerminalPower.drawnPower(voltage, resistance, current))
                .isCloseTo(power, within(ROUNDING * power));
    }

    @Property
    void theDrawnCurrentIsTheSmallerRoot(
            @ForAll @Scale(9) @DoubleRange(min = 5.0, max = 130.0) double voltage,
            @ForAll @Scale(9) @DoubleRange(min = 1e-4, max = 1.0) double resistance,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 0.999999) double share) {
        double power = share * TerminalPower.greatestDrawnPower(voltage, resistance);
        double current = TerminalPower.drawnCurrent(voltage, resistance, power);
        assertThat(current).isLessThanOrEqualTo(voltage / (2.0 * resistance) * (1.0 + ROUNDING));
    }

    /** Half the voltage is the limit; rounding must not turn it into "cannot be drawn". */
    @Property
    void theGreatestPowerItselfCanBeDrawn(
            @ForAll @Scale(9) @DoubleRange(min = 5.0, max = 130.0) double voltage,
            @ForAll @Scale(9) @DoubleRange(min = 1e-4, max = 1.0) double resistance) {
        double power = TerminalPower.greatestDrawnPower(voltage, resistance);
        double current = voltage / (2.0 * resistance);
        assertThat(TerminalPower.drawnCurrent(voltage, resistance, power))
                .isCloseTo(current, within(1e-6 * current));
    }

    @Property
    void moreThanTheGreatestPowerCannotBeDrawn(
            @ForAll @Scale(9) @DoubleRange(min = 5.0, max = 130.0) double voltage,
            @ForAll @Scale(9) @DoubleRange(min = 1e-4, max = 1.0) double resistance,
            @ForAll @Scale(9) @DoubleRange(min = 1.000001, max = 10.0) double excess) {
        double power = excess * TerminalPower.greatestDrawnPower(voltage, resistance);
        assertThat(TerminalPower.drawnCurrent(voltage, resistance, power)).isInfinite();
    }

    @Property
    void aReturnedPowerLeadsBackToItsCurrent(
            @ForAll @Scale(9) @DoubleRange(min = 5.0, max = 130.0) double voltage,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double resistance,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 500.0) double current) {
        double power = TerminalPower.returnedPower(voltage, resistance, current);
        assertThat(TerminalPower.returnedCurrent(voltage, resistance, power))
                .isCloseTo(current, within(ROUNDING * current));
    }

    @Property
    void aReturnedCurrentLeadsBackToItsPower(
            @ForAll @Scale(9) @DoubleRange(min = 5.0, max = 130.0) double voltage,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double resistance,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 20_000.0) double power) {
        double current = TerminalPower.returnedCurrent(voltage, resistance, power);
        assertThat(TerminalPower.returnedPower(voltage, resistance, current))
                .isCloseTo(power, within(ROUNDING * power));
    }

    private static double shortCircuitHalf(double voltage, double resistance) {
        return resistance == 0.0 ? 500.0 : Math.min(500.0, voltage / (2.0 * resistance));
    }
}
