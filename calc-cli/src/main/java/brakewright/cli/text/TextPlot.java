package brakewright.cli.text;

import brakewright.cli.words.Numbers;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** A small picture in letters: courses over a quantity, or a map. */
final class TextPlot {

    /** Narrow enough for the narrowest page. */
    static final int COLUMNS = 56;

    private static final int ROWS = 11;
    private static final int LABEL = 9;

    /**
     * A course.
     *
     * @param name what it is
     * @param mark how its points look, where all letters can be shown
     * @param plain likewise in ASCII
     * @param values one at each column; what is not finite is left out
     */
    record Course(String name, char mark, char plain, double[] values) {}

    private final Ink ink;
    private final Page page;

    TextPlot(Ink ink, Page page) {
        this.ink = ink;
        this.page = page;
    }

    /** Whether pictures are drawn in letters: a document has its own. */
    boolean isShown() {
        return ink.manuscript().isEmpty();
    }

    /** Where the columns stand between two ends. */
    static double[] columns(double from, double to) {
        double[] columns = new double[COLUMNS];
        for (int i = 0; i < COLUMNS; i++) {
            columns[i] = from + (to - from) * i / (COLUMNS - 1);
        }
        return columns;
    }

    /**
     * Draws courses; of two in one place the later is seen.
     *
     * @param title with the unit of what stands at the side
     * @param foot what the left and the right end are
     * @param courses one after another
     */
    void courses(String title, String[] foot, List<Course> courses) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Course course : courses) {
            for (double value : course.values()) {
                if (Double.isFinite(value)) {
                    low = Math.min(low, value);
                    high = Math.max(high, value);
                }
            }
        }
        if (!(low < high)) {
            return;
        }
        char[][] cells = blank(ROWS);
        for (Course course : courses) {
            for (int column = 0; column < COLUMNS; column++) {
                double value = course.values()[column];
                if (Double.isFinite(value)) {
                    int row = (int) Math.round((high - value) / (high - low) * (ROWS - 1));
                    cells[row][column] = ink.plain() ? course.plain() : course.mark();
                }
            }
        }
        String[] side = new String[ROWS];
        Arrays.fill(side, "");
        side[0] = Numbers.nearest(high, 1);
        side[ROWS / 2] = Numbers.nearest((high + low) / 2.0, 1);
        side[ROWS - 1] = Numbers.nearest(low, 1);
        List<String> legend = new ArrayList<>();
        for (Course course : courses) {
            legend.add((ink.plain() ? course.plain() : course.mark()) + " " + course.name());
        }
        draw(title, side, cells, foot, legend);
    }

    /**
     * Draws a map.
     *
     * @param title what is shown
     * @param side what each row is
     * @param cells what stands in each
     * @param foot what the left and the right end are
     * @param legend what the letters mean
     */
    void map(String title, String[] side, char[][] cells, String[] foot, List<String> legend) {
        draw(title, side, cells, foot, legend);
    }

    static char[][] blank(int rows) {
        char[][] cells = new char[rows][COLUMNS];
        for (char[] row : cells) {
            Arrays.fill(row, ' ');
        }
        return cells;
    }

    private void draw(
            String title, String[] side, char[][] cells, String[] foot, List<String> legend) {
        String edge = ink.plain() ? "|" : "│";
        page.blank();
        page.note(title);
        for (int row = 0; row < cells.length; row++) {
            page.line(
                    String.format(Locale.ROOT, "  %" + LABEL + "s ", side[row])
                            + edge
                            + new String(cells[row]));
        }
        String start = " ".repeat(LABEL + 3);
        page.line(start + (ink.plain() ? "+" : "└") + (ink.plain() ? "-" : "─").repeat(COLUMNS));
        page.line(
                start
                        + " "
                        + foot[0]
                        + " ".repeat(Math.max(1, COLUMNS - foot[0].length() - foot[1].length()))
                        + foot[1]);
        page.note(String.join("   ", legend));
    }
}
