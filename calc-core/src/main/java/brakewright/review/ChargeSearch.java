package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.battery.WorstGroup;
import brakewright.limit.Limits;
import brakewright.numeric.Ascending;
import brakewright.numeric.Pieces;
import brakewright.numeric.Root;
import brakewright.spec.Build;
import brakewright.spec.Use;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Finds where over the charge in use something begins to exceed a bound. It looks at both ends,
 * every 5 %, every point of the cells' curves and every bend between, and solves in between.
 */
final class ChargeSearch {

    private static final double CHARGE_ACCURACY = 1e-9;

    /** Steps of 5 %. */
    private static final int EVEN = 20;

    private static final double JUST_ABOVE = 1e-6;

    private final double[] charges;

    ChargeSearch(Build build, BatteryModel model) {
        Use use = build.use();
        double[] even = new double[EVEN + 1];
        for (int step = 0; step <= EVEN; step++) {
            even[step] = (double) step / EVEN;
        }
        double[] points = even;
        for (WorstGroup.End end : WorstGroup.End.values()) {
            points = Ascending.both(points, model.points(end));
        }
        charges = Pieces.of(points, use.chargeTo(), use.chargeFrom());
    }

    /**
     * Prepares a search for what the settings exceed: it looks where something bends, too.
     *
     * @param build the vehicle
     * @param model its packs
     * @param limits its limits
     * @param operation its settings in effect
     * @return the search
     */
    static ChargeSearch of(Build build, BatteryModel model, Limits limits, Operation operation) {
        double[] points = new ChargeSearch(build, model).charges;
        return new ChargeSearch(
                Ascending.both(points, Bends.of(build, model, limits, operation, points)));
    }

    private ChargeSearch(double[] charges) {
        this.charges = charges;
    }

    /** The same, with a charge state looked at besides, from just above it. */
    ChargeSearch with(OptionalDouble more) {
        if (more.isEmpty()) {
            return this;
        }
        double just = Math.min(charges[charges.length - 1], more.getAsDouble() + JUST_ABOVE);
        return new ChargeSearch(Ascending.both(charges, new double[] {just}));
    }

    /** Where a search looks first: ascending over the charge in use, both ends included. */
    double[] charges() {
        return charges;
    }

    /** Finds where an excess begins between two charge states, the harmless one first. */
    double crossing(DoubleUnaryOperator excess, double harmless, double harmful) {
        double low = Math.min(harmless, harmful);
        double high = Math.max(harmless, harmful);
        return excess.applyAsDouble(harmless) == 0.0
                ? Root.leaving(excess, low, high, CHARGE_ACCURACY)
                : Root.between(excess, low, high, CHARGE_ACCURACY);
    }

    /**
     * The same where value and limit are known at the charge states looked at.
     *
     * @param values at {@link #charges}
     * @param limits at {@link #charges}
     * @param excess between them, over the charge state
     * @param rising whether a higher charge state is more harmful
     * @return where the excess begins, the harmless end itself if it does there already; empty
     *     where it does nowhere
     */
    OptionalDouble firstExcess(
            double[] values, double[] limits, DoubleUnaryOperator excess, boolean rising) {
        int count = charges.length;
        int before = rising ? 0 : count - 1;
        for (int step = 0; step < count; step++) {
            int here = rising ? step : count - 1 - step;
            if (Severity.excess(values[here], limits[here]) > 0.0) {
                return OptionalDouble.of(
                        step == 0
                                ? charges[here]
                                : crossing(excess, charges[before], charges[here]));
            }
            before = here;
        }
        return OptionalDouble.empty();
    }

    /**
     * Walks from the harmless end to the harmful one.
     *
     * @param excess over the charge state; positive where a bound is exceeded
     * @param rising whether a higher charge state is more harmful
     * @return where the excess begins, the harmless end itself if it does there already; empty
     *     where it does nowhere
     */
    OptionalDouble firstExcess(DoubleUnaryOperator excess, boolean rising) {
        int count = charges.length;
        double before = rising ? charges[0] : charges[count - 1];
        if (excess.applyAsDouble(before) > 0.0) {
            return OptionalDouble.of(before);
        }
        for (int step = 1; step < count; step++) {
            double here = rising ? charges[step] : charges[count - 1 - step];
            if (excess.applyAsDouble(here) > 0.0) {
                return OptionalDouble.of(crossing(excess, before, here));
            }
            before = here;
        }
        return OptionalDouble.empty();
    }
}
