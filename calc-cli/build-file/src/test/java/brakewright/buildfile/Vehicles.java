package brakewright.buildfile;

import brakewright.tables.ReferenceTables;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The build files of the examples and of the tests of the command line. */
final class Vehicles {

    static final ReferenceTables TABLES = ReferenceTables.load();

    private static final List<Path> FOLDERS =
            List.of(
                    Path.of("..", "examples"),
                    Path.of("..", "src", "test", "resources", "brakewright", "cli", "vehicles"));

    private Vehicles() {}

    static List<Path> all() {
        return FOLDERS.stream().flatMap(Vehicles::in).sorted().toList();
    }

    private static Stream<Path> in(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.toList().stream();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static String text(Path path) {
        try {
            return Files.readString(path);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static BuildFile read(String text) throws BuildFileException {
        return BuildFile.read(text.getBytes(StandardCharsets.UTF_8), TABLES);
    }
}
