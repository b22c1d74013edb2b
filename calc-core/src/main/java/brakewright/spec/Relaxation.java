package brakewright.spec;

/**
 * How a cell's resistance rises while a current flows: up to the pulse that its resistance is given
 * for, and beyond it.
 *
 * @param rise by what share of the 10 s resistance at mid charge an endless pull exceeds it there
 *     [1], from 0 to 5
 * @param timeConstant with which it rises beyond the pulse [s], positive
 * @param byCharge factor of that rise over charge state [1]; positive
 * @param onset how the resistance comes about within the pulse
 */
public record Relaxation(double rise, double timeConstant, Curve byCharge, Onset onset) {

    /**
     * Validates the rise.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Relaxation {
        Require.within("sustained rise of resistance", rise, 0.0, 5.0, Unit.RATIO);
        Require.positive("relaxation time", timeConstant, Unit.SECOND);
        Require.positive("sustained rise by charge", byCharge.least(), Unit.RATIO);
    }

    /**
     * Returns when a multiple of the pulse resistance is there.
     *
     * @param multiple of it [1]
     * @param rise by what share of it an endless current exceeds it at that charge state [1]
     * @return the time since the current began [s]; 0 for what is there at once, infinite for what
     *     no current meets
     */
    public double reaches(double multiple, double rise) {
        if (multiple <= 1.0) {
            return onset.reaches(multiple);
        }
        double come = (multiple - 1.0) / rise;
        return come < 1.0
                ? Cell.PULSE - timeConstant * Math.log1p(-come)
                : Double.POSITIVE_INFINITY;
    }

    /**
     * A cell whose pulse resistance is there at once.
     *
     * @param rise by what share of the 10 s resistance at mid charge an endless pull exceeds it [1]
     * @param timeConstant with which it rises [s]
     * @param byCharge factor of the rise over charge state [1]
     */
    public Relaxation(double rise, double timeConstant, Curve byCharge) {
        this(rise, timeConstant, byCharge, Onset.AT_ONCE);
    }

    /**
     * A rise that is the same at every charge state, of a cell whose pulse resistance is there at
     * once.
     *
     * @param rise by what share of the 10 s resistance at mid charge an endless pull exceeds it [1]
     * @param timeConstant with which it rises [s]
     */
    public Relaxation(double rise, double timeConstant) {
        this(rise, timeConstant, Curve.constant(1.0));
    }
}
