package brakewright.formula;

/** Numbers in the wording of a term. */
public final class Rounded {

    private Rounded() {}

    /**
     * Writes a charge state in percent, to a tenth.
     *
     * @param charge the charge state [1]
     * @return the number, without a fraction of zero
     */
    public static String percent(double charge) {
        double tenths = Math.rint(1000.0 * charge) / 10.0;
        return tenths == Math.rint(tenths) ? Long.toString((long) tenths) : Double.toString(tenths);
    }

    /**
     * Writes a number to a few decimals.
     *
     * @param value the number
     * @param decimals how many, at the most
     * @return the number
     */
    public static String to(int decimals, double value) {
        double scale = Math.pow(10.0, decimals);
        return Double.toString(Math.rint(scale * value) / scale);
    }
}
