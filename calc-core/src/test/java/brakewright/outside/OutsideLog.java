package brakewright.outside;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Every outside check that one process has made when its tests end. It is written to a file of its
 * own; whoever ends brings all that the run has written so far together in one table.
 */
final class OutsideLog implements AutoCloseable {

    private static final Path FILE = Path.of("target", "outside-checks.csv");

    /** Each run has a folder of its own, so that nothing of an earlier one is taken along. */
    private static final Path PARTS =
            Path.of(
                    "target",
                    "outside-checks",
                    System.getProperty("test.run", Long.toString(ProcessHandle.current().pid())));

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

    /** What a row compares with is no part of the project, and is not there. */
    synchronized void withdraw(OutsideRow row) {
        opened.remove(row.id());
    }

    @Override
    public synchronized void close() throws IOException {
        if (ASKED_ONE_BY_ONE) {
            return;
        }
        List<String> own =
                lines.values().stream()
                        .map(
                                line ->
                                        line.stream()
                                                .map(OutsideLog::quoted)
                                                .collect(Collectors.joining(",")))
                        .toList();
        Files.createDirectories(PARTS);
        Path lock = PARTS.resolve("lock");
        try (FileChannel channel =
                        FileChannel.open(
                                lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                FileLock held = channel.lock()) {
            Files.write(Files.createTempFile(PARTS, "part", ".csv"), own, StandardCharsets.UTF_8);
            merge();
        }
        opened.removeAll(lines.keySet());
        if (!opened.isEmpty()) {
            throw new IllegalStateException("rows that were never compared: " + opened);
        }
    }

    /** Brings the parts that are there so far together, in the order of their ids. */
    private static void merge() throws IOException {
        NavigableMap<String, String> all = new TreeMap<>();
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(PARTS, "*.csv")) {
            for (Path part : parts) {
                for (String line : Files.readAllLines(part, StandardCharsets.UTF_8)) {
                    String id = line.substring(0, line.indexOf(','));
                    if (all.put(id, line) != null) {
                        throw new IllegalStateException("two checks use the row " + id);
                    }
                }
            }
        }
        List<String> text = new ArrayList<>();
        text.add(String.join(",", COLUMNS));
        text.addAll(all.values());
        Files.write(FILE, text, StandardCharsets.UTF_8);
    }

    private static String quoted(String cell) {
        return Stream.of(",", "\"", "\n", "\r").anyMatch(cell::contains)
                ? '"' + cell.replace("\"", "\"\"") + '"'
                : cell;
    }
}
