package brakewright.recording;

/**
 * What a value adds up to over time, taken for straight between neighbouring rows that have it.
 * Fields farther apart than the longest step are no neighbours, so nothing is added between them.
 *
 * <p>Source: trapezoidal rule, a step that crosses zero divided where it does.
 */
final class Integral {

    /** A value of a row; NaN where it is missing. */
    interface Value {
        double at(Piece piece, int row);
    }

    private double above;
    private double below;
    private double seconds;

    private Integral() {}

    static Integral of(Recording recording, Value value) {
        Integral integral = new Integral();
        for (Piece piece : recording.pieces()) {
            integral.add(piece, recording.longestStep(), value, 0, piece.rows());
        }
        return integral;
    }

    static Integral of(Piece piece, double longestStep, Value value, int from, int to) {
        Integral integral = new Integral();
        integral.add(piece, longestStep, value, from, to);
        return integral;
    }

    private void add(Piece piece, double longestStep, Value value, int from, int to) {
        double[] values = new double[to - from];
        for (int row = from; row < to; row++) {
            values[row - from] = value.at(piece, row);
        }
        Neighbours.each(
                piece,
                longestStep,
                row -> !Double.isNaN(values[row - from]),
                from,
                to,
                (before, row, step) -> add(values[before - from], values[row - from], step));
    }

    private void add(double begin, double end, double step) {
        seconds += step;
        if (begin * end >= 0.0) {
            double area = 0.5 * (begin + end) * step;
            above += Math.max(0.0, area);
            below += Math.max(0.0, -area);
        } else {
            double up = Math.max(begin, end);
            double down = -Math.min(begin, end);
            above += 0.5 * up * up / (up + down) * step;
            below += 0.5 * down * down / (up + down) * step;
        }
    }

    /** What is above zero. */
    double above() {
        return above;
    }

    /** What is below zero, as a positive number. */
    double below() {
        return below;
    }

    double net() {
        return above - below;
    }

    /** Over how long it was taken [s]. */
    double seconds() {
        return seconds;
    }
}
