package brakewright.replay;

/**
 * A stretch of a recorded ride, measured and as the model has it.
 *
 * @param time ridden until its end, gaps left out [s]
 * @param follows whether the one before ends where it begins
 * @param measuredCurrent the mean, positive out of the packs [A]
 * @param predictedCurrent likewise [A]
 * @param measuredVoltage at the terminals [V]
 * @param predictedVoltage likewise [V]
 */
public record Traced(
        double time,
        boolean follows,
        double measuredCurrent,
        double predictedCurrent,
        double measuredVoltage,
        double predictedVoltage) {}
