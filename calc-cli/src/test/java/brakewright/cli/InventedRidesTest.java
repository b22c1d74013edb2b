package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.buildfile.BuildFile;
import brakewright.cli.recording.ColumnChoice;
import brakewright.cli.recording.Recordings;
import brakewright.fitting.Fit;
import brakewright.fitting.Fits;
import brakewright.fitting.Fitted;
import brakewright.recording.BothWays;
import brakewright.recording.ChargeBand;
import brakewright.recording.Repair;
import brakewright.recording.Ride;
import brakewright.replay.Leg;
import brakewright.replay.Route;
import brakewright.replay.RouteEnd;
import brakewright.replay.RouteRide;
import brakewright.replay.Underway;
import brakewright.spec.Build;
import brakewright.tables.ReferenceTables;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Rides that the model made of a board unlike the one that is described, written as recorders write
 * them, with noise and faults that are stated here, and read again.
 */
class InventedRidesTest {

    private static final double ROLLING = 0.033;
    private static final double AREA = 0.52;
    private static final double IDLE_POWER = 9.0;

    /** Its wheels are worn: they turn as fast at less speed than the recorder believes. */
    private static final double WORN = 0.97;

    /** Metres on a degree of latitude, on a sphere of the Earth's mean radius. */
    private static final double DEGREE = 111_195.08;

    /** How far the error of a position wanders from one to the next, a second later [m]. */
    private static final double WANDERS = 0.05;

    private static final double STRAIGHT = 1100.0;

    @TempDir static Path folder;

    private static Build described;
    private static Build real;

    @BeforeAll
    static void describe() throws Exception {
        described =
                BuildFile.read(
                                Files.readAllBytes(Path.of(Example.TRAIL_BOARD.path())),
                                ReferenceTables.load())
                        .build();
        real =
                described
                        .withVehicle(
                                described
                                        .vehicle()
                                        .withRollingResistance(ROLLING)
                                        .withDragArea(AREA))
                        .withUse(
                                described
                                        .use()
                                        .withChargeTo(0.03)
                                        .withRiding(
                                                described
                                                        .use()
                                                        .riding()
                                                        .withIdlePower(IDLE_POWER)));
    }

    private static RouteRide ridden(Build board, double charge, Leg... legs) {
        return RouteRide.of(board, new Route(List.of(legs)), Underway.rested(charge, 20.0, 20.0));
    }

    /** As a recorder writes that counts the turns of a wheel and asks satellites every second. */
    private static List<String> rows(RouteRide ride, double worn, double spacing, long seed) {
        Random random = new Random(seed);
        List<String> rows = new ArrayList<>();
        double east = 0.0;
        double north = 0.0;
        for (InventedRide.Row row : InventedRide.sampled(ride, spacing, seed)) {
            String position = ",";
            if (row.time() % 1.0 < 1e-9) {
                east += WANDERS * random.nextGaussian();
                north += WANDERS * random.nextGaussian();
                double there = STRAIGHT - Math.abs(row.distance() % (2.0 * STRAIGHT) - STRAIGHT);
                position =
                        String.format(
                                Locale.ROOT,
                                "%.7f,%.7f",
                                45.0 + (there + north) / DEGREE,
                                7.0 + east / DEGREE / Math.cos(Math.PI / 4.0));
            }
            rows.add(
                    String.format(
                            Locale.ROOT,
                            "%.1f,%.3f,%s,%.3f,%.3f,%.1f",
                            row.time(),
                            row.speed() / worn,
                            position,
                            row.voltage(),
                            row.current(),
                            Math.ceil(1000.0 * row.charge()) / 10.0));
        }
        return rows;
    }

    private static Path file(String name, List<String> rows) throws Exception {
        return Files.writeString(
                folder.resolve(name),
                "time [s],wheel speed [m/s],latitude,longitude,voltage [V],current [A],charge [%]\n"
                        + String.join("\n", rows)
                        + "\n");
    }

    private static Ride read(double unrecorded, Path... files) throws Exception {
        Recordings read =
                Recordings.read(List.of(files), ColumnChoice.NONE, Optional.<Boolean>empty());
        assertThat(read.sign().orElseThrow().isOutPositive()).isTrue();
        return Ride.of(read.recording(), 3.0, unrecorded, read.repairs()).orElseThrow();
    }

    private static void isFound(Ride ride, Fitted what, double truth) {
        assertThat(Fits.of(described, ride).all())
                .filteredOn(fit -> fit.what() == what)
                .singleElement()
                .isInstanceOfSatisfying(
                        Fit.Found.class,
                        found ->
                                assertThat(found.value())
                                        .as(what.key())
                                        .isCloseTo(truth, within(found.doubt())));
    }

    /** Out to the end of a straight and back, slowed down by traffic and stopped on the way. */
    private static RouteRide topSpeedTest() {
        return ridden(
                real.withVehicle(
                        real.vehicle()
                                .withWheelDiameter(WORN * described.vehicle().wheelDiameter())),
                0.9,
                new Leg(700.0, 0.0, 8.8, 0.0),
                new Leg(150.0, 0.0, 3.0, 8.0),
                new Leg(250.0, 0.0, 6.0, 20.0),
                new Leg(150.0, 0.0, 2.5, 0.0),
                new Leg(250.0, 0.0, 5.0, 9.0),
                new Leg(700.0, 0.0, 8.8, 12.0),
                new Leg(600.0, 0.0, 7.0, 7.0),
                new Leg(500.0, 0.0, 4.0, 9.0),
                new Leg(500.0, 0.0, 3.0, 0.0),
                new Leg(600.0, 0.0, 8.0, 10.0));
    }

    @Test
    void aTestOfTheTopSpeedGivesTheTruthBack() throws Exception {
        RouteRide made = topSpeedTest();
        Ride ride = read(0.0, file("straight.csv", rows(made, WORN, 0.2, 5L)));
        BothWays ways = ride.pace().bothWays().orElseThrow();

        assertThat(made.end()).isEqualTo(RouteEnd.ARRIVES);
        assertThat(ride.ways().byPosition().orElseThrow())
                .isCloseTo(made.distance(), within(0.005 * made.distance()));
        assertThat(ways.mean() * WORN).isCloseTo(made.fastest().state().speed(), within(0.15));
        isFound(ride, Fitted.WHEEL_DIAMETER, WORN * described.vehicle().wheelDiameter());
        isFound(ride, Fitted.IDLE_POWER, IDLE_POWER);
    }

    private static final int FREEZE = 30;

    /**
     * From full until the taper lets it stand; the recorder froze twice, and its clock began anew
     * each time.
     */
    @Test
    void aFullChargeInThreePiecesGivesTheTruthBack() throws Exception {
        List<Leg> legs = new ArrayList<>();
        for (int lap = 0; lap < 20; lap++) {
            legs.add(new Leg(STRAIGHT, 0.0, 8.8, lap % 4 == 0 ? 20.0 : 0.0));
            legs.add(new Leg(STRAIGHT, 0.0, 3.0 + lap % 4, 8.0));
        }
        RouteRide made = ridden(real, 1.0, legs.toArray(Leg[]::new));
        List<InventedRide.Row> truth = InventedRide.sampled(made, 0.5, 3L);
        List<String> rows = rows(made, 1.0, 0.5, 3L);
        int first = rows.size() / 3;
        int second = 2 * rows.size() / 3;
        int lost = 240;

        Ride ride =
                read(
                        truth.get(first + lost).distance()
                                - truth.get(first).distance()
                                + truth.get(second + lost).distance()
                                - truth.get(second).distance(),
                        file("one.csv", frozen(rows.subList(0, first))),
                        file("two.csv", anew(frozen(rows.subList(first + lost, second)))),
                        file("three.csv", anew(rows.subList(second + lost, rows.size()))));

        assertThat(made.end()).isEqualTo(RouteEnd.STUCK);
        assertThat(made.last().speed()).isLessThan(4.0);
        assertThat(ride.recording().pieces()).hasSize(3);
        assertThat(ride.repairs())
                .anySatisfy(
                        repair -> {
                            assertThat(repair.rule()).isEqualTo(Repair.Rule.FROZEN);
                            assertThat(repair.count()).isEqualTo(2 * FREEZE);
                        });
        assertThat(ride.ways().atLeast())
                .isCloseTo(made.distance(), within(0.001 * made.distance()));
        List<ChargeBand> bands = ride.bands();
        assertThat(bands.get(bands.size() - 1).held()).isLessThan(0.8 * bands.get(0).held());
        isFound(
                ride,
                Fitted.CAPACITY,
                real.battery().packs().get(0).parallel()
                        * real.battery().packs().get(0).cell().capacityAh());
        isFound(ride, Fitted.IDLE_POWER, IDLE_POWER);
        isFound(ride, Fitted.ROLLING_RESISTANCE, ROLLING);
        isFound(ride, Fitted.DRAG_AREA, AREA);
    }

    /** The last row again and again, while its clock runs on. */
    private static List<String> frozen(List<String> rows) {
        List<String> all = new ArrayList<>(rows);
        String last = rows.get(rows.size() - 1);
        double time = time(last);
        String rest = last.substring(last.indexOf(','));
        for (int row = 1; row <= FREEZE; row++) {
            all.add(String.format(Locale.ROOT, "%.1f%s", time + 0.5 * row, rest));
        }
        return all;
    }

    private static List<String> anew(List<String> rows) {
        double begin = time(rows.get(0));
        return rows.stream()
                .map(
                        row ->
                                String.format(
                                        Locale.ROOT,
                                        "%.1f%s",
                                        time(row) - begin,
                                        row.substring(row.indexOf(','))))
                .toList();
    }

    private static double time(String row) {
        return Double.parseDouble(row.substring(0, row.indexOf(',')));
    }
}
