package brakewright.limit;

import brakewright.battery.AlongCharge;
import java.util.Arrays;

/**
 * A condition on a voltage that the pack current shifts across a resistance. What is left of the
 * voltage is a straight line between the points of the cell's curves, so the charge state at which
 * a current uses it up is found in closed form, where packs differ by search.
 */
non-sealed interface VoltageConstraint extends PackConstraint {

    /**
     * Returns the voltage left without current.
     *
     * @param charge the charge state [1]
     * @return the headroom; negative where the condition fails at rest [V]
     */
    double headroom(double charge);

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
        return Math.max(0.0, headroom(charge) / resistance(charge, temperatureC));
    }

    /**
     * Returns the voltages left without current at several charge states.
     *
     * @param along the packs there
     * @param place of the pack that it is about, from 0; 0 for all together
     * @return what {@link #headroom} tells at each of them [V]
     */
    default double[] headrooms(AlongCharge along, int place) {
        return Arrays.stream(along.pack(place).charges()).map(this::headroom).toArray();
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
    default double[] resistances(AlongCharge along, int place, double temperatureC) {
        return Arrays.stream(along.pack(place).charges())
                .map(charge -> resistance(charge, temperatureC))
                .toArray();
    }

    @Override
    default double[] limitsAt(AlongCharge along, double temperatureC) {
        double[] limits = headrooms(along, 0);
        double[] resistances = resistances(along, 0, temperatureC);
        for (int i = 0; i < limits.length; i++) {
            limits[i] = Math.max(0.0, limits[i] / resistances[i]);
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
