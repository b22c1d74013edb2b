package brakewright.profile;

import brakewright.numeric.Accuracy;
import brakewright.numeric.Greatest;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * Finds where in a box of uncertain inputs a measure is greatest.
 *
 * <p>Nearly every measure of a vehicle rises or falls with each input alone, so its greatest value
 * is at a corner of the box, given by the signs of the sensitivities. That corner is where the
 * search begins; up to eight inputs all corners are looked at besides. From the best of them each
 * input in turn is moved over its range at five points, and where an inner point is better the
 * place is refined by Brent's method; this is repeated until nothing improves. So a measure that is
 * not monotone in an input is followed inside.
 */
final class CornerSearch {

    /** All 2⁸ corners take less time than a screen needs. */
    private static final int ALL_CORNERS = 8;

    private static final int POINTS = 5;
    private static final int PASSES = 12;

    private final List<Uncertain> inputs;

    CornerSearch(List<Uncertain> inputs) {
        this.inputs = inputs;
    }

    /** The nominal values. */
    double[] nominal() {
        return inputs.stream().mapToDouble(Uncertain::nominal).toArray();
    }

    /**
     * Searches.
     *
     * @param measure of the values of all inputs
     * @return the values at which it is greatest
     */
    double[] greatest(ToDoubleFunction<double[]> measure) {
        return searched(remembered(measure));
    }

    /** Corners and middles are met several times. */
    private static ToDoubleFunction<double[]> remembered(ToDoubleFunction<double[]> measure) {
        Map<List<Double>, Double> known = new HashMap<>();
        return values ->
                known.computeIfAbsent(
                        Arrays.stream(values).boxed().toList(),
                        each -> measure.applyAsDouble(values));
    }

    private double[] searched(ToDoubleFunction<double[]> measure) {
        double[] best = signs(measure);
        double bestValue = measure.applyAsDouble(best);
        double[] nominal = nominal();
        if (measure.applyAsDouble(nominal) > bestValue) {
            best = nominal;
            bestValue = measure.applyAsDouble(nominal);
        }
        int count = inputs.size();
        for (int bits = 0; count <= ALL_CORNERS && bits < 1 << count; bits++) {
            double[] corner = corner(bits);
            double value = measure.applyAsDouble(corner);
            if (value > bestValue) {
                best = corner;
                bestValue = value;
            }
        }
        return climb(best, bestValue, measure);
    }

    /** The corner that the sensitivity to each input alone points to. */
    private double[] signs(ToDoubleFunction<double[]> measure) {
        double[] corner = nominal();
        for (int i = 0; i < corner.length; i++) {
            double[] low = nominal();
            double[] high = nominal();
            low[i] = inputs.get(i).low();
            high[i] = inputs.get(i).high();
            corner[i] =
                    measure.applyAsDouble(high) >= measure.applyAsDouble(low) ? high[i] : low[i];
        }
        return corner;
    }

    private double[] corner(int bits) {
        double[] corner = new double[inputs.size()];
        for (int i = 0; i < corner.length; i++) {
            corner[i] = (bits >> i & 1) == 0 ? inputs.get(i).low() : inputs.get(i).high();
        }
        return corner;
    }

    private double[] climb(double[] start, double value, ToDoubleFunction<double[]> measure) {
        double[] best = start;
        double bestValue = value;
        boolean improves = true;
        for (int pass = 0; improves && pass < PASSES; pass++) {
            improves = false;
            for (int i = 0; i < best.length; i++) {
                double[] moved = along(best, i, measure);
                double movedValue = measure.applyAsDouble(moved);
                if (movedValue > bestValue) {
                    best = moved;
                    bestValue = movedValue;
                    improves = true;
                }
            }
        }
        return best;
    }

    /** The best place on the line through a point along one input. */
    private double[] along(double[] from, int index, ToDoubleFunction<double[]> measure) {
        Uncertain input = inputs.get(index);
        int best = 0;
        double bestValue = Double.NEGATIVE_INFINITY;
        for (int point = 0; point < POINTS; point++) {
            double value =
                    measure.applyAsDouble(
                            moved(from, index, input.at((double) point / (POINTS - 1))));
            if (value > bestValue) {
                best = point;
                bestValue = value;
            }
        }
        double at = input.at((double) best / (POINTS - 1));
        if (best == 0 || best == POINTS - 1) {
            return moved(from, index, at);
        }
        double refined =
                Greatest.between(
                        each -> measure.applyAsDouble(moved(from, index, each)),
                        input.at((best - 1.0) / (POINTS - 1)),
                        input.at((best + 1.0) / (POINTS - 1)),
                        Accuracy.MODEL);
        return moved(from, index, refined);
    }

    private static double[] moved(double[] from, int index, double value) {
        double[] moved = Arrays.copyOf(from, from.length);
        moved[index] = value;
        return moved;
    }
}
