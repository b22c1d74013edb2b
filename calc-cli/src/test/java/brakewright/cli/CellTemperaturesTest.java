package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said of cell temperatures that hardly change, and of those that a file contradicts. */
class CellTemperaturesTest {

    private static final String IN_USE = "pack_temperature = [\"12 °C\", \"38 °C\"]";

    private static final Path BOARD = Path.of("examples/vineyard-trail-board.toml");

    /** A hundredth of a degree beyond 45 °C is not told as 45 °C. */
    @Test
    void cellsThatHardlyWarmAreNotSaidToComeToWhereTheyAre(@TempDir Path folder)
            throws IOException {
        String hot = "pack_temperature = [\"12 °C\", \"45 °C\"]\nstops_per_km = 2";
        assertThat(told(folder, IN_USE, hot))
                .contains("predicted to come from 45 to 45.1 °C; charging is permitted to 45 °C");
        assertThat(told(folder, IN_USE, hot.replace("= 2", "= 12")))
                .contains("predicted to come from 45 to 53 °C");
    }

    @Test
    void cellsAsColdAsTheAirBesideWarmerOnesInUseAreTold(@TempDir Path folder) throws IOException {
        assertThat(told(folder, "ambient = \"20 °C\"", "ambient = \"-4 °C\""))
                .contains("The cells' own temperature, -4 °C, lies beyond the 12 °C of")
                .contains("where pack.temperature is not told it is that of the air");
        assertThat(told(folder, "ambient = \"20 °C\"", "ambient = \"39 °C\""))
                .contains("The cells' own temperature, 39 °C, lies beyond the 38 °C of");
        assertThat(told(folder, "ambient = \"20 °C\"", "ambient = \"38 °C\""))
                .doesNotContain("The cells' own temperature");
    }

    private static String told(Path folder, String line, String instead) throws IOException {
        Path file = folder.resolve("board.toml");
        Files.writeString(file, Files.readString(BOARD).replace(line, instead));
        return CommandRun.of("worksheet", file.toString(), "--show", "findings")
                .out()
                .replaceAll("\\s+", " ");
    }
}
