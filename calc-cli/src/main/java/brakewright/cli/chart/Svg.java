package brakewright.cli.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes elements of a drawing. */
final class Svg {

    private final StringBuilder text = new StringBuilder();

    /** A number to a tenth of a unit, in as few letters as it takes. */
    static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** A text that is nothing but text, whatever is in it. */
    static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints()
                .forEach(
                        letter -> {
                            switch (letter) {
                                case '&' -> safe.append("&amp;");
                                case '<' -> safe.append("&lt;");
                                case '>' -> safe.append("&gt;");
                                case '"' -> safe.append("&quot;");
                                case '\'' -> safe.append("&#39;");
                                default -> safe.appendCodePoint(isShown(letter) ? letter : 0xFFFD);
                            }
                        });
        return safe.toString();
    }

    /** Neither controls nor halves of letters, nor what turns the direction of reading. */
    private static boolean isShown(int letter) {
        return switch (Character.getType(letter)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.UNASSIGNED,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR ->
                    false;
            default -> true;
        };
    }

    Svg raw(String element) {
        text.append(element);
        return this;
    }

    Svg line(String style, double x1, double y1, double x2, double y2) {
        return path(
                style, "M" + number(x1) + " " + number(y1) + "L" + number(x2) + " " + number(y2));
    }

    Svg path(String style, String course) {
        return raw("<path class=\"" + style + "\" d=\"" + course + "\"/>");
    }

    /** Anything painted with a pattern. */
    Svg filled(String style, String pattern, String course) {
        return raw(
                "<path class=\""
                        + style
                        + "\" style=\"fill:url(#"
                        + pattern
                        + ")\" fill-rule=\"evenodd\" d=\""
                        + course
                        + "\"/>");
    }

    Svg rectangle(String style, Box box) {
        return raw(
                "<rect class=\""
                        + style
                        + "\" x=\""
                        + number(box.left())
                        + "\" y=\""
                        + number(box.top())
                        + "\" width=\""
                        + number(box.width())
                        + "\" height=\""
                        + number(box.height())
                        + "\"/>");
    }

    /** A text from its left end on. */
    Svg text(String style, double left, double line, String words) {
        return raw(
                "<text class=\""
                        + style
                        + "\" x=\""
                        + number(left)
                        + "\" y=\""
                        + number(line)
                        + "\">"
                        + escaped(words)
                        + "</text>");
    }

    /** A text that ends or is centred where it is put. */
    Svg anchored(String style, String anchor, double x, double line, String words) {
        return raw(
                "<text class=\""
                        + style
                        + "\" text-anchor=\""
                        + anchor
                        + "\" x=\""
                        + number(x)
                        + "\" y=\""
                        + number(line)
                        + "\">"
                        + escaped(words)
                        + "</text>");
    }

    /** All of it in a frame with its title and what to see in it. */
    String drawing(String id, String title, String caption, double width, double height) {
        return "<svg class=\"c\" role=\"img\" aria-labelledby=\""
                + id
                + "-t "
                + id
                + "-d\" viewBox=\"0 0 "
                + number(width)
                + " "
                + number(height)
                + "\"><title id=\""
                + id
                + "-t\">"
                + escaped(title)
                + "</title><desc id=\""
                + id
                + "-d\">"
                + escaped(caption)
                + "</desc>"
                + text
                + "</svg>";
    }
}
