package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.tables.CellEntry;
import brakewright.tables.ReferenceTables;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class TablesCommandTest {

    private static final ReferenceTables TABLES = ReferenceTables.load();

    static List<CellEntry> cells() {
        return TABLES.cells();
    }

    @Test
    void namesWhatThereIs() {
        CommandRun run = CommandRun.of("tables");
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("EDITION " + TABLES.version(), "cells", "sources");
    }

    @ParameterizedTest
    @ValueSource(strings = {"cells", "chemistries", "curves", "wires", "plugs", "fuses", "sources"})
    void everyTableIsListedAndEachOfItsRowsTold(String table) {
        CommandRun run = CommandRun.of("tables", table);
        assertThat(run.status()).isZero();
        for (String line : run.outLines()) {
            assertThat(line.length()).as(line).isLessThanOrEqualTo(100);
        }
    }

    /** By its id, by its print, and by its print without the maker. */
    @ParameterizedTest
    @MethodSource("cells")
    void everyCellIsToldWithTheSourceOfEachFigure(CellEntry cell) {
        CommandRun byId = CommandRun.of("tables", cell.id());
        assertThat(byId.status()).isZero();
        assertThat(byId.out().split("published|from-memory|common-practice", -1).length - 1)
                .isGreaterThanOrEqualTo(cell.figures().size());
        assertThat(CommandRun.of("tables", cell.name()).out()).isEqualTo(byId.out());
        String print = cell.name().substring(cell.name().lastIndexOf(' ') + 1);
        if (!cell.name().contains("unbranded")) {
            assertThat(CommandRun.of("tables", print).out()).isEqualTo(byId.out());
        }
    }

    @Test
    void cellsNearACapacityAndACurrentComeFirst() {
        List<String> lines =
                CommandRun.of("tables", "cells", "--capacity", "3000mAh", "--current", "20A")
                        .outLines();
        assertThat(lines.get(1)).startsWith("  lg-hg2 ");
        assertThat(lines.stream().filter(line -> line.matches("  [a-z].* (nmc|nca|lco|lfp)\\b.*")))
                .hasSize(10);
    }

    @Test
    void cellsAreFoundByAPartOfTheirPrint() {
        assertThat(CommandRun.of("tables", "--find", "21700-50").out())
                .contains("samsung-50e", "samsung-50s")
                .doesNotContain("samsung-30q");
    }

    @Test
    void whatIsNotThereIsRefused() {
        CommandRun misspelt = CommandRun.of("tables", "smasung-30q");
        assertThat(misspelt.status()).isEqualTo(2);
        assertThat(misspelt.err()).contains("the nearest is samsung-30q");
        assertThat(CommandRun.of("tables", "--find", "zzz").status()).isEqualTo(2);
        assertThat(CommandRun.of("tables", "plugs", "--find", "q").status()).isEqualTo(2);
        CommandRun unit = CommandRun.of("tables", "--capacity", "3km");
        assertThat(unit.status()).isEqualTo(2);
        assertThat(unit.err()).contains("--capacity", "for example 3.0Ah");
    }

    /** The print on a wrap names the cell in a build file, too. */
    @Test
    void aBuildFileMayNameACellByItsPrint() {
        BuildText file = BuildText.of(Example.TRAIL_BOARD);
        CommandRun byId = CommandRun.worksheet(file.text());
        String id = file.text().replaceAll("(?s).*\\ncell += +\"([^\"]+)\".*", "$1");
        String name = TABLES.cell(id).orElseThrow().name();
        String print = name.substring(name.indexOf(' ') + 1);
        CommandRun byPrint =
                CommandRun.worksheet(file.text().replace('"' + id + '"', '"' + print + '"'));
        assertThat(byPrint.err()).isEmpty();
        assertThat(byPrint.out()).isEqualTo(byId.out());
    }
}
