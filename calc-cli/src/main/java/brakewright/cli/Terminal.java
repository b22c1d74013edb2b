package brakewright.cli;

import brakewright.cli.text.Ascii;
import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;

/** What the terminal that the program was started in can show. */
final class Terminal {

    /** Set by {@link Main} for its own process: what runs inside another program shows all. */
    private static final String PLAIN = "brakewright.terminal.plain";

    private Terminal() {}

    /** Looks at the locale that the process was started in. */
    static void look() {
        boolean isPlain = !System.getProperty("native.encoding", "UTF-8").equals("UTF-8");
        System.setProperty(PLAIN, Boolean.toString(isPlain));
    }

    /** Whether letters beyond ASCII may not be shown. */
    static boolean isPlain() {
        return Boolean.getBoolean(PLAIN);
    }

    /** A writer that spells out what the terminal does not show. */
    static Writer spelling(Writer out) {
        return new FilterWriter(out) {
            @Override
            public void write(int letter) throws IOException {
                out.write(Ascii.of(Character.toString(letter)));
            }

            @Override
            public void write(char[] letters, int from, int count) throws IOException {
                out.write(Ascii.of(new String(letters, from, count)));
            }

            @Override
            public void write(String text, int from, int count) throws IOException {
                out.write(Ascii.of(text.substring(from, from + count)));
            }
        };
    }
}
