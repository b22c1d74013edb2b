package brakewright.spec;

import brakewright.numeric.Rounding;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.DoubleStream;

/**
 * A quantity tabulated over another, read by straight lines between the points.
 *
 * <p>Beyond its ends the curve stays at the end value: nothing is extrapolated. Straight lines keep
 * the order of the points (a rising table gives a rising curve) and let every crossing be solved in
 * closed form, which a smooth spline would not.
 */
public final class Curve {

    private static final int PARTS_PER_POINT = 4;

    private final double[] abscissas;
    private final double[] ordinates;

    /** How many even parts of the whole length there are to a unit of it. */
    private final double partsPerUnit;

    /** For each part the first point in it or behind: none before is at or above a place in it. */
    private final int[] begins;

    private Curve(double[] abscissas, double[] ordinates) {
        this.abscissas = abscissas;
        this.ordinates = ordinates;
        int last = abscissas.length - 1;
        double length = abscissas[last] - abscissas[0];
        int parts = PARTS_PER_POINT * last;
        this.partsPerUnit = Double.isInfinite(parts / length) ? 0.0 : parts / length;
        this.begins = new int[parts + 2];
        int above = 1;
        for (int part = 0; part < begins.length; part++) {
            double begin = abscissas[0] + (part - Rounding.OF_A_RESULT) / parts * length;
            while (above < last && abscissas[above] < begin) {
                above++;
            }
            begins[part] = above;
        }
    }

    /**
     * Builds a curve through points.
     *
     * @param abscissas where the points lie, strictly ascending, at least two of them
     * @param ordinates the values there, as many
     * @return the curve
     * @throws IllegalArgumentException if the counts differ, there are fewer than two points, the
     *     abscissas do not ascend, or any number is not finite
     */
    public static Curve of(double[] abscissas, double[] ordinates) {
        if (abscissas.length != ordinates.length || abscissas.length < 2) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "a curve needs at least two points and one value each, was %d and %d",
                            abscissas.length,
                            ordinates.length));
        }
        for (int i = 0; i < abscissas.length; i++) {
            if (!Double.isFinite(abscissas[i]) || !Double.isFinite(ordinates[i])) {
                throw new IllegalArgumentException("curve point " + (i + 1) + " is not finite");
            }
            if (i > 0) {
                Require.ascending("curve points", abscissas[i - 1], abscissas[i], Unit.RATIO);
            }
        }
        return new Curve(abscissas.clone(), ordinates.clone());
    }

    /**
     * Builds the curve that has the same value everywhere.
     *
     * @param value the value
     * @return the curve
     */
    public static Curve constant(double value) {
        return of(new double[] {0.0, 1.0}, new double[] {value, value});
    }

    /**
     * Reads the curve.
     *
     * @param abscissa where to read; beyond the ends the end value holds
     * @return the value there
     * @throws IllegalArgumentException if the abscissa is NaN
     */
    public double at(double abscissa) {
        double[] at = abscissas;
        double first = at[0];
        if (abscissa <= first) {
            return ordinates[0];
        }
        if (abscissa >= at[at.length - 1]) {
            return ordinates[at.length - 1];
        }
        Require.number("where a curve is read", abscissa, Unit.RATIO);
        int above = begins[(int) ((abscissa - first) * partsPerUnit)];
        while (at[above] < abscissa) {
            above++;
        }
        double left = at[above - 1];
        double low = ordinates[above - 1];
        return low + (abscissa - left) / (at[above] - left) * (ordinates[above] - low);
    }

    /**
     * Reads the curve, its first and last straight line continued beyond the ends.
     *
     * @param abscissa where to read
     * @return the value there
     * @throws IllegalArgumentException if the abscissa is NaN
     */
    public double extended(double abscissa) {
        int last = abscissas.length - 1;
        if (abscissa < abscissas[0]) {
            return ordinates[0] + (abscissa - abscissas[0]) * steepness(1);
        }
        return abscissa > abscissas[last]
                ? ordinates[last] + (abscissa - abscissas[last]) * steepness(last)
                : at(abscissa);
    }

    /** Of the line that ends at a point. */
    private double steepness(int above) {
        return (ordinates[above] - ordinates[above - 1])
                / (abscissas[above] - abscissas[above - 1]);
    }

    /**
     * Returns where a curve that never falls first reaches a value.
     *
     * @param ordinate the value
     * @return the lowest abscissa at which the curve is at least the value; the first abscissa
     *     where it always is, the last where it never is
     * @throws IllegalArgumentException if the value is NaN
     */
    public double firstReaches(double ordinate) {
        Require.number("what a curve reaches", ordinate, Unit.RATIO);
        int above = 0;
        while (above < ordinates.length && ordinates[above] < ordinate) {
            above++;
        }
        if (above == 0) {
            return abscissas[0];
        }
        return above == ordinates.length ? abscissas[above - 1] : between(above, ordinate);
    }

    /**
     * Returns where a curve that never falls last stays at or below a value.
     *
     * @param ordinate the value
     * @return the highest abscissa at which the curve is at most the value; the first abscissa
     *     where it never is, the last where it always is
     * @throws IllegalArgumentException if the value is NaN
     */
    public double lastStays(double ordinate) {
        Require.number("what a curve stays below", ordinate, Unit.RATIO);
        int below = ordinates.length - 1;
        while (below >= 0 && ordinates[below] > ordinate) {
            below--;
        }
        if (below < 0) {
            return abscissas[0];
        }
        return below == ordinates.length - 1 ? abscissas[below] : between(below + 1, ordinate);
    }

    /**
     * Returns where a curve that never falls first reaches a value, its outer straight lines
     * continued beyond the ends unless they are level.
     *
     * @param ordinate the value
     * @return the abscissa; where no line leads to the value, the end that is nearest to it
     * @throws IllegalArgumentException if the value is NaN
     */
    public double extendedFirstReaches(double ordinate) {
        return isBeyond(ordinate) ? beyond(ordinate) : firstReaches(ordinate);
    }

    /**
     * Returns where a curve that never falls last stays at or below a value, its outer straight
     * lines continued beyond the ends unless they are level.
     *
     * @param ordinate the value
     * @return the abscissa; where no line leads to the value, the end that is nearest to it
     * @throws IllegalArgumentException if the value is NaN
     */
    public double extendedLastStays(double ordinate) {
        return isBeyond(ordinate) ? beyond(ordinate) : lastStays(ordinate);
    }

    private boolean isBeyond(double ordinate) {
        return ordinate < ordinates[0] || ordinate > ordinates[ordinates.length - 1];
    }

    private double beyond(double ordinate) {
        int end = ordinate < ordinates[0] ? 0 : ordinates.length - 1;
        double steepness = steepness(Math.max(1, end));
        return steepness > 0.0
                ? abscissas[end] + (ordinate - ordinates[end]) / steepness
                : abscissas[end];
    }

    private double between(int above, double ordinate) {
        double share =
                (ordinate - ordinates[above - 1]) / (ordinates[above] - ordinates[above - 1]);
        return abscissas[above - 1] + share * (abscissas[above] - abscissas[above - 1]);
    }

    /**
     * Returns the sum of this curve and a multiple of another.
     *
     * @param other the curve to add
     * @param factor by which it is multiplied
     * @return a curve with the points of both, straight between them as both are
     */
    public Curve plus(Curve other, double factor) {
        double[] all =
                DoubleStream.concat(Arrays.stream(abscissas), Arrays.stream(other.abscissas))
                        .sorted()
                        .distinct()
                        .toArray();
        return new Curve(all, Arrays.stream(all).map(x -> at(x) + factor * other.at(x)).toArray());
    }

    /**
     * Returns whether the values never fall along the curve.
     *
     * @return true if each value is at least the one before
     */
    public boolean neverFalls() {
        for (int i = 1; i < ordinates.length; i++) {
            if (ordinates[i] < ordinates[i - 1]) {
                return false;
            }
        }
        return true;
    }

    /**
     * Returns the least value of the curve.
     *
     * @return the least ordinate
     */
    public double least() {
        return Arrays.stream(ordinates).min().orElseThrow();
    }

    /**
     * Returns where the points lie.
     *
     * @return the abscissas, ascending; a copy
     */
    public double[] abscissas() {
        return abscissas.clone();
    }

    /**
     * Returns the values at the points.
     *
     * @return the ordinates; a copy
     */
    public double[] ordinates() {
        return ordinates.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Curve curve
                && Arrays.equals(abscissas, curve.abscissas)
                && Arrays.equals(ordinates, curve.ordinates);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(abscissas) + Arrays.hashCode(ordinates);
    }

    @Override
    public String toString() {
        StringBuilder text = new StringBuilder("Curve[");
        for (int i = 0; i < abscissas.length; i++) {
            text.append(i == 0 ? "" : ", ").append(abscissas[i]).append(':').append(ordinates[i]);
        }
        return text.append(']').toString();
    }
}
