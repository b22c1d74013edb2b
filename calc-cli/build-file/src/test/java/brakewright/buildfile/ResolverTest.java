package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.assembly.Resolved;
import brakewright.spec.Input;
import brakewright.spec.WhichPack;
import brakewright.tables.ReferenceTables;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is taken where the scooter's file, with its hub motor, says nothing. */
class ResolverTest {

    private static final ReferenceTables TABLES = ReferenceTables.load();

    private static Resolved resolved(Input input, String line, String instead)
            throws IOException, BuildFileException {
        String text = Files.readString(Path.of("..", "examples", "ferry-dock-scooter.toml"));
        assertThat(text).contains(line);
        BuildFile file =
                BuildFile.read(
                        text.replace(line, instead).getBytes(StandardCharsets.UTF_8), TABLES);
        return file.find(input, WhichPack.WHOLE).orElseThrow();
    }

    @ParameterizedTest
    @CsvSource({
        "reduction = 1, 1, derived",
        "reduction = 1.0, 1, derived",
        "reduction = 1.05, 0.95, common-practice",
        "reduction = '\"1 ± 1 %\"', 0.95, common-practice"
    })
    void aDirectDriveHasNoStageThatLoses(String reduction, double efficiency, String source)
            throws IOException, BuildFileException {
        Resolved taken =
                resolved(
                        Input.DRIVE_EFFICIENCY,
                        "reduction = 1\n",
                        reduction.replace("'", "") + "\n");
        assertThat(taken.number()).isEqualTo(efficiency);
        assertThat(taken.source()).isEqualTo(source);
        assertThat(taken.from()).isEqualTo(Resolved.From.ASSUMED);
    }

    @Test
    void anEfficiencyThatIsGivenStays() throws IOException, BuildFileException {
        assertThat(
                        resolved(
                                        Input.DRIVE_EFFICIENCY,
                                        "reduction = 1\n",
                                        "reduction = 1\nefficiency = \"97 %\"\n")
                                .number())
                .isEqualTo(0.97);
    }

    /** The share stands in the tables, with its provenance. */
    @Test
    void theMassCentreIsAShareOfTheWheelbase() throws IOException, BuildFileException {
        Resolved taken =
                resolved(
                        Input.VEHICLE_MASS_CENTRE_FROM_FRONT,
                        "mass_centre_from_front = \"0.48 m\"\n",
                        "");
        var row =
                TABLES.defaults().stream()
                        .filter(each -> each.key().equals("vehicle.mass_centre_from_front"))
                        .findFirst()
                        .orElseThrow();
        assertThat(taken.number()).isEqualTo(row.value() * 0.84);
        assertThat(taken.source()).isEqualTo(row.figure().source());
        assertThat(taken.note()).isEqualTo(row.figure().note());
    }
}
