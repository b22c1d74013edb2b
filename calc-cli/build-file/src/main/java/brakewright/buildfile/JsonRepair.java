package brakewright.buildfile;

import brakewright.buildfile.JsonTokens.Kind;
import brakewright.buildfile.JsonTokens.Token;
import java.util.List;
import java.util.Optional;

/**
 * Finds everything in a text that keeps it from being JSON, and writes what was most likely meant,
 * so that the rest can be read too. Nothing repaired makes a vehicle: it only lets all problems be
 * told at once. Lines stay where they are.
 */
final class JsonRepair {

    /** Stands for a value that could not be understood. */
    static final String NOT_UNDERSTOOD = "\u0000";

    private static final String NOT_UNDERSTOOD_WRITTEN = "\"\\u0000\"";

    /** Assumption: our own choice; the tables of a build file are three deep. */
    private static final int DEEPEST = 100;

    /** Assumption: our own choice; more than these nobody reads. */
    private static final int MOST_PROBLEMS = 50;

    private static final String NAME = "a name in \" \", or } where the object ends";
    private static final String VALUE =
            "a value: text in \" \", a number, or what stands in { } or [ ]";

    private final JsonTokens tokens;
    private final List<Problem> problems;
    private final StringBuilder out = new StringBuilder();
    private Token token;
    private int found;
    private int openObjects;
    private int openArrays;
    private boolean isEndTold;

    /** There is more wrong than is told. */
    private static final class GivenUp extends RuntimeException {
        private static final long serialVersionUID = 1L;

        GivenUp() {
            super(null, null, false, false);
        }
    }

    JsonRepair(String text, List<Problem> problems) {
        this.tokens = new JsonTokens(text);
        this.problems = problems;
        this.token = tokens.next();
    }

    /** Returns what was meant; empty where that cannot be told. */
    Optional<String> read() {
        try {
            skipComments();
            if (!token.is('{')) {
                tell("the object begins with {");
                return Optional.empty();
            }
            object(0);
            if (token.kind() != Kind.END) {
                tell("nothing behind the } that ends the object");
            }
            return Optional.of(out.toString());
        } catch (GivenUp tooMuch) {
            return Optional.empty();
        }
    }

    private void object(int depth) {
        openObjects++;
        take();
        while (!isEnd()) {
            if (token.is(',')) {
                tell(NAME);
                skip();
            } else {
                pair(depth);
                comma("}");
            }
        }
        openObjects--;
        close('}', openArrays);
    }

    private void array(int depth) {
        openArrays++;
        take();
        while (!isEnd()) {
            if (token.is(',')) {
                tell(VALUE);
                skip();
            } else {
                value(depth, "]");
                comma("]");
            }
        }
        openArrays--;
        close(']', openObjects);
    }

    private void pair(int depth) {
        boolean isNamed = token.kind() != Kind.SIGN;
        if (token.kind() == Kind.TEXT) {
            text();
        } else {
            tell(NAME);
            write(isNamed ? quoted(bare()) : NOT_UNDERSTOOD_WRITTEN);
            if (isNamed) {
                skip();
            }
        }
        if (token.is(':')) {
            take();
        } else if (isEnd() || token.is(',')) {
            tell("a colon and a value behind the name");
            write(":" + NOT_UNDERSTOOD_WRITTEN);
            return;
        } else {
            if (isNamed) {
                tell("a colon behind the name");
            }
            write(":");
            if (token.is('=')) {
                skip();
            }
        }
        value(depth, "}");
    }

    private void value(int depth, String end) {
        if (depth > DEEPEST) {
            problems.add(new Problem(token.line(), "", "the file is nested too deeply", ""));
            throw new GivenUp();
        }
        write("");
        int begin = out.length();
        if (token.is('{')) {
            object(depth + 1);
        } else if (token.is('[')) {
            array(depth + 1);
        } else if (token.kind() == Kind.TEXT) {
            text();
        } else if (token.kind() == Kind.PLAIN) {
            take();
        } else if (token.kind() == Kind.OPEN_TEXT || token.kind() == Kind.SINGLE_QUOTED) {
            tell(VALUE);
            write(quoted(bare()));
            skip();
        } else {
            tell(VALUE);
            write(NOT_UNDERSTOOD_WRITTEN);
            restOfLine();
            return;
        }
        if (token.kind() == Kind.WORD || token.is(':') || token.is('=')) {
            tell("a comma or " + end + " behind the value; a value with its unit stands in \" \"");
            restOfLine();
            String lineEnds = out.substring(begin).replaceAll("[^\\n]", "");
            out.replace(begin, out.length(), NOT_UNDERSTOOD_WRITTEN + lineEnds);
        }
    }

    /** Told once, whatever else stands behind a value in its line. */
    private void restOfLine() {
        int line = token.line();
        while (token.line() == line && !isEnd() && !token.is(',')) {
            skip();
        }
    }

    /** A comma stands between two, and nowhere else. */
    private void comma(String end) {
        if (token.is(',')) {
            Token comma = token;
            skip();
            if (token.kind() != Kind.END && isEnd()) {
                tell(comma, here(comma), "no comma before " + end);
            } else if (!isEnd()) {
                write(",");
            }
        } else if (!isEnd()) {
            tell("a comma before it, or " + end + " where this ends");
            write(",");
        }
    }

    /** What closes something around this one is left for that. */
    private void close(char sign, int othersOpen) {
        if (token.is(sign)) {
            take();
            return;
        }
        if (token.kind() != Kind.END || !isEndTold) {
            isEndTold |= token.kind() == Kind.END;
            tell(String.valueOf(sign));
        }
        write(String.valueOf(sign));
        if (token.kind() != Kind.END && othersOpen == 0) {
            skip();
        }
    }

    private boolean isEnd() {
        return token.is('}') || token.is(']') || token.kind() == Kind.END;
    }

    private void text() {
        Optional<String> misfit = JsonTokens.misfit(token.text());
        if (misfit.isPresent()) {
            tell(
                    token,
                    misfit.get() + " stands in a text",
                    "what JSON writes as \\n, \\t, \\\\, \\\" or \\u00e9");
            write(quoted(bare()));
            skip();
        } else {
            take();
        }
    }

    /** What stands in a piece that is no text of JSON, without marks around it. */
    private String bare() {
        String text = token.text();
        return switch (token.kind()) {
            case TEXT, SINGLE_QUOTED -> text.substring(1, text.length() - 1);
            case OPEN_TEXT -> text.substring(1);
            default -> text;
        };
    }

    private static String quoted(String bare) {
        StringBuilder quoted = new StringBuilder("\"");
        for (char each : bare.toCharArray()) {
            quoted.append(each < ' ' || each == '"' || each == '\\' ? ' ' : each);
        }
        return quoted.append('"').toString();
    }

    private void take() {
        write(token.text());
        skip();
    }

    private void write(String text) {
        out.append(token.blank()).append(text);
        token = token.withoutBlank();
    }

    private void skip() {
        out.append(token.blank());
        token = tokens.next();
        skipComments();
    }

    private void skipComments() {
        while (token.kind() == Kind.COMMENT) {
            tell("no comment, as JSON has none; \"notes\" is there for words");
            out.append(token.blank()).append(token.text().replaceAll("[^\n]", " "));
            token = tokens.next();
        }
    }

    private void tell(String expected) {
        tell(token, here(token), expected);
    }

    private static String here(Token met) {
        return met.kind() == Kind.END ? "the text ends" : "here stands " + met.text();
    }

    private void tell(Token at, String met, String expected) {
        found++;
        if (found > MOST_PROBLEMS) {
            throw new GivenUp();
        }
        problems.add(new Problem(at.line(), "", "column " + at.column() + ": " + met, expected));
    }
}
