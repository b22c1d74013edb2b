package brakewright.spec;

/**
 * The battery pack.
 *
 * @param cell the cell it is made of
 * @param series groups in series, at least one
 * @param parallel cells in each group, at least one
 * @param jointResistance of all joints and leads together [Ω], not negative
 * @param resistanceSpread how far the best cell of a group may lie below the others in resistance
 *     [1], from 0 to below 1
 * @param temperatureC of the cells [°C], from −60 to 100
 * @param protection when it disconnects itself
 * @param wiring what carries its current
 */
public record Pack(
        Cell cell,
        int series,
        int parallel,
        double jointResistance,
        double resistanceSpread,
        double temperatureC,
        Protection protection,
        Wiring wiring) {

    /**
     * Validates the pack.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Pack {
        Require.atLeastOne("cells in series", series);
        Require.atLeastOne("cells in parallel", parallel);
        Require.notNegative("joint resistance", jointResistance, "Ω");
        Require.within("resistance spread", resistanceSpread, 0.0, 0.9, "");
        Require.within("pack temperature", temperatureC, -60.0, 100.0, "°C");
    }
}
