package brakewright.buildfile;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A line that is no TOML, told to a person: what is wrong with it, and how the line would be right.
 *
 * @param wrong what is wrong
 * @param expected what belongs there, with an example
 */
record TomlMistake(String wrong, String expected) {

    private static final String EXAMPLE = "mass = \"92 kg\"";
    private static final Pattern AGAIN = Pattern.compile("previously defined at line (\\d+)");
    private static final Pattern OPEN = Pattern.compile("array opened at line (\\d+)");
    private static final Pattern CURLY = Pattern.compile("[\u2018-\u201f\u00ab\u00bb\u2032\u2033]");
    private static final Pattern NO_BREAK = Pattern.compile("[\u00a0\u2007\u202f]");
    private static final Pattern COMMENT = Pattern.compile("\\s+#[^\"']*$");
    private static final Pattern ENTRY = Pattern.compile("([A-Za-z][^=\"\\[{]*?)\\s*=(.*)");
    private static final Pattern NO_SIGN =
            Pattern.compile("([A-Za-z][\\w.-]*)(?:\\s*:\\s*|\\s+)(\\S.*)");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("([-+]?\\d+),(\\d+)(.*)");
    private static final Pattern AFTER_QUOTE = Pattern.compile("\"([^\"]*)\"\\s*([^\"\\s].*)");

    /**
     * Looks for what a person got wrong.
     *
     * @param text the line as it stands in the file
     * @param said what the parser says of it
     * @return the usual mistake that it is, or else what the parser says
     */
    static TomlMistake of(String text, String said) {
        String line = COMMENT.matcher(text.trim()).replaceAll("");
        Matcher again = AGAIN.matcher(said);
        if (again.find()) {
            return again(line, again.group(1));
        }
        Matcher open = OPEN.matcher(said);
        if (open.find()) {
            return new TomlMistake(
                    "the list that begins in line " + open.group(1) + " has no closing bracket",
                    "] behind its last value, for example [\"5 °C\", \"35 °C\"]");
        }
        if (CURLY.matcher(line).find()) {
            return new TomlMistake(
                    "the quotes are typographic ones",
                    "straight quotes, " + CURLY.matcher(line).replaceAll("\""));
        }
        if (NO_BREAK.matcher(line).find()) {
            return new TomlMistake(
                    "a space is a no-break space",
                    "ordinary spaces, " + NO_BREAK.matcher(line).replaceAll(" "));
        }
        if (line.startsWith("[") && line.indexOf(']') < 0 && line.indexOf(',') < 0) {
            return new TomlMistake("the heading has no closing bracket", line + "]");
        }
        Matcher entry = ENTRY.matcher(line);
        if (entry.matches()) {
            return entry(entry.group(1), entry.group(2).trim(), said);
        }
        Matcher apart = NO_SIGN.matcher(line);
        return apart.matches()
                ? new TomlMistake(
                        "no = stands between key and value",
                        apart.group(1) + " = " + value(apart.group(2)))
                : unknown(said);
    }

    private static TomlMistake again(String line, String first) {
        return line.startsWith("[")
                ? new TomlMistake(
                        line + " stands here again; it was begun in line " + first,
                        "each heading once, with all that belongs below it")
                : new TomlMistake(
                        line.replaceAll("\\s*=.*", "")
                                + " stands here again; it was set in line "
                                + first,
                        "each key once below its heading, for example " + EXAMPLE);
    }

    private static TomlMistake entry(String key, String value, String said) {
        if (key.indexOf(' ') >= 0) {
            return new TomlMistake(
                    "the key \"" + key + "\" has a space",
                    "one word, for example wheel_diameter = \"0.2 m\"");
        }
        if (value.isEmpty()) {
            return new TomlMistake("nothing stands behind =", "a value, for example " + EXAMPLE);
        }
        char begins = value.charAt(0);
        if (begins == '[') {
            return list(key, value, said);
        }
        if (begins == '"') {
            return quoted(key, value, said);
        }
        Matcher comma = DECIMAL_COMMA.matcher(value);
        if (comma.matches()) {
            String number = comma.group(1) + "." + comma.group(2);
            return new TomlMistake(
                    "a number has a comma",
                    "a decimal point, "
                            + key
                            + " = "
                            + (comma.group(3).isEmpty() ? number : value(number + comma.group(3))));
        }
        if (begins == '\'' || begins == '{') {
            return unknown(said);
        }
        return new TomlMistake(
                Character.isDigit(begins)
                        ? "a value with a unit has no quotes around it"
                        : "a word has no quotes around it",
                key + " = " + value(value));
    }

    private static TomlMistake quoted(String key, String value, String said) {
        if (value.indexOf('\\') >= 0) {
            return new TomlMistake(
                    "a backslash stands within the quotes", key + " = " + value.replace('\\', '/'));
        }
        if (value.indexOf('"', 1) < 0) {
            return new TomlMistake("the closing quote is missing", key + " = " + value(value));
        }
        Matcher behind = AFTER_QUOTE.matcher(value);
        return behind.matches()
                ? new TomlMistake(
                        "something stands behind the closing quote",
                        key + " = \"" + (behind.group(1) + " " + behind.group(2)).trim() + '"')
                : unknown(said);
    }

    private static TomlMistake list(String key, String value, String said) {
        if (value.indexOf(']') < 0) {
            return new TomlMistake("the list has no closing bracket", key + " = " + value + "]");
        }
        String parted = value.replaceAll("\"\\s+\"", "\", \"");
        return parted.equals(value)
                ? unknown(said)
                : new TomlMistake(
                        "no comma stands between two values of the list", key + " = " + parted);
    }

    /** Within quotes, whatever quotes there were. */
    private static String value(String bare) {
        return '"' + bare.replaceAll("[\"']", "").trim() + '"';
    }

    private static TomlMistake unknown(String said) {
        return new TomlMistake(
                "this does not read as TOML: " + said, "KEY = \"VALUE\", for example " + EXAMPLE);
    }
}
