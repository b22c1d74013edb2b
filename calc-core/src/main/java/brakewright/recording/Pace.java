package brakewright.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How fast it went.
 *
 * @param seconds over which there is a speed, gaps left out [s]
 * @param movingSeconds of these faster than 0.5 m/s [s]
 * @param meanMoving the distance over the time that it moved [m/s]; 0 where it never did
 * @param meanOverall the distance over the recorded time [m/s]; 0 where that is none
 * @param hold how long a speed must last to count as held [s]
 * @param held the highest speed that was held; empty where no piece is that long
 * @param bothWays the highest speeds that were held on one stretch in both directions; empty where
 *     none was ridden so, or no positions tell it
 * @param stops how often it came to a standstill out of a ride
 */
public record Pace(
        double seconds,
        double movingSeconds,
        double meanMoving,
        double meanOverall,
        double hold,
        Optional<Moment> held,
        Optional<BothWays> bothWays,
        int stops) {

    /** Assumption: our own choice; who was not faster did not ride on since the last stop [m/s]. */
    private static final double RIDING = 2.0;

    static Pace of(Speeds.Settled settled, double hold) {
        Recording recording = settled.recording();
        Quantity speed = settled.quantity();
        double moving = 0.0;
        int stops = 0;
        for (Piece piece : recording.pieces()) {
            moving =
                    Neighbours.sum(
                            moving,
                            piece,
                            recording.longestStep(),
                            row -> !Double.isNaN(piece.value(speed, row)),
                            (before, row, step) ->
                                    isMoving(piece, speed, before, row) ? step : 0.0);
            stops += stops(piece, speed);
        }
        Integral ridden = Integral.of(recording, (piece, row) -> Math.abs(piece.value(speed, row)));
        double all = ridden.seconds();
        double way = ridden.above();
        return new Pace(
                all,
                moving,
                moving > 0.0 ? way / moving : 0.0,
                all > 0.0 ? way / all : 0.0,
                hold,
                held(recording, speed, hold),
                BothWays.of(recording, speed, hold),
                stops);
    }

    private static boolean isMoving(Piece piece, Quantity speed, int before, int row) {
        return 0.5 * (Math.abs(piece.value(speed, row)) + Math.abs(piece.value(speed, before)))
                >= Joining.STANDING;
    }

    private static int stops(Piece piece, Quantity speed) {
        int stops = 0;
        boolean isRiding = false;
        for (int row = 0; row < piece.rows(); row++) {
            double own = Math.abs(piece.value(speed, row));
            if (!Double.isNaN(own)) {
                stops += isRiding && own < Joining.STANDING ? 1 : 0;
                isRiding = own > RIDING || (isRiding && own >= Joining.STANDING);
            }
        }
        return stops;
    }

    /**
     * Returns how many stops there are to a kilometre.
     *
     * @return [1/km]; empty where nothing was ridden
     */
    public OptionalDouble stopsPerKilometre() {
        double metres = meanOverall * seconds;
        return metres > 0.0 ? OptionalDouble.of(1000.0 * stops / metres) : OptionalDouble.empty();
    }

    private static Optional<Moment> held(Recording recording, Quantity speed, double hold) {
        List<Moment> best = new ArrayList<>();
        double[] highest = {Double.NEGATIVE_INFINITY};
        Held.each(
                recording,
                speed,
                hold,
                (piece, row, value) -> {
                    if (value > highest[0]) {
                        highest[0] = value;
                        best.clear();
                        best.add(Moment.of(value, piece, row, speed));
                    }
                });
        return best.stream().findFirst();
    }
}
