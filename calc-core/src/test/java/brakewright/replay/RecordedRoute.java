package brakewright.replay;

import brakewright.recording.Piece;
import brakewright.recording.Quantity;
import brakewright.recording.Recording;
import brakewright.recording.Repairs;
import brakewright.recording.Ride;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** A predicted ride as a recorder without a fault would have written it. */
public final class RecordedRoute {

    private RecordedRoute() {}

    /** Rows so many seconds apart. */
    public static Ride of(RouteRide ride, double spacing) {
        return Ride.of(recording(ride, spacing), 3.0, 0.0, new Repairs()).orElseThrow();
    }

    /** Rows so many seconds apart, nothing made of them yet. */
    public static Recording recording(RouteRide ride, double spacing) {
        List<RidePoint> course = ride.course();
        int rows = (int) Math.floor(ride.time() / spacing) + 1;
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        for (Quantity quantity :
                List.of(
                        Quantity.TIME,
                        Quantity.WHEEL_SPEED,
                        Quantity.ALTITUDE,
                        Quantity.PACK_VOLTAGE,
                        Quantity.PACK_CURRENT,
                        Quantity.CHARGE)) {
            columns.put(quantity, new double[rows]);
        }
        int next = 1;
        for (int row = 0; row < rows; row++) {
            double time = row * spacing;
            while (next < course.size() - 1 && course.get(next).state().time() < time) {
                next++;
            }
            RidePoint before = course.get(next - 1);
            RidePoint behind = course.get(next);
            double span = behind.state().time() - before.state().time();
            double share = span > 0.0 ? (time - before.state().time()) / span : 1.0;
            columns.get(Quantity.TIME)[row] = time;
            columns.get(Quantity.WHEEL_SPEED)[row] =
                    between(before.state().speed(), behind.state().speed(), share);
            columns.get(Quantity.ALTITUDE)[row] = between(before.height(), behind.height(), share);
            columns.get(Quantity.PACK_VOLTAGE)[row] = behind.packVoltage();
            columns.get(Quantity.PACK_CURRENT)[row] = behind.packCurrent();
            columns.get(Quantity.CHARGE)[row] =
                    between(before.state().charge(), behind.state().charge(), share);
        }
        return new Recording(
                List.of(Piece.of("ride.csv", IntStream.range(2, rows + 2).toArray(), columns)),
                List.of(),
                5.0);
    }

    private static double between(double from, double to, double share) {
        return from + Math.max(0.0, Math.min(1.0, share)) * (to - from);
    }
}
