package brakewright.limit;

import brakewright.battery.AlongCharge;
import brakewright.spec.WhichPack;

/**
 * A condition on the current of the pack, at a charge state and a cell temperature: a plain rating,
 * or a voltage that the current shifts.
 */
public sealed interface PackConstraint permits RatingConstraint, VoltageConstraint {

    /**
     * Returns which condition this is.
     *
     * @return its identity
     */
    ConstraintId id();

    /**
     * Returns which of several packs this is about.
     *
     * @return one of several, or the whole
     */
    default WhichPack pack() {
        return WhichPack.WHOLE;
    }

    /**
     * Returns whether the permitted current changes with the charge state.
     *
     * @return false for a plain rating
     */
    boolean variesWithCharge();

    /**
     * Returns the voltage that is left without any current, for a condition on a voltage.
     *
     * @param charge the charge state [1]
     * @return the voltage, negative where the condition fails at rest [V]; infinite for a condition
     *     that is none on a voltage
     */
    default double headroomAt(double charge) {
        return Double.POSITIVE_INFINITY;
    }

    /**
     * Returns what {@link #limitAt} divides, for a condition that varies with the charge: a
     * straight line between the points of the packs' curves, whatever the temperature.
     *
     * @param charge the charge state [1]
     * @return mostly a voltage, negative where nothing is permitted; infinite for a plain rating
     */
    default double dividendAt(double charge) {
        return Double.POSITIVE_INFINITY;
    }

    /**
     * Returns by what {@link #limitAt} divides it.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return mostly a resistance, positive; 1 for a plain rating
     */
    default double divisorAt(double charge, double temperatureC) {
        return 1.0;
    }

    /**
     * Returns the highest pack current that satisfies the condition.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return the current [A], not negative; infinite where the condition permits any
     */
    double limitAt(double charge, double temperatureC);

    /**
     * Returns the highest pack currents that satisfy the condition at several charge states.
     *
     * @param along the packs there
     * @param temperatureC the cell temperature [°C]
     * @return what {@link #limitAt} tells at each of them, to the last digit [A]
     */
    double[] limitsAt(AlongCharge along, double temperatureC);

    /**
     * Evaluates the condition with its working.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return the constraint
     */
    Constraint at(double charge, double temperatureC);
}
