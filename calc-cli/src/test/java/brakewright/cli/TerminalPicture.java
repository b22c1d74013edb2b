package brakewright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a command prints in a terminal, as a picture in light and dark: a sheet of paper, the words
 * that stand out on a tint of their tone. The letters stay letters, to be read aloud and copied.
 */
final class TerminalPicture {

    private static final double LETTER = 7.8;
    private static final double LINE = 18.0;
    private static final double MARGIN = 26.0;
    private static final double HEAD = 54.0;

    /** Our own tones and the codes that terminals take for them. */
    private static final Map<String, String> TONES =
            Map.of("1;97;41", "bad", "30;43", "doubtful", "30;42", "good", "1", "heading", "0", "");

    private static final Pattern CODE = Pattern.compile("\u001b\\[([0-9;]*)m");

    private static final String STYLE =
            """
            text { font: 13px ui-monospace, "DejaVu Sans Mono", "Liberation Mono", Menlo, Consolas, monospace; white-space: pre; fill: #26302f; }
            .paper { fill: #fbf8f1; stroke: #ddd5c3; }
            .rule, .curve { fill: none; stroke: #3d6b66; }
            .rule { stroke-opacity: 0.35; }
            .curve { stroke-width: 2.4; stroke-linecap: round; }
            .typed { fill: #6b6a5f; }
            .heading { font-weight: 700; fill: #1f5a54; }
            .bad, .doubtful, .good { font-weight: 700; }
            .bad { fill: #a3231b; }
            .doubtful { fill: #7a5200; }
            .good { fill: #1d6436; }
            .tint { fill-opacity: 0.13; }
            @media (prefers-color-scheme: dark) {
              text { fill: #d7ddd6; }
              .paper { fill: #171c1d; stroke: #34403f; }
              .rule, .curve { stroke: #7fb5ad; }
              .typed { fill: #98a29c; }
              .heading { fill: #8fcdc3; }
              .bad { fill: #ff9384; }
              .doubtful { fill: #f0c35a; }
              .good { fill: #86d3a0; }
              .tint { fill-opacity: 0.17; }
            }
            """;

    private final List<String> tints = new ArrayList<>();
    private final List<String> texts = new ArrayList<>();
    private int columns;
    private int lines;

    private TerminalPicture() {}

    /**
     * Draws a picture.
     *
     * @param title what it is a picture of
     * @param description what is seen on it
     * @param typed the command
     * @param styled what it prints, in colour
     * @return a document of SVG 1.1
     */
    static String of(String title, String description, String typed, String styled) {
        TerminalPicture picture = new TerminalPicture();
        styled.lines().forEach(picture::add);
        return picture.document(title, description, typed);
    }

    private void add(String styled) {
        String plain = CODE.matcher(styled).replaceAll("");
        int indent = plain.length() - plain.stripLeading().length();
        double y = HEAD + LINE * (lines + 1);
        StringBuilder spans = new StringBuilder();
        Matcher code = CODE.matcher(styled);
        String tone = "";
        int column = 0;
        int at = 0;
        while (at < styled.length()) {
            boolean isFound = code.find(at);
            String part = styled.substring(at, isFound ? code.start() : styled.length());
            spans.append(span(tone, column == 0 ? part.stripLeading() : part));
            if (!tone.isEmpty() && !tone.equals("heading")) {
                tint(tone, column, part.length(), y);
            }
            column += part.length();
            tone = isFound ? TONES.get(code.group(1)) : tone;
            at = isFound ? code.end() : styled.length();
        }
        if (!plain.isBlank()) {
            texts.add(
                    text(
                            MARGIN + LETTER * indent,
                            y,
                            plain.length() - indent,
                            "",
                            spans.toString()));
        }
        columns = Math.max(columns, plain.length());
        lines++;
    }

    private void tint(String tone, int column, int count, double y) {
        tints.add(
                String.format(
                        Locale.ROOT,
                        "<rect class=\"tint %s\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\""
                                + " rx=\"3\"/>",
                        tone,
                        MARGIN + LETTER * column - 3.0,
                        y - 13.0,
                        LETTER * count + 6.0,
                        LINE - 1.0));
    }

    private static String span(String tone, String part) {
        return part.isEmpty() || tone.isEmpty()
                ? escaped(part)
                : "<tspan class=\"" + tone + "\">" + escaped(part) + "</tspan>";
    }

    /** As wide as so many letters are, whichever font there is. */
    private static String text(double x, double y, int letters, String tone, String spans) {
        return String.format(
                Locale.ROOT,
                "<text%s x=\"%.1f\" y=\"%.1f\" textLength=\"%.1f\">%s</text>",
                tone.isEmpty() ? "" : " class=\"" + tone + "\"",
                x,
                y,
                LETTER * letters,
                spans);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private String document(String title, String description, String typed) {
        double width = 2.0 * MARGIN + LETTER * columns;
        double height = HEAD + LINE * lines + MARGIN;
        return String.format(
                        Locale.ROOT,
                        """
                        <svg xmlns="http://www.w3.org/2000/svg" role="img" aria-labelledby="title desc" xml:space="preserve" viewBox="0 0 %1$.0f %2$.0f" width="%1$.0f" height="%2$.0f">
                        <title id="title">%3$s</title>
                        <desc id="desc">%4$s</desc>
                        <style>
                        """,
                        width,
                        height,
                        escaped(title),
                        escaped(description))
                + STYLE
                + String.format(
                        Locale.ROOT,
                        """
                        </style>
                        <rect class="paper" x="0.5" y="0.5" width="%.0f" height="%.0f" rx="9"/>
                        <path class="curve" d="M26 20 h9 c8 0 6 13 15 14"/>
                        <path class="rule" d="M26 46 H%.0f"/>
                        """,
                        width - 1.0,
                        height - 1.0,
                        width - MARGIN)
                + text(MARGIN + LETTER * 5, 31.0, typed.length(), "typed", escaped(typed))
                + "\n"
                + String.join("\n", tints)
                + "\n"
                + String.join("\n", texts)
                + "\n</svg>\n";
    }
}
