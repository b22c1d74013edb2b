package brakewright.limit;

import brakewright.battery.AlongCharge;
import java.util.Arrays;

/** A condition on the current of the pack that is the same at every charge state. */
public non-sealed interface RatingConstraint extends PackConstraint {

    /**
     * Returns the highest pack current that satisfies the condition.
     *
     * @param temperatureC the cell temperature [°C]
     * @return the current [A], not negative; infinite where the condition permits any
     */
    double limitAt(double temperatureC);

    /**
     * Evaluates the condition with its working.
     *
     * @param temperatureC the cell temperature [°C]
     * @return the constraint
     */
    Constraint at(double temperatureC);

    @Override
    default boolean variesWithCharge() {
        return false;
    }

    @Override
    default double limitAt(double charge, double temperatureC) {
        return limitAt(temperatureC);
    }

    @Override
    default double[] limitsAt(AlongCharge along, double temperatureC) {
        double[] limits = new double[along.charges().length];
        Arrays.fill(limits, limitAt(temperatureC));
        return limits;
    }

    @Override
    default Constraint at(double charge, double temperatureC) {
        return at(temperatureC);
    }
}
