package brakewright.braking;

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
 * @param headwind it slows too, so that what must hold is held in calm air [m/s]; negative from
 *     behind
 */
public record Surroundings(
        double slope, double grip, double cellsC, boolean frictionBrake, double headwind) {

    /**
     * Returns level dry road in calm air, the cells at the pack's temperature, all brakes in use.
     *
     * @param build the vehicle
     * @return its ordinary surroundings
     */
    public static Surroundings of(Build build) {
        return new Surroundings(
                0.0, build.vehicle().grip(), build.battery().temperatureC(), true, 0.0);
    }

    /**
     * Returns the same on a slope.
     *
     * @param rise over run; negative downhill [1]
     * @return a changed copy
     */
    public Surroundings withSlope(double rise) {
        return new Surroundings(rise, grip, cellsC, frictionBrake, headwind);
    }

    /**
     * Returns the same on another surface.
     *
     * @param coefficient friction coefficient [1]
     * @return a changed copy
     */
    public Surroundings withGrip(double coefficient) {
        return new Surroundings(slope, coefficient, cellsC, frictionBrake, headwind);
    }

    /**
     * Returns the same with other cell temperatures.
     *
     * @param temperatureC cell temperature [°C]
     * @return a changed copy
     */
    public Surroundings withCells(double temperatureC) {
        return new Surroundings(slope, grip, temperatureC, frictionBrake, headwind);
    }

    /**
     * Returns the same for the electric brake by itself.
     *
     * @return a changed copy
     */
    public Surroundings withoutFrictionBrake() {
        return new Surroundings(slope, grip, cellsC, false, headwind);
    }

    /**
     * Returns the same against a wind.
     *
     * @param wind [m/s]; negative from behind
     * @return a changed copy
     */
    public Surroundings withHeadwind(double wind) {
        return new Surroundings(slope, grip, cellsC, frictionBrake, wind);
    }
}
