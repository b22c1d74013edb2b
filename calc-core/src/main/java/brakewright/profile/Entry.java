package brakewright.profile;

import brakewright.numeric.Rounding;

/**
 * How finely a person enters settings: currents and voltages to a tenth, finer where they are
 * small, speeds to a whole unit.
 *
 * <p>Assumption: our own choice; controllers of this class take no finer values worth the name.
 *
 * @param speedStep the step of speeds [m/s]
 */
public record Entry(double speedStep) {

    /** Speeds to whole km/h. */
    public static final Entry METRIC = new Entry(1.0 / 3.6);

    /** Speeds to whole mi/h. */
    public static final Entry IMPERIAL = new Entry(0.44704);

    private static final double COARSE = 10.0;
    private static final double FINE = 100.0;

    /** Currents below this are entered more finely [A]. */
    private static final double SMALL = 1.0;

    /** Rounds a current to the side of less. */
    double currentDown(double current) {
        double coarse = Math.floor(current * COARSE + Rounding.OF_A_RESULT) / COARSE;
        return coarse >= SMALL ? coarse : Math.floor(current * FINE + Rounding.OF_A_RESULT) / FINE;
    }

    /** The steps of a current up to one: coarse ones, or fine ones below the first. */
    double[] currentsUpTo(double top, boolean isFine) {
        double perUnit = isFine ? FINE : COARSE;
        int count = (int) Math.floor(Math.max(0.0, top) * perUnit + Rounding.OF_A_RESULT);
        double[] steps = new double[count + 1];
        for (int i = 0; i <= count; i++) {
            steps[i] = i / perUnit;
        }
        return steps;
    }

    double voltageUp(double voltage) {
        return Math.ceil(voltage * COARSE - Rounding.OF_A_RESULT) / COARSE;
    }

    double voltageDown(double voltage) {
        return Math.floor(voltage * COARSE + Rounding.OF_A_RESULT) / COARSE;
    }

    /**
     * Rounds a positive speed to the side of less; one below a step to a tenth of it, and so on.
     */
    double speedDown(double speed) {
        double step = speedStep;
        while (Math.floor(speed / step + Rounding.OF_A_RESULT) < 1.0 && speed > 0.0) {
            step /= 10.0;
        }
        return Math.floor(speed / step + Rounding.OF_A_RESULT) * step;
    }
}
