package brakewright.buildfile;

import brakewright.spec.Input;

/**
 * A unit in which a number may be written: the value in the unit of calculations is factor·x +
 * offset.
 *
 * @param symbol as it is written
 * @param factor to the unit of calculations
 * @param offset added behind it
 */
public record InputUnit(String symbol, double factor, double offset) {

    /**
     * Finds a unit.
     *
     * @param like an input of one measured number, whose units it has
     * @param symbol as it is written
     * @return the unit
     * @throws IllegalArgumentException if the input has no such unit
     */
    public static InputUnit of(Input like, String symbol) {
        return Schema.of(like)
                .kind()
                .dimensionOfNumbers()
                .flatMap(dimension -> UnitTable.find(symbol, dimension))
                .map(unit -> new InputUnit(unit.symbol(), unit.factor(), unit.offset()))
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        symbol + " is no unit of " + like.key()));
    }
}
