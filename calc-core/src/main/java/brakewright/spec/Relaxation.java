package brakewright.spec;

/**
 * How a cell's resistance goes on rising when a pull lasts longer than the pulse its resistance is
 * given for.
 *
 * @param rise by what share of the 10 s resistance at mid charge an endless pull exceeds it there
 *     [1], from 0 to 5
 * @param timeConstant with which it rises [s], positive
 * @param byCharge factor of the rise over charge state [1]; positive
 */
public record Relaxation(double rise, double timeConstant, Curve byCharge) {

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
     * A rise that is the same at every charge state.
     *
     * @param rise by what share of the 10 s resistance at mid charge an endless pull exceeds it [1]
     * @param timeConstant with which it rises [s]
     */
    public Relaxation(double rise, double timeConstant) {
        this(rise, timeConstant, Curve.constant(1.0));
    }
}
