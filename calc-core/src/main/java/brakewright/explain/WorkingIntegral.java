package brakewright.explain;

import brakewright.numeric.GaussRule;
import brakewright.numeric.Pieces;
import java.util.function.DoubleUnaryOperator;

/** Means over the charge state, by a Gauss-Legendre rule between the knots of the pack's curves. */
final class WorkingIntegral {

    static final String HOW =
            "The means are taken over the charge state by Gauss-Legendre quadrature between the"
                    + " points of the cell's curves.";

    private static final GaussRule RULE = GaussRule.of(5);

    private WorkingIntegral() {}

    /** The mean of a quantity between two charge states, the higher one first. */
    static double mean(double[] knots, double from, double to, DoubleUnaryOperator quantity) {
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
