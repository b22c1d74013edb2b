package brakewright.ride;

import brakewright.spec.Build;

/**
 * Where and in what state the vehicle brakes.
 *
 * <p>Assumption: slope, grip and cell temperature stay as they are for the length of a stop. A
 * slope presses the wheels on the road with {@code m·g·cosθ}.
 *
 * @param slope rise over run; negative downhill [1]
 * @param grip friction coefficient of tyre on road [1]
 * @param cellsC cell temperature [°C]
 * @param frictionBrake whether the friction brake helps, if there is one
 */
public record Surroundings(double slope, double grip, double cellsC, boolean frictionBrake) {

    /**
     * Returns level dry road, the cells at the pack's temperature, all brakes in use.
     *
     * @param build the vehicle
     * @return its ordinary surroundings
     */
    public static Surroundings of(Build build) {
        return new Surroundings(0.0, build.vehicle().grip(), build.battery().temperatureC(), true);
    }

    /**
     * Returns the same on a slope.
     *
     * @param rise over run; negative downhill [1]
     * @return a changed copy
     */
    public Surroundings withSlope(double rise) {
        return new Surroundings(rise, grip, cellsC, frictionBrake);
    }

    /**
     * Returns the same on another surface.
     *
     * @param coefficient friction coefficient [1]
     * @return a changed copy
     */
    public Surroundings withGrip(double coefficient) {
        return new Surroundings(slope, coefficient, cellsC, frictionBrake);
    }

    /**
     * Returns the same with other cell temperatures.
     *
     * @param temperatureC cell temperature [°C]
     * @return a changed copy
     */
    public Surroundings withCells(double temperatureC) {
        return new Surroundings(slope, grip, temperatureC, frictionBrake);
    }
}
