package brakewright.battery;

import brakewright.numeric.GaussRule;
import brakewright.numeric.Pieces;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * The mean of a quantity over a span of charge, quarter by quarter: by Gauss-Legendre quadrature
 * between the points of the cells' curves.
 *
 * @param parts the quarters, fullest first
 */
public record ChargeMean(List<Part> parts) {

    private static final int PARTS = 4;
    private static final GaussRule RULE = GaussRule.of(5);

    /** Copies the list. */
    public ChargeMean {
        parts = List.copyOf(parts);
    }

    /**
     * The mean over one quarter.
     *
     * @param from the higher charge state [1]
     * @param to the lower one [1]
     * @param mean in the unit of the quantity
     */
    public record Part(double from, double to, double mean) {}

    /**
     * Takes the mean of a quantity.
     *
     * @param model of the packs
     * @param from the higher charge state [1]
     * @param to the lower one [1]
     * @param quantity over the charge state
     * @return its mean
     */
    public static ChargeMean of(
            BatteryModel model, double from, double to, DoubleUnaryOperator quantity) {
        List<Part> parts = new ArrayList<>();
        double[] ends = ends(from, to);
        for (int part = 1; part < ends.length; part++) {
            double mean = mean(model.knots(), ends[part - 1], ends[part], quantity);
            parts.add(new Part(ends[part - 1], ends[part], mean));
        }
        return new ChargeMean(parts);
    }

    /**
     * Returns where the quarters end.
     *
     * @param from the highest charge state [1]
     * @param to the lowest one [1]
     * @return descending, both of these among them [1]
     */
    public static double[] ends(double from, double to) {
        double[] ends = new double[PARTS + 1];
        for (int part = 0; part < PARTS; part++) {
            ends[part] = from + (to - from) * part / PARTS;
        }
        ends[PARTS] = to;
        return ends;
    }

    /**
     * Returns the mean over all of it.
     *
     * @return in the unit of the quantity
     */
    public double whole() {
        double sum = 0.0;
        for (Part part : parts) {
            sum += part.mean();
        }
        return sum / PARTS;
    }

    private static double mean(
            double[] knots, double from, double to, DoubleUnaryOperator quantity) {
        double sum = 0.0;
        double lower = to;
        for (double upper : Pieces.of(knots, to, from)) {
            for (int node = 0; node < RULE.nodes() && upper > lower; node++) {
                sum +=
                        RULE.weight(node, lower, upper)
                                * quantity.applyAsDouble(RULE.point(node, lower, upper));
            }
            lower = upper;
        }
        return sum / (from - to);
    }
}
