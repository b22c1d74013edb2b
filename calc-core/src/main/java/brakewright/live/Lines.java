package brakewright.live;

/** Straight lines between the values of a table. */
final class Lines {

    private Lines() {}

    /** At a rank along a row of values; exactly the value where the rank is whole. */
    static double at(double[] values, double rank) {
        int below = (int) rank;
        return between(values, below, 1, rank - below);
    }

    /** Part of the way from a value to the one that lies a step behind it. */
    static double between(double[] values, int place, int step, double part) {
        double value = values[place];
        return part == 0.0 ? value : value + part * (values[place + step] - value);
    }
}
