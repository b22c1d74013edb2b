package brakewright.cli.text;

import brakewright.buildfile.Printable;

/** Words in comma-separated values, which people open in spreadsheets. */
final class CsvText {

    /**
     * What makes a spreadsheet take a field for a formula, in either width. Tabs and line ends,
     * which do so too, are shown escaped.
     */
    private static final String SIGNS = "=+-@\uff1d\uff0b\uff0d\uff20";

    private CsvText() {}

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
