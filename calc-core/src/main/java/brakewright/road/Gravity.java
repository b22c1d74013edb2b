package brakewright.road;

/** The pull of the earth. */
public final class Gravity {

    /**
     * Standard acceleration of gravity [m/s²].
     *
     * <p>Source: 3rd General Conference on Weights and Measures (1901); exact by definition.
     */
    public static final double STANDARD = 9.80665;

    private Gravity() {}

    /**
     * Returns what presses a mass on the road.
     *
     * @param slope rise over run, either way [1]
     * @return {@code g·cosθ} [m/s²]
     */
    public static double pressing(double slope) {
        return STANDARD * Slope.cosine(slope);
    }
}
