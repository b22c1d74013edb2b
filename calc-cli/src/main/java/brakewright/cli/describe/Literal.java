package brakewright.cli.describe;

import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** An answer as a build file writes it behind the equals sign. */
final class Literal {

    private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?");

    private Literal() {}

    /**
     * Writes an answer.
     *
     * @param text as it was typed
     * @param example of the same key in a build file, which shows what kind of value it has
     */
    static String of(String text, String example) {
        if (example.startsWith("[[")) {
            return text;
        }
        if (example.startsWith("[")) {
            return Arrays.stream(text.split(",| to ", -1))
                    .map(each -> quoted(each.strip()))
                    .collect(Collectors.joining(", ", "[", "]"));
        }
        return !example.startsWith("\"") && NUMBER.matcher(text).matches() ? text : quoted(text);
    }

    private static String quoted(String text) {
        StringBuilder quoted = new StringBuilder("\"");
        for (char letter : text.toCharArray()) {
            if (letter == '"' || letter == '\\') {
                quoted.append('\\').append(letter);
            } else if (Character.isISOControl(letter)) {
                quoted.append(String.format("\\u%04x", (int) letter));
            } else {
                quoted.append(letter);
            }
        }
        return quoted.append('"').toString();
    }
}
