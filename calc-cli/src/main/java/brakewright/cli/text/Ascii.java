package brakewright.cli.text;

/** Letters that not every terminal shows, in such that all do. */
public final class Ascii {

    private Ascii() {}

    /**
     * Replaces what is not ASCII.
     *
     * @param text any text
     * @return the same, spelled out; a question mark for a letter that has no spelling
     */
    public static String of(String text) {
        if (text.codePoints().allMatch(point -> point < 128)) {
            return text;
        }
        StringBuilder ascii = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(point -> ascii.append(of(point)));
        return ascii.toString();
    }

    private static String of(int point) {
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
            case '…' -> "...";
            case '→' -> "->";
            case '×' -> "x";
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
