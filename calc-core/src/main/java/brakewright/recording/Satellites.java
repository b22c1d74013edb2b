package brakewright.recording;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How well satellites were received.
 *
 * @param lag by so much the speed that satellites tell is behind that of the wheels [s]; negative
 *     where it is ahead; empty where not both were recorded, or neither changes enough to tell
 * @param dropOuts how often neither speed nor position came from them for longer than {@link
 *     #LEAST} and three times the usual
 * @param longestDropOut [s]; 0 where there was none
 * @param missing of all drop-outs [s]
 */
public record Satellites(OptionalDouble lag, int dropOuts, double longestDropOut, double missing) {

    /** Assumption: our own choice; shorter, receivers skip a moment [s]. */
    static final double LEAST = 3.0;

    private static final double SPACINGS = 3.0;

    /** Assumption: our own choice; receivers smooth over a second or two [s]. */
    private static final double MOST_LAG = 5.0;

    private static final double MOST_LEAD = 2.0;
    private static final double STEP = 0.1;

    /** Rows nearer to each other add nothing [s]. */
    private static final double ROWS_APART = 0.2;

    private static final int LEAST_ROWS = 50;

    /** Assumption: our own choice; a speed that changes less fits with every lag [m/s]. */
    private static final double LEAST_SCATTER = 0.5;

    /**
     * Assumption: our own choice; a lag that brings the two nearer by less is chance: the share of
     * the squares that must be left [1].
     */
    private static final double BETTER = 0.8;

    static Optional<Satellites> of(Recording recording) {
        if (!recording.has(Quantity.LATITUDE) && !recording.has(Quantity.SATELLITE_SPEED)) {
            return Optional.empty();
        }
        double least = Math.max(LEAST, SPACINGS * usual(recording));
        int dropOuts = 0;
        double longest = 0.0;
        double missing = 0.0;
        for (Piece piece : recording.pieces()) {
            double last = piece.time(0);
            for (int row = 0; row < piece.rows(); row++) {
                boolean isEnd = row == piece.rows() - 1;
                if (isKnown(piece, row) || isEnd) {
                    double without = piece.time(row) - last;
                    last = piece.time(row);
                    if (without > least) {
                        dropOuts++;
                        missing += without;
                        longest = Math.max(longest, without);
                    }
                }
            }
        }
        return Optional.of(new Satellites(lag(recording), dropOuts, longest, missing));
    }

    private static boolean isKnown(Piece piece, int row) {
        return !Double.isNaN(piece.value(Quantity.LATITUDE, row))
                || !Double.isNaN(piece.value(Quantity.SATELLITE_SPEED, row));
    }

    /** The median of what lies between two that are known [s]. */
    private static double usual(Recording recording) {
        double[] steps = new double[recording.rows()];
        int count = 0;
        for (Piece piece : recording.pieces()) {
            double last = Double.NaN;
            for (int row = 0; row < piece.rows(); row++) {
                if (isKnown(piece, row)) {
                    double step = piece.time(row) - last;
                    if (step > 0.0) {
                        steps[count++] = step;
                    }
                    last = piece.time(row);
                }
            }
        }
        double[] known = Arrays.copyOf(steps, count);
        Arrays.sort(known);
        return count == 0 ? 0.0 : known[count / 2];
    }

    /** The shift with which the squares of the differences are least. */
    private static OptionalDouble lag(Recording recording) {
        if (!recording.has(Quantity.WHEEL_SPEED) || !recording.has(Quantity.SATELLITE_SPEED)) {
            return OptionalDouble.empty();
        }
        Sums still = sums(recording, 0.0);
        if (still.rows < LEAST_ROWS || !(still.scatter() >= LEAST_SCATTER)) {
            return OptionalDouble.empty();
        }
        double best = 0.0;
        double least = still.mean();
        for (int step = -(int) Math.round(MOST_LEAD / STEP); step * STEP <= MOST_LAG; step++) {
            Sums shifted = sums(recording, step * STEP);
            if (shifted.rows >= LEAST_ROWS && shifted.mean() < least) {
                least = shifted.mean();
                best = step * STEP;
            }
        }
        return OptionalDouble.of(least <= BETTER * still.mean() ? best : 0.0);
    }

    private static Sums sums(Recording recording, double lag) {
        Sums sums = new Sums();
        for (Piece piece : recording.pieces()) {
            int behind = 0;
            int before = -1;
            double last = Double.NEGATIVE_INFINITY;
            for (int row = 0; row < piece.rows(); row++) {
                double wheels = Math.abs(piece.value(Quantity.WHEEL_SPEED, row));
                if (Double.isNaN(wheels) || piece.time(row) - last < ROWS_APART) {
                    continue;
                }
                last = piece.time(row);
                double then = last + lag;
                while (behind < piece.rows()
                        && (piece.time(behind) < then || !isTold(piece, behind))) {
                    before = isTold(piece, behind) ? behind : before;
                    behind++;
                }
                if (behind < piece.rows()
                        && before >= 0
                        && piece.time(behind) - piece.time(before) <= recording.longestStep()) {
                    sums.add(wheels, between(piece, before, behind, then));
                }
            }
        }
        return sums;
    }

    private static boolean isTold(Piece piece, int row) {
        return !Double.isNaN(piece.value(Quantity.SATELLITE_SPEED, row));
    }

    private static double between(Piece piece, int before, int behind, double time) {
        double from = Math.abs(piece.value(Quantity.SATELLITE_SPEED, before));
        double to = Math.abs(piece.value(Quantity.SATELLITE_SPEED, behind));
        double share = (time - piece.time(before)) / (piece.time(behind) - piece.time(before));
        return from + share * (to - from);
    }

    private static final class Sums {
        private int rows;
        private double off;
        private double offSquares;
        private double wheels;
        private double squares;

        void add(double wheel, double satellite) {
            rows++;
            off += satellite - wheel;
            offSquares += (satellite - wheel) * (satellite - wheel);
            wheels += wheel;
            squares += wheel * wheel;
        }

        /** Of the differences, what is the same for all of them left out. */
        double mean() {
            return offSquares / rows - off / rows * (off / rows);
        }

        double scatter() {
            return Math.sqrt(Math.max(0.0, squares / rows - wheels / rows * (wheels / rows)));
        }
    }
}
