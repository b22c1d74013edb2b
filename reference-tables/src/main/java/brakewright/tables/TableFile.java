package brakewright.tables;

import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Reads one comma-separated file: comment lines, a line of column names, rows of as many fields.
 */
final class TableFile {

    private TableFile() {}

    static List<TableRow> read(
            Function<String, @Nullable Reader> files, String table, String columns) {
        Reader text = files.apply(table);
        if (text == null) {
            throw new TableException(table + ": the table is missing");
        }
        try (CsvReader<CsvRecord> lines =
                CsvReader.builder().commentStrategy(CommentStrategy.SKIP).ofCsvRecord(text)) {
            return rows(table, lines, columns);
        } catch (CsvParseException | UncheckedIOException | IOException broken) {
            throw new TableException(table + ": cannot be read: " + broken.getMessage(), broken);
        }
    }

    private static List<TableRow> rows(String table, Iterable<CsvRecord> lines, String columns) {
        Map<String, Integer> places = new HashMap<>();
        List<TableRow> rows = new ArrayList<>();
        for (CsvRecord line : lines) {
            if (!places.isEmpty()) {
                rows.add(new TableRow(table, line.getStartingLineNumber(), places, line));
                continue;
            }
            String found = String.join(",", line.getFields());
            if (!found.equals(columns)) {
                throw new TableException(
                        table
                                + ", line "
                                + line.getStartingLineNumber()
                                + ": expected the columns "
                                + columns
                                + ", was "
                                + found);
            }
            for (int i = 0; i < line.getFieldCount(); i++) {
                places.put(line.getField(i), i);
            }
        }
        if (rows.isEmpty()) {
            throw new TableException(table + ": expected at least one row");
        }
        return rows;
    }
}
