package brakewright.assembly;

import brakewright.spec.Curve;
import java.util.List;

/** What stands behind one key, in calculation units. */
public sealed interface Value {

    /**
     * A number.
     *
     * @param quantity with its tolerance
     */
    record Number(Quantity quantity) implements Value {}

    /**
     * Two numbers.
     *
     * @param one as written first
     * @param two as written second
     */
    record Pair(Quantity one, Quantity two) implements Value {

        /**
         * Makes a pair of exact numbers.
         *
         * @param first the one, in calculation units
         * @param second the other, in the same unit
         */
        public Pair(double first, double second) {
            this(Quantity.exact(first), Quantity.exact(second));
        }

        /**
         * Returns the nominal first number.
         *
         * @return as written first, in calculation units
         */
        public double first() {
            return one.value();
        }

        /**
         * Returns the nominal second number.
         *
         * @return as written second, in calculation units
         */
        public double second() {
            return two.value();
        }
    }

    /** What is not set, said so: a taper may be {@code none}. */
    record Unset() implements Value {

        /** How it is written. */
        public static final String WORD = "none";
    }

    /**
     * A word out of a set, or free text.
     *
     * @param text as written
     */
    record Word(String text) implements Value {}

    /**
     * A tabulated curve.
     *
     * @param curve the points
     */
    record Points(Curve curve) implements Value {

        /**
         * Returns the points one by one.
         *
         * @return pairs of where and value
         */
        public List<double[]> pairs() {
            double[] where = curve.abscissas();
            double[] what = curve.ordinates();
            List<double[]> pairs = new java.util.ArrayList<>();
            for (int i = 0; i < where.length; i++) {
                pairs.add(new double[] {where[i], what[i]});
            }
            return pairs;
        }
    }
}
