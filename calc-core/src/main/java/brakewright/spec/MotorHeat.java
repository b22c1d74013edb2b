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

    /**
     * Returns these figures with a case that is cooled otherwise.
     *
     * @param replacement [K/W], positive
     * @return a changed copy
     */
    public MotorHeat withCaseToAir(double replacement) {
        return new MotorHeat(windingToCase, replacement, windingHeatCapacity, caseHeatCapacity);
    }

    /**
     * Returns these figures with a lighter or heavier winding.
     *
     * @param replacement [J/K], positive
     * @return a changed copy
     */
    public MotorHeat withWindingHeatCapacity(double replacement) {
        return new MotorHeat(windingToCase, caseToAir, replacement, caseHeatCapacity);
    }
}
