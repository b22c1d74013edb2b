package brakewright.outside;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Every outside check of a test run; written to a file when the run ends. */
final class OutsideLog implements AutoCloseable {

    private static final Path FILE = Path.of("target", "outside-checks.csv");

    /** A mutation run asks for one row at a time: the others are then not forgotten. */
    private static final boolean ASKED_ONE_BY_ONE = System.getProperty("mutation.tries") != null;

    private static final List<String> COLUMNS =
            List.of(
                    "id",
                    "quantity",
                    "source",
                    "kind",
                    "inputs",
                    "expected",
                    "got",
                    "tolerance",
                    "unit");

    private final NavigableMap<String, List<String>> lines = new TreeMap<>();
    private final NavigableSet<String> opened = new TreeSet<>();

    synchronized OutsideCase open(OutsideRow row) {
        if (!opened.add(row.id())) {
            throw new IllegalStateException("two checks use the row " + row.id());
        }
        return new OutsideCase(row, this);
    }

    synchronized void record(OutsideRow row, double got) {
        List<String> earlier =
                lines.put(
                        row.id(),
                        List.of(
                                row.id(),
                                row.quantity(),
                                row.source(),
                                row.kind(),
                                row.inputs(),
                                row.expected(),
                                Double.toString(got),
                                row.tolerance(),
                                row.unit()));
        if (earlier != null) {
            throw new IllegalStateException("the row " + row.id() + " was checked twice");
        }
    }

    @Override
    public synchronized void close() throws IOException {
        if (ASKED_ONE_BY_ONE) {
            return;
        }
        List<String> text = new ArrayList<>();
        text.add(String.join(",", COLUMNS));
        for (Map.Entry<String, List<String>> line : lines.entrySet()) {
            text.add(
                    line.getValue().stream()
                            .map(OutsideLog::quoted)
                            .collect(Collectors.joining(",")));
        }
        Files.createDirectories(FILE.getParent());
        Files.write(FILE, text, StandardCharsets.UTF_8);
        opened.removeAll(lines.keySet());
        if (!opened.isEmpty()) {
            throw new IllegalStateException("rows that were never compared: " + opened);
        }
    }

    private static String quoted(String cell) {
        return Stream.of(",", "\"", "\n", "\r").anyMatch(cell::contains)
                ? '"' + cell.replace("\"", "\"\"") + '"'
                : cell;
    }
}
