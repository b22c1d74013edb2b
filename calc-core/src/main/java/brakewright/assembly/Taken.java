package brakewright.assembly;

/**
 * A value that is taken from a table, with its provenance.
 *
 * @param value in calculation units
 * @param unit as the table spells it; {@code 1} for a ratio
 * @param source id of the source
 * @param kind how well it is known, {@code published} for example
 * @param note its conditions and doubts; may be empty
 */
public record Taken(Value value, String unit, String source, String kind, String note) {

    /**
     * Makes a number that is taken.
     *
     * @param value in calculation units
     * @param unit as the table spells it
     * @param source id of the source
     * @param kind how well it is known
     * @param note its conditions and doubts
     * @return the number
     */
    public static Taken number(double value, String unit, String source, String kind, String note) {
        return new Taken(new Value.Number(Quantity.exact(value)), unit, source, kind, note);
    }

    /**
     * Returns the number.
     *
     * @return in calculation units
     * @throws IllegalStateException if this is no number
     */
    public double number() {
        if (value instanceof Value.Number number) {
            return number.quantity().value();
        }
        throw new IllegalStateException("no number but " + value);
    }
}
