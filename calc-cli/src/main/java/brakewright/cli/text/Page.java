package brakewright.cli.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Collects the lines of a text, at most 100 columns wide. */
final class Page {

    private static final int WIDTH = 100;

    /** A line may break at a blank, but not between a number and its unit. */
    private static final Pattern BREAK = Pattern.compile(" (?![%°A-Za-z])|(?<![0-9]) ");

    private final StringBuilder text = new StringBuilder();
    private final Ink ink;

    Page(Ink ink) {
        this.ink = ink;
    }

    Page line(String line) {
        text.append(ink.settle(line.stripTrailing())).append('\n');
        return this;
    }

    Page blank() {
        text.append('\n');
        return this;
    }

    /** Adds a paragraph behind a label, further lines indented alike. */
    Page paragraph(String heading, int labelWidth, String paragraph) {
        String label = ink.settle(heading);
        String indent = " ".repeat(labelWidth);
        List<String> lines = wrap(ink.settle(paragraph), WIDTH - labelWidth);
        String start = label + " ".repeat(Math.max(0, labelWidth - visibleLength(label)));
        for (int i = 0; i < lines.size(); i++) {
            line((i == 0 ? start : indent) + lines.get(i));
        }
        return this;
    }

    String text() {
        return text.toString();
    }

    private static List<String> wrap(String paragraph, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : BREAK.split(paragraph)) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() == 0 ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static int visibleLength(String label) {
        int length = 0;
        boolean inEscape = false;
        for (int i = 0; i < label.length(); i++) {
            char letter = label.charAt(i);
            inEscape = inEscape || letter == '\u001b';
            length += inEscape ? 0 : 1;
            inEscape = inEscape && letter != 'm';
        }
        return length;
    }
}
