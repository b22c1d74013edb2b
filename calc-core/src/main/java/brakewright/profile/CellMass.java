package brakewright.profile;

import brakewright.spec.Require;
import brakewright.spec.Unit;

/**
 * What the cells of a pack weigh.
 *
 * @param ofOne mass of one cell [kg], positive
 * @param series groups in series, at least one
 */
public record CellMass(double ofOne, int series) {

    /**
     * Validates the numbers.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public CellMass {
        Require.positive("mass of one cell", ofOne, Unit.KILOGRAM);
        Require.atLeastOne("cells in series", series);
    }

    /**
     * Returns the mass of all cells.
     *
     * @param parallel cells in each group
     * @return the mass [kg]
     */
    double of(double parallel) {
        return ofOne * series * parallel;
    }

    /**
     * Returns how many cells each group may have.
     *
     * @param mass that all together may reach [kg]
     * @return the count, at least one
     */
    public int most(double mass) {
        return (int) Math.max(1.0, Math.floor(mass / (ofOne * series)));
    }

    /**
     * Returns whether the cells alone would weigh more than half of a vehicle.
     *
     * @param parallel cells in each group
     * @param vehicleMass without the rider [kg]
     * @return true if they would
     */
    boolean isMostOf(double parallel, double vehicleMass) {
        return of(parallel) > 0.5 * vehicleMass;
    }
}
