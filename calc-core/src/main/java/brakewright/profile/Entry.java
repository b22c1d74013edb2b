package brakewright.profile;

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

    /** Far below any step, far above rounding [1]. */
    private static final double ROUNDING = 1e-9;

    /** Rounds a current to the side of less. */
    double currentDown(double current) {
        double coarse = Math.floor(current * COARSE + ROUNDING) / COARSE;
        return coarse >= SMALL ? coarse : Math.floor(current * FINE + ROUNDING) / FINE;
    }

    /** The steps of a current up to one: coarse ones, or fine ones below the first. */
    double[] currentsUpTo(double top, boolean isFine) {
        double perUnit = isFine ? FINE : COARSE;
        int count = (int) Math.floor(Math.max(0.0, top) * perUnit + ROUNDING);
        double[] steps = new double[count + 1];
        for (int i = 0; i <= count; i++) {
            steps[i] = i / perUnit;
        }
        return steps;
    }

    double voltageUp(double voltage) {
        return Math.ceil(voltage * COARSE - ROUNDING) / COARSE;
    }

    double voltageDown(double voltage) {
        return Math.floor(voltage * COARSE + ROUNDING) / COARSE;
    }

    /**
     * Rounds a positive speed to the side of less; one below a step to a tenth of it, and so on.
     */
    double speedDown(double speed) {
        double step = speedStep;
        while (Math.floor(speed / step + ROUNDING) < 1.0 && speed > 0.0) {
            step /= 10.0;
        }
        return Math.floor(speed / step + ROUNDING) * step;
    }
}
