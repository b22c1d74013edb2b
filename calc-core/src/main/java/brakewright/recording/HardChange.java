package brakewright.recording;

import java.util.ArrayList;
import java.util.List;

/**
 * A hard stop or a hard pull: the speed changes by at least 1 m/s in some second, by half of that
 * in each, and by 2 m/s in all. So one stop stays one where its rate wavers about the first.
 *
 * <p>Assumption: these bounds are our own choice; coasting and gentle riding stay below them.
 *
 * @param begin with the speed there as its value [m/s]
 * @param to the speed at its end [m/s]
 * @param seconds how long it took [s]
 * @param distance over which [m]
 * @param mean rate of the whole, positive for a stop as for a pull [m/s²]
 * @param highest rate over one second [m/s²]
 */
public record HardChange(
        Moment begin, double to, double seconds, double distance, double mean, double highest) {

    private static final double LEAST_HIGHEST = 1.0;
    private static final double LEAST_RATE = 0.5;
    private static final double LEAST_CHANGE = 2.0;

    /** Over how long a rate is taken: shorter, coarse speeds make any [s]. */
    private static final double WINDOW = 1.0;

    /** Rows that are farther apart tell no rate [s]. */
    private static final double LONGEST_WINDOW = 3.0;

    private static final double ROUNDING = 1e-6;

    /** Finds those of a recording: stops for a sign of −1, pulls for 1. */
    static List<HardChange> all(Recording recording, Quantity speed, int sign) {
        List<HardChange> all = new ArrayList<>();
        for (Piece piece : recording.pieces()) {
            find(piece, recording.longestStep(), speed, sign, all);
        }
        return all;
    }

    /** Whether any two rows are near enough to each other for a rate. */
    static boolean canBeTold(Recording recording, Quantity speed) {
        return recording.pieces().stream()
                .anyMatch(
                        piece -> {
                            Rates rates = new Rates(piece, speed);
                            for (int i = 0; i < rates.count; i++) {
                                if (!Double.isNaN(rates.at(i))) {
                                    return true;
                                }
                            }
                            return false;
                        });
    }

    private static void find(
            Piece piece, double longestStep, Quantity speed, int sign, List<HardChange> all) {
        Rates rates = new Rates(piece, speed);
        int first = -1;
        double highest = 0.0;
        for (int i = 0; i <= rates.count; i++) {
            double rate = i < rates.count ? sign * rates.at(i) : Double.NaN;
            if (rate >= LEAST_RATE) {
                first = first < 0 ? i : first;
                highest = Math.max(highest, rate);
            } else if (first >= 0) {
                int begin = rates.rows[first];
                int end = rates.rows[rates.ends[i - 1]];
                if (highest >= LEAST_HIGHEST) {
                    add(piece, longestStep, speed, begin, end, highest, all);
                }
                first = -1;
                highest = 0.0;
            }
        }
    }

    private static void add(
            Piece piece,
            double longestStep,
            Quantity speed,
            int begin,
            int end,
            double highest,
            List<HardChange> all) {
        double from = Math.abs(piece.value(speed, begin));
        double to = Math.abs(piece.value(speed, end));
        if (Math.abs(to - from) < LEAST_CHANGE) {
            return;
        }
        double seconds = piece.time(end) - piece.time(begin);
        Integral way =
                Integral.of(
                        piece,
                        longestStep,
                        (its, row) -> Math.abs(its.value(speed, row)),
                        begin,
                        end + 1);
        all.add(
                new HardChange(
                        Moment.of(from, piece, begin, speed),
                        to,
                        seconds,
                        way.above(),
                        Math.abs(to - from) / seconds,
                        highest));
    }

    /** How fast the speed changes from each row that has one to the first at least 1 s later. */
    static final class Rates {
        private final Piece piece;
        private final Quantity speed;
        private final int[] rows;
        private final int[] ends;
        private final int count;

        Rates(Piece piece, Quantity speed) {
            this.piece = piece;
            this.speed = speed;
            this.rows = new int[piece.rows()];
            this.ends = new int[piece.rows()];
            int found = 0;
            for (int row = 0; row < piece.rows(); row++) {
                if (!Double.isNaN(piece.value(speed, row))) {
                    rows[found++] = row;
                }
            }
            count = found;
            int end = 0;
            for (int i = 0; i < count; i++) {
                while (end < count - 1
                        && piece.time(rows[end]) - piece.time(rows[i]) < WINDOW - ROUNDING) {
                    end++;
                }
                ends[i] = end;
            }
        }

        int count() {
            return count;
        }

        int row(int i) {
            return rows[i];
        }

        /** NaN where rows are too far apart, or the piece ends. */
        double at(int i) {
            double seconds = piece.time(rows[ends[i]]) - piece.time(rows[i]);
            return seconds >= WINDOW - ROUNDING && seconds <= LONGEST_WINDOW
                    ? (Math.abs(piece.value(speed, rows[ends[i]]))
                                    - Math.abs(piece.value(speed, rows[i])))
                            / seconds
                    : Double.NaN;
        }
    }
}
