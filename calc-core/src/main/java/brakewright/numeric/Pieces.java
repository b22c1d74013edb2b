package brakewright.numeric;

/** The pieces into which knots divide an interval; between two knots everything runs smoothly. */
public final class Pieces {

    private Pieces() {}

    /**
     * Returns where the pieces of an interval end.
     *
     * @param knots in any order, inside or outside the interval
     * @param low where the interval begins
     * @param high where it ends, not below {@code low}
     * @return both ends and the knots between, ascending, each once
     */
    public static double[] of(double[] knots, double low, double high) {
        return Ascending.both(Ascending.of(low, high), Ascending.between(knots, low, high));
    }
}
