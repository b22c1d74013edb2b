package brakewright.charge;

import brakewright.numeric.Accuracy;
import brakewright.numeric.Pieces;
import brakewright.numeric.Root;
import java.util.function.DoubleUnaryOperator;

/**
 * Walks along the charge, up or down, from knot to knot of the packs' curves, until a reserve is
 * gone.
 *
 * <p>It needs a reserve that changes its sign at most once between two knots, and then finds the
 * first place where it does; a reserve that is gone and back between two knots would go unseen.
 */
public final class ReserveWalk {

    private final double[] knots;

    /**
     * Prepares a walk.
     *
     * @param knots from 0 to 1, in any order, not changed afterwards
     */
    public ReserveWalk(double[] knots) {
        this.knots = knots;
    }

    /**
     * Walks to where the reserve is nothing, on whichever side of that place.
     *
     * @param from where the walk begins [1]
     * @param to where it ends at the latest, above or below [1]
     * @param reserve over the charge state, continuous; negative where it is gone
     * @return the charge state at which it is gone; the beginning if it is gone there already, the
     *     end if it never is
     */
    public double whereGone(double from, double to, DoubleUnaryOperator reserve) {
        return walk(
                from,
                to,
                reserve,
                (low, high) -> Root.between(reserve, low, high, Accuracy.CHARGE));
    }

    /**
     * Walks to a place with a reserve, so that what holds there can be told.
     *
     * @param from where the walk begins [1]
     * @param to where it ends at the latest, above or below [1]
     * @param reserve over the charge state, continuous; negative where it is gone
     * @return the last charge state with a reserve; the beginning if it is gone there already, the
     *     end if it never is
     */
    public double lastWithReserve(double from, double to, DoubleUnaryOperator reserve) {
        return walk(
                from,
                to,
                reserve,
                (low, high) ->
                        Root.onSide(
                                reserve, low, high, Accuracy.INNERMOST, Root.Side.NOT_NEGATIVE));
    }

    private interface Crossing {
        double between(double low, double high);
    }

    private double walk(double from, double to, DoubleUnaryOperator reserve, Crossing crossing) {
        if (reserve.applyAsDouble(from) < 0.0) {
            return from;
        }
        double[] ends = Pieces.of(knots, Math.min(from, to), Math.max(from, to));
        double before = from;
        for (int step = 1; step < ends.length; step++) {
            double here = to > from ? ends[step] : ends[ends.length - 1 - step];
            if (reserve.applyAsDouble(here) < 0.0) {
                return crossing.between(Math.min(before, here), Math.max(before, here));
            }
            before = here;
        }
        return to;
    }
}
