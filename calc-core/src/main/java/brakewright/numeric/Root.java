package brakewright.numeric;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.AllowedSolution;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Where a continuous quantity passes zero.
 *
 * <p>Both ends are evaluated first and must differ in sign, or one of them be zero. Brent's method
 * then keeps the root between its two best points until they are as close as asked.
 *
 * <p>Source: R. P. Brent, Algorithms for Minimization Without Derivatives, 1973, chapter 4, as
 * implemented by Apache Commons Math 3.6.1.
 */
public final class Root {

    /** Relative accuracy that leaves the absolute one to decide. */
    private static final double FINEST = 1e-14;

    /** Bisection alone needs some 60; more than this is a fault. */
    private static final int MOST_EVALUATIONS = 500;

    private static final int ORDER = 5;

    /** A quantity that touches zero is small on both sides long before the place is known. */
    private static final double HOWEVER_SMALL = 0.0;

    /** So small that it moves no root, and large enough that its square is no zero. */
    private static final double BELOW = -1e-100;

    private Root() {}

    /** On which side of a root the answer must lie. */
    public enum Side {
        /** Where the quantity is not positive. */
        NOT_POSITIVE(AllowedSolution.BELOW_SIDE),
        /** Where it is not negative. */
        NOT_NEGATIVE(AllowedSolution.ABOVE_SIDE);

        private final AllowedSolution allowed;

        Side(AllowedSolution allowed) {
            this.allowed = allowed;
        }
    }

    /**
     * Finds a root.
     *
     * @param quantity continuous between the ends
     * @param low one end
     * @param high the other end, above {@code low}
     * @param accuracy of the root, in its own unit
     * @return the root
     * @throws IllegalArgumentException if the quantity has the same sign at both ends
     */
    public static double between(
            DoubleUnaryOperator quantity, double low, double high, Accuracy accuracy) {
        return between(quantity, low, high, FINEST, accuracy.size());
    }

    /**
     * Finds a root to a relative or an absolute accuracy, whichever is met first.
     *
     * @param quantity continuous between the ends
     * @param low one end
     * @param high the other end, above {@code low}
     * @param relative accuracy of the root [1]
     * @param absolute accuracy of the root, in its own unit
     * @return the root
     * @throws IllegalArgumentException if the quantity has the same sign at both ends
     */
    public static double between(
            DoubleUnaryOperator quantity,
            double low,
            double high,
            Accuracy relative,
            Accuracy absolute) {
        return between(quantity, low, high, relative.size(), absolute.size());
    }

    private static double between(
            DoubleUnaryOperator quantity,
            double low,
            double high,
            double relative,
            double absolute) {
        return new BrentSolver(relative, absolute)
                .solve(MOST_EVALUATIONS, new Quantity(quantity), low, high);
    }

    /**
     * Finds where a quantity begins to be positive that may be nothing over a whole stretch before.
     *
     * @param quantity continuous between the ends, and positive at one of them alone
     * @param low one end
     * @param high the other end, above {@code low}
     * @param accuracy of the place, relative as well as in its own unit
     * @return the place, or the nearest known where the quantity is not positive
     * @throws IllegalArgumentException if it is positive at both ends, or at neither
     */
    public static double leaving(
            DoubleUnaryOperator quantity, double low, double high, Accuracy accuracy) {
        return new BracketingNthOrderBrentSolver(
                        accuracy.size(), accuracy.size(), HOWEVER_SMALL, ORDER)
                .solve(
                        MOST_EVALUATIONS,
                        new Quantity(
                                place -> {
                                    double here = quantity.applyAsDouble(place);
                                    return here == 0.0 ? BELOW : here;
                                }),
                        low,
                        high,
                        Side.NOT_POSITIVE.allowed);
    }

    /**
     * Finds a root and answers with a place on the permitted side of it, at most the accuracy away.
     *
     * @param quantity continuous between the ends
     * @param low one end
     * @param high the other end, above {@code low}
     * @param accuracy of the root, relative as well as in its own unit
     * @param side where the answer must lie
     * @return the root, or the nearest place known to lie on that side
     * @throws IllegalArgumentException if the quantity has the same sign at both ends
     */
    public static double onSide(
            DoubleUnaryOperator quantity, double low, double high, Accuracy accuracy, Side side) {
        return new BracketingNthOrderBrentSolver(accuracy.size(), accuracy.size(), ORDER)
                .solve(MOST_EVALUATIONS, new Quantity(quantity), low, high, side.allowed);
    }
}
