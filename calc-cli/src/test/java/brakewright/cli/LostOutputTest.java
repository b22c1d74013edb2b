package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What does not arrive is told, on the screen and by the status. */
class LostOutputTest {

    /** A disk with room for some letters. */
    private static final class FullDisk extends Writer {

        private int room;

        FullDisk(int room) {
            this.room = room;
        }

        @Override
        public void write(char[] letters, int from, int count) throws IOException {
            room -= count;
            if (room < 0) {
                throw new IOException("No space left on device");
            }
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }

    private static CommandRun into(Writer disk, String command) {
        StringWriter err = new StringWriter();
        String[] arguments = command.split(" ");
        int status = Main.run(new PrintWriter(disk), new PrintWriter(err), arguments);
        return new CommandRun(status, "", err.toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "worksheet",
                "worksheet --format json",
                "check examples/ferry-dock-scooter.toml --with pack_regen_current=2A",
                "check examples/ferry-dock-scooter.toml --with speed_cap=3m/s --format json",
                "compare examples/vineyard-trail-board.toml",
                "compare examples/vineyard-trail-board.toml --format json",
                "compare examples/vineyard-trail-board.toml --format csv",
                "compare examples/vineyard-trail-board.toml --format markdown",
                "solve examples/parcel-trike.toml --for speed_cap",
                "sweep examples/parcel-trike.toml --vary speed_cap=4m/s..5m/s/2",
                "sweep examples/parcel-trike.toml --vary speed_cap=4m/s..5m/s/2 --format json",
                "explain examples/parcel-trike.toml speed-cap",
                "explain examples/parcel-trike.toml range",
                "--help",
                "--version",
                "help",
                "worksheet --help"
            })
    void isNoSuccess(String command) {
        for (int room : new int[] {0, 5}) {
            CommandRun run = into(new FullDisk(room), command);
            assertThat(run.status()).isEqualTo(2);
            assertThat(run.err()).contains("standard output: the result cannot be written");
        }
    }

    @Test
    void isSuccessWhereEverythingArrives() {
        assertThat(into(new FullDisk(1_000_000), "worksheet")).isEqualTo(new CommandRun(0, "", ""));
    }

    /** A device is never replaced by a file of its name. */
    @Test
    void isNoFileInPlaceOfADevice() {
        Path device = Path.of("/dev/null");
        Assumptions.assumeTrue(
                Files.exists(device) && !Files.isRegularFile(device), "NOT CHECKED: no devices");
        CommandRun run = CommandRun.of("worksheet", "--output", device.toString(), "--force");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("no ordinary file");
        assertThat(Files.isRegularFile(device)).isFalse();
    }
}
