package brakewright.replay;

import java.util.OptionalDouble;

/** What one side says of a ride, figure by figure; what it has not spoken of is not known. */
final class Figures {

    private final double[] values = new double[Figure.values().length];
    private final boolean[] known = new boolean[values.length];

    void put(Figure figure, double value) {
        values[figure.ordinal()] = value;
        known[figure.ordinal()] = true;
    }

    void add(Figure figure, double value) {
        put(figure, has(figure) ? values[figure.ordinal()] + value : value);
    }

    void most(Figure figure, double value) {
        put(figure, has(figure) ? Math.max(values[figure.ordinal()], value) : value);
    }

    void least(Figure figure, double value) {
        put(figure, has(figure) ? Math.min(values[figure.ordinal()], value) : value);
    }

    boolean has(Figure figure) {
        return known[figure.ordinal()];
    }

    /** Nothing where it is not known. */
    double orNothing(Figure figure) {
        return values[figure.ordinal()];
    }

    /** Empty where it is not known or no number. */
    OptionalDouble of(Figure figure) {
        return has(figure) && Double.isFinite(values[figure.ordinal()])
                ? OptionalDouble.of(values[figure.ordinal()])
                : OptionalDouble.empty();
    }
}
