package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where a wet road is what counts, it is told beside the dry one. */
class WetRoadTest {

    @Test
    void bothRoadsAreToldSideBySide() {
        assertThat(words(Answers.of("worksheet", Example.TRAIL_BOARD.path(), "--show", "all")))
                .contains("on a wet road")
                .contains("On a wet road, with a motor brake current of");
        assertThat(Example.TRAIL_BOARD.json())
                .contains("\"limit_wet\"")
                .contains("\"bound_by_wet\" : \"grip\"")
                .contains("\"recommended_wet\"");
    }

    @Test
    void smallWheelsOfABoardAreTakenForUrethane(@TempDir Path folder) throws IOException {
        String small = worksheet(folder, "wheel_diameter = \"97 mm\"");
        assertThat(small)
                .contains("vehicle.tyres urethane a board on wheels below 120 mm")
                .contains("vehicle.grip_wet 0.25 common-practice: own-choice");
        String told = worksheet(folder, "wheel_diameter = \"97 mm\"\ntyres = \"rubber\"");
        assertThat(told).contains("vehicle.grip_wet 0.5 published: noon-1994");
        String large = worksheet(folder, "wheel_diameter = \"175 mm\"\ntyres = \"urethane\"");
        assertThat(large).contains("vehicle.grip_wet 0.25 common-practice: own-choice");
    }

    private static String worksheet(Path folder, String line) throws IOException {
        BuildText text = BuildText.of(Example.TRAIL_BOARD);
        text.replace("vehicle", "wheel_diameter", line);
        Path file = folder.resolve("board.toml");
        Files.writeString(file, text.text());
        return words(CommandRun.of("worksheet", file.toString(), "--show", "all"));
    }

    private static String words(CommandRun run) {
        return run.out().replaceAll("\\s+", " ");
    }
}
