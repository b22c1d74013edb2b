package brakewright.cli.report;

import brakewright.cli.chart.Chart;
import brakewright.cli.text.Piece;
import brakewright.cli.words.Initial;
import java.util.ArrayList;
import java.util.List;

/** Makes chapters of what a page of text tells. */
final class Chapters {

    private Chapters() {}

    /** Each heading begins one; what stands above the first has none. */
    static List<Chapter> of(List<Piece> pieces) {
        List<Chapter> chapters = new ArrayList<>();
        String heading = "";
        List<Piece> within = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece instanceof Piece.Heading next) {
                add(chapters, heading, within);
                heading = Initial.capital(next.text());
                within = new ArrayList<>();
            } else {
                within.add(piece);
            }
        }
        add(chapters, heading, within);
        return chapters;
    }

    /** The pictures of the first chapter stand before all else of it. */
    static List<Chapter> pictured(List<Chapter> chapters, List<Chart> charts) {
        List<Chapter> pictured = new ArrayList<>(chapters);
        List<Block> blocks = new ArrayList<>();
        charts.forEach(each -> blocks.add(new Block.Picture(each)));
        blocks.addAll(chapters.get(0).blocks());
        pictured.set(0, new Chapter(chapters.get(0).heading(), blocks));
        return pictured;
    }

    private static void add(List<Chapter> chapters, String heading, List<Piece> within) {
        if (!heading.isEmpty() || !within.isEmpty()) {
            chapters.add(new Chapter(heading, blocks(heading, within)));
        }
    }

    /**
     * A sentence right before a table is its caption; sentences with labels that follow each other
     * are told together.
     */
    private static List<Block> blocks(String heading, List<Piece> pieces) {
        List<Block> blocks = new ArrayList<>();
        List<Block.Entry> entries = new ArrayList<>();
        for (Piece piece : pieces) {
            if (piece instanceof Piece.Paragraph labelled
                    && !labelled.label().isEmpty()
                    && !labelled.text().isEmpty()) {
                entries.add(
                        new Block.Entry(
                                labelled.label().replaceFirst(":$", ""),
                                Gravity.ofLabel(labelled.label()),
                                labelled.text()));
                continue;
            }
            if (!entries.isEmpty()) {
                blocks.add(new Block.Entries(entries));
                entries = new ArrayList<>();
            }
            if (piece instanceof Piece.Paragraph plain) {
                blocks.add(new Block.Sentences(Initial.capital(plain.label() + plain.text())));
            } else if (piece instanceof Piece.Items items) {
                blocks.add(new Block.Items(items.sentences()));
            } else if (piece instanceof Piece.Verbatim lines) {
                blocks.add(new Block.Copy(lines.lines()));
            } else if (piece instanceof Piece.Rows rows) {
                table(heading, rows, blocks);
            }
        }
        if (!entries.isEmpty()) {
            blocks.add(new Block.Entries(entries));
        }
        return blocks;
    }

    private static void table(String heading, Piece.Rows rows, List<Block> blocks) {
        List<List<String>> cells = rows.cells();
        if (cells.size() == 1 && cells.get(0).size() == 1) {
            blocks.add(new Block.Sentences(cells.get(0).get(0)));
            return;
        }
        String caption = heading;
        int last = blocks.size() - 1;
        if (last >= 0 && blocks.get(last) instanceof Block.Sentences before) {
            caption = before.text();
            blocks.remove(last);
        }
        int heads = 0;
        while (heads < cells.size() - 1 && isHead(cells, heads)) {
            heads++;
        }
        List<String> head = new ArrayList<>();
        for (int column = 0; heads > 0 && column < cells.get(0).size(); column++) {
            StringBuilder words = new StringBuilder();
            for (int row = 0; row < heads; row++) {
                String word = cells.get(row).get(column);
                words.append(words.isEmpty() || word.isEmpty() ? "" : " ").append(word);
            }
            head.add(words.toString());
        }
        blocks.add(
                new Block.Table(
                        Initial.capital(caption), head, cells.subList(heads, cells.size())));
    }

    /**
     * A row that names columns has no number but charges, and is followed by one that has; or it
     * does not name itself.
     */
    private static boolean isHead(List<List<String>> cells, int row) {
        List<String> line = cells.get(row);
        return namesItself(line) || (hasNoNumber(line) && !hasNoNumber(cells.get(row + 1)));
    }

    private static boolean namesItself(List<String> line) {
        return line.get(0).startsWith("charge")
                || line.get(0).startsWith("speed [")
                || (hasNoNumber(line) && line.get(0).isEmpty());
    }

    private static boolean hasNoNumber(List<String> line) {
        return line.stream().skip(1).allMatch(cell -> cell.chars().noneMatch(Character::isDigit));
    }
}
