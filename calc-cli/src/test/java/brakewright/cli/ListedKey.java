package brakewright.cli;

import brakewright.spec.Input;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * A row of the table of keys, as it stands in its file.
 *
 * @param input which
 * @param kind of value, as the first lines of the file name it
 * @param low lowest possible value, in calculation units; 0 for words and text
 * @param high highest possible value; 0 for words and text
 * @param example as a build file would write the value
 */
record ListedKey(Input input, String kind, double low, double high, String example) {

    private static final Path FILE =
            Path.of("build-file", "src", "main", "resources", "brakewright/buildfile/keys.csv");

    private static final Map<Input, ListedKey> ALL = all();

    static ListedKey of(Input input) {
        return ALL.get(input);
    }

    private static Map<Input, ListedKey> all() {
        Map<Input, ListedKey> all = new EnumMap<>(Input.class);
        try (CsvReader<NamedCsvRecord> rows =
                CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofNamedCsvRecord(FILE)) {
            for (NamedCsvRecord row : rows) {
                ListedKey key =
                        new ListedKey(
                                Input.ofKey(row.getField("key")).orElseThrow(),
                                row.getField("kind"),
                                number(row.getField("lowest")),
                                number(row.getField("highest")),
                                row.getField("example"));
                all.put(key.input, key);
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return all;
    }

    private static double number(String text) {
        return text.isEmpty() ? 0.0 : Double.parseDouble(text);
    }

    boolean isKind(String name) {
        return kind.equals(name) || kind.startsWith(name + "(");
    }

    boolean isPair() {
        return isKind("pair") || isKind("pair-or-none");
    }

    /** Whether one number with a unit stands there. */
    boolean isMeasured() {
        return !isPair()
                && !isKind("words")
                && !isKind("text")
                && !isKind("curve")
                && !isKind("share")
                && !isKind("number")
                && !isKind("whole number");
    }

    /** Those of which one stands there. */
    List<String> words() {
        return List.of(kind.substring("words(".length(), kind.length() - 1).split(" "));
    }
}
