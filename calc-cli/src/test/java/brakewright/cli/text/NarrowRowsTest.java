package brakewright.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NarrowRowsTest {

    private static final List<String> TABLE =
            List.of("  name          value     held down by", "  current        12 A     the fuse");

    @Test
    void whatFitsStaysAsItIs() {
        assertThat(NarrowRows.of(TABLE, 40)).isEqualTo(TABLE);
    }

    @Test
    void takesTheWidestGapFirstAndKeepsRowsAligned() {
        assertThat(NarrowRows.of(TABLE, 34))
                .containsExactly(
                        "  name       value    held down by", "  current     12 A    the fuse");
    }

    @Test
    void leavesOneBlankBetweenColumns() {
        assertThat(NarrowRows.of(TABLE, 28))
                .containsExactly("  name    value held down by", "  current  12 A the fuse");
    }

    @Test
    void wordsGoOnBelowInTheirOwnColumnAndNumbersKeepTheirLine() {
        assertThat(NarrowRows.of(TABLE, 25))
                .containsExactly(
                        "  name    value held down",
                        "                by",
                        "  current  12 A the fuse");
    }

    @Test
    void aNumberStaysWithItsUnitAndWhatStandsAtTheRightStaysThere() {
        List<String> table =
                List.of(
                        "  motor brake current      within limits   outside limits",
                        "  half way                        27.2 m           28.4 m");
        assertThat(NarrowRows.of(table, 34))
                .containsExactly(
                        "  motor      within limits outside",
                        "    brake                  limits",
                        "    current",
                        "  half way          27.2 m  28.4 m");
    }

    @Test
    void whereAWordWouldHaveToBeBrokenItStaysTooWide() {
        assertThat(NarrowRows.of(TABLE, 10))
                .containsExactly(
                        "  name    value held",
                        "                down",
                        "                by",
                        "  current  12 A the",
                        "                fuse");
    }

    @Test
    void linesOfOneColumnAreNoTable() {
        List<String> lines = List.of("  one word after another and no end of it");
        assertThat(NarrowRows.of(lines, 20)).isEqualTo(lines);
    }
}
