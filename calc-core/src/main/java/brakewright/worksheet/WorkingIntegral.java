package brakewright.worksheet;

import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/** Means over the charge state, by a Gauss-Legendre rule between the knots of the pack's curves. */
final class WorkingIntegral {

    static final String HOW =
            "The means are taken over the charge state by Gauss-Legendre quadrature between the"
                    + " points of the cell's curves.";

    private static final int NODES = 5;
    private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(NODES);

    private WorkingIntegral() {}

    /** The mean of a quantity between two charge states, the higher one first. */
    static double mean(double[] knots, double from, double to, DoubleUnaryOperator quantity) {
        TreeSet<Double> ends = new TreeSet<>();
        ends.add(from);
        ends.add(to);
        for (double knot : knots) {
            if (knot > to && knot < from) {
                ends.add(knot);
            }
        }
        double sum = 0.0;
        double lower = to;
        for (double upper : ends) {
            double half = 0.5 * (upper - lower);
            for (int node = 0; node < NODES && half > 0.0; node++) {
                double charge = lower + half * (1.0 + RULE.getPoint(node));
                sum += half * RULE.getWeight(node) * quantity.applyAsDouble(charge);
            }
            lower = upper;
        }
        return sum / (from - to);
    }
}
