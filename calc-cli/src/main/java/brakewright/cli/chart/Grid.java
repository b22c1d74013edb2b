package brakewright.cli.chart;

import java.util.List;

/**
 * The numbers of a chart as a table of text.
 *
 * @param heads of the columns, the first of them that of the rows' names
 * @param rows each as long as the heads
 */
public record Grid(List<String> heads, List<List<String>> rows) {

    /** Copies the texts. */
    public Grid {
        heads = List.copyOf(heads);
        rows = rows.stream().map(List::copyOf).toList();
    }
}
