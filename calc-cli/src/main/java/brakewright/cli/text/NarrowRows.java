package brakewright.cli.text;

import java.util.ArrayList;
import java.util.List;

/** Makes the rows of a table narrower by what is blank in all of them. */
final class NarrowRows {

    private NarrowRows() {}

    /**
     * Takes columns of blanks out of the widest gap, one after another, as long as a row is too
     * wide; between two columns of the table a blank stays, and rows stay aligned.
     *
     * @param rows without colours
     * @param width that they should fit into
     * @return the rows; some may still be too wide
     */
    static List<String> of(List<String> rows, int width) {
        List<StringBuilder> narrow = rows.stream().map(StringBuilder::new).toList();
        while (widest(narrow) > width) {
            int column = widestGap(narrow);
            if (column < 0) {
                break;
            }
            for (StringBuilder row : narrow) {
                if (column < row.length()) {
                    row.deleteCharAt(column);
                }
            }
        }
        List<String> told = new ArrayList<>();
        narrow.forEach(row -> told.add(row.toString()));
        return told;
    }

    /**
     * Where the widest gap of two blanks or more begins, the indent apart; -1 where there is none.
     */
    private static int widestGap(List<StringBuilder> rows) {
        int best = -1;
        int most = 1;
        int begin = indent(rows);
        for (int column = begin; column < widest(rows); column++) {
            if (!isBlank(rows, column)) {
                begin = column + 1;
            } else if (column - begin + 1 > most) {
                most = column - begin + 1;
                best = begin;
            }
        }
        return best;
    }

    private static int indent(List<StringBuilder> rows) {
        int column = 0;
        while (isBlank(rows, column) && column < widest(rows)) {
            column++;
        }
        return column;
    }

    private static int widest(List<StringBuilder> rows) {
        return rows.stream().mapToInt(StringBuilder::length).max().orElse(0);
    }

    private static boolean isBlank(List<StringBuilder> rows, int column) {
        return rows.stream().allMatch(row -> column >= row.length() || row.charAt(column) == ' ');
    }
}
