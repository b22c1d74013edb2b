package brakewright.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.cli.words.UnitSystem;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What heads the columns and rows of tables. */
class ShownTest {

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.3, 1.0, 1.67, 2.03, 6.72, 6.8, 8.9, 9.2, 16.7, 33.0, 83.0})
    void noTwoColumnsHaveTheSameHead(double top) {
        for (UnitSystem units : UnitSystem.values()) {
            for (int columns = 1; columns <= 9; columns++) {
                double[] speeds = ShownSpeeds.upTo(units, top, columns);
                assertThat(speeds).hasSizeBetween(1, columns + 1).isSorted();
                assertThat(speeds[speeds.length - 1])
                        .isEqualTo(units.metresPerSecond(units.speed(top)));
                assertThat(
                                Arrays.stream(speeds)
                                        .mapToObj(speed -> ShownSpeeds.head(units, speed, top)))
                        .doesNotHaveDuplicates();
            }
        }
    }

    @Test
    void bothEndsOfTheChargeInUseAreShownAndNoneTwice() {
        Printed printed =
                Printed.of(
                        Printed.BOARD
                                .replace("charge_from = \"100 %\"", "charge_from = \"70 %\"")
                                .replace("charge_to = \"25 %\"", "charge_to = \"15 %\""));
        for (String heading :
                new String[] {"THE PACK OVER ITS CHARGE", "THE BRAKE OVER SPEED AND CHARGE"}) {
            assertThat(printed.line(heading, "70 %")).isNotEmpty();
            assertThat(printed.line(heading, "15 %")).isNotEmpty();
            assertThat(printed.section(heading).stream().filter(line -> line.contains(" 70 % ")))
                    .hasSizeLessThan(3);
        }
        assertThat(
                        printed.section("THE VOLTAGE UNDER LOAD").stream()
                                .filter(line -> line.startsWith("  70 %")))
                .as("once in either table")
                .hasSizeLessThan(3);
    }

    @Test
    void textIsBrokenAtBlanksAndHyphensButNotBeforeAUnit() {
        assertThat(Columns.wrap("voltage ceiling at 100 % charge", 20))
                .containsExactly("voltage ceiling at", "100 % charge");
        assertThat(Columns.wrap("over-voltage", 8)).containsExactly("over-", "voltage");
        assertThat(Columns.wrap("abcdefghij", 4)).containsExactly("abcd", "efgh", "ij");
        assertThat(Columns.wrap("", 4)).containsExactly("");
    }
}
