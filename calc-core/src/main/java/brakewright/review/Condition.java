package brakewright.review;

import java.util.OptionalDouble;

/** Under which condition a setting stays within a limit. */
public sealed interface Condition {

    /** Under none: it never does. */
    record Never() implements Condition {}

    /**
     * Below a charge state.
     *
     * @param charge the charge state up to which all is well at any speed in use [1]
     * @param highestCharge the highest charge state in use [1]
     * @param speedThere the speed up to which all is well at that charge state too [m/s]
     * @param temperatureC the cell temperature for which this was found [°C]
     */
    record ChargeBelow(
            double charge, double highestCharge, OptionalDouble speedThere, double temperatureC)
            implements Condition {}

    /**
     * Above a charge state.
     *
     * @param charge the charge state down to which all is well [1]
     * @param lowestCharge the lowest charge state in use [1]
     * @param temperatureC the cell temperature for which this was found [°C]
     */
    record ChargeAbove(double charge, double lowestCharge, double temperatureC)
            implements Condition {}

    /**
     * With the cells at a temperature or warmer.
     *
     * @param temperatureC [°C]
     * @param excess what is exceeded by colder cells in use
     */
    record CellsFrom(double temperatureC, Excess excess) implements Condition {}

    /**
     * With the cells at a temperature or cooler.
     *
     * @param temperatureC [°C]
     * @param excess what is exceeded by warmer cells in use
     */
    record CellsUpTo(double temperatureC, Excess excess) implements Condition {}

    /**
     * Until an ordinary ride has warmed the cells so far that they may not be charged any more. The
     * temperature is predicted.
     *
     * @param time since it began [s]
     * @param speed of the ride [m/s]
     * @param limitC to which they may be charged [°C]
     * @param startC at the beginning [°C]
     * @param highestC on the way, or where it is stopped [°C]
     */
    record RiddenUpTo(double time, double speed, double limitC, double startC, double highestC)
            implements Condition {}

    /**
     * A pack current that is too high for cells of some temperature.
     *
     * @param isReturned whether it flows into the pack
     * @param current what flows or is set [A]
     * @param permitted at that temperature [A]
     * @param temperatureC of the cells [°C]
     */
    record Excess(boolean isReturned, double current, double permitted, double temperatureC) {}
}
