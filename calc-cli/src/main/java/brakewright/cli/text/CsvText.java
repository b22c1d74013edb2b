package brakewright.cli.text;

import brakewright.buildfile.internal.Printable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;

/** Words and results in comma-separated values, which people open in spreadsheets. */
final class CsvText {

    /**
     * What makes a spreadsheet take a field for a formula, in either width. Tabs and line ends,
     * which do so too, are shown escaped.
     */
    private static final String SIGNS = "=+-@\uff1d\uff0b\uff0d\uff20";

    /** Assumption: our own choice; more than any input is known to, and than models agree to. */
    private static final MathContext DIGITS = new MathContext(6);

    private CsvText() {}

    /**
     * Writes a result to six significant digits.
     *
     * @param value the result
     * @return the number; nothing for one that is not finite
     */
    static String number(double value) {
        return Double.isFinite(value)
                ? Double.toString(new BigDecimal(value).round(DIGITS).doubleValue())
                : "";
    }

    /**
     * Writes a result that there may be.
     *
     * @param value the result; empty where there is none, as where a speed is never reached
     * @return the number, or nothing
     */
    static String number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : "";
    }

    /**
     * Writes a word that came from outside, so that it is seen and never evaluated.
     *
     * @param word any text that is no number
     * @return the text, behind an apostrophe where it would be a formula
     */
    static String field(String word) {
        String shown = Printable.shown(word);
        return !shown.isEmpty() && SIGNS.indexOf(shown.charAt(0)) >= 0 ? "'" + shown : shown;
    }
}
