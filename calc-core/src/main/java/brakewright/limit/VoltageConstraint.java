package brakewright.limit;

import brakewright.battery.AlongCharge;

/**
 * A condition on a voltage that the pack current shifts across a resistance. What is left of the
 * voltage is a straight line between the points of the cell's curves, so the charge state at which
 * a current uses it up is found in closed form, where packs differ by search.
 */
non-sealed interface VoltageConstraint extends PackConstraint {

    /**
     * Returns what the charge makes of what is bounded, without current.
     *
     * @param charge the charge state [1]
     * @return mostly the voltage at rest [V]
     */
    double rest(double charge);

    /**
     * Returns the same at several charge states.
     *
     * @param along the packs there
     * @param place of the pack that it is about, from 0; 0 for all together
     * @return what {@link #rest} tells at each of them, not to be written to [V]
     */
    double[] rests(AlongCharge along, int place);

    /**
     * Returns what is left of it.
     *
     * @param rest as {@link #rest} tells it [V]
     * @return the headroom; negative where the condition fails at rest [V]
     */
    double left(double rest);

    /**
     * Returns the voltage left without current.
     *
     * @param charge the charge state [1]
     * @return the headroom; negative where the condition fails at rest [V]
     */
    default double headroom(double charge) {
        return left(rest(charge));
    }

    /**
     * Returns the resistance across which the pack current shifts the voltage.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return the resistance [Ω]
     */
    double resistance(double charge, double temperatureC);

    @Override
    default boolean variesWithCharge() {
        return true;
    }

    @Override
    default double headroomAt(double charge) {
        return headroom(charge);
    }

    @Override
    default double dividendAt(double charge) {
        return headroom(charge);
    }

    @Override
    default double divisorAt(double charge, double temperatureC) {
        return resistance(charge, temperatureC);
    }

    @Override
    default double limitAt(double charge, double temperatureC) {
        return limit(headroom(charge), resistance(charge, temperatureC));
    }

    private static double limit(double headroom, double resistance) {
        return Math.max(0.0, headroom / resistance);
    }

    /**
     * Returns the resistances across which the pack current shifts the voltage at several charge
     * states.
     *
     * @param along the packs there
     * @param place of the pack that it is about, from 0; 0 for all together
     * @param temperatureC the cell temperature [°C]
     * @return what {@link #resistance} tells at each of them, not to be written to [Ω]
     */
    double[] resistances(AlongCharge along, int place, double temperatureC);

    @Override
    default double[] limitsAt(AlongCharge along, double temperatureC) {
        double[] rests = rests(along, 0);
        double[] resistances = resistances(along, 0, temperatureC);
        double[] limits = new double[rests.length];
        for (int i = 0; i < limits.length; i++) {
            limits[i] = limit(left(rests[i]), resistances[i]);
        }
        return limits;
    }

    /**
     * Returns the voltage left while a current flows.
     *
     * @param current of the pack [A]
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return the slack; negative where the condition fails [V]
     */
    default double slack(double current, double charge, double temperatureC) {
        return headroom(charge) - current * resistance(charge, temperatureC);
    }

    /**
     * Returns whether the slack is a straight line between the points of the cell's curves; unlike
     * packs in parallel bend it.
     *
     * @return true where it is
     */
    default boolean isStraight() {
        return true;
    }

    /**
     * Returns where the slack is used up between two neighbours among those points.
     *
     * @param current of the pack [A]
     * @param inner where there is slack [1]
     * @param outer where there is none [1]
     * @param temperatureC the cell temperature [°C]
     * @return the charge state [1]
     */
    default double exhausted(double current, double inner, double outer, double temperatureC) {
        if (!isStraight()) {
            return Bend.exhausted(this, current, inner, outer, temperatureC);
        }
        double innerSlack = slack(current, inner, temperatureC);
        double outerSlack = slack(current, outer, temperatureC);
        return inner + (outer - inner) * innerSlack / (innerSlack - outerSlack);
    }
}
