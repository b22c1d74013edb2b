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
        if (!plain) {
            return text;
        }
        StringBuilder ascii = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(point -> ascii.append(ascii(point)));
        return ascii.toString();
    }

    private static String ascii(int point) {
        return switch (point) {
            case '°' -> "deg";
            case 'Ω' -> "ohm";
            case '·' -> "*";
            case '²' -> "2";
            case '³' -> "3";
            case 'θ' -> "theta";
            case '½' -> "1/2";
            case '−', '–', '—' -> "-";
            case '√' -> "sqrt";
            case '≤' -> "<=";
            case '≥' -> ">=";
            case '±' -> "+-";
            case 'η' -> "eta";
            case 'μ', 'µ' -> "u";
            case 'ω' -> "omega";
            case 'σ' -> "sigma";
            case 'π' -> "pi";
            case 'α' -> "alpha";
            case 'ρ' -> "rho";
            case 'κ' -> "kappa";
            case 'τ' -> "tau";
            default -> point < 128 ? Character.toString(point) : "?";
        };
    }
}
