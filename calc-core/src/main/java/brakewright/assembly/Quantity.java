package brakewright.assembly;

/**
 * A number with its tolerance, in calculation units.
 *
 * @param value the nominal value, in calculation units
 * @param tolerance how far it may lie off to either side, in the same unit, not negative
 */
public record Quantity(double value, double tolerance) {

    /**
     * Makes an exact quantity.
     *
     * @param value the value, in calculation units
     * @return the quantity
     */
    public static Quantity exact(double value) {
        return new Quantity(value, 0.0);
    }
}
