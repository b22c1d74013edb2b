package brakewright.cli.text;

import java.util.Locale;
import java.util.Optional;

/**
 * How text is put on the page: with or without colour, with all letters or plain ones, how wide.
 *
 * @param colour whether signal words may be coloured
 * @param plain whether only ASCII may be used
 * @param columns how many letters a line may have
 * @param manuscript that collects what is said instead; empty where lines are written
 */
public record Ink(boolean colour, boolean plain, int columns, Optional<Manuscript> manuscript) {

    /** Where no terminal tells its width. */
    public static final int USUAL_COLUMNS = 100;

    /** No page is narrower: its tables would fall apart. */
    public static final int FEWEST_COLUMNS = 72;

    /** No page is wider: longer lines are hard to follow. */
    private static final int MOST_COLUMNS = 120;

    /** Keeps the width within what can be read. */
    public Ink {
        columns = Math.max(FEWEST_COLUMNS, Math.min(MOST_COLUMNS, columns));
    }

    /**
     * Writes where no terminal tells its width.
     *
     * @param colour whether signal words may be coloured
     * @param plain whether only ASCII may be used
     */
    public Ink(boolean colour, boolean plain) {
        this(colour, plain, USUAL_COLUMNS);
    }

    /**
     * Writes lines.
     *
     * @param colour whether signal words may be coloured
     * @param plain whether only ASCII may be used
     * @param columns how many letters a line may have
     */
    public Ink(boolean colour, boolean plain, int columns) {
        this(colour, plain, columns, Optional.empty());
    }

    /** Writes no lines. */
    Ink(Manuscript manuscript) {
        this(false, false, MOST_COLUMNS, Optional.of(manuscript));
    }

    private static final String RESET = "\u001b[0m";

    /**
     * What a colour underlines; the words say it too. Letters and ground are both chosen, so that a
     * word is read as well on a light terminal as on a dark one: yellow and green letters vanish on
     * white. Black letters are not bold, which some terminals take for grey.
     */
    enum Tone {
        BAD("\u001b[1;97;41m"),
        DOUBTFUL("\u001b[30;43m"),
        GOOD("\u001b[30;42m"),
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

    /** Whether lines are shorter than usual, so that tables must be laid out for it. */
    boolean isNarrow() {
        return columns < USUAL_COLUMNS;
    }

    /** Between the names of a list: where lines are short it must be broken. */
    String separator() {
        return isNarrow() ? ", " : ",";
    }

    /** Whether a settled line is a heading of a manuscript. */
    boolean isHeading(String line) {
        return manuscript.isPresent() && line.startsWith(Tone.HEADING.code);
    }

    /** The words of such a heading. */
    String words(String heading) {
        return heading.substring(Tone.HEADING.code.length());
    }

    /** Writes a name as a heading, spelled as it is. */
    String nameHeading(String name) {
        return manuscript.isPresent() ? heading(name) : paint(Tone.HEADING, name);
    }

    /** Writes a heading. */
    String heading(String text) {
        return manuscript.isPresent()
                ? Tone.HEADING.code + text
                : paint(Tone.HEADING, text.toUpperCase(Locale.ROOT));
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
