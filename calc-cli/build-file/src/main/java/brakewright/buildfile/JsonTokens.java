package brakewright.buildfile;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Cuts a text into what JSON is made of, and into what it is not (RFC 8259, section 2). */
final class JsonTokens {

    private static final Pattern NUMBER =
            Pattern.compile("-?(?:0|[1-9][0-9]*)(?:\\.[0-9]+)?(?:[eE][+-]?[0-9]+)?");
    private static final Pattern BLANK = Pattern.compile("[ \\t\\r\\n]*");
    private static final Pattern COMMENT = Pattern.compile("(?s)//[^\\n]*|#[^\\n]*|/\\*.*?\\*/");
    private static final Pattern SINGLE = Pattern.compile("'([^'\"\\\\\\n]*)'");
    private static final Pattern WORD = Pattern.compile("[^\\s{}\\[\\]:,=\"']+|.");
    private static final Pattern ESCAPE = Pattern.compile("\\\\(?:[\"\\\\/bfnrt]|u[0-9a-fA-F]{4})");
    private static final String SIGNS = "{}[]:,=";

    /** What a piece of the text is. */
    enum Kind {
        /** One of the six signs of JSON, or an equals sign. */
        SIGN,
        /** In quotation marks that are closed. */
        TEXT,
        /** Begins with a quotation mark that is not closed in its line. */
        OPEN_TEXT,
        /** In single quotes. */
        SINGLE_QUOTED,
        /** A number, or true, false or null. */
        PLAIN,
        /** A comment of another language. */
        COMMENT,
        /** Anything else. */
        WORD,
        /** Behind the last piece. */
        END
    }

    /**
     * One piece.
     *
     * @param kind what it is
     * @param text as it stands there
     * @param blank what stands before it
     * @param line from 1
     * @param column from 1
     */
    record Token(Kind kind, String text, String blank, int line, int column) {

        boolean is(char sign) {
            return kind == Kind.SIGN && text.charAt(0) == sign;
        }

        Token withoutBlank() {
            return new Token(kind, text, "", line, column);
        }
    }

    private final String text;
    private int at;
    private int line = 1;
    private int lineStart;

    JsonTokens(String text) {
        this.text = text;
    }

    Token next() {
        String blank = at(BLANK);
        int column = text.codePointCount(lineStart, at) + 1;
        int startLine = line;
        if (at == text.length()) {
            return new Token(Kind.END, "", blank, startLine, column);
        }
        char first = text.charAt(at);
        Kind kind = Kind.WORD;
        String piece;
        if (SIGNS.indexOf(first) >= 0) {
            kind = Kind.SIGN;
            piece = text.substring(at, at + 1);
            at++;
        } else if (first == '"') {
            int end = endOfText();
            boolean isClosed = end < text.length() && text.charAt(end) == '"';
            piece = text.substring(at, isClosed ? end + 1 : end);
            at += piece.length();
            kind = isClosed ? Kind.TEXT : Kind.OPEN_TEXT;
        } else if (matches(SINGLE)) {
            piece = at(SINGLE);
            kind = Kind.SINGLE_QUOTED;
        } else if (matches(COMMENT)) {
            piece = at(COMMENT);
            kind = Kind.COMMENT;
        } else {
            piece = at(WORD);
            kind = isPlain(piece) ? Kind.PLAIN : Kind.WORD;
        }
        return new Token(kind, piece, blank, startLine, column);
    }

    /** Finds what in a text in quotation marks cannot stand there; empty if all can. */
    static Optional<String> misfit(String quoted) {
        Matcher escape = ESCAPE.matcher(quoted);
        for (int i = 0; i < quoted.length(); i++) {
            char each = quoted.charAt(i);
            if (each < ' ') {
                return Optional.of(
                        String.format(Locale.ROOT, "the control character U+%04X", (int) each));
            }
            if (each == '\\') {
                if (!escape.region(i, quoted.length()).lookingAt()) {
                    return Optional.of(quoted.substring(i, Math.min(i + 2, quoted.length())));
                }
                i = escape.end() - 1;
            }
        }
        return Optional.empty();
    }

    /** The place of the mark that closes a text; of the end of its line, signs there left out. */
    private int endOfText() {
        int end = at + 1;
        while (end < text.length() && text.charAt(end) != '"' && text.charAt(end) != '\n') {
            boolean isEscape = text.charAt(end) == '\\' && end + 1 < text.length();
            end += isEscape && text.charAt(end + 1) != '\n' ? 2 : 1;
        }
        if (end < text.length() && text.charAt(end) == '"') {
            return end;
        }
        int last = Math.min(end, text.length());
        while (last > at + 1 && ",}] \t\r".indexOf(text.charAt(last - 1)) >= 0) {
            last--;
        }
        return last;
    }

    private static boolean isPlain(String piece) {
        return piece.equals("true")
                || piece.equals("false")
                || piece.equals("null")
                || NUMBER.matcher(piece).matches();
    }

    private boolean matches(Pattern pattern) {
        return pattern.matcher(text).region(at, text.length()).lookingAt();
    }

    /** Goes on behind what stands here. */
    private String at(Pattern pattern) {
        Matcher matcher = pattern.matcher(text).region(at, text.length());
        String found = matcher.lookingAt() ? matcher.group() : "";
        for (int i = 0; i < found.length(); i++) {
            if (found.charAt(i) == '\n') {
                line++;
                lineStart = at + i + 1;
            }
        }
        at += found.length();
        return found;
    }
}
