package brakewright.spec;

/**
 * A pack voltage band over which a controller fades a current from all to nothing.
 *
 * @param begins voltage at which the current begins to fade [V], positive
 * @param ends voltage at which nothing is left [V], positive, different from {@code begins}
 */
public record Taper(double begins, double ends) {

    /**
     * Validates the taper.
     *
     * @throws IllegalArgumentException if a voltage is not positive or both are equal
     */
    public Taper {
        Require.positive("taper begin", begins, Unit.VOLT);
        Require.positive("taper end", ends, Unit.VOLT);
        if (begins == ends) {
            throw new IllegalArgumentException(
                    "a taper needs two different voltages, was " + begins + " V twice");
        }
    }

    /**
     * Returns the width of the band.
     *
     * @return the distance between both voltages [V]
     */
    public double band() {
        return Math.abs(begins - ends);
    }
}
