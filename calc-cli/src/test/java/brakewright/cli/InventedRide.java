package brakewright.cli;

import brakewright.replay.Leg;
import brakewright.replay.RidePoint;
import brakewright.replay.Route;
import brakewright.replay.RouteRide;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Recordings of rides that the model made, with noise that is stated, so that the truth is known.
 */
final class InventedRide {

    /** A straight both ways with traffic in between, stops, and slow stretches. */
    static final Route STRAIGHT_AND_BACK =
            new Route(
                    List.of(
                            new Leg(900.0, 0.0, 8.8, 10.0),
                            new Leg(400.0, 0.0, 3.0, 8.0),
                            new Leg(700.0, 0.0, 5.5, 0.0),
                            new Leg(300.0, 0.0, 2.5, 9.0),
                            new Leg(900.0, 0.0, 8.8, 10.0),
                            new Leg(500.0, 0.0, 4.0, 8.0),
                            new Leg(800.0, 0.0, 7.0, 10.0)));

    private static final double SPACING = 0.2;

    /** Standard deviations of a row [m/s, A, V]. */
    private static final double SPEED_NOISE = 0.03;

    private static final double CURRENT_NOISE = 0.1;
    private static final double VOLTAGE_NOISE = 0.02;

    private InventedRide() {}

    /** How a recorder writes a row. */
    interface Style {
        /**
         * Writes a row.
         *
         * @param time [s]
         * @param speed [m/s]
         * @param voltage [V]
         * @param current out of the pack [A]
         * @param charge [1]
         */
        String row(double time, double speed, double voltage, double current, double charge);
    }

    static String csv(Build build, Route route, long seed) {
        return "time_s,wheel_speed_m/s,pack_voltage_V,pack_current_A,charge_%\n"
                + rows(RouteRide.of(build, route), SPACING, seed, InventedRide::plain);
    }

    private static String plain(
            double time, double speed, double voltage, double current, double charge) {
        return String.format(
                Locale.ROOT,
                "%.1f,%.3f,%.3f,%.3f,%.1f%n",
                time,
                speed,
                voltage,
                current,
                Math.ceil(1000.0 * charge) / 10.0);
    }

    /**
     * A row with its noise.
     *
     * @param time [s]
     * @param distance from the beginning of the route, without noise [m]
     * @param speed [m/s]
     * @param voltage [V]
     * @param current out of the pack [A]
     * @param charge [1]
     */
    record Row(
            double time,
            double distance,
            double speed,
            double voltage,
            double current,
            double charge) {}

    static String rows(RouteRide ride, double spacing, long seed, Style style) {
        StringBuilder text = new StringBuilder();
        for (Row row : sampled(ride, spacing, seed)) {
            text.append(
                    style.row(row.time(), row.speed(), row.voltage(), row.current(), row.charge()));
        }
        return text.toString();
    }

    static List<Row> sampled(RouteRide ride, double spacing, long seed) {
        List<RidePoint> course = ride.course();
        Random random = new Random(seed);
        List<Row> rows = new ArrayList<>();
        double end = course.get(course.size() - 1).state().time();
        int next = 1;
        for (int row = 0; row * spacing < end; row++) {
            double time = row * spacing;
            while (next < course.size() - 1 && course.get(next).state().time() < time) {
                next++;
            }
            RidePoint before = course.get(next - 1);
            RidePoint behind = course.get(next);
            double span = behind.state().time() - before.state().time();
            double share = span > 0.0 ? (time - before.state().time()) / span : 1.0;
            double speed = between(before.state().speed(), behind.state().speed(), share);
            rows.add(
                    new Row(
                            time,
                            between(before.state().distance(), behind.state().distance(), share),
                            speed > 0.5 ? speed + SPEED_NOISE * random.nextGaussian() : speed,
                            behind.packVoltage() + VOLTAGE_NOISE * random.nextGaussian(),
                            behind.packCurrent() + CURRENT_NOISE * random.nextGaussian(),
                            between(before.state().charge(), behind.state().charge(), share)));
        }
        return rows;
    }

    private static double between(double from, double to, double share) {
        return from + share * (to - from);
    }
}
