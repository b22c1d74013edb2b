package brakewright.buildfile;

import brakewright.spec.Input;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;

/** Reads the table of keys: one row for every input, or the line that is wrong. */
final class KeyTable {

    static final String NAME = "keys.csv";

    private KeyTable() {}

    static Map<Input, Schema.Entry> load() {
        InputStream bytes = KeyTable.class.getResourceAsStream(NAME);
        if (bytes == null) {
            throw new IllegalStateException(NAME + ": the table is missing");
        }
        return read(new InputStreamReader(bytes, StandardCharsets.UTF_8));
    }

    /**
     * Reads a table.
     *
     * @param text of the table; closed in the end
     * @return its entries, in the order of their inputs
     * @throws IllegalStateException if it cannot be read, a row is wrong or an input has none
     */
    static Map<Input, Schema.Entry> read(Reader text) {
        try (CsvReader<CsvRecord> lines =
                CsvReader.builder()
                        .commentStrategy(CommentStrategy.SKIP)
                        .allowMissingFields(true)
                        .allowExtraFields(true)
                        .ofCsvRecord(text)) {
            Map<Input, Schema.Entry> entries = entries(lines);
            for (Input input : Input.values()) {
                if (!entries.containsKey(input)) {
                    throw new IllegalStateException(NAME + ": no row for " + input.key());
                }
            }
            return entries;
        } catch (CsvParseException | UncheckedIOException | IOException broken) {
            throw new IllegalStateException(
                    NAME + ": cannot be read: " + broken.getMessage(), broken);
        }
    }

    private static Map<Input, Schema.Entry> entries(Iterable<CsvRecord> lines) {
        Map<Input, Schema.Entry> entries = new EnumMap<>(Input.class);
        boolean isHead = true;
        for (CsvRecord line : lines) {
            KeyRow row = new KeyRow(line);
            if (isHead) {
                row.checkHead();
                isHead = false;
                continue;
            }
            Schema.Entry entry = row.entry();
            if (entries.put(entry.input(), entry) != null) {
                throw row.fault(KeyRow.Column.KEY, "a key that no earlier row has");
            }
        }
        return entries;
    }
}
