package brakewright.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Lays texts side by side: a label, then columns as wide as their widest entry. */
public final class Columns {

    private static final int GAP = 2;

    private static final Pattern BREAK =
            Pattern.compile("(?<=[^0-9] )|(?<= )(?![%°A-Za-z])|(?<=-)");

    private final int[] widths;

    /**
     * Sets up columns.
     *
     * @param widths of all, the label first, without the gap between them
     */
    Columns(int... widths) {
        this.widths = widths.clone();
    }

    /**
     * Returns how many columns fit.
     *
     * @param page how wide the page is
     * @param widths of all that are wanted, the label first
     * @return how many of them, from the first, have room with the gaps between them
     */
    static int fitting(int page, List<Integer> widths) {
        int used = 0;
        int count = 0;
        while (count < widths.size() && used + widths.get(count) + GAP <= page + GAP) {
            used += widths.get(count) + GAP;
            count++;
        }
        return count;
    }

    /**
     * Lays out one row.
     *
     * @param cells the label first; one that is too wide is broken over several lines, and where it
     *     has a line end a line ends
     * @return one line or more
     */
    List<String> row(List<String> cells) {
        List<List<String>> broken = new ArrayList<>();
        int height = 1;
        for (int i = 0; i < cells.size(); i++) {
            int width = widths[i];
            broken.add(cells.get(i).lines().flatMap(part -> wrap(part, width).stream()).toList());
            height = Math.max(height, broken.get(i).size());
        }
        List<String> lines = new ArrayList<>();
        for (int line = 0; line < height; line++) {
            StringBuilder text = new StringBuilder();
            for (int i = 0; i < broken.size(); i++) {
                String part = line < broken.get(i).size() ? broken.get(i).get(line) : "";
                text.append(part).append(" ".repeat(widths[i] - part.length() + GAP));
            }
            lines.add(text.toString().stripTrailing());
        }
        return lines;
    }

    /**
     * Breaks at blanks and after hyphens, but not between a number and its unit, and within a word
     * only where it is wider than the column.
     *
     * @param text in one line
     * @param width of the column
     * @return its lines, none wider
     */
    public static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : BREAK.split(text)) {
            String rest = word;
            if (!line.isEmpty() && (line + rest).stripTrailing().length() > width) {
                lines.add(line.stripTrailing());
                line = "";
            }
            while (rest.stripTrailing().length() > width) {
                lines.add(rest.substring(0, width));
                rest = rest.substring(width);
            }
            line += rest;
        }
        lines.add(line.stripTrailing());
        return lines;
    }
}
