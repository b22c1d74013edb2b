package brakewright.spec;

/**
 * What the vehicle will meet.
 *
 * @param chargeFrom highest charge state in use [1], from 0 to 1
 * @param chargeTo lowest charge state in use [1], from 0 to {@code chargeFrom}
 * @param speedMax highest speed in use [m/s], positive
 * @param climate air and pack temperatures
 * @param slope the steepest slope [1], rise over run, not negative
 * @param slopeLength its length [m], not negative
 * @param riding how it is ridden between hard pulls
 * @param effort how long the driver pulls and brakes hard
 */
public record Use(
        double chargeFrom,
        double chargeTo,
        double speedMax,
        Climate climate,
        double slope,
        double slopeLength,
        Riding riding,
        Effort effort) {

    /**
     * Validates the use.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Use {
        Require.within("highest charge state in use", chargeFrom, 0.0, 1.0, Unit.RATIO);
        Require.within("lowest charge state in use", chargeTo, 0.0, 1.0, Unit.RATIO);
        Require.ascending("charge states in use", chargeTo, chargeFrom, Unit.RATIO);
        Require.positive("highest speed in use", speedMax, Unit.METRE_PER_SECOND);
        Require.within("steepest slope", slope, 0.0, 1.0, Unit.RATIO);
        Require.notNegative("slope length", slopeLength, Unit.METRE);
    }

    /**
     * Returns the middle of the charge in use.
     *
     * @return half way between fullest and emptiest [1]
     */
    public double middleCharge() {
        return 0.5 * (chargeFrom + chargeTo);
    }

    /**
     * Returns this use in another climate.
     *
     * @param replacement the climate
     * @return a changed copy
     */
    public Use withClimate(Climate replacement) {
        return new Use(
                chargeFrom, chargeTo, speedMax, replacement, slope, slopeLength, riding, effort);
    }

    /**
     * Returns this use with another fullest charge.
     *
     * @param fullest the highest charge state [1], above the lowest
     * @return a changed copy
     */
    public Use withChargeFrom(double fullest) {
        return new Use(fullest, chargeTo, speedMax, climate, slope, slopeLength, riding, effort);
    }

    /**
     * Returns this use with another emptiest charge.
     *
     * @param emptiest the lowest charge state [1], below the highest
     * @return a changed copy
     */
    public Use withChargeTo(double emptiest) {
        return new Use(chargeFrom, emptiest, speedMax, climate, slope, slopeLength, riding, effort);
    }

    /**
     * Returns this use with another highest speed.
     *
     * @param fastest [m/s], positive
     * @return a changed copy
     */
    public Use withSpeedMax(double fastest) {
        return new Use(chargeFrom, chargeTo, fastest, climate, slope, slopeLength, riding, effort);
    }

    /**
     * Returns this use with another steepest slope.
     *
     * @param steepest [1], rise over run, not negative
     * @param length of it [m], not negative
     * @return a changed copy
     */
    public Use withSlope(double steepest, double length) {
        return new Use(chargeFrom, chargeTo, speedMax, climate, steepest, length, riding, effort);
    }

    /**
     * Returns this use with another way of riding.
     *
     * @param replacement how it is ridden
     * @return a changed copy
     */
    public Use withRiding(Riding replacement) {
        return new Use(
                chargeFrom, chargeTo, speedMax, climate, slope, slopeLength, replacement, effort);
    }

    /**
     * Returns this use with another effort.
     *
     * @param replacement how hard it is pulled and braked
     * @return a changed copy
     */
    public Use withEffort(Effort replacement) {
        return new Use(
                chargeFrom, chargeTo, speedMax, climate, slope, slopeLength, riding, replacement);
    }
}
