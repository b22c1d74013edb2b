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
        assertThat(NarrowRows.of(TABLE, 10))
                .containsExactly("  name    value held down by", "  current  12 A the fuse");
    }
}
