package brakewright.cli.text;

import java.util.Locale;

/**
 * How text is put on the page: with or without colour, with all letters or plain ones.
 *
 * @param colour whether signal words may be coloured
 * @param plain whether only ASCII may be used
 */
public record Ink(boolean colour, boolean plain) {

    private static final String RESET = "\u001b[0m";

    /** What a colour underlines; the words say it too. */
    enum Tone {
        BAD("\u001b[1;31m"),
        DOUBTFUL("\u001b[1;33m"),
        GOOD("\u001b[1;32m"),
        HEADING("\u001b[1m");

        private final String code;

        Tone(String code) {
            this.code = code;
        }
    }

    /** Colours a word. */
    String paint(Tone tone, String text) {
        return colour ? tone.code + text + RESET : text;
    }

    /** Writes a heading. */
    String heading(String text) {
        return paint(Tone.HEADING, text.toUpperCase(Locale.ROOT));
    }

    /**
     * Replaces what is not ASCII, where that is asked for.
     *
     * @param text any text
     * @return the text to be shown
     */
    public String settle(String text) {
        return plain ? Ascii.of(text) : text;
    }
}
