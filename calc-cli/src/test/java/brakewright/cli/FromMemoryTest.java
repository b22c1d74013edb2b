package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.BuildFileException;
import brakewright.cli.doubt.Remembered;
import brakewright.tables.CellEntry;
import brakewright.tables.ReferenceTables;
import brakewright.tables.SourceKind;
import brakewright.worksheet.Worksheet;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A verdict that rests on what is only remembered says so, and names it. */
class FromMemoryTest {

    private static final ReferenceTables TABLES = ReferenceTables.load();

    static List<CellEntry> cells() {
        return TABLES.cells();
    }

    private static BuildFile read(String text) throws BuildFileException {
        return BuildFile.read(text.getBytes(StandardCharsets.UTF_8), TABLES);
    }

    private static List<String> remembered(BuildFile file) {
        return Remembered.in(file, Worksheet.of(file.build()));
    }

    /** Whatever the cell: its resistance is named exactly where its figure is from memory. */
    @ParameterizedTest
    @MethodSource("cells")
    void theResistanceOfACellIsNamedWhereItIsRemembered(CellEntry cell) throws BuildFileException {
        BuildFile file =
                read(
                        Example.TRAIL_BOARD
                                .text()
                                .replace("\"samsung-30q\"", "\"" + cell.id() + "\""));
        assertThat(remembered(file).contains("pack.cell.resistance"))
                .isEqualTo(cell.figure("resistance").kind() == SourceKind.FROM_MEMORY);
    }

    @ParameterizedTest
    @EnumSource(Example.class)
    void thePageAndTheDataNameTheSame(Example example) throws BuildFileException {
        List<String> names = remembered(read(example.text()));
        String page = Answers.of("worksheet", example.path()).out().replaceAll("\\s+", " ");
        assertThat(page.contains("It rests on figures from memory: ")).isEqualTo(!names.isEmpty());
        assertThat(page).contains(String.join(", ", names));
        assertThat(JsonMaps.read(example.json()).get("verdict_from_memory")).isEqualTo(names);
    }

    @Test
    void whatTheFileSaysIsNotRemembered() throws BuildFileException {
        String remembered = Example.SCOOTER.text();
        assertThat(remembered(read(remembered)))
                .containsExactly("pack.cell.resistance", "vehicle.rolling_resistance");
        String told =
                remembered.replaceFirst(
                        "(?m)^\\[vehicle\\]$", "[vehicle]\nrolling_resistance = 0.02");
        assertThat(remembered(read(told))).containsExactly("pack.cell.resistance");
    }

    @Test
    void ofSeveralPacksEachIsNamed() throws BuildFileException {
        assertThat(
                        remembered(
                                read(
                                        Example.TOUR_BOARD
                                                .text()
                                                .replace("\"molicel-p42a\"", "\"samsung-40t\""))))
                .contains("packs.1.cell.resistance", "packs.2.cell.resistance");
    }
}
