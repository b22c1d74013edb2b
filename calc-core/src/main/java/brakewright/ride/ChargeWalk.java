package brakewright.ride;

import brakewright.battery.BatteryModel;
import brakewright.spec.Use;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Walks down the charge in use, from knot to knot of the pack's curves, until a reserve is gone.
 */
final class ChargeWalk {

    private static final double CHARGE_ACCURACY = 1e-10;
    private static final int ITERATIONS = 200;

    private final double[] knots;
    private final double lowest;

    ChargeWalk(BatteryModel model, Use use) {
        this.knots = model.knots();
        this.lowest = use.chargeTo();
    }

    /**
     * Walks down.
     *
     * @param from where the walk begins [1]
     * @param reserve over the charge state; negative where it is gone
     * @return the charge state at which it is gone; the beginning if it is there already, the
     *     lowest in use if it never is
     */
    double firstBelow(double from, UnivariateFunction reserve) {
        if (reserve.value(from) < 0.0) {
            return from;
        }
        double above = from;
        for (int i = knots.length - 1; i >= 0; i--) {
            double knot = Math.max(lowest, Math.min(from, knots[i]));
            if (reserve.value(knot) < 0.0) {
                return new BrentSolver(CHARGE_ACCURACY).solve(ITERATIONS, reserve, knot, above);
            }
            above = knot;
        }
        return lowest;
    }
}
