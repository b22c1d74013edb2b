package brakewright.recording;

/**
 * The speed that was held: in a window of at least so many seconds the lowest, so that no single
 * row makes it.
 */
final class Held {

    /** Takes the lowest speed of a window that begins at a row. */
    interface Taker {
        void take(Piece piece, int row, double speed);
    }

    /** A rounding error of times that are multiples of a spacing [s]. */
    private static final double ROUNDING = 1e-6;

    private Held() {}

    static void each(Recording recording, Quantity speed, double seconds, Taker taker) {
        for (Piece piece : recording.pieces()) {
            each(piece, speed, recording.longestStep(), seconds, taker);
        }
    }

    /** The rows of a window that may still be its lowest stand in a queue, ascending. */
    static void each(
            Piece piece, Quantity quantity, double longestStep, double seconds, Taker taker) {
        int[] queue = new int[piece.rows()];
        int first = 0;
        int end = 0;
        int begin = -1;
        int last = -1;
        for (int row = 0; row < piece.rows(); row++) {
            double speed = Math.abs(piece.value(quantity, row));
            if (Double.isNaN(speed)) {
                continue;
            }
            if (last < 0 || piece.time(row) - piece.time(last) > longestStep) {
                begin = row;
                first = end;
            }
            last = row;
            while (end > first && Math.abs(piece.value(quantity, queue[end - 1])) >= speed) {
                end--;
            }
            queue[end++] = row;
            while (piece.time(row) - piece.time(begin) >= seconds - ROUNDING) {
                taker.take(piece, begin, Math.abs(piece.value(quantity, queue[first])));
                do {
                    begin++;
                } while (begin < row && Double.isNaN(piece.value(quantity, begin)));
                while (first < end && queue[first] < begin) {
                    first++;
                }
                if (begin >= row) {
                    break;
                }
            }
        }
    }
}
