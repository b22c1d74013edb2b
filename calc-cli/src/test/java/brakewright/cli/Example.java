package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The example build files, with the verdict that each is made to have. */
enum Example {
    TRAIL_BOARD("vineyard-trail-board", "conditional", 0),
    SCOOTER("ferry-dock-scooter", "outside-limits", 1),
    TRIKE("parcel-trike", "within-limits", 0),
    TOUR_BOARD("salt-flat-tour-board", "within-limits", 0);

    private final String name;
    private final String verdict;
    private final int status;

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

    /** The worksheet as JSON text, with options. */
    String json(String... options) {
        List<String> all = new ArrayList<>(List.of("worksheet", path(), "--format", "json"));
        all.addAll(List.of(options));
        CommandRun run = Answers.of(all.toArray(String[]::new));
        assertThat(run.status()).as(run.err()).isIn(0, 1);
        return run.out();
    }
}
