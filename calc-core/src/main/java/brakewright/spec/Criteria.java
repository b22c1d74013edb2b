package brakewright.spec;

import java.util.OptionalDouble;

/**
 * What the vehicle is asked to do, and what its rider bears.
 *
 * @param decelerationMin least deceleration wanted of the brakes [m/s²], positive
 * @param riderDecelerationMax highest deceleration that the rider bears [m/s²], positive
 * @param climbMin slope it should climb [1], not negative
 * @param rangeMin distance it should cover [m]; empty where none is asked
 */
public record Criteria(
        double decelerationMin,
        double riderDecelerationMax,
        double climbMin,
        OptionalDouble rangeMin) {

    /**
     * Validates the criteria.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Criteria {
        Require.positive("least deceleration", decelerationMin, Unit.METRE_PER_SECOND_SQUARED);
        Require.positive(
                "rider's highest deceleration",
                riderDecelerationMax,
                Unit.METRE_PER_SECOND_SQUARED);
        Require.notNegative("slope to climb", climbMin, Unit.RATIO);
        rangeMin.ifPresent(value -> Require.positive("range to cover", value, Unit.METRE));
    }

    /**
     * Returns these criteria with another slope to climb.
     *
     * @param replacement [1], not negative
     * @return a changed copy
     */
    public Criteria withClimbMin(double replacement) {
        return new Criteria(decelerationMin, riderDecelerationMax, replacement, rangeMin);
    }

    /**
     * Returns these criteria with another range.
     *
     * @param replacement [m], positive; empty where none is wanted
     * @return a changed copy
     */
    public Criteria withRangeMin(OptionalDouble replacement) {
        return new Criteria(decelerationMin, riderDecelerationMax, climbMin, replacement);
    }
}
