package brakewright.braking;

import brakewright.powertrain.Spending;

/** What comes of braking from a speed. */
public sealed interface StopOutcome {

    /**
     * The vehicle stops.
     *
     * @param distance from the moment the brakes begin to act [m]
     * @param time likewise [s]
     * @param meanDeceleration {@code v²/(2·distance)} [m/s²]
     * @param leastDeceleration after the brakes have built up [m/s²]
     * @param fullyDeveloped mean fully developed deceleration, from 80 % to 10 % of the speed
     *     [m/s²]
     * @param fadeSpeed above which the pack limit weakens the brake; infinite if it does at no
     *     speed [m/s]
     * @param peakPackCurrent highest current into the pack; 0 where none flows into it [A]
     * @param peakCellVoltage of the fullest cell while that current flows, at the charge that the
     *     pack has by then [V]
     * @param endCharge the charge state at the end; above 1 by what a full pack is overcharged [1]
     * @param effectiveMotorCurrent root mean square over the stop, per motor [A]
     * @param returned energy into the pack's terminals; negative when drawn [J]
     * @param spent where the energy of motion went and the rest came from [J]; no part of what
     *     electronics and lights draw, so that at the terminals it is what is returned, negative
     */
    record Stopped(
            double distance,
            double time,
            double meanDeceleration,
            double leastDeceleration,
            double fullyDeveloped,
            double fadeSpeed,
            double peakPackCurrent,
            double peakCellVoltage,
            double endCharge,
            double effectiveMotorCurrent,
            double returned,
            Spending spent)
            implements StopOutcome {}

    /**
     * The vehicle does not stop: at a speed all brakes together are no stronger than the slope.
     *
     * @param heldAt the highest such speed, from which it slows no further [m/s]
     */
    record Unstoppable(double heldAt) implements StopOutcome {}
}
