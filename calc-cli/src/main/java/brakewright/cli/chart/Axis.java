package brakewright.cli.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;

/**
 * One quantity along an edge of a chart.
 *
 * @param name what it is, lower case
 * @param unit in which it is told; empty for none
 * @param low at the beginning of the edge
 * @param high at its end, above the beginning
 * @param step between the ticks, positive
 */
public record Axis(String name, String unit, double low, double high, double step) {

    /** Our own choice: so many ticks are read without counting. */
    private static final int MOST_TICKS = 6;

    private static final double[] ROUND = {1.0, 2.0, 5.0, 10.0};

    /** Our own choice: more digits than those are read no more. */
    private static final int MORE_DIGITS = 2;

    /** Guards a tick at the very end from being lost to rounding [steps]. */
    private static final double ROUNDING = 1e-9;

    /** Checks the numbers. */
    public Axis {
        if (!(low < high) || Double.isInfinite(low) || Double.isInfinite(high) || !(step > 0.0)) {
            throw new IllegalArgumentException(
                    "an axis must go from a lower to a higher number, was " + low + " to " + high);
        }
    }

    /**
     * Ends exactly where the numbers end.
     *
     * @param name what it is, lower case
     * @param unit in which it is told; empty for none
     * @param low the lowest number
     * @param high the highest number; one as low as the lowest is moved up
     * @return an axis with round ticks
     */
    public static Axis exact(String name, String unit, double low, double high) {
        double top = high > low ? high : low + 1.0;
        return new Axis(name, unit, low, top, step(top - low));
    }

    /**
     * Ends at round numbers that hold all the others.
     *
     * @param name what it is, lower case
     * @param unit in which it is told; empty for none
     * @param numbers what it must hold; those that are not finite are left out
     * @return an axis with a tick at either end
     */
    public static Axis holding(String name, String unit, double... numbers) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double number : numbers) {
            if (Double.isFinite(number)) {
                low = Math.min(low, number);
                high = Math.max(high, number);
            }
        }
        if (low > high) {
            low = 0.0;
            high = 1.0;
        } else if (low == high) {
            high = low + Math.max(1.0, Math.abs(low));
        }
        double step = step(high - low);
        return new Axis(
                name,
                unit,
                step * Math.floor(low / step + ROUNDING),
                step * Math.ceil(high / step - ROUNDING),
                step);
    }

    /** A round step that leaves few ticks. */
    private static double step(double span) {
        double least = span / (MOST_TICKS - 1);
        double ten = Math.pow(10.0, Math.floor(Math.log10(least)));
        for (double round : ROUND) {
            if (round * ten >= least * (1.0 - ROUNDING)) {
                return round * ten;
            }
        }
        return 10.0 * ten;
    }

    /** The ticks, ascending. */
    double[] ticks() {
        long first = (long) Math.ceil(low / step - ROUNDING);
        long last = (long) Math.floor(high / step + ROUNDING);
        double[] ticks = new double[(int) Math.max(0, last - first + 1)];
        for (int i = 0; i < ticks.length; i++) {
            ticks[i] = step * (first + i);
        }
        return ticks;
    }

    /** Where a number lies: 0 at the beginning, 1 at the end. */
    double share(double number) {
        return (number - low) / (high - low);
    }

    /** A tick in as many digits as the step has. */
    String tick(double number) {
        int decimals = (int) Math.max(0.0, Math.ceil(-Math.log10(step) - ROUNDING));
        return written(number, decimals);
    }

    /** A number in one digit more than the ticks have, as a table tells it. */
    String fine(double number) {
        return fine(number, fineDecimals());
    }

    /** Places in so many digits, up to two more, that those that differ are told apart. */
    List<String> apart(double[] numbers) {
        int decimals = fineDecimals();
        int most = decimals + MORE_DIGITS;
        List<String> told = fine(numbers, decimals);
        while (decimals < most && told.stream().distinct().count() < differing(numbers)) {
            decimals++;
            told = fine(numbers, decimals);
        }
        return told;
    }

    private static long differing(double[] numbers) {
        return Arrays.stream(numbers).distinct().count();
    }

    private static List<String> fine(double[] numbers, int decimals) {
        return Arrays.stream(numbers).mapToObj(number -> fine(number, decimals)).toList();
    }

    private static String fine(double number, int decimals) {
        return Double.isFinite(number) ? written(number, decimals) : "";
    }

    private int fineDecimals() {
        return (int) Math.max(0.0, Math.ceil(1.0 - Math.log10(step) - ROUNDING));
    }

    /** What stands at the edge. */
    String title() {
        return unit.isEmpty() ? name : name + " [" + unit + "]";
    }

    /** A number with a real minus. */
    static String written(double number, int decimals) {
        String text =
                BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
        boolean isZero = text.chars().noneMatch(letter -> letter >= '1' && letter <= '9');
        return isZero && text.startsWith("-") ? text.substring(1) : text.replace('-', '\u2212');
    }
}
