package brakewright.cli.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.cli.words.Numbers;
import brakewright.operation.Sag;
import brakewright.spec.Taper;
import brakewright.worksheet.PackRow;
import brakewright.worksheet.SagSheet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SagTableTest {

    private static final String HEADING = "THE VOLTAGE UNDER LOAD";

    static Stream<Printed> examples() {
        return Stream.of(Printed.BOARD, Printed.SCOOTER, Printed.TRIKE).map(Printed::of);
    }

    /** The pack over its charge tells the loaded voltage too, by another way. */
    @ParameterizedTest
    @MethodSource("examples")
    void agreesWithTheLoadedVoltageOfThePack(Printed printed) {
        List<String> section = printed.section(HEADING);
        int end = section.indexOf(printed.line(HEADING, "met at a charge of"));
        int compared = 0;
        for (PackRow row : printed.sheet().pack()) {
            for (String line : section.subList(0, end)) {
                if (line.strip().startsWith(Numbers.percent(row.charge()) + " ")) {
                    assertThat(Printed.numbers(line).get(1))
                            .isCloseTo(row.loadedVoltage().orElseThrow(), within(0.05 + 1e-9));
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(6);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void sagsDeeperTheLongerAndTheColder(Printed printed) {
        List<String> rows =
                printed.section(HEADING).stream().filter(l -> l.matches("  [0-9.]+ % .*")).toList();
        assertThat(rows).hasSizeGreaterThan(8);
        for (String row : rows) {
            List<Double> volts = Printed.numbers(row);
            assertThat(volts.get(3)).isLessThan(volts.get(1));
            assertThat(volts.get(4)).isLessThan(volts.get(2));
            if (volts.size() > 5) {
                assertThat(volts.get(5)).isLessThan(volts.get(1));
                assertThat(volts.get(7)).isLessThan(volts.get(3));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void tellsAtWhichChargeEachEventIsMet(Printed printed) {
        SagSheet sag = printed.sheet().sag();
        List<Sag.Case> set = sag.cases().stream().filter(each -> each.draw().isSet()).toList();
        assertRow(printed, set, Sag.Event.TAPER_BEGINS, "taper begins");
        assertRow(printed, set, Sag.Event.CELL_FLOOR, "cell at floor");
        assertRow(printed, set, Sag.Event.PROTECTION_TRIP, "trip opens");
        assertRow(printed, set, Sag.Event.TAPER_ENDS, "taper ends");
    }

    private static void assertRow(
            Printed printed, List<Sag.Case> set, Sag.Event event, String label) {
        String[] entries =
                printed.line(HEADING, label).strip().substring(label.length()).strip().split("  +");
        assertThat(entries).hasSize(set.size());
        for (int i = 0; i < set.size(); i++) {
            OptionalDouble charge = set.get(i).charge(event);
            if (charge.isEmpty()) {
                assertThat(entries[i]).startsWith("not met");
            } else {
                double percent = 100.0 * charge.getAsDouble();
                assertThat(Printed.numbers(entries[i]).get(0))
                        .isBetween(percent - 1e-6, percent + 0.1 + 1e-9);
            }
        }
    }

    /** The legend stands before the table, and the row says what keeps the cells. */
    @Test
    void saysWhereTheTaperKeepsTheCellsAboveTheirFloor() {
        Printed printed =
                Printed.of(
                        Printed.BOARD
                                .replace("charge_to = \"25 %\"", "charge_to = \"10 %\"")
                                .replace(
                                        "low_voltage_taper = [\"35 V\", \"29 V\"]",
                                        "low_voltage_taper = [\"38 V\", \"33 V\"]"));
        List<String> section = printed.section(HEADING);
        assertThat(section.get(0)).contains("!");
        assertThat(section.get(1)).contains("~");
        assertThat(printed.line(HEADING, "10 %")).contains("!");
        assertThat(printed.line(HEADING, "cell at floor")).contains("not met (taper)");
    }

    @Test
    void saysWithoutATaperThatNothingFades() {
        Printed printed =
                Printed.of(Printed.BOARD.replace("low_voltage_taper = [\"35 V\", \"29 V\"]", ""));
        assertThat(printed.prose(HEADING))
                .contains("No low-voltage taper is set: nothing fades the draw in time.")
                .doesNotContain("taper begins")
                .doesNotContain("~");
    }

    @Test
    void saysThatATripIsNotKnown() {
        Printed printed =
                Printed.of(Printed.BOARD.replace("cell_undervoltage_trip = \"2.8 V\"", ""));
        assertThat(printed.prose(HEADING))
                .contains("not computed: where the protection disconnects")
                .doesNotContain("trip opens");
    }

    @Test
    void explainsTheRecommendedTaper() {
        Printed printed = Printed.of(Printed.BOARD);
        Taper taper = printed.sheet().limits().lowVoltageTaper().value().orElseThrow();
        assertThat(printed.prose(HEADING))
                .contains(
                        "Why a taper from "
                                + Numbers.up(taper.begins(), 1)
                                + " to "
                                + Numbers.up(taper.ends(), 1)
                                + " V is recommended: it ends at the protection's under-voltage"
                                + " trip with its margin")
                .contains("that is " + Numbers.up(taper.band(), 1) + " V)");
    }

    @Test
    void marksWhereTheCellsAreBelowTheirFloorOrThePackGivesOut() {
        Printed cold =
                Printed.of(
                        Printed.BOARD
                                .replace("ambient = \"20 °C\"", "ambient = \"-15 °C\"")
                                .replace("[\"12 °C\", ", "[\"-20 °C\", "));
        assertThat(cold.line(HEADING, "100 %")).contains("gone  !");
        assertThat(cold.prose(HEADING)).contains("gone the pack cannot give that current");
        assertThat(Printed.of(Printed.TRIKE).line(HEADING, "15 %")).doesNotContain("!");
    }
}
