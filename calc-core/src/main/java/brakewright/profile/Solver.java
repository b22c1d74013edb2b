package brakewright.profile;

import brakewright.numeric.Accuracy;
import brakewright.numeric.Root;
import brakewright.review.Evaluation;
import brakewright.spec.Require;
import brakewright.spec.Unit;
import java.util.function.DoubleFunction;
import java.util.function.IntFunction;

/**
 * Works backwards: which value of one thing keeps a vehicle just within limits over the whole of
 * its use.
 *
 * <p>The root of {@link Evaluation#severity} is sought by a bracketing Brent method between an end
 * that is within limits and one that is not; both ends are evaluated first, so there is a root
 * between them, and the answer is on its permitted side.
 */
public final class Solver {

    /** Assumption: our own choice; as many values are looked at where nothing is known of order. */
    private static final int PROBES = 20;

    private Solver() {}

    /**
     * Finds the highest value that is within limits, lower ones being milder.
     *
     * @param verdict over the value
     * @param low the lowest value asked about
     * @param high the highest value asked about
     * @return the solution
     * @throws IllegalArgumentException if {@code low} is not below {@code high}
     */
    public static Solution highest(DoubleFunction<Evaluation> verdict, double low, double high) {
        Require.ascending("values asked about", low, high, Unit.RATIO);
        Evaluation atLow = verdict.apply(low);
        Evaluation atHigh = verdict.apply(high);
        if (atHigh.severity() <= 0.0) {
            return new Solution.All(high, atHigh);
        }
        if (atLow.severity() > 0.0) {
            return new Solution.None(low, atLow);
        }
        double root =
                atLow.severity() == 0.0
                                && verdict.apply(low + Accuracy.MODEL.size()).severity() > 0.0
                        ? low
                        : Root.leaving(
                                value -> verdict.apply(value).severity(),
                                low,
                                high,
                                Accuracy.MODEL);
        return new Solution.Found(
                root, verdict.apply(root), verdict.apply(Math.min(high, root + step(low, high))));
    }

    /**
     * Finds the highest value that is within limits where lower ones need not be milder.
     *
     * <p>From the highest value downwards evenly spaced ones are evaluated; between the first that
     * is within limits and the one above it the root is bracketed. A value that is told is within
     * limits by its own evaluation, whatever the lower ones are. A value within limits between two
     * of those looked at, both of which are not, is not found.
     *
     * @param verdict over the value
     * @param low the lowest value asked about
     * @param high the highest value asked about
     * @return the solution; where there is none, the least exceeded of the values looked at
     * @throws IllegalArgumentException if {@code low} is not below {@code high}
     */
    public static Solution highestOfAny(
            DoubleFunction<Evaluation> verdict, double low, double high) {
        Require.ascending("values asked about", low, high, Unit.RATIO);
        double above = high;
        Solution.None nearest = new Solution.None(high, verdict.apply(high));
        if (nearest.there().severity() <= 0.0) {
            return new Solution.All(high, nearest.there());
        }
        for (int probe = PROBES - 1; probe >= 0; probe--) {
            double here = low + (high - low) * probe / PROBES;
            Evaluation there = verdict.apply(here);
            if (there.severity() <= 0.0) {
                return highest(verdict, here, above);
            }
            if (there.severity() <= nearest.there().severity()) {
                nearest = new Solution.None(here, there);
            }
            above = here;
        }
        return nearest;
    }

    /**
     * Finds the smallest count that is within limits, greater ones being milder.
     *
     * @param verdict over the count
     * @param least the smallest count asked about
     * @param most the greatest count asked about
     * @return the solution; each count is tried in turn
     * @throws IllegalArgumentException if {@code least} is above {@code most}
     */
    public static Solution smallest(IntFunction<Evaluation> verdict, int least, int most) {
        Require.within("smallest count", least, 0.0, most, Unit.RATIO);
        Evaluation below = verdict.apply(least);
        if (below.severity() <= 0.0) {
            return new Solution.All(least, below);
        }
        for (int count = least + 1; count <= most; count++) {
            Evaluation here = verdict.apply(count);
            if (here.severity() <= 0.0) {
                return new Solution.Found(count, here, below);
            }
            below = here;
        }
        return new Solution.None(most, below);
    }

    private static double step(double low, double high) {
        return 1e-6 * (high - low);
    }
}
