package brakewright.buildfile;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A row of {@code units.csv}, whose header names the sources.
 *
 * @param dimension what it is a unit of
 * @param symbol as written behind a number
 * @param factor to the calculation unit
 * @param offset to the calculation unit
 */
record ListedUnit(Dimension dimension, String symbol, double factor, double offset) {

    static List<ListedUnit> all() {
        try (InputStream in = ListedUnit.class.getResourceAsStream("units.csv")) {
            if (in == null) {
                throw new IllegalStateException("units.csv is missing");
            }
            BufferedReader reader =
                    new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            return reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("dimension,"))
                    .map(ListedUnit::of)
                    .toList();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static ListedUnit of(String line) {
        String[] cells = line.split(",");
        return new ListedUnit(
                Dimension.valueOf(cells[0]), cells[1], number(cells[2]), number(cells[3]));
    }

    private static double number(String text) {
        String[] parts = text.split("/");
        return parts.length == 1
                ? Double.parseDouble(text)
                : Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]);
    }
}
