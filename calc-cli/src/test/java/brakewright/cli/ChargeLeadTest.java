package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A protection on the charge lead alone is no protection of the ride, and the sheet says so. */
class ChargeLeadTest {

    @Test
    void nothingCutsTheBrakeAndNothingSavesTheCells(@TempDir Path folder) throws IOException {
        CommandRun run = worksheet(folder, "path = \"charge-lead\"");
        assertThat(run.status()).isZero();
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("nothing stops the cells from being overcharged by it")
                .contains("voltage ceiling")
                .contains("It protects neither way.")
                .doesNotContain("trip opens, typically")
                .doesNotContain("the protection opens while braking")
                .doesNotContain("brake vanishes");
    }

    @Test
    void theUsualPlaceIsInTheWayOfAllCurrents(@TempDir Path folder) throws IOException {
        assertThat(worksheet(folder, "path = \"both\"").out().replaceAll("\\s+", " "))
                .contains("The protection may open, and the electric brake vanishes.")
                .doesNotContain("charge lead");
    }

    @Test
    void refusesAPathThatItDoesNotKnow(@TempDir Path folder) throws IOException {
        CommandRun run = worksheet(folder, "path = \"discharge-lead\"");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("pack.protection.path").contains("charge-lead");
    }

    private static CommandRun worksheet(Path folder, String line) throws IOException {
        BuildText text = BuildText.of(Example.TRAIL_BOARD);
        text.addBelow("pack.protection", "charge_trip", line);
        Path file = folder.resolve("board.toml");
        Files.writeString(file, text.text());
        return CommandRun.of("worksheet", file.toString(), "--show", "all");
    }
}
