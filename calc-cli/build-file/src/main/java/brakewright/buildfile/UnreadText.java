package brakewright.buildfile;

import java.io.BufferedReader;
import java.io.StringReader;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What a text that is not TOML throughout may still say in the part that was not understood. */
final class UnreadText {

    /** A text that was understood from end to end. */
    static final UnreadText NONE = new UnreadText("", Set.of(), List.of());

    private static final Set<String> KNOWN =
            Schema.all().stream().map(Schema.Entry::key).collect(Collectors.toSet());

    private final String text;
    private final Set<String> read;
    private final boolean isHeadingBroken;

    /**
     * Looks at a text.
     *
     * @param text the whole of it
     * @param read the keys that were understood
     * @param wrong the lines that were not, from 1; 0 for all
     */
    UnreadText(String text, Set<String> read, List<Integer> wrong) {
        this.text = text;
        this.read = Set.copyOf(read);
        List<String> lines = new BufferedReader(new StringReader(text)).lines().toList();
        this.isHeadingBroken =
                wrong.stream()
                        .anyMatch(
                                line ->
                                        line < 1
                                                || line > lines.size()
                                                || lines.get(line - 1).strip().startsWith("["));
    }

    /**
     * Tells whether a key that was not found may stand there. Behind a heading that is broken any
     * may, as what follows counts to another table.
     *
     * @param key dotted
     * @return false only where the text names it nowhere but where it was understood
     */
    boolean mayHold(String key) {
        if (isHeadingBroken) {
            return true;
        }
        String name = key.substring(key.lastIndexOf('.') + 1);
        if (!text.contains(name)) {
            return false;
        }
        String word = "(?<![\\w-])" + Pattern.quote(name) + "(?![\\w-])";
        String equals = "[\"']?[ \\t]*=";
        Pattern naming =
                Pattern.compile(
                        "(?m)" + word + equals + "|^[^=#\\n]*" + word + "(?!" + equals + ")");
        long found =
                read.stream()
                        .filter(each -> each.endsWith("." + name) || each.equals(name))
                        .filter(each -> KNOWN.contains(PackPlace.schemaKey(each)))
                        .count();
        Matcher matcher = naming.matcher(text);
        long named = 0;
        while (matcher.find()) {
            named++;
        }
        return named > found;
    }
}
