package brakewright.buildfile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

/**
 * The comments of a TOML text, by the line on which each stands.
 *
 * @param above those with a line of their own
 * @param beside those behind something else
 */
record TomlComments(NavigableMap<Integer, String> above, NavigableMap<Integer, String> beside) {

    /** Of a text that has none. */
    static final TomlComments NONE =
            new TomlComments(Collections.emptyNavigableMap(), Collections.emptyNavigableMap());

    /** How a comment begins that {@link TomlWriter} makes, and makes anew each time. */
    static final String MADE = "#:";

    private static final List<String> QUOTES = List.of("\"\"\"", "'''", "\"", "'");

    /** Finds the comments of a text that is TOML throughout. */
    static TomlComments of(String text) {
        TomlComments found = new TomlComments(new TreeMap<>(), new TreeMap<>());
        int line = 1;
        boolean isBlank = true;
        int at = 0;
        while (at < text.length()) {
            char letter = text.charAt(at);
            if (letter == '#') {
                int end = endOfLine(text, at);
                found.add(text.substring(at, end).stripTrailing(), line, isBlank);
                at = end;
                continue;
            }
            int end = endOfString(text, at);
            line += linesEnded(text, at, end);
            isBlank = letter == '\n' || (isBlank && Character.isWhitespace(letter));
            at = end;
        }
        return found;
    }

    private void add(String comment, int line, boolean isAlone) {
        if (!comment.startsWith(MADE)) {
            (isAlone ? above : beside).put(line, comment);
        }
    }

    private static int endOfLine(String text, int from) {
        int end = text.indexOf('\n', from);
        return end < 0 ? text.length() : end;
    }

    private static int linesEnded(String text, int from, int end) {
        int count = 0;
        for (int at = from; at < end; at++) {
            count += text.charAt(at) == '\n' ? 1 : 0;
        }
        return count;
    }

    /** Behind a string that begins here, else behind one letter. */
    private static int endOfString(String text, int from) {
        if (text.charAt(from) != '"' && text.charAt(from) != '\'') {
            return from + 1;
        }
        for (String quote : QUOTES) {
            if (text.startsWith(quote, from)) {
                return closed(text, from + quote.length(), quote);
            }
        }
        return from + 1;
    }

    private static int closed(String text, int from, String quote) {
        int at = from;
        while (at < text.length() && !text.startsWith(quote, at)) {
            at += quote.startsWith("\"") && text.charAt(at) == '\\' ? 2 : 1;
        }
        int end = at + quote.length();
        while (quote.length() > 1 && end < text.length() && text.charAt(end) == quote.charAt(0)) {
            end++; // up to two quotes more are the string's own
        }
        return Math.min(end, text.length());
    }

    /**
     * Says which comments belong to which key: those above it, back to the key before, and those
     * beside it.
     *
     * @param lines where each key and heading stands
     */
    Owned owned(Map<String, Integer> lines) {
        NavigableMap<Integer, String> keys = new TreeMap<>();
        lines.forEach((key, line) -> keys.merge(line, key, TomlComments::named));
        Owned owned = new Owned(new TreeMap<>(), new TreeMap<>(), new ArrayList<>());
        above.forEach(
                (line, comment) -> {
                    Map.Entry<Integer, String> next = keys.ceilingEntry(line);
                    (next == null
                                    ? owned.last()
                                    : owned.above()
                                            .computeIfAbsent(
                                                    next.getValue(), key -> new ArrayList<>()))
                            .add(comment);
                });
        beside.forEach(
                (line, comment) -> {
                    Map.Entry<Integer, String> of = keys.floorEntry(line);
                    if (of == null || owned.beside().putIfAbsent(of.getValue(), comment) != null) {
                        owned.last().add(comment);
                    }
                });
        return owned;
    }

    /** A line names a table by a key in it, or by the deepest heading. */
    private static String named(String one, String other) {
        return one.length() >= other.length() ? one : other;
    }

    /**
     * Comments with their keys.
     *
     * @param above by key or heading
     * @param beside by key or heading
     * @param last that belong to none
     */
    record Owned(Map<String, List<String>> above, Map<String, String> beside, List<String> last) {

        /** Of a text without comments. */
        static final Owned NONE = new Owned(Map.of(), Map.of(), List.of());
    }
}
