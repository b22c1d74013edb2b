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
        return new Vehicle(
                mass,
                cargo,
                wheelDiameter,
                axles,
                rollingResistance,
                dragArea,
                gripWet,
                gripWet,
                rotatingShare,
                frictionBrake);
    }

    /**
     * Returns the radius of the driven wheels.
     *
     * @return half the wheel diameter [m]
     */
    public double wheelRadius() {
        return wheelDiameter / 2.0;
    }
}
