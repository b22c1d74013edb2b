package brakewright.cli.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.cli.words.Numbers;
import brakewright.operation.Sharing;
import java.util.List;
import org.junit.jupiter.api.Test;

class SharingTableTest {

    private static final String HEADING = "THE PACKS, ONE BY ONE";

    @Test
    void isLeftOutForOnePack() {
        assertThat(Printed.of(Printed.BOARD).lines()).doesNotContain(HEADING);
    }

    @Test
    void tellsEveryShare() {
        Printed printed = Printed.of(Printed.twoPacks(""));
        List<String> rows =
                printed.section(HEADING).stream().filter(l -> l.contains(" % ")).toList();
        int compared = 0;
        for (Sharing.Load load : printed.sheet().sharing().loads()) {
            String row =
                    rows.stream()
                            .filter(
                                    line ->
                                            line.contains(load.isDraw() ? "drawn" : "returned")
                                                    && line.strip()
                                                            .matches(
                                                                    Numbers.percent(load.charge())
                                                                            + " +"
                                                                            + load.pack()
                                                                            + " .*"))
                            .findFirst()
                            .orElseThrow();
            List<Double> numbers = Printed.numbers(row);
            assertThat(numbers.get(2)).isCloseTo(100.0 * load.ownCharge(), within(0.05 + 1e-9));
            assertThat(numbers.get(3)).isCloseTo(load.current(), within(0.05 + 1e-9));
            assertThat(numbers.get(4)).isBetween(load.limit() - 0.1, load.limit() + 1e-6);
            if (load.limit() == 0.0) {
                assertThat(numbers).as(row).hasSize(5);
            } else {
                assertThat(numbers.get(5))
                        .isBetween(100.0 * load.use() - 1e-6, 100.0 * load.use() + 1.0);
            }
            compared++;
        }
        assertThat(compared).isEqualTo(12);
    }

    @Test
    void tellsHowPacksMayBeJoined() {
        Printed printed = Printed.of(Printed.twoPacks(""));
        Sharing.Joint joint = printed.sheet().sharing().joints().get(0);
        assertThat(printed.prose(HEADING))
                .contains("differ by less than " + Numbers.down(joint.difference(), 2) + " V")
                .contains("no more than " + Numbers.down(joint.permitted(), 1) + " A flow")
                .contains(
                        "Between a full and an empty one "
                                + Numbers.up(joint.worst(), 0)
                                + " A would.");
    }

    @Test
    void saysThatNothingIsLeftWhereTheOtherTripFollows() {
        Printed printed =
                Printed.of(
                        Printed.twoPacks("")
                                .replace("discharge_trip = \"80 A\"", "discharge_trip = \"12 A\""));
        Sharing.Loss loss = printed.sheet().sharing().losses().get(0);
        assertThat(loss.isDraw() && loss.isAllLost()).isTrue();
        assertThat(printed.line(HEADING, "pack 1 opens"))
                .contains(
                        "driving: the rest would carry "
                                + Numbers.up(100.0 * loss.greatestUse(), 0)
                                + " % of a trip current");
    }

    @Test
    void inSeriesOneInterruptsAll() {
        Printed printed =
                Printed.of(
                        Printed.twoPacks("[battery]\njoining = \"series\"\n\n")
                                .replace(
                                        "voltage_rating = \"60 V\"", "voltage_rating = \"120 V\""));
        assertThat(printed.prose(HEADING))
                .contains("2 packs in series")
                .contains("The current of all is interrupted.")
                .doesNotContain("Join");
    }
}
