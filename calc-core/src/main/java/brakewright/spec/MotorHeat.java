package brakewright.spec;

/**
 * How a motor stores and sheds heat: winding and case, each one temperature.
 *
 * @param windingToCase thermal resistance from winding to case [K/W], positive
 * @param caseToAir thermal resistance from case to the air around [K/W], positive
 * @param windingHeatCapacity [J/K], positive
 * @param caseHeatCapacity [J/K], positive
 */
public record MotorHeat(
        double windingToCase,
        double caseToAir,
        double windingHeatCapacity,
        double caseHeatCapacity) {

    /**
     * Validates the thermal figures.
     *
     * @throws IllegalArgumentException if a number is not positive
     */
    public MotorHeat {
        Require.positive("winding-to-case resistance", windingToCase, Unit.KELVIN_PER_WATT);
        Require.positive("case-to-air resistance", caseToAir, Unit.KELVIN_PER_WATT);
        Require.positive("winding heat capacity", windingHeatCapacity, Unit.JOULE_PER_KELVIN);
        Require.positive("case heat capacity", caseHeatCapacity, Unit.JOULE_PER_KELVIN);
    }
}
