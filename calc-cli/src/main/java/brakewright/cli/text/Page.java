package brakewright.cli.text;

import brakewright.buildfile.internal.Printable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Collects the lines of a text, no wider than its ink says. Rows that follow each other are one
 * table: where one of them is too wide, columns that are blank in all of them are taken out.
 */
final class Page {

    private static final char ESCAPE = '\u001b';
    private static final String OURS = ESCAPE + "\n";

    /** A line may break at a blank, but not between a number and its unit. */
    private static final Pattern BREAK = Pattern.compile(" (?![%°A-Za-z])|(?<![0-9]) ");

    private final List<String> lines = new ArrayList<>();
    private final List<String> rows = new ArrayList<>();
    private final List<List<String>> cellRows = new ArrayList<>();
    private final List<Piece> pieces = new ArrayList<>();
    private final Ink ink;
    private final int width;
    private boolean isApart;

    Page(Ink ink) {
        this.ink = ink;
        this.width = ink.columns();
    }

    /** Adds a line; one that is too long goes on below, indented alike. */
    Page line(String line) {
        String settled = settled(line).stripTrailing();
        if (!settled.startsWith(" ") || settled.indexOf(ESCAPE) >= 0) {
            endTable();
            told(settled);
            wrapped(settled);
        } else {
            if (!cellRows.isEmpty()) {
                endTable();
            }
            rows.add(settled);
        }
        return this;
    }

    /** Adds a row of a table whose columns may stand close together. */
    Page row(String line, List<String> cells) {
        if (ink.manuscript().isEmpty()) {
            return line(line);
        }
        if (!rows.isEmpty() || (!cellRows.isEmpty() && cellRows.get(0).size() != cells.size())) {
            endTable();
        }
        List<String> row =
                new ArrayList<>(cells.stream().map(cell -> settled(cell).strip()).toList());
        row.set(0, settled(cells.get(0)).stripTrailing());
        cellRows.add(row);
        return this;
    }

    /** Adds a row by the format of its table. */
    Page row(String format, Object... cells) {
        return row(
                String.format(Locale.ROOT, format, cells),
                Arrays.stream(cells).map(String::valueOf).toList());
    }

    /** Adds a line to copy, a little indented. */
    Page copied(String line) {
        if (ink.manuscript().isEmpty()) {
            return line("  " + line);
        }
        endTable();
        told(settled(line));
        return this;
    }

    private void wrapped(String line) {
        if (visibleLength(line) <= width) {
            put(line);
            return;
        }
        int indent = Math.min(line.length() - line.stripLeading().length(), width / 2);
        String start = line.substring(0, indent);
        for (String part : wrap(line.substring(indent), width - indent, width - indent)) {
            put(start + part.strip());
        }
    }

    private void told(String line) {
        if (ink.isHeading(line)) {
            pieces.add(new Piece.Heading(ink.words(line)));
        } else if (ink.manuscript().isPresent()) {
            List<String> lines = new ArrayList<>();
            if (!isApart
                    && !pieces.isEmpty()
                    && pieces.get(pieces.size() - 1) instanceof Piece.Verbatim before) {
                lines.addAll(before.lines());
                pieces.remove(pieces.size() - 1);
            }
            lines.add(line);
            pieces.add(new Piece.Verbatim(lines));
            isApart = false;
        }
    }

    private void endTable() {
        if (!cellRows.isEmpty()) {
            pieces.add(new Piece.Rows(List.copyOf(cellRows)));
            cellRows.clear();
        }
        if (ink.manuscript().isPresent() && !rows.isEmpty()) {
            pieces.add(new Piece.Rows(NarrowRows.cells(rows)));
        }
        List<String> table = NarrowRows.of(rows, width);
        rows.clear();
        table.forEach(this::wrapped);
    }

    /**
     * What a build file says cannot move the cursor: only colours and line ends of ours are kept.
     */
    private String settled(String line) {
        return ink.settle(Printable.shownBut(line, OURS));
    }

    private void put(String line) {
        lines.add(line.stripTrailing());
    }

    Page blank() {
        endTable();
        isApart = true;
        put("");
        return this;
    }

    /** Parts the rows of one table. */
    Page gap() {
        return ink.manuscript().isPresent() ? this : blank();
    }

    /** Adds sentences, each behind a dash. */
    Page list(List<String> sentences) {
        if (ink.manuscript().isPresent()) {
            endTable();
            pieces.add(new Piece.Items(sentences.stream().map(this::settled).toList()));
            return this;
        }
        sentences.forEach(each -> paragraph("  -", 4, each));
        return this;
    }

    /** Adds a sentence or a legend, a little indented; it is no row of a table. */
    Page note(String text) {
        return paragraph("", 2, text);
    }

    /**
     * Adds signs and what they mean, a little indented.
     *
     * @param text a sign of one letter, its meaning, the next sign and so on, parted by two spaces
     *     or more; what has no sign before it stands for itself
     */
    Page legend(String text) {
        if (ink.manuscript().isEmpty()) {
            return note(text);
        }
        endTable();
        String sign = "";
        for (String part : settled(text).split(" {2,}", -1)) {
            if (part.length() == 1) {
                sign = part;
            } else {
                pieces.add(new Piece.Paragraph(sign, part));
                sign = "";
            }
        }
        return this;
    }

    /**
     * Adds a paragraph behind a label, further lines indented alike. A line feed in it begins a new
     * line. A label wider than its column takes room from the first line.
     */
    Page paragraph(String heading, int labelWidth, String paragraph) {
        endTable();
        String label = settled(heading);
        if (ink.manuscript().isPresent()) {
            paragraph(label.strip(), settled(paragraph).strip());
            return this;
        }
        boolean isApart = label.isEmpty() || label.endsWith(" ");
        int begin = Math.max(labelWidth, visibleLength(label) + (isApart ? 0 : 1));
        String start = label + " ".repeat(begin - visibleLength(label));
        String indent = " ".repeat(labelWidth);
        for (String line : settled(paragraph).split("\n", -1)) {
            int first = Math.max(1, width - visibleLength(start));
            for (String part : wrap(line, first, width - labelWidth)) {
                put(start + part);
                start = indent;
            }
        }
        return this;
    }

    private void paragraph(String label, String paragraph) {
        if (ink.isHeading(paragraph)) {
            pieces.add(new Piece.Heading(ink.words(paragraph)));
        } else if (!label.isEmpty() || !paragraph.isEmpty()) {
            pieces.add(new Piece.Paragraph(label, paragraph));
        }
    }

    /** Adds what another page has collected. */
    Page all(Page other) {
        endTable();
        other.endTable();
        pieces.addAll(other.pieces);
        lines.addAll(other.lines);
        return this;
    }

    /** An empty page of the same ink. */
    Page another() {
        return new Page(ink);
    }

    int length() {
        endTable();
        return lines.size();
    }

    String text() {
        endTable();
        ink.manuscript().ifPresent(each -> each.add(pieces));
        StringBuilder text = new StringBuilder();
        lines.forEach(line -> text.append(line).append('\n'));
        return text.toString();
    }

    /** Breaks at blanks; within a word only where it is longer than a line. */
    private static List<String> wrap(String paragraph, int firstWidth, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int room = firstWidth;
        boolean begins = true;
        for (String word : BREAK.split(paragraph)) {
            if (!begins && visibleLength(line) + 1 + visibleLength(word) > room) {
                lines.add(line.toString());
                line.setLength(0);
                room = width;
                begins = true;
            }
            line.append(begins ? "" : " ").append(word);
            if (!begins) {
                continue;
            }
            begins = false;
            for (int end = endOf(line, room); end < line.length(); end = endOf(line, room)) {
                lines.add(line.substring(0, end));
                line.delete(0, end);
                room = width;
            }
        }
        lines.add(line.toString());
        return lines;
    }

    /** Where the letters that fit on a line end; a letter of two units stays whole. */
    private static int endOf(CharSequence line, int room) {
        int shown = 0;
        boolean inEscape = false;
        for (int i = 0; i < line.length(); i++) {
            char unit = line.charAt(i);
            inEscape = inEscape || unit == ESCAPE;
            shown += inEscape || Character.isLowSurrogate(unit) ? 0 : 1;
            inEscape = inEscape && unit != 'm';
            if (shown > room) {
                return i;
            }
        }
        return line.length();
    }

    /** How many columns a text takes; colours take none. */
    private static int visibleLength(CharSequence line) {
        int length = 0;
        boolean inEscape = false;
        for (int i = 0; i < line.length(); i++) {
            char unit = line.charAt(i);
            inEscape = inEscape || unit == ESCAPE;
            length += inEscape || Character.isLowSurrogate(unit) ? 0 : 1;
            inEscape = inEscape && unit != 'm';
        }
        return length;
    }
}
