package brakewright.cli.buildfile;

import java.util.Locale;
import java.util.Optional;

/** Keeps what would move the cursor or turn the writing round out of texts that are printed. */
final class Printable {

    private Printable() {}

    /** Says what must not stand in a text of one line; empty if all is well. */
    static Optional<String> fault(String text) {
        return text.codePoints()
                .filter(point -> !isPrintable(point))
                .boxed()
                .findFirst()
                .map(
                        point ->
                                point == '\n'
                                        ? "this has more than one line"
                                        : String.format(
                                                Locale.ROOT,
                                                "this has the control character U+%04X",
                                                point));
    }

    /** Says what must not stand in a text of several lines; empty if all is well. */
    static Optional<String> faultOfLines(String text) {
        return fault(text.replace("\n", ""));
    }

    private static boolean isPrintable(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE ->
                    false;
            default -> !isDirection(point);
        };
    }

    /** Embeddings, overrides and isolates of the direction of writing. */
    private static boolean isDirection(int point) {
        return (point >= 0x202a && point <= 0x202e) || (point >= 0x2066 && point <= 0x2069);
    }
}
