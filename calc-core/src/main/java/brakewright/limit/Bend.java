package brakewright.limit;

import brakewright.numeric.Accuracy;
import brakewright.numeric.Root;

/** Finds where a voltage is used up that does not fall along a straight line. */
final class Bend {

    private Bend() {}

    /**
     * Finds the charge state.
     *
     * @param constraint the condition
     * @param current of the pack [A]
     * @param inner where there is slack [1]
     * @param outer where there is none [1]
     * @param temperatureC the cell temperature [°C]
     * @return where the slack is used up, on the side where there is some [1]
     */
    static double exhausted(
            VoltageConstraint constraint,
            double current,
            double inner,
            double outer,
            double temperatureC) {
        return Root.onSide(
                charge -> constraint.slack(current, charge, temperatureC),
                Math.min(inner, outer),
                Math.max(inner, outer),
                Accuracy.INNERMOST,
                Root.Side.NOT_NEGATIVE);
    }
}
