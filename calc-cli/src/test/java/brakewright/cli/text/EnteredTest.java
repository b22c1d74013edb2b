package brakewright.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What to enter, and what helps at the first stop, where the cells are cold. */
class EnteredTest {

    private static final String ENTER = "WHAT TO ENTER, ALL OF IT TOGETHER";
    private static final String FIRST = "THE FIRST STOP AFTER A FULL CHARGE";

    /** In the cold band of this cell a fifth of its charge rating is permitted. */
    private static Printed coldBoard() {
        return Printed.of(Printed.BOARD.replace("[\"12 °C\", ", "[\"5 °C\", "));
    }

    @Test
    void aSettingThatColdCellsDoNotBearIsNotOk() {
        Printed cold = coldBoard();
        assertThat(cold.line(ENTER, "with cells at 5 °C")).contains("over", "temperature window");
        assertThat(cold.line(ENTER, "Pack regen")).doesNotContain(" ok ");
        Printed warm = Printed.of(Printed.BOARD);
        assertThat(warm.line(ENTER, "Pack regen")).contains(" ok ");
        assertThat(warm.prose(ENTER)).doesNotContain("with cells at");
    }

    @Test
    void warmthIsOfferedWhereTheTemperatureBindsAndATaperWhereAVoltageDoes() {
        assertThat(coldBoard().prose(FIRST)).contains("what helps Warm the cells to 10 °C or more");
        Printed half =
                Printed.of(
                        Printed.BOARD
                                .replace("[\"12 °C\", ", "[\"5 °C\", ")
                                .replace("charge_from = \"100 %\"", "charge_from = \"60 %\""));
        assertThat(half.prose(FIRST))
                .contains("Warm the cells to 10 °C or more before the first stop.")
                .doesNotContain("taper");
        assertThat(Printed.of(Printed.BOARD).prose(FIRST))
                .contains("what helps Charge to", "set a high-voltage taper", "a taper only above")
                .doesNotContain("Warm the cells")
                .doesNotContain("Each of them");
    }

    @Test
    void aRegenOfNothingIsNotOfferedAsASetting() {
        Printed full =
                Printed.of(
                        Printed.BOARD.replace(
                                "cell_overvoltage_trip = \"4.25 V\"",
                                "cell_overvoltage_trip = \"4.2 V\""));
        assertThat(full.prose(FIRST))
                .contains("no current into the pack is safe")
                .doesNotContain("current to 0.0 A");
    }

    @Test
    void whatIsSetNowDoesNotMoveWhatIsToBeEntered() {
        Printed hungry =
                Printed.of(
                        Printed.BOARD.replace(
                                "pack_discharge_current = \"18 A\"",
                                "pack_discharge_current = \"90 A\""));
        Printed board = Printed.of(Printed.BOARD);
        for (String row : new String[] {"Pack discharge", "Low-voltage taper"}) {
            assertThat(hungry.line(ENTER, row).substring(0, 47))
                    .isEqualTo(board.line(ENTER, row).substring(0, 47));
        }
        assertThat(hungry.line(ENTER, "Pack discharge")).contains(" over ");
    }
}
