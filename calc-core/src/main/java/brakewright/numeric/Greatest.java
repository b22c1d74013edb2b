package brakewright.numeric;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * Where a quantity with a single peak is greatest.
 *
 * <p>Source: R. P. Brent, Algorithms for Minimization Without Derivatives, 1973, chapter 5, as
 * implemented by Apache Commons Math 3.6.1.
 */
public final class Greatest {

    private static final int MOST_EVALUATIONS = 200;

    private Greatest() {}

    /**
     * Finds the place of the peak.
     *
     * @param quantity with a single peak between the ends
     * @param low one end
     * @param high the other end, above {@code low}
     * @param accuracy of the place, relative as well as in its own unit
     * @return the place; with several peaks that of one of them
     */
    public static double between(
            DoubleUnaryOperator quantity, double low, double high, Accuracy accuracy) {
        return new BrentOptimizer(accuracy.size(), accuracy.size())
                .optimize(
                        new MaxEval(MOST_EVALUATIONS),
                        GoalType.MAXIMIZE,
                        new UnivariateObjectiveFunction(new Quantity(quantity)),
                        new SearchInterval(low, high))
                .getPoint();
    }
}
