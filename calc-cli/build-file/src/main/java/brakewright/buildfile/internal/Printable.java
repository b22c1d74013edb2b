package brakewright.buildfile.internal;

import java.util.Locale;
import java.util.Optional;

/**
 * Which characters of a text that comes from outside may be printed as they are, and how the others
 * are shown.
 *
 * <p>What moves the cursor, begins a line or turns the direction of writing round has no place in a
 * title and is refused. What cannot be seen (joiners, blanks without width, selectors, tags) may
 * belong to a word or a picture, but could also make two names look alike, so it is accepted and
 * shown escaped. The escapes are those in which a build file may write the same characters.
 *
 * <p>Source: Unicode 13.0, general categories Cc, Cf, Zl, Zp, Cs, and the property
 * Default_Ignorable_Code_Point of DerivedCoreProperties.txt; TOML 1.0, strings.
 */
public final class Printable {

    private static final int FIRST_SUPPLEMENTARY = 0x10000;

    /** Assumption: our own choice; the longest list of the tables is shorter. */
    private static final int LONGEST = 1000;

    private Printable() {}

    /**
     * Says what must not stand in a text of one line.
     *
     * @param text what is told
     * @return what is wrong; empty if all is well
     */
    public static Optional<String> fault(String text) {
        return text.codePoints()
                .filter(Printable::isHarmful)
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

    /**
     * Says what must not stand in a text of several lines.
     *
     * @param text what is told
     * @return what is wrong; empty if all is well
     */
    public static Optional<String> faultOfLines(String text) {
        return fault(text.replace("\n", ""));
    }

    /**
     * Writes a text so that every character in it is seen.
     *
     * @param text any text
     * @return the same on one line, with escapes such as backslash-u-202E
     */
    public static String shown(String text) {
        return shownBut(text, "");
    }

    /**
     * Writes a text so that every character in it is seen, but for some that its writer put there.
     *
     * @param text any text
     * @param kept the characters that are kept
     * @return the text with escapes
     */
    public static String shownBut(String text, String kept) {
        if (text.codePoints().noneMatch(point -> isEscaped(point, kept))) {
            return text;
        }
        StringBuilder shown = new StringBuilder(text.length() + 16);
        text.codePoints()
                .forEach(
                        point -> {
                            if (isEscaped(point, kept)) {
                                shown.append(escaped(point));
                            } else {
                                shown.appendCodePoint(point);
                            }
                        });
        return shown.toString();
    }

    /**
     * Writes a text so that every character in it is seen, and no more than a screen can hold.
     *
     * @param text any text
     * @return at most 1000 of its characters on one line, with escapes and a sign where it goes on
     */
    public static String shortened(String text) {
        return text.codePointCount(0, text.length()) > LONGEST
                ? shown(text.substring(0, text.offsetByCodePoints(0, LONGEST - 1))) + "…"
                : shown(text);
    }

    /**
     * Escapes what cannot be seen in a finished document of JSON, where it can only stand inside of
     * strings.
     *
     * @param json a document
     * @return the same document
     */
    public static String inJson(String json) {
        if (json.codePoints().noneMatch(point -> isEscaped(point, "\n"))) {
            return json;
        }
        StringBuilder shown = new StringBuilder(json.length() + 16);
        json.codePoints()
                .forEach(
                        point -> {
                            if (isEscaped(point, "\n")) {
                                for (char unit : Character.toChars(point)) {
                                    shown.append(String.format(Locale.ROOT, "\\u%04X", (int) unit));
                                }
                            } else {
                                shown.appendCodePoint(point);
                            }
                        });
        return shown.toString();
    }

    private static boolean isEscaped(int point, String kept) {
        return isUnseen(point) && kept.indexOf(point) < 0;
    }

    private static String escaped(int point) {
        return switch (point) {
            case '\n' -> "\\n";
            case '\r' -> "\\r";
            case '\t' -> "\\t";
            default ->
                    String.format(
                            Locale.ROOT,
                            point < FIRST_SUPPLEMENTARY ? "\\u%04X" : "\\U%08X",
                            point);
        };
    }

    private static boolean isHarmful(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE ->
                    true;
            default -> isDirection(point);
        };
    }

    /** Embeddings, overrides and isolates of the direction of writing. */
    private static boolean isDirection(int point) {
        return (point >= 0x202a && point <= 0x202e) || (point >= 0x2066 && point <= 0x2069);
    }

    private static boolean isUnseen(int point) {
        if (point >= ' ' && point < 0x7f) {
            return false;
        }
        return isHarmful(point)
                || Character.getType(point) == Character.FORMAT
                || isIgnorable(point)
                || isNoncharacter(point);
    }

    /** What is drawn as nothing, beside the characters of category Cf. */
    private static boolean isIgnorable(int point) {
        return switch (point) {
            case 0x034f, 0x115f, 0x1160, 0x17b4, 0x17b5, 0x2065, 0x3164, 0xffa0 -> true;
            default ->
                    (point >= 0x180b && point <= 0x180f)
                            || (point >= 0xfe00 && point <= 0xfe0f)
                            || (point >= 0xfff0 && point <= 0xfff8)
                            || (point >= 0xe0000 && point <= 0xe0fff);
        };
    }

    private static boolean isNoncharacter(int point) {
        return (point & 0xfffe) == 0xfffe || (point >= 0xfdd0 && point <= 0xfdef);
    }
}
