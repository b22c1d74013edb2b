package brakewright.spec;

/**
 * The air around and the temperatures that the pack meets.
 *
 * @param ambientC air [°C], from −40 to 60
 * @param coldestPackC coldest cells in use [°C], from −40 to 80
 * @param warmestPackC warmest cells in use [°C], from {@code coldestPackC} to 80
 * @param altitude above sea level [m], from −500 to 9000
 * @param deckC air around the wires, inside a deck that is closed [°C], from −40 to 120
 */
public record Climate(
        double ambientC, double coldestPackC, double warmestPackC, double altitude, double deckC) {

    /**
     * Validates the climate.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Climate {
        Require.within("ambient temperature", ambientC, -40.0, 60.0, Unit.CELSIUS);
        Require.within("coldest pack", coldestPackC, -40.0, 80.0, Unit.CELSIUS);
        Require.within("warmest pack", warmestPackC, coldestPackC, 80.0, Unit.CELSIUS);
        Require.within("altitude", altitude, -500.0, 9000.0, Unit.METRE);
        Require.within("deck temperature", deckC, -40.0, 120.0, Unit.CELSIUS);
    }

    /**
     * Returns this climate with colder or warmer air.
     *
     * @param replacement air [°C], from −40 to 60
     * @return a changed copy
     */
    public Climate withAmbientC(double replacement) {
        return new Climate(replacement, coldestPackC, warmestPackC, altitude, deckC);
    }

    /**
     * Returns this climate with packs that get less or more cold and warm.
     *
     * @param coldestC coldest cells in use [°C], from −40 to 80
     * @param warmestC warmest cells in use [°C], from {@code coldestC} to 80
     * @return a changed copy
     */
    public Climate withPackC(double coldestC, double warmestC) {
        return new Climate(ambientC, coldestC, warmestC, altitude, deckC);
    }

    /**
     * Returns this climate lower or higher.
     *
     * @param replacement above sea level [m], from −500 to 9000
     * @return a changed copy
     */
    public Climate withAltitude(double replacement) {
        return new Climate(ambientC, coldestPackC, warmestPackC, replacement, deckC);
    }
}
