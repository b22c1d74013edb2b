package brakewright.outside;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A table of expected values. Lines that begin with {@code #} name the source, the reason for the
 * tolerances and what else a reader must know; the line {@code # source:} is required.
 *
 * @param source as the header names it
 * @param rows in the order of the file
 */
record OutsideTable(String source, List<OutsideRow> rows) {

    private static final String COLUMNS = "id,quantity,kind,inputs,expected,tolerance,unit";
    private static final String SOURCE = "# source: ";
    private static final String TOLERANCE = "# tolerance: ";
    private static final Set<String> KINDS = Set.of("published", "from-memory", "derived");

    static OutsideTable read(String name) {
        String file = name + ".csv";
        try (InputStream stream = OutsideTable.class.getResourceAsStream(file)) {
            if (stream == null) {
                throw new IllegalArgumentException("no table " + file);
            }
            return parse(
                    file,
                    new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))
                            .lines()
                            .toList());
        } catch (IOException e) {
            throw new UncheckedIOException(file, e);
        }
    }

    private static OutsideTable parse(String file, List<String> lines) {
        String source =
                lines.stream()
                        .filter(line -> line.startsWith(SOURCE))
                        .map(line -> line.substring(SOURCE.length()).strip())
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException(file + " has no source"));
        if (lines.stream().noneMatch(line -> line.startsWith(TOLERANCE))) {
            throw new IllegalArgumentException(file + " gives no reason for its tolerances");
        }
        List<String> table =
                lines.stream().filter(line -> !line.startsWith("#") && !line.isBlank()).toList();
        if (!table.get(0).equals(COLUMNS)) {
            throw new IllegalArgumentException(file + " must have the columns " + COLUMNS);
        }
        List<OutsideRow> rows = new ArrayList<>();
        for (String line : table.subList(1, table.size())) {
            String[] cells = line.split(",", -1);
            if (cells.length != 7 || !KINDS.contains(cells[2])) {
                throw new IllegalArgumentException(file + ": cannot read the row " + line);
            }
            rows.add(
                    new OutsideRow(
                            cells[0], cells[1], cells[2], source, cells[3], cells[4], cells[5],
                            cells[6]));
        }
        return new OutsideTable(source, List.copyOf(rows));
    }
}
