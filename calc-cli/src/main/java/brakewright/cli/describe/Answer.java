package brakewright.cli.describe;

import java.util.Locale;

/**
 * What was answered.
 *
 * @param text as it was typed; empty where it is not known
 */
public record Answer(String text) {

    /** That it is not known. */
    static final Answer UNKNOWN = new Answer("");

    /** How a file of answers says that something is not known. */
    static final String NOT_KNOWN = "don't know";

    boolean isKnown() {
        return !text.isEmpty();
    }

    /** Reads what was typed. */
    static Answer of(String typed) {
        String text = typed.strip();
        String plain = text.toLowerCase(Locale.ROOT).replace('’', '\'');
        return switch (plain) {
            case "don't know", "dont know", "do not know", "unknown", "no idea" -> UNKNOWN;
            default -> new Answer(text);
        };
    }

    @Override
    public String toString() {
        return isKnown() ? text : NOT_KNOWN;
    }
}
