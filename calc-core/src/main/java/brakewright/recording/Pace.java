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
 * @param stops how often it came to a standstill out of a ride
 */
public record Pace(
        double seconds,
        double movingSeconds,
        double meanMoving,
        double meanOverall,
        double hold,
        Optional<Moment> held,
        int stops) {

    /** Assumption: our own choice; who was not faster did not ride on since the last stop [m/s]. */
    private static final double RIDING = 2.0;

    static Pace of(Speeds.Settled settled, double hold) {
        Recording recording = settled.recording();
        Quantity speed = settled.quantity();
        double moving = 0.0;
        double all = 0.0;
        int stops = 0;
        for (Piece piece : recording.pieces()) {
            int last = -1;
            boolean isRiding = false;
            for (int row = 0; row < piece.rows(); row++) {
                double own = Math.abs(piece.value(speed, row));
                if (Double.isNaN(own)) {
                    continue;
                }
                double step =
                        last < 0 ? Double.POSITIVE_INFINITY : piece.time(row) - piece.time(last);
                if (step <= recording.longestStep()) {
                    double mean = 0.5 * (own + Math.abs(piece.value(speed, last)));
                    all += step;
                    moving += mean >= Joining.STANDING ? step : 0.0;
                }
                stops += isRiding && own < Joining.STANDING ? 1 : 0;
                isRiding = own > RIDING || (isRiding && own >= Joining.STANDING);
                last = row;
            }
        }
        double way =
                Integral.of(recording, (piece, row) -> Math.abs(piece.value(speed, row))).above();
        return new Pace(
                all,
                moving,
                moving > 0.0 ? way / moving : 0.0,
                all > 0.0 ? way / all : 0.0,
                hold,
                held(recording, speed, hold),
                stops);
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
