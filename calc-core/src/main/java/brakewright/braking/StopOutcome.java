package brakewright.braking;

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
     * @param energy where the energy went
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
            Energy energy)
            implements StopOutcome {}

    /**
     * The vehicle does not stop: at a speed all brakes together are no stronger than the slope.
     *
     * @param heldAt the highest such speed, from which it slows no further [m/s]
     */
    record Unstoppable(double heldAt) implements StopOutcome {}

    /**
     * Where the energy of a stop went.
     *
     * @param pack to the pack's terminals; negative when drawn [J]
     * @param copper lost in the windings [J]
     * @param controller lost in the controllers [J]
     * @param motorDrag lost in the motors' friction and iron [J]
     * @param drive lost in belt, chain or gears [J]
     * @param rolling lost in the tyres [J]
     * @param air lost to the air [J]
     * @param friction lost in the friction brake [J]
     * @param climbed gained in height; negative downhill [J]
     */
    record Energy(
            double pack,
            double copper,
            double controller,
            double motorDrag,
            double drive,
            double rolling,
            double air,
            double friction,
            double climbed) {

        /**
         * Returns the sum of all parts.
         *
         * @return the energy of motion that was there at the beginning [J]
         */
        public double sum() {
            return pack
                    + copper
                    + controller
                    + motorDrag
                    + drive
                    + rolling
                    + air
                    + friction
                    + climbed;
        }
    }
}
