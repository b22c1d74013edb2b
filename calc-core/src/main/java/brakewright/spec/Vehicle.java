package brakewright.spec;

import java.util.OptionalDouble;

/**
 * The rolling vehicle without its rider.
 *
 * @param mass pack included, rider not [kg], positive
 * @param cargo [kg], not negative
 * @param wheelDiameter of the driven wheels, loaded [m], positive
 * @param axles where the axles stand
 * @param rollingResistance coefficient of rolling resistance [1], from 0 to 0.5
 * @param dragArea drag coefficient times frontal area, rider aboard [m²], not negative
 * @param grip greatest usable friction coefficient of tyre on dry road [1], from 0.02 to 2
 * @param gripWet the same on wet road [1]
 * @param rotatingShare inertia of turning parts as a share of the mass [1], from 0 to 1
 * @param frictionBrake deceleration that a separate friction brake gives [m/s²], not negative;
 *     empty where there is none
 */
public record Vehicle(
        double mass,
        double cargo,
        double wheelDiameter,
        Axles axles,
        double rollingResistance,
        double dragArea,
        double grip,
        double gripWet,
        double rotatingShare,
        OptionalDouble frictionBrake) {

    /**
     * Validates the vehicle.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Vehicle {
        Require.positive("vehicle mass", mass, Unit.KILOGRAM);
        Require.notNegative("cargo", cargo, Unit.KILOGRAM);
        Require.positive("wheel diameter", wheelDiameter, Unit.METRE);
        Require.within("rolling resistance", rollingResistance, 0.0, 0.5, Unit.RATIO);
        Require.notNegative("drag area", dragArea, Unit.SQUARE_METRE);
        Require.within("grip", grip, 0.02, 2.0, Unit.RATIO);
        Require.within("wet grip", gripWet, 0.02, 2.0, Unit.RATIO);
        Require.within("rotating share", rotatingShare, 0.0, 1.0, Unit.RATIO);
        frictionBrake.ifPresent(
                value ->
                        Require.notNegative(
                                "friction-brake deceleration",
                                value,
                                Unit.METRE_PER_SECOND_SQUARED));
    }

    /**
     * Returns this vehicle where the road is wet.
     *
     * @return a changed copy, its grip that of the wet road
     */
    public Vehicle onWetRoad() {
        return withGrip(gripWet);
    }

    /**
     * Returns the radius of the driven wheels.
     *
     * @return half the wheel diameter [m]
     */
    public double wheelRadius() {
        return wheelDiameter / 2.0;
    }

    /**
     * Returns this vehicle with another cargo.
     *
     * @param replacement [kg], not negative
     * @return a changed copy
     */
    public Vehicle withCargo(double replacement) {
        Copy copy = new Copy(this);
        copy.cargo = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with other driven wheels.
     *
     * @param replacement their diameter, loaded [m], positive
     * @return a changed copy
     */
    public Vehicle withWheelDiameter(double replacement) {
        Copy copy = new Copy(this);
        copy.wheelDiameter = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with tyres that roll otherwise.
     *
     * @param replacement coefficient of rolling resistance [1], from 0 to 0.5
     * @return a changed copy
     */
    public Vehicle withRollingResistance(double replacement) {
        Copy copy = new Copy(this);
        copy.rollingResistance = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with another drag area.
     *
     * @param replacement rider aboard [m²], not negative
     * @return a changed copy
     */
    public Vehicle withDragArea(double replacement) {
        Copy copy = new Copy(this);
        copy.dragArea = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with another grip on a dry road.
     *
     * @param replacement [1], from 0.02 to 2
     * @return a changed copy
     */
    public Vehicle withGrip(double replacement) {
        Copy copy = new Copy(this);
        copy.grip = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with another grip on a wet road.
     *
     * @param replacement [1], from 0.02 to 2
     * @return a changed copy
     */
    public Vehicle withGripWet(double replacement) {
        Copy copy = new Copy(this);
        copy.gripWet = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with another share of turning parts.
     *
     * @param replacement [1], from 0 to 1
     * @return a changed copy
     */
    public Vehicle withRotatingShare(double replacement) {
        Copy copy = new Copy(this);
        copy.rotatingShare = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with another friction brake.
     *
     * @param replacement its deceleration [m/s²], not negative; empty for none
     * @return a changed copy
     */
    public Vehicle withFrictionBrake(OptionalDouble replacement) {
        Copy copy = new Copy(this);
        copy.frictionBrake = replacement;
        return copy.made();
    }

    /** What a changed copy is made of: the one place that lists all components. */
    private static final class Copy {

        private final double mass;
        private double cargo;
        private double wheelDiameter;
        private final Axles axles;
        private double rollingResistance;
        private double dragArea;
        private double grip;
        private double gripWet;
        private double rotatingShare;
        private OptionalDouble frictionBrake;

        Copy(Vehicle from) {
            this.mass = from.mass;
            this.cargo = from.cargo;
            this.wheelDiameter = from.wheelDiameter;
            this.axles = from.axles;
            this.rollingResistance = from.rollingResistance;
            this.dragArea = from.dragArea;
            this.grip = from.grip;
            this.gripWet = from.gripWet;
            this.rotatingShare = from.rotatingShare;
            this.frictionBrake = from.frictionBrake;
        }

        Vehicle made() {
            return new Vehicle(
                    mass,
                    cargo,
                    wheelDiameter,
                    axles,
                    rollingResistance,
                    dragArea,
                    grip,
                    gripWet,
                    rotatingShare,
                    frictionBrake);
        }
    }
}
