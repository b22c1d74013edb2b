package brakewright.assembly;

/**
 * A number with its tolerance, in calculation units.
 *
 * @param value the nominal value
 * @param tolerance how far it may lie off to either side, not negative
 */
public record Quantity(double value, double tolerance) {

    /**
     * Makes an exact quantity.
     *
     * @param value the value
     * @return the quantity
     */
    public static Quantity exact(double value) {
        return new Quantity(value, 0.0);
    }
}
