package brakewright.spec;

/**
 * How a cell's resistance goes on rising when a pull lasts longer than the pulse its resistance is
 * given for.
 *
 * @param rise the resistance of an endless pull exceeds that of a 10 s pulse by this share [1],
 *     from 0 to 5
 * @param timeConstant with which it rises [s], positive
 */
public record Relaxation(double rise, double timeConstant) {

    /**
     * Validates the rise.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Relaxation {
        Require.within("sustained rise of resistance", rise, 0.0, 5.0, "");
        Require.positive("relaxation time", timeConstant, "s");
    }
}
