package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The example build files, with the verdict that each is made to have. */
enum Example {
    TRAIL_BOARD("vineyard-trail-board", "conditional", 0),
    SCOOTER("ferry-dock-scooter", "outside-limits", 1),
    TRIKE("parcel-trike", "within-limits", 0),
    TOUR_BOARD("salt-flat-tour-board", "within-limits", 0);

    private final String name;
    private final String verdict;
    private final int status;
    private final Map<List<String>, String> sheets = new ConcurrentHashMap<>();

    Example(String name, String verdict, int status) {
        this.name = name;
        this.verdict = verdict;
        this.status = status;
    }

    String path() {
        return Path.of("examples", name + ".toml").toString();
    }

    String verdict() {
        return verdict;
    }

    int status() {
        return status;
    }

    String text() {
        try {
            return Files.readString(Path.of(path()));
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /**
     * The worksheet as JSON text, with options; each is written once for all tests of a process, as
     * {@link WorksheetCommandTest} holds that it is the same each time.
     */
    String json(String... options) {
        return sheets.computeIfAbsent(List.of(options), this::written);
    }

    private String written(List<String> options) {
        List<String> all = new ArrayList<>(List.of("worksheet", path(), "--format", "json"));
        all.addAll(options);
        CommandRun run = CommandRun.of(all.toArray(String[]::new));
        assertThat(run.status()).as(run.err()).isIn(0, 1);
        return run.out();
    }
}
