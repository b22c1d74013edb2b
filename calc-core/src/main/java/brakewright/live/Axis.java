package brakewright.live;

import brakewright.spec.Curve;
import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** The places that a table has along one quantity, and where between them a value lies. */
final class Axis {

    private final double[] places;
    private final Curve rank;

    /** The places, ascending. */
    Axis(double[] places) {
        this.places = places;
        this.rank = Curve.of(places, IntStream.range(0, places.length).asDoubleStream().toArray());
    }

    double[] places() {
        return places.clone();
    }

    int size() {
        return places.length;
    }

    double place(int index) {
        return places[index];
    }

    /** A quantity at each place. */
    double[] read(DoubleUnaryOperator quantity) {
        return Arrays.stream(places).map(quantity).toArray();
    }

    /** How many places lie below, the part of the way to the next counted; whole at each place. */
    double rank(double value) {
        return rank.at(value);
    }
}
