package brakewright.ride;

import brakewright.battery.BatteryModel;
import brakewright.numeric.Root;
import brakewright.spec.Use;
import java.util.function.DoubleUnaryOperator;

/**
 * Walks down the charge in use, from knot to knot of the pack's curves, until a reserve is gone.
 */
final class ChargeWalk {

    private static final double CHARGE_ACCURACY = 1e-10;

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
    double firstBelow(double from, DoubleUnaryOperator reserve) {
        if (reserve.applyAsDouble(from) < 0.0) {
            return from;
        }
        double above = from;
        for (int i = knots.length - 1; i >= 0; i--) {
            double knot = Math.max(lowest, Math.min(from, knots[i]));
            if (reserve.applyAsDouble(knot) < 0.0) {
                return Root.between(reserve, knot, above, CHARGE_ACCURACY);
            }
            above = knot;
        }
        return lowest;
    }
}
