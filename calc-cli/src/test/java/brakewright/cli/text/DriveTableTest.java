package brakewright.cli.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.driving.StandingStart;
import brakewright.powertrain.DriveState;
import brakewright.worksheet.DriveSheet;
import brakewright.worksheet.ThrustMap;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DriveTableTest {

    private static final String HEADING = "DRIVING, QUARTER BY QUARTER";

    static Stream<Printed> examples() {
        return Stream.of(Printed.BOARD, Printed.SCOOTER, Printed.TRIKE).map(Printed::of);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void tellsWhatTheDriveAchievesAtEachCharge(Printed printed) {
        for (DriveSheet row : printed.sheet().driveByCharge()) {
            List<Double> numbers =
                    Printed.numbers(
                            printed.line(HEADING, Numbers.percent(row.charge()))
                                    .replace("m/s²", ""));
            assertThat(numbers.get(1)).isCloseTo(row.launch(), within(0.005 + 1e-9));
            assertThat(numbers.get(2))
                    .isCloseTo(
                            row.toCruise().map(StandingStart.Reached::time).orElseThrow(),
                            within(0.05 + 1e-9));
            assertThat(numbers.get(3))
                    .isCloseTo(3.6 * row.topSpeedFlat().speed(), within(0.05 + 1e-9));
            assertThat(numbers.get(4))
                    .isCloseTo(3.6 * row.lastingFlat().speed(), within(0.05 + 1e-9));
            double climb = 100.0 * row.climb().steepest();
            assertThat(numbers.get(5)).isBetween(climb - 0.1 - 1e-9, climb + 1e-6);
        }
    }

    /** The map that the worksheet computes has standstill and the top speed as its ends too. */
    @ParameterizedTest
    @MethodSource("examples")
    void agreesWithTheMapAtStandstillAndAtTheTopSpeed(Printed printed) {
        ThrustMap map = printed.sheet().thrustMap();
        int last = map.speeds().length - 1;
        double from = printed.sheet().build().use().chargeFrom();
        int full = map.charges().length - 1;
        assertThat(map.charges()[full]).isEqualTo(from);
        List<String> rows = below(printed, "charge |");
        String row = rows.get(1);
        assertThat(row).startsWith(" ").contains(Numbers.percent(from) + " |");
        String[] entries = row.substring(row.indexOf('|') + 1).strip().split(" +");
        assertThat(entries[0]).isEqualTo(entry(map.pulls()[full][0]));
        assertThat(entries[entries.length - 1]).isEqualTo(entry(map.pulls()[full][last]));
        List<Double> road =
                Printed.numbers(printed.line(HEADING, "road takes").replace("road takes", ""));
        assertThat(road).hasSameSizeAs(entries);
        assertThat(road.get(0)).isCloseTo(map.resistance()[0], within(0.5 + 1e-9));
        assertThat(road.get(road.size() - 1)).isCloseTo(map.resistance()[last], within(0.5 + 1e-9));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void pushesMoreThanTheRoadTakesUpToTheTopSpeed(Printed printed) {
        List<Double> thrust =
                Printed.numbers(below(printed, "charge |").get(1).replaceAll("[mpv]", " "));
        List<Double> road = Printed.numbers(printed.line(HEADING, "road takes"));
        for (int i = 0; i < road.size(); i++) {
            assertThat(thrust.get(i + 1)).isGreaterThanOrEqualTo(road.get(i) - 1.0);
        }
    }

    @Test
    void saysThatTheRiderLosesBalanceBeforeTheThrustIsExhausted() {
        String strong =
                Printed.BOARD
                        .replace(
                                "motor_drive_current = \"48 A\"", "motor_drive_current = \"400 A\"")
                        .replace(
                                "pack_discharge_current = \"18 A\"",
                                "pack_discharge_current = \"400 A\"");
        Printed printed = Printed.of(strong);
        assertThat(printed.sheet().drive().isLaunchHeldByGround()).isTrue();
        assertThat(printed.prose(HEADING)).contains("At the start the rider loses balance before");
        assertThat(Printed.of(Printed.BOARD).prose(HEADING)).doesNotContain("At the start");
    }

    @Test
    void tellsTheTopSpeedAgainstAHeadwindOnly() {
        Printed printed =
                Printed.of(
                        Printed.BOARD.replace(
                                "hard_brake = \"6 s\"",
                                "hard_brake = \"6 s\"\nheadwind = \"6 m/s\""));
        DriveSheet full = printed.sheet().driveByCharge().get(0);
        assertThat(printed.prose(HEADING))
                .contains(
                        "Against a headwind of 21.6 km/h the lasting top speed is "
                                + UnitSystem.SI.speedText(full.lastingWind().speed())
                                + " at 100 % charge");
        assertThat(Printed.of(Printed.BOARD).prose(HEADING)).doesNotContain("wind of");
    }

    @Test
    void setsTheTimeOnTheSlopeAgainstTheTimeTheWindingLasts() {
        Printed printed = Printed.of(Printed.BOARD);
        DriveSheet full = printed.sheet().driveByCharge().get(0);
        assertThat(printed.prose(HEADING))
                .contains(
                        "at 100 % charge it is climbed at "
                                + UnitSystem.SI.speedText(full.climb().speedUp())
                                + " in "
                                + Numbers.time(180.0 / full.climb().speedUp())
                                + "; a cold winding lasts "
                                + Numbers.time(full.climb().lastsUp().orElseThrow()));
    }

    @Test
    void aVehicleThatCannotMoveOffStandsStill() {
        Printed printed =
                Printed.of(
                        Printed.BOARD.replace(
                                "motor_drive_current = \"48 A\"", "motor_drive_current = \"3 A\""));
        assertThat(printed.line(HEADING, "100 %"))
                .contains("0.00 m/s²", "never", "0.0 km/h", "stands still", "0.0 %");
        assertThat(printed.prose(HEADING)).contains("it is not climbed.");
    }

    private static List<String> below(Printed printed, String begin) {
        List<String> section = printed.section(HEADING);
        return section.subList(section.indexOf(printed.line(HEADING, begin)), section.size());
    }

    private static String entry(DriveState pull) {
        String letter =
                switch (pull.holder()) {
                    case MOTOR_CURRENT -> "m";
                    case PACK_CURRENT -> "p";
                    case VOLTAGE -> "v";
                    case STANDSTILL -> "";
                };
        return Numbers.nearest(pull.thrust(), 0) + letter;
    }
}
