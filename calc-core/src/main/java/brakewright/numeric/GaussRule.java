package brakewright.numeric;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * A Gauss-Legendre rule: {@code ∫f(x)dx ≈ Σ wᵢ·f(xᵢ)}, exact for polynomials of degree 2n − 1.
 *
 * <p>Callers loop over the nodes themselves, as they add up several quantities at once.
 *
 * <p>Source: NIST Digital Library of Mathematical Functions, section 3.5(v); nodes and weights from
 * Apache Commons Math 3.6.1.
 */
public final class GaussRule {

    private final double[] points;
    private final double[] weights;

    private GaussRule(GaussIntegrator rule) {
        points = new double[rule.getNumberOfPoints()];
        weights = new double[points.length];
        for (int node = 0; node < points.length; node++) {
            points[node] = rule.getPoint(node);
            weights[node] = rule.getWeight(node);
        }
    }

    /**
     * Returns the rule with a number of nodes.
     *
     * @param nodes at least 1
     * @return the rule
     */
    public static GaussRule of(int nodes) {
        return new GaussRule(new GaussIntegratorFactory().legendre(nodes));
    }

    /**
     * Returns how many nodes there are.
     *
     * @return n
     */
    public int nodes() {
        return points.length;
    }

    /**
     * Returns a node of an interval.
     *
     * @param node from 0
     * @param from where the interval begins
     * @param to where it ends; below {@code from} if it runs downwards
     * @return its place
     */
    public double point(int node, double from, double to) {
        return 0.5 * (from + to) + 0.5 * (to - from) * points[node];
    }

    /**
     * Returns the weight of a node of an interval.
     *
     * @param node from 0
     * @param from where the interval begins
     * @param to where it ends; below {@code from} if it runs downwards
     * @return its part of {@code to − from}, of the same sign
     */
    public double weight(int node, double from, double to) {
        return 0.5 * (to - from) * weights[node];
    }
}
