package brakewright.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Makes a table narrower: first by what is blank in all of its rows, then by words that go on below
 * in their own column. Numbers keep their line.
 */
final class NarrowRows {

    /** Columns that stand closer are told as one. */
    private static final int GAP = 2;

    /** A cell goes on below at a blank, but not within {@code 20 to 60 °C}. */
    private static final Pattern BREAK =
            Pattern.compile("(?<!to)(?: (?!to [-0-9])(?![%°A-Za-z])|(?<![0-9]) (?!to [-0-9]))");

    private NarrowRows() {}

    /**
     * Takes columns of blanks out of the widest gap, one after another, as long as a row is too
     * wide; between two columns of the table a blank stays, and rows stay aligned. Where that does
     * not do, words of the last column go on below in that column, and if need be those of the
     * first.
     *
     * @param rows without colours; of one alone only gaps are taken, and where all have one column
     *     only they stay as they are
     * @param width that they should fit into
     * @return the rows, more of them where words go on below; some may still be too wide
     */
    static List<String> of(List<String> rows, int width) {
        int tooMuch = widest(rows) - width;
        if (tooMuch <= 0) {
            return List.copyOf(rows);
        }
        List<Column> columns = columns(rows);
        if (columns.size() < 2) {
            return List.copyOf(rows);
        }
        for (int widest = widestGap(columns); tooMuch > 0 && widest > 0; tooMuch--) {
            columns.set(widest, columns.get(widest).closer());
            widest = widestGap(columns);
        }
        if (rows.size() < 2) {
            return joined(columns, rows.size());
        }
        for (int wordy = wordiest(columns); tooMuch > 0 && wordy >= 0; tooMuch--) {
            columns.set(wordy, columns.get(wordy).narrower());
            wordy = wordiest(columns);
        }
        return joined(columns, rows.size());
    }

    /**
     * Returns what stands in each column of each row.
     *
     * @param rows without colours
     * @return the cells without blanks around them; a bar between columns is left out
     */
    static List<List<String>> cells(List<String> rows) {
        List<Column> columns =
                columns(rows).stream()
                        .filter(
                                column ->
                                        column.cells().stream()
                                                .anyMatch(cell -> !cell.text().matches("\\|?")))
                        .toList();
        List<List<String>> cells = new ArrayList<>();
        for (int row = 0; row < rows.size(); row++) {
            List<String> line = new ArrayList<>();
            for (Column column : columns) {
                line.add(column.cells().get(row).text().replace("|", "").strip());
            }
            cells.add(line);
        }
        return cells;
    }

    /** Where the widest gap of two blanks or more is, the indent apart; 0 where there is none. */
    private static int widestGap(List<Column> columns) {
        int best = 0;
        for (int i = 1; i < columns.size(); i++) {
            int most = best == 0 ? 1 : columns.get(best).gap();
            if (columns.get(i).gap() > most) {
                best = i;
            }
        }
        return best;
    }

    /**
     * Which column goes on below: the last, then the first, then what can be made narrowest most;
     * -1 where a word would have to be broken.
     */
    private static int wordiest(List<Column> columns) {
        int best = columns.size() - 1;
        if (best < 0 || columns.get(best).slack() > 0) {
            return best;
        }
        best = 0;
        for (int i = 1; i < columns.size() && columns.get(0).slack() == 0; i++) {
            best = columns.get(i).slack() > columns.get(best).slack() ? i : best;
        }
        return columns.get(best).slack() > 0 ? best : -1;
    }

    private static List<Column> columns(List<String> rows) {
        List<Column> columns = new ArrayList<>();
        int end = 0;
        int begin = 0;
        for (int place = 0; place <= widest(rows); place++) {
            if (!isBlank(rows, place)) {
                continue;
            }
            int next = place;
            while (next < widest(rows) && isBlank(rows, next)) {
                next++;
            }
            boolean isGap = next - place >= GAP || next >= widest(rows);
            if (isGap && place > begin) {
                columns.add(Column.of(rows, end, begin, place));
                end = place;
            }
            begin = isGap || place == begin ? next : begin;
            place = Math.max(place, next - 1);
        }
        return columns;
    }

    private static List<String> joined(List<Column> columns, int rows) {
        List<String> joined = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            int height = 1;
            for (Column column : columns) {
                height = Math.max(height, column.cells().get(row).lines(column.width()).size());
            }
            for (int line = 0; line < height; line++) {
                StringBuilder text = new StringBuilder();
                for (Column column : columns) {
                    List<String> cell = column.cells().get(row).lines(column.width());
                    text.append(" ".repeat(column.gap()));
                    text.append(line < cell.size() ? cell.get(line) : " ".repeat(column.width()));
                }
                joined.add(text.toString().stripTrailing());
            }
        }
        return joined;
    }

    private static int widest(List<String> rows) {
        return rows.stream().mapToInt(String::length).max().orElse(0);
    }

    private static boolean isBlank(List<String> rows, int column) {
        return rows.stream().allMatch(row -> column >= row.length() || row.charAt(column) == ' ');
    }

    /**
     * One column of a table.
     *
     * @param gap blanks before it
     * @param width of its widest line
     * @param fewest as how few letters it can be told without a word that is broken
     * @param cells of each row
     */
    private record Column(int gap, int width, int fewest, List<Cell> cells) {

        static Column of(List<String> rows, int before, int begin, int end) {
            List<Cell> cells = new ArrayList<>();
            int fewest = 0;
            for (String row : rows) {
                int from = Math.min(begin, row.length());
                String text = row.substring(from, Math.min(end, row.length()));
                Cell cell = Cell.of(text, end - begin, before == 0);
                cells.add(cell);
                fewest = Math.max(fewest, cell.fewest());
            }
            return new Column(begin - before, end - begin, fewest, cells);
        }

        Column closer() {
            return new Column(gap - 1, width, fewest, cells);
        }

        Column narrower() {
            return new Column(gap, width - 1, fewest, cells);
        }

        int slack() {
            return width - fewest;
        }
    }

    /**
     * What stands in one row of a column.
     *
     * @param text without blanks around it
     * @param indent before it, where it does not stand at the right
     * @param right whether it stands at the right
     * @param below how much further what goes on below is indented
     */
    private record Cell(String text, int indent, boolean right, int below) {

        static Cell of(String cell, int width, boolean isLabel) {
            String text = cell.strip();
            int indent = cell.length() - cell.stripLeading().length();
            boolean right = !isLabel && indent > 0 && cell.stripTrailing().length() == width;
            return new Cell(text, text.isEmpty() || right ? 0 : indent, right, isLabel ? 2 : 0);
        }

        int fewest() {
            int fewest = 0;
            int before = indent;
            for (String word : BREAK.split(text)) {
                fewest = Math.max(fewest, word.length() + before);
                before = indent + below;
            }
            return fewest;
        }

        /** Its lines, each as wide as the column. */
        List<String> lines(int width) {
            List<String> lines = new ArrayList<>();
            String line = "";
            int before = indent;
            for (String word : BREAK.split(text)) {
                if (!line.isEmpty() && before + line.length() + 1 + word.length() > width) {
                    lines.add(padded(line, before, width));
                    before = indent + below;
                    line = word;
                } else {
                    line += line.isEmpty() ? word : " " + word;
                }
            }
            lines.add(padded(line, before, width));
            return lines;
        }

        private String padded(String line, int before, int width) {
            String blanks = " ".repeat(width - before - line.length());
            return right ? blanks + line : " ".repeat(before) + line + blanks;
        }
    }
}
