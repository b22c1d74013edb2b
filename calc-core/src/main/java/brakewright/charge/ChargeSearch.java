package brakewright.charge;

import brakewright.battery.BatteryModel;
import brakewright.battery.WorstGroup;
import brakewright.limit.Severity;
import brakewright.numeric.Accuracy;
import brakewright.numeric.Ascending;
import brakewright.numeric.Pieces;
import brakewright.numeric.Root;
import brakewright.spec.Use;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;

/**
 * Finds where over the charge in use something begins to exceed a bound: it looks at some charge
 * states, and solves in between.
 */
public final class ChargeSearch {

    /** Steps of 5 %. */
    private static final int EVEN = 20;

    private static final double JUST_ABOVE = 1e-6;

    private final double[] charges;

    /**
     * Prepares a search that looks first at charge states of the caller's.
     *
     * @param charges ascending, both ends of the charge in use included, not changed afterwards [1]
     */
    public ChargeSearch(double[] charges) {
        this.charges = charges;
    }

    /**
     * Prepares a search that looks first at both ends, every 5 % and every point of the packs'
     * curves, the worst group's included.
     *
     * @param use in which the charge runs
     * @param model the packs
     * @return the search
     */
    public static ChargeSearch over(Use use, BatteryModel model) {
        double[] even = new double[EVEN + 1];
        for (int step = 0; step <= EVEN; step++) {
            even[step] = (double) step / EVEN;
        }
        double[] points = even;
        for (WorstGroup.End end : WorstGroup.End.values()) {
            points = Ascending.both(points, model.points(end));
        }
        return new ChargeSearch(Pieces.of(points, use.chargeTo(), use.chargeFrom()));
    }

    /**
     * Returns the same search with one more place to look at.
     *
     * @param more the charge state from just above which it looks, too [1]; empty for none
     * @return a changed copy
     */
    public ChargeSearch with(OptionalDouble more) {
        if (more.isEmpty()) {
            return this;
        }
        double just = Math.min(charges[charges.length - 1], more.getAsDouble() + JUST_ABOVE);
        return new ChargeSearch(Ascending.both(charges, new double[] {just}));
    }

    /**
     * Returns where it looks first.
     *
     * @return ascending over the charge in use, both ends included; not to be changed [1]
     */
    public double[] charges() {
        return charges;
    }

    /**
     * Walks from the harmless end to the harmful one where value and limit are known at the charge
     * states looked at first.
     *
     * @param values at {@link #charges}
     * @param limits at {@link #charges}
     * @param excess between them, over the charge state
     * @param rising whether a higher charge state is more harmful
     * @return where the excess begins, the harmless end itself if it does there already; empty
     *     where it does nowhere
     */
    public OptionalDouble firstExcess(
            double[] values, double[] limits, DoubleUnaryOperator excess, boolean rising) {
        return first(place -> Severity.excess(values[place], limits[place]), excess, rising);
    }

    /**
     * Walks from the harmless end to the harmful one.
     *
     * @param excess over the charge state; positive where a bound is exceeded
     * @param rising whether a higher charge state is more harmful
     * @return where the excess begins, the harmless end itself if it does there already; empty
     *     where it does nowhere
     */
    public OptionalDouble firstExcess(DoubleUnaryOperator excess, boolean rising) {
        return first(place -> excess.applyAsDouble(charges[place]), excess, rising);
    }

    private OptionalDouble first(
            IntToDoubleFunction known, DoubleUnaryOperator excess, boolean rising) {
        int count = charges.length;
        int before = rising ? 0 : count - 1;
        for (int step = 0; step < count; step++) {
            int here = rising ? step : count - 1 - step;
            if (known.applyAsDouble(here) > 0.0) {
                return OptionalDouble.of(
                        step == 0
                                ? charges[here]
                                : crossing(excess, charges[before], charges[here]));
            }
            before = here;
        }
        return OptionalDouble.empty();
    }

    /** Where an excess begins between two charge states, the harmless one first. */
    private static double crossing(DoubleUnaryOperator excess, double harmless, double harmful) {
        double low = Math.min(harmless, harmful);
        double high = Math.max(harmless, harmful);
        return excess.applyAsDouble(harmless) == 0.0
                ? Root.leaving(excess, low, high, Accuracy.MODEL)
                : Root.between(excess, low, high, Accuracy.MODEL);
    }
}
