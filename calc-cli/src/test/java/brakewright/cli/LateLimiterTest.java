package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a hard grab sends before the regen limiter acts, in words and numbers. */
class LateLimiterTest {

    @Test
    void aTripThatDoesNotWaitOpensAndTheSetAvoidsIt(@TempDir Path folder) throws IOException {
        CommandRun run = worksheet(folder, "charge_trip_delay = \"9 ms\"");
        assertThat(run.status()).isEqualTo(1);
        assertThat(words(run))
                .contains("Pack and parts: OUTSIDE LIMITS")
                .contains(
                        "In a hard grab the regen limiter is late: for 20 ms up to 24.9 A go into")
                .contains("and opens after 9.0 ms: the electric brake vanishes")
                .contains("late regen limiter Pack discharge")
                .contains("Entered together, pack and parts are within limits");
    }

    @Test
    void aTripThatWaitsOrMayWaitIsACaution(@TempDir Path folder) throws IOException {
        assertThat(words(worksheet(folder, "charge_trip_delay = \"50 ms\"")))
                .contains("Pack and parts: CONDITIONAL")
                .contains("it waits 50 ms, no less than that, and should not open")
                .doesNotContain("and opens after");
        assertThat(words(worksheet(folder, "")))
                .contains("Pack and parts: CONDITIONAL")
                .contains("how long it waits is not given (typically 9.0 ms)")
                .contains("controller.regen_response 0.02 s common-practice: own-choice");
    }

    private static String words(CommandRun run) {
        return run.out().replaceAll("\\s+", " ");
    }

    private static CommandRun worksheet(Path folder, String line) throws IOException {
        BuildText text = BuildText.of(Example.TRAIL_BOARD);
        text.replace("pack.protection", "charge_trip", "charge_trip = \"20 A\"\n" + line);
        Path file = folder.resolve("board.toml");
        Files.writeString(file, text.text());
        return CommandRun.of("worksheet", file.toString(), "--show", "all");
    }
}
