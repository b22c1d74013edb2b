package brakewright.limit;

import brakewright.battery.BatteryModel;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * A voltage condition on one of several packs, told as the current of all: the pack carries {@code
 * w_k·I}, and stands at its own charge state.
 *
 * @param own the condition, told as the current of the pack
 * @param model all packs
 * @param place of the pack, from 0
 */
record BranchVoltage(VoltageConstraint own, BatteryModel model, int place)
        implements VoltageConstraint {

    private static final double ACCURACY = 1e-12;
    private static final int ITERATIONS = 200;

    @Override
    public ConstraintId id() {
        return own.id();
    }

    @Override
    public int pack() {
        return place + 1;
    }

    @Override
    public double headroom(double charge) {
        return own.headroom(model.chargeOf(place, charge));
    }

    @Override
    public double resistance(double charge, double temperatureC) {
        return model.share(place, charge, temperatureC)
                * own.resistance(model.chargeOf(place, charge), temperatureC);
    }

    /** The share of one of several packs bends between the knots. */
    @Override
    public double exhausted(double current, double inner, double outer, double temperatureC) {
        return new BrentSolver(ACCURACY)
                .solve(
                        ITERATIONS,
                        charge -> slack(current, charge, temperatureC),
                        Math.min(inner, outer),
                        Math.max(inner, outer));
    }

    @Override
    public Constraint at(double charge, double temperatureC) {
        return PackTerms.shared(
                own.at(model.chargeOf(place, charge), temperatureC),
                limitAt(charge, temperatureC),
                model.share(place, charge, temperatureC),
                pack());
    }
}
