package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How soon the protection opens in a hard pull, and that one which waits stays closed. */
class HardPullTripTest {

    private static final Path VEHICLE =
            Path.of("src/test/resources/brakewright/cli/vehicles/late-regen-limiter.toml");

    @Test
    void withoutADelayOfItsOwnTheTypicalOneIsTold(@TempDir Path folder) throws IOException {
        assertThat(words(shown(folder, "")))
                .contains("In a pull of 25 s, cells at 20 °C, the protection's under-voltage trip")
                .contains("opens soonest at 11.3 % charge: typically after 38 ms. Drive and")
                .contains("electric brake are gone then, typically until a charger is connected.")
                .contains("the protection disconnects at");
    }

    @Test
    void aTripThatWaitsLongerThanThePullStaysClosed(@TempDir Path folder) throws IOException {
        assertThat(words(shown(folder, "cell_undervoltage_trip_delay = \"26 s\"\n")))
                .contains("In a pull of 25 s no trip that is told opens.")
                .doesNotContain("before the controllers have faded the drive");
    }

    @Test
    void aDelayThatIsToldIsTakenAsItIs(@TempDir Path folder) throws IOException {
        Path file = vehicle(folder, "cell_undervoltage_trip_delay = \"2 s\"\n");
        assertThat(words(CommandRun.of("worksheet", file.toString(), "--show", "sag")))
                .contains("opens soonest at 11.3 % charge: after 2.0 s.");
        assertThat(words(CommandRun.of("explain", file.toString(), "hard-pull-trip")))
                .contains("Protection opens after: 2 s.")
                .contains("t_d for which that trip waits 2 s")
                .contains("such a trip closes again when a charger is connected");
    }

    /** Pulling takes the load that keeps a current trip open; braking does not close its own. */
    @Test
    void whatATripWaitsForBeforeItClosesIsTold(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("board.toml");
        Files.writeString(file, Files.readString(VEHICLE).replace("\"80 A\"", "\"5 A\""));
        assertThat(words(CommandRun.of("worksheet", file.toString(), "--show", "sag")))
                .contains("gone then, typically until the load is off.");
        assertThat(words(CommandRun.of("explain", file.toString(), "hard-pull-trip")))
                .contains("such a trip closes again once the load is off");
        assertThat(words(CommandRun.of("explain", VEHICLE.toString(), "first-stop-trip")))
                .contains("taken to stay open to the end of the stop");
    }

    private static String words(CommandRun run) {
        return run.out().replaceAll("\\s+", " ");
    }

    private static CommandRun shown(Path folder, String line) throws IOException {
        return CommandRun.of(
                "worksheet", vehicle(folder, line).toString(), "--show", "sag,findings");
    }

    private static Path vehicle(Path folder, String line) throws IOException {
        String text =
                Files.readString(VEHICLE)
                        .replace("cell_undervoltage_trip =", line + "cell_undervoltage_trip =");
        return Files.writeString(folder.resolve("board.toml"), text);
    }
}
