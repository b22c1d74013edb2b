package brakewright.recording;

import java.util.function.IntPredicate;

/**
 * Rows of a piece that follow each other: those that hold what is asked for, what lies between them
 * passed over. Rows farther apart than the longest step of a recording are no neighbours, so
 * nothing is taken between them.
 */
final class Neighbours {

    /** Takes two rows that follow each other. */
    interface Pair {
        void take(int before, int row, double step);
    }

    /** What is added up over them. */
    interface Part {
        double of(int before, int row, double step);
    }

    private Neighbours() {}

    static void each(Piece piece, double longestStep, IntPredicate has, Pair pair) {
        each(piece, longestStep, has, 0, piece.rows(), pair);
    }

    static void each(
            Piece piece, double longestStep, IntPredicate has, int from, int to, Pair pair) {
        int before = -1;
        for (int row = from; row < to; row++) {
            if (!has.test(row)) {
                continue;
            }
            double step =
                    before < 0 ? Double.POSITIVE_INFINITY : piece.time(row) - piece.time(before);
            if (step <= longestStep) {
                pair.take(before, row, step);
            }
            before = row;
        }
    }

    /** What all pairs of a piece add to a sum. */
    static double sum(double sum, Piece piece, double longestStep, IntPredicate has, Part part) {
        double[] added = {sum};
        each(
                piece,
                longestStep,
                has,
                (before, row, step) -> added[0] += part.of(before, row, step));
        return added[0];
    }
}
