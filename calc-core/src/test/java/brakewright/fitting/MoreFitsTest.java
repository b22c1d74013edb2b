package brakewright.fitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.powertrain.Powertrain;
import brakewright.recording.Piece;
import brakewright.recording.Quantity;
import brakewright.recording.Recording;
import brakewright.recording.Repairs;
import brakewright.recording.Ride;
import brakewright.replay.Leg;
import brakewright.replay.RecordedRoute;
import brakewright.replay.Route;
import brakewright.replay.RouteRide;
import brakewright.replay.Underway;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What only some rides tell: coasting, riding at the voltage's end, cells that warm up. */
@Tag("law")
class MoreFitsTest {

    private static final double SPACING = 0.2;

    private static Fit fit(Build build, Ride ride, Fitted what) {
        return Fits.of(build, ride).all().stream()
                .filter(each -> each.what() == what)
                .findFirst()
                .orElseThrow();
    }

    private static void isFound(Fit fit, double truth) {
        assertThat(fit)
                .isInstanceOfSatisfying(
                        Fit.Found.class,
                        found -> {
                            assertThat(found.value()).isCloseTo(truth, within(found.doubt()));
                            assertThat(found.doubt()).isLessThan(0.2 * truth);
                        });
    }

    private static Ride ride(double[]... columns) {
        Map<Quantity, double[]> named = new EnumMap<>(Quantity.class);
        named.put(Quantity.TIME, columns[0]);
        named.put(Quantity.WHEEL_SPEED, columns[1]);
        named.put(Quantity.PACK_VOLTAGE, columns[2]);
        named.put(Quantity.PACK_CURRENT, columns[3]);
        if (columns.length > 4) {
            named.put(Quantity.PACK_TEMPERATURE, columns[4]);
        }
        int[] lines = IntStream.range(2, columns[0].length + 2).toArray();
        return Ride.of(
                        new Recording(List.of(Piece.of("ride.csv", lines, named)), List.of(), 5.0),
                        3.0,
                        0.0,
                        new Repairs())
                .orElseThrow();
    }

    /** Pulled to 8 m/s and let roll, again and again; noise of 0.03 m/s, braking at the end. */
    private static Ride rolled(Build build, int rolls, double brake) {
        RoadLoad load = RoadLoad.of(build);
        Powertrain powertrain = Powertrain.of(build);
        Random random = new Random(4L);
        List<double[]> rows = new ArrayList<>();
        double speed = 0.0;
        double time = 0.0;
        for (int roll = 0; roll < rolls; roll++) {
            while (speed < 8.0) {
                rows.add(new double[] {time, speed, 36.0, 20.0});
                time += SPACING;
                speed += 1.2 * SPACING;
            }
            while (speed > 2.5) {
                double current = build.use().riding().idlePower() / 38.0;
                rows.add(new double[] {time, speed + 0.03 * random.nextGaussian(), 38.0, current});
                double force =
                        load.force(speed, 0.0, 0.0) + powertrain.brakeForce(0.0, speed) + brake;
                time += SPACING;
                speed -= force / build.inertia() * SPACING;
            }
        }
        double[][] columns = new double[4][rows.size()];
        for (int row = 0; row < rows.size(); row++) {
            for (int column = 0; column < 4; column++) {
                columns[column][row] = rows.get(row)[column];
            }
        }
        return ride(columns);
    }

    @Test
    void tyresAndAirAreFoundWhereItRolled() {
        Build described = Builds.trailBoard();
        Build real =
                described.withVehicle(
                        described.vehicle().withRollingResistance(0.019).withDragArea(0.7));
        Ride ride = rolled(real, 8, 0.0);

        isFound(fit(described, ride, Fitted.COASTING_ROLLING), 0.019);
        isFound(fit(described, ride, Fitted.COASTING_DRAG), 0.7);
    }

    /** Their pair is the surer one where the rest of the ride tells nothing of the road. */
    @Test
    void theSurerWayGoesIntoTheBuildFile() {
        Build board = Builds.trailBoard();

        assertThat(Fits.of(board, rolled(board, 8, 0.0)).preferred())
                .extracting(Fit.Found::what)
                .contains(Fitted.COASTING_ROLLING, Fitted.COASTING_DRAG)
                .doesNotContain(Fitted.ROLLING_RESISTANCE, Fitted.DRAG_AREA);
    }

    @Test
    void twoRollsAreTooFew() {
        Build board = Builds.trailBoard();

        assertThat(fit(board, rolled(board, 2, 0.0), Fitted.COASTING_DRAG))
                .isInstanceOfSatisfying(
                        Fit.Refused.class,
                        refused -> assertThat(refused.reason()).contains("three times"));
    }

    private static final double SLOW_KV = 75.0;

    /** A board whose voltage ends before anything else; its description says otherwise. */
    private static Build slow(double cap) {
        Build board = Builds.trailBoard();
        return Builds.withMotor(board, board.motor().withKvRpmPerVolt(SLOW_KV))
                .withSettings(
                        board.settings()
                                .withSpeedCap(
                                        cap > 0.0 ? OptionalDouble.of(cap) : OptionalDouble.empty())
                                .withLowVoltageTaper(Optional.empty()));
    }

    /** In full throttle, and a while at three quarters of it, down to a tenth of the charge. */
    private static Ride sprints(Build build, double allowed) {
        List<Leg> legs = new ArrayList<>();
        for (int lap = 0; lap < 12; lap++) {
            legs.add(new Leg(900.0, 0.0, allowed, 0.0));
            legs.add(new Leg(300.0, 0.0, 4.0, 5.0));
        }
        Build deep = build.withUse(build.use().withChargeTo(0.1));
        return RecordedRoute.of(
                RouteRide.of(deep, new Route(legs), Underway.rested(1.0, 20.0, 20.0)), SPACING);
    }

    @Test
    void theSpeedPerVoltIsFoundWhereNothingElseHoldsTheSpeed() {
        Build real = slow(0.0);
        Build described = Builds.withMotor(real, real.motor().withKvRpmPerVolt(1.2 * SLOW_KV));

        isFound(fit(described, sprints(real, 30.0), Fitted.SPEED_CONSTANT), SLOW_KV);
    }

    /** The rider held 5 m/s, whatever the voltage. */
    @Test
    void aSpeedThatTheRiderHeldIsNotTakenForTheVoltages() {
        Build real = slow(0.0);

        assertThat(fit(real, sprints(real, 5.0), Fitted.SPEED_CONSTANT))
                .isInstanceOf(Fit.Refused.class);
    }

    @Test
    void aSpeedAtTheCapTellsNothing() {
        Build real = slow(5.0);

        assertThat(fit(real, sprints(real, 30.0), Fitted.SPEED_CONSTANT))
                .isInstanceOf(Fit.Refused.class);
    }

    /** Twice as much in the cold. */
    @Test
    void theResistanceIsToldByWarmthWhereItVaries() {
        int rows = 1200;
        double[][] columns = new double[5][rows];
        Random random = new Random(2L);
        for (int row = 0; row < rows; row++) {
            double current = row / 25 % 2 == 0 ? 20.0 : 2.0;
            boolean isCold = row < rows / 2;
            columns[0][row] = row;
            columns[1][row] = 5.0;
            columns[2][row] = 40.0 - (isCold ? 0.2 : 0.1) * current + 0.02 * random.nextGaussian();
            columns[3][row] = current;
            columns[4][row] = isCold ? 7.0 : 23.0;
        }
        List<WarmResistance> found = Fits.of(Builds.trailBoard(), ride(columns)).byWarmth();

        assertThat(found).hasSize(2);
        assertThat(found.get(0).fromC()).isEqualTo(5.0);
        assertThat(found.get(0).found().value()).isCloseTo(0.2, within(0.01));
        assertThat(found.get(1).found().value()).isCloseTo(0.1, within(0.01));
        Arrays.fill(columns[4], 7.0);
        assertThat(Fits.of(Builds.trailBoard(), ride(columns)).byWarmth()).isEmpty();
    }
}
