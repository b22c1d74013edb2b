package brakewright.cli.words;

import static java.math.RoundingMode.HALF_UP;

import java.math.BigDecimal;
import java.util.Locale;

/** Writes numbers, always with a decimal point. */
public final class Numbers {

    /** Guards a number that is exact but for rounding errors from being cut by a whole unit. */
    private static final double ROUNDING = 1e-9;

    private Numbers() {}

    private static boolean isZero(String text) {
        return text.chars().noneMatch(letter -> letter >= '1' && letter <= '9');
    }

    /**
     * Writes a number to the nearest digit.
     *
     * @param value the number
     * @param decimals digits after the point
     * @return the text
     */
    public static String nearest(double value, int decimals) {
        String text = BigDecimal.valueOf(value).setScale(decimals, HALF_UP).toPlainString();
        return text.charAt(0) == '-' && isZero(text) ? text.substring(1) : text;
    }

    /**
     * Writes a limit, rounded down so that what is entered never exceeds it.
     *
     * @param value the limit, not negative
     * @param decimals digits after the point
     * @return the text
     */
    public static String down(double value, int decimals) {
        return nearest(floor(value, decimals), decimals);
    }

    /**
     * Returns whether a limit that is rounded down leaves nothing.
     *
     * @param value the limit, not negative
     * @param decimals digits after the point
     * @return true where it is written as zero
     */
    public static boolean isNothing(double value, int decimals) {
        return floor(value, decimals) == 0.0;
    }

    private static double floor(double value, int decimals) {
        double scale = Math.pow(10.0, decimals);
        return Math.floor(value * scale + ROUNDING * Math.abs(value * scale)) / scale;
    }

    /**
     * Writes a least value, rounded up.
     *
     * @param value the value
     * @param decimals digits after the point
     * @return the text
     */
    public static String up(double value, int decimals) {
        double scale = Math.pow(10.0, decimals);
        return nearest(
                Math.ceil(value * scale - ROUNDING * Math.abs(value * scale)) / scale, decimals);
    }

    /**
     * Writes a number of any size with four significant digits.
     *
     * @param value the number
     * @return the text
     */
    public static String significant(double value) {
        if (value == 0.0) {
            return "0";
        }
        if (Math.abs(value) >= 1e5 || Math.abs(value) < 1e-4) {
            return String.format(Locale.ROOT, "%.3e", value);
        }
        int decimals = Math.max(0, 3 - (int) Math.floor(Math.log10(Math.abs(value))));
        String text = nearest(value, decimals);
        if (text.indexOf('.') < 0) {
            return text;
        }
        int end = text.length();
        while (text.charAt(end - 1) == '0') {
            end--;
        }
        return text.substring(0, text.charAt(end - 1) == '.' ? end - 1 : end);
    }

    /**
     * Writes a charge state or share.
     *
     * @param share from 0 to 1
     * @return whole per cent, or one decimal where that says more
     */
    public static String percent(double share) {
        double percent = 100.0 * share;
        boolean whole = Math.abs(percent - Math.rint(percent)) < 0.05;
        return nearest(percent, whole ? 0 : 1) + " %";
    }

    /**
     * Writes a time in the unit that suits it.
     *
     * @param seconds the time [s]
     * @return the text
     */
    public static String time(double seconds) {
        if (seconds < 0.1) {
            double milliseconds = 1000.0 * seconds;
            return down(milliseconds, milliseconds < 10.0 ? 1 : 0) + " ms";
        }
        if (seconds < 120.0) {
            return nearest(seconds, seconds < 10.0 ? 1 : 0) + " s";
        }
        return nearest(seconds / 60.0, seconds < 600.0 ? 1 : 0) + " min";
    }
}
