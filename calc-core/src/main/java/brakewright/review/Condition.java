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
     */
    record CellsFrom(double temperatureC) implements Condition {}

    /**
     * With the cells at a temperature or cooler.
     *
     * @param temperatureC [°C]
     */
    record CellsUpTo(double temperatureC) implements Condition {}
}
