package brakewright.cli.html;

import brakewright.buildfile.internal.Printable;
import brakewright.cli.chart.Chart;
import brakewright.cli.chart.Theme;
import brakewright.cli.html.generated.JtereportGenerated;
import brakewright.cli.report.Report;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Writes a document as HTML. */
public final class HtmlText {

    private static final Pattern NUMBER =
            Pattern.compile("[-−+]?[0-9].{0,15}|-|none|gone|not set|any|never");

    /** Between a number and what may be its unit. */
    private static final Pattern UNIT = Pattern.compile("(?<=[0-9]) (?=[%°A-Za-z])");

    /** Our own choice: what is longer is broken rather than scrolled for. */
    private static final int SHORT = 22;

    /** Our own choice: longer than any word of ours, such as a key of a build file. */
    private static final Pattern LONG_WORD = Pattern.compile("[^\\s-]{36}");

    private int charts;

    private HtmlText() {}

    /**
     * Writes a document.
     *
     * @param report the document
     * @return a file that needs nothing beside it
     */
    public static String of(Report report) {
        StringOutput page = new StringOutput();
        JtereportGenerated.render(
                new OwaspHtmlTemplateOutput(page), null, report, new HtmlText(), style());
        return page.toString();
    }

    /**
     * Draws a chart.
     *
     * @param chart the chart
     * @return an element whose parts have names that no other chart of the page has
     */
    public String drawn(Chart chart) {
        charts++;
        return chart.svg("chart-" + charts);
    }

    /**
     * Replaces what cannot be shown.
     *
     * @param text any text
     * @return the text without what moves a cursor or turns the direction of reading
     */
    public String shown(String text) {
        return Printable.shownBut(text, "\n");
    }

    /**
     * Replaces what cannot be shown, and keeps a number on the line of its unit.
     *
     * @param text a sentence, which nobody copies into a build file
     * @return the text with a blank that does not break before each unit
     */
    public String told(String text) {
        return UNIT.matcher(shown(text)).replaceAll("\u00a0");
    }

    /**
     * Returns how a column stands.
     *
     * @param rows of the table
     * @param column which one
     * @return at its right where every cell that is not empty is short and has a digit at its
     *     beginning, on one line where each is short, broken within words where one is too long for
     *     any column; null for the usual way, so that nothing is written
     */
    public @Nullable String columnStyle(List<List<String>> rows, int column) {
        List<String> cells =
                rows.stream().map(row -> row.get(column)).filter(cell -> !cell.isEmpty()).toList();
        if (column > 0 && cells.stream().allMatch(cell -> NUMBER.matcher(cell).matches())) {
            return "n";
        }
        if (cells.stream().allMatch(cell -> cell.length() <= SHORT)) {
            return "s";
        }
        return cells.stream().anyMatch(HtmlText::hasLongWord) ? "l" : null;
    }

    /**
     * Returns how the head of a column stands.
     *
     * @param head what stands there
     * @param rows of the table
     * @param column which one
     * @return as its column does; broken within a word where one is too long for any column
     */
    public @Nullable String headStyle(String head, List<List<String>> rows, int column) {
        return hasLongWord(head) ? "l" : columnStyle(rows, column);
    }

    private static boolean hasLongWord(String text) {
        return LONG_WORD.matcher(text).find();
    }

    private static String style() {
        try (InputStream sheet = HtmlText.class.getResourceAsStream("report.css")) {
            if (sheet == null) {
                throw new IllegalStateException("report.css is missing from the program");
            }
            return Theme.css()
                    + new String(sheet.readAllBytes(), StandardCharsets.UTF_8)
                            .replaceAll("\\s*\\n\\s*", "");
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
