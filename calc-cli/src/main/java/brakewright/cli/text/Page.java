package brakewright.cli.text;

import brakewright.cli.buildfile.Printable;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Collects the lines of a text, at most 100 columns wide. */
final class Page {

    private static final int WIDTH = 100;
    private static final char ESCAPE = '\u001b';
    private static final String OURS = ESCAPE + "\n";

    /** A line may break at a blank, but not between a number and its unit. */
    private static final Pattern BREAK = Pattern.compile(" (?![%°A-Za-z])|(?<![0-9]) ");

    private final StringBuilder text = new StringBuilder();
    private final Ink ink;

    Page(Ink ink) {
        this.ink = ink;
    }

    /** Adds a line; one that is too long goes on below, indented alike. */
    Page line(String line) {
        String settled = settled(line).stripTrailing();
        if (visibleLength(settled) <= WIDTH) {
            put(settled);
            return this;
        }
        int labelWidth = Math.min(settled.length() - settled.stripLeading().length(), WIDTH / 2);
        return paragraph("", labelWidth, settled.substring(labelWidth));
    }

    /**
     * What a build file says cannot move the cursor: only colours and line ends of ours are kept.
     */
    private String settled(String line) {
        return ink.settle(Printable.shownBut(line, OURS));
    }

    private void put(String line) {
        text.append(line.stripTrailing()).append('\n');
    }

    Page blank() {
        text.append('\n');
        return this;
    }

    /**
     * Adds a paragraph behind a label, further lines indented alike. A line feed in it begins a new
     * line. A label wider than its column takes room from the first line.
     */
    Page paragraph(String heading, int labelWidth, String paragraph) {
        String label = settled(heading);
        boolean isApart = label.isEmpty() || label.endsWith(" ");
        int begin = Math.max(labelWidth, visibleLength(label) + (isApart ? 0 : 1));
        String start = label + " ".repeat(begin - visibleLength(label));
        String indent = " ".repeat(labelWidth);
        for (String line : settled(paragraph).split("\n", -1)) {
            int first = Math.max(1, WIDTH - visibleLength(start));
            for (String part : wrap(line, first, WIDTH - labelWidth)) {
                put(start + part);
                start = indent;
            }
        }
        return this;
    }

    String text() {
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
