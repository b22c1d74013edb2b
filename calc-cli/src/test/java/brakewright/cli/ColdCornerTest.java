package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Air that may be freezing: of two corners at which a charge current is too much, the colder. */
class ColdCornerTest {

    private static final Path SCOOTER = Path.of("examples/ferry-dock-scooter.toml");

    /** At 27 °C braking is safe below 70 % charge but for the trip; at −3 °C at no charge. */
    @Test
    void ofTwoCornersThatAreOutsideTheOneWhereMoreIsExceededCounts(@TempDir Path folder)
            throws IOException {
        assertThat(told(folder, ""))
                .contains("Exceeded whatever the charge by what is set")
                .contains("temperature window")
                .doesNotContain("cells at 27 °C");
        assertThat(told(folder, "pack_temperature = [\"10 °C\", \"30 °C\"]\n"))
                .contains("Exceeded whatever the charge by what is set")
                .contains("temperature window");
    }

    private static String told(Path folder, String line) throws IOException {
        String text =
                Files.readString(SCOOTER)
                        .replace("ambient = \"12 °C\"", "ambient = \"12 °C ± 15 K\"\n" + line);
        Path file = Files.writeString(folder.resolve("scooter.toml"), text);
        return CommandRun.of("worksheet", file.toString()).out().replaceAll("\\s+", " ");
    }
}
