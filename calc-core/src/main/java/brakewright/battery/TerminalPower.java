package brakewright.battery;

import brakewright.numeric.Rounding;

/**
 * Power and current at the terminals of a voltage U behind a resistance R.
 *
 * <p>Drawing: {@code p = I·(U − I·R)}, of which the smaller root is the current that flows; more
 * than {@code U²/(4R)} cannot be drawn. Returning: {@code p = I·(U + I·R)}. The roots are written
 * without the difference of two nearly equal numbers, and hold for R = 0 too.
 *
 * <p>Source: Ohm's law; maximum power transfer, e.g. OpenStax College Physics, "Electromotive
 * Force: Terminal Voltage".
 */
public final class TerminalPower {

    private TerminalPower() {}

    /**
     * Returns the power that a drawn current delivers.
     *
     * @param voltage U [V]
     * @param resistance R [Ω]
     * @param current drawn [A]
     * @return the power at the terminals [W]
     */
    public static double drawnPower(double voltage, double resistance, double current) {
        return current * (voltage - current * resistance);
    }

    /**
     * Returns the power that pushes a current back.
     *
     * @param voltage U [V]
     * @param resistance R [Ω]
     * @param current returned [A]
     * @return the power at the terminals [W]
     */
    public static double returnedPower(double voltage, double resistance, double current) {
        return current * (voltage + current * resistance);
    }

    /**
     * Returns the greatest power that can be drawn.
     *
     * @param voltage U [V]
     * @param resistance R [Ω]
     * @return U²/(4R) [W]; infinite for R = 0
     */
    public static double greatestDrawnPower(double voltage, double resistance) {
        return voltage * voltage / (4.0 * resistance);
    }

    /**
     * Returns the current that delivers a power.
     *
     * @param voltage U [V]
     * @param resistance R [Ω]
     * @param power wanted [W], not negative
     * @return the smaller root [A]; infinite if no current delivers so much
     */
    public static double drawnCurrent(double voltage, double resistance, double power) {
        double discriminant = voltage * voltage - 4.0 * resistance * power;
        if (discriminant < -Rounding.OF_A_FORMULA * voltage * voltage) {
            return Double.POSITIVE_INFINITY;
        }
        return 2.0 * power / (voltage + Math.sqrt(Math.max(0.0, discriminant)));
    }

    /**
     * Returns the current that a returned power pushes back.
     *
     * @param voltage U [V]
     * @param resistance R [Ω]
     * @param power returned [W], not negative
     * @return the current [A]
     */
    public static double returnedCurrent(double voltage, double resistance, double power) {
        return 2.0 * power / (voltage + Math.sqrt(voltage * voltage + 4.0 * resistance * power));
    }
}
