package brakewright.cli.chart;

/**
 * How much room letters take. Widths are those of a wide sans-serif face, so that a text is no
 * wider in most others.
 *
 * <p>Source: advance widths of DejaVu Sans 2.37 in thousandths of its size.
 */
final class Lettering {

    /** Size of all letters in a chart [units of the drawing]. */
    static final double SIZE = 12.5;

    /** How far letters reach above and below the line on which they stand, in sizes. */
    static final double ABOVE = 0.93;

    static final double BELOW = 0.25;

    /** Assumption: our own choice, for faces that are wider still. */
    private static final double SPARE = 1.03;

    private static final int FIRST = ' ';

    private static final int[] WIDTHS = {
        318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337, 636, 636,
        636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684, 686, 698,
        770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635, 611, 732,
        684, 989, 685, 611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635,
        634, 278, 278, 579, 278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592,
        525, 636, 337, 636, 838
    };

    /** No letter of the face is wider, and few are as wide. */
    private static final int WIDEST = 1000;

    private Lettering() {}

    /** The width of a text [units of the drawing]. */
    static double width(String text) {
        double sum = 0.0;
        for (int i = 0; i < text.length(); i++) {
            int place = text.charAt(i) - FIRST;
            sum += place >= 0 && place < WIDTHS.length ? WIDTHS[place] : WIDEST;
        }
        return SPARE * SIZE * sum / 1000.0;
    }

    /** As much of a text as there is room for. */
    static String fitted(String text, double room) {
        if (width(text) <= room) {
            return text;
        }
        int end = text.length();
        while (end > 0 && width(text.substring(0, end)) + width("…") > room) {
            end -= end > 1 && Character.isLowSurrogate(text.charAt(end - 1)) ? 2 : 1;
        }
        return text.substring(0, end).stripTrailing() + "…";
    }
}
