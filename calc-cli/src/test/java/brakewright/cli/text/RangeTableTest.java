package brakewright.cli.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.driving.Cruise;
import brakewright.driving.StopAndGo;
import brakewright.worksheet.RangeSheet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class RangeTableTest {

    private static final String HEADING = "RANGE";
    private static final double KILOMETRES_PER_MILE = 1.609344;

    static Stream<Printed> examples() {
        return Stream.of(Printed.BOARD, Printed.SCOOTER, Printed.TRIKE).map(Printed::of);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void tellsConsumptionAndRangeOfEverySpeed(Printed printed) {
        RangeSheet range = printed.sheet().range();
        for (Cruise ride : range.steady()) {
            assertRow(printed.line(HEADING, UnitSystem.SI.speedText(ride.speed())), ride);
        }
        String cruise = printed.line(HEADING, UnitSystem.SI.speedText(range.cruise().speed()));
        assertThat(cruise).contains("cruise");
        assertRow(cruise, range.cruise());
    }

    private static void assertRow(String line, Cruise ride) {
        List<Double> numbers = Printed.numbers(line);
        double perKilometre =
                ride.spentHeld().atTerminals() / 3600.0 / ride.distanceHeld() * 1000.0;
        assertThat(numbers.get(1)).isCloseTo(perKilometre, within(0.05 + 1e-9));
        assertThat(numbers.get(2))
                .isCloseTo(perKilometre * KILOMETRES_PER_MILE, within(0.05 + 1e-9));
        assertThat(numbers.get(3)).isCloseTo(ride.distance() / 1000.0, within(0.05 + 1e-9));
        assertThat(numbers.get(4))
                .isCloseTo(ride.distance() / 1000.0 / KILOMETRES_PER_MILE, within(0.05 + 1e-9));
        boolean slower = line.contains("of it slower");
        assertThat(slower).isEqualTo(ride.distance() - ride.distanceHeld() > 80.0);
        if (slower) {
            assertThat(numbers.get(5)).isGreaterThanOrEqualTo(100.0 * ride.heldDownTo() - 1e-6);
        }
    }

    @Test
    void imperialPutsMilesFirst() {
        Printed printed = Printed.of(Printed.BOARD, UnitSystem.IMPERIAL, false);
        Cruise cruise = printed.sheet().range().cruise();
        List<Double> numbers =
                Printed.numbers(
                        printed.line(HEADING, UnitSystem.IMPERIAL.speedText(cruise.speed())));
        assertThat(numbers.get(1)).isCloseTo(numbers.get(2) * KILOMETRES_PER_MILE, within(0.2));
        assertThat(numbers.get(3)).isCloseTo(cruise.distance() / 1609.344, within(0.05 + 1e-9));
        assertThat(printed.line(HEADING, "speed")).containsPattern("Wh/mi +Wh/km");
    }

    /** With few stops that is so where the cruise speed is near the greatest. */
    @ParameterizedTest
    @CsvSource({"0.5, true", "4, false"})
    void aRideWithStopsThatGoesFartherSaysWhy(String stopsPerKm, boolean isFarther) {
        Printed printed =
                Printed.of(
                        Printed.SCOOTER.replace(
                                "[use]",
                                "[use]\ncruise_speed = \"20 km/h\"\nstops_per_km = " + stopsPerKm));
        RangeSheet range = printed.sheet().range();
        assertThat(range.town().orElseThrow().distance() > range.cruise().distance())
                .isEqualTo(isFarther);
        String told = String.join(" ", printed.section(HEADING)).replaceAll("\\s+", " ");
        assertThat(told.contains("It goes farther than at a steady 20.0 km/h: it rides slower"))
                .isEqualTo(isFarther);
    }

    /** Shares are printed to a tenth: ten of them miss a hundred by half a per cent at most. */
    @ParameterizedTest
    @MethodSource("examples")
    void sharesOfTheChargeAddUpToAHundred(Printed printed) {
        List<String> section = printed.section(HEADING);
        int from = section.indexOf(printed.line(HEADING, "where the charge is spent")) + 1;
        double sum = 0.0;
        int bars = 0;
        for (String line : section.subList(from, section.size())) {
            if (line.startsWith("    ") && line.contains(" %")) {
                double share = Printed.numbers(line).get(0);
                assertThat(line.chars().filter(letter -> letter == '#').count())
                        .isEqualTo(Math.round(share / 2.0));
                sum += share;
                bars++;
            } else {
                break;
            }
        }
        assertThat(bars).isGreaterThan(6);
        assertThat(sum).isCloseTo(100.0, within(0.5));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyChangeIsToldAsRangeAndShare(Printed printed) {
        RangeSheet range = printed.sheet().range();
        List<String> section = printed.section(HEADING);
        int from = section.indexOf(printed.line(HEADING, "one change each")) + 1;
        List<String> rows = section.subList(from, section.size());
        assertThat(rows).hasSameSizeAs(range.effects());
        for (int i = 0; i < rows.size(); i++) {
            List<Double> numbers = Printed.numbers(rows.get(i).substring(36));
            double distance = range.effects().get(i).distance();
            assertThat(numbers.get(0)).isCloseTo(distance / 1000.0, within(0.05 + 1e-9));
            assertThat(numbers.get(1))
                    .isCloseTo(
                            100.0 * (distance / range.cruise().distance() - 1.0),
                            within(0.5 + 1e-9));
        }
    }

    @Test
    void tellsTownRidingAsItIs() {
        Printed printed = Printed.of(Printed.BOARD);
        StopAndGo town = printed.sheet().range().town().orElseThrow();
        assertThat(printed.prose(HEADING))
                .contains(Numbers.nearest(town.distance() / 1000.0, 1) + " km at ")
                .contains("mean speed " + UnitSystem.SI.speedText(town.meanSpeed()))
                .contains(
                        "Braking brings back no more than "
                                + Numbers.nearest(100.0 * town.returnedShare(), 1)
                                + " % of what leaves the pack");
    }

    @Test
    void milesBetweenStopsAreNoThousandsOfFeet() {
        assertThat(Printed.of(Printed.BOARD, UnitSystem.IMPERIAL, false).prose(HEADING))
                .containsPattern("every [0-9.]+ mi:")
                .doesNotContain(" ft:");
        assertThat(Travel.apart(UnitSystem.IMPERIAL, 337.8)).isEqualTo("0.21 mi");
        assertThat(Travel.apart(UnitSystem.SI, 337.8)).isEqualTo("338 m");
    }

    @Test
    void tellsTheRangeOfAMeasuredConsumption() {
        Printed printed =
                Printed.of(
                        Printed.BOARD.replace(
                                "hard_brake = \"6 s\"",
                                "hard_brake = \"6 s\"\nmeasured_consumption = \"17 Wh/km\"\n"
                                        + "measured_speed = \"22 km/h\""));
        double distance = printed.sheet().range().measured().orElseThrow().distance();
        assertThat(printed.prose(HEADING))
                .contains(
                        "With the measured 17.0 Wh/km (27.4 Wh/mi) at 22.0 km/h: "
                                + Numbers.nearest(distance / 1000.0, 1)
                                + " km");
        assertThat(Printed.of(Printed.BOARD).prose(HEADING)).doesNotContain("measured");
    }

    @ParameterizedTest
    @ValueSource(strings = {"idle_power = \"900 W\"", "headwind = \"-13.5 m/s\""})
    void doubtsAnUnlikelyConsumption(String line) {
        Printed printed =
                Printed.of(
                        Printed.BOARD.replace(
                                "hard_brake = \"6 s\"", "hard_brake = \"6 s\"\n" + line));
        double taken = printed.sheet().range().cruise().consumption() / 3.6;
        assertThat(taken >= 3.0 && taken <= 50.0).isFalse();
        assertThat(printed.prose(HEADING))
                .contains("Unlikely: " + Numbers.nearest(taken, 1) + " Wh/km")
                .contains("Check the inputs");
        assertThat(Printed.of(Printed.BOARD).prose(HEADING)).doesNotContain("Unlikely");
    }

    @Test
    void aWindThatDoesTheWorkMakesTheRideEndless() {
        Printed printed =
                Printed.of(
                        Printed.BOARD.replace(
                                "hard_brake = \"6 s\"",
                                "hard_brake = \"6 s\"\nheadwind = \"-25 m/s\"\nidle_power = \"0 W\""));
        assertThat(printed.prose(HEADING))
                .contains("endless the wind does the work")
                .doesNotContain("one change each");
    }
}
