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
}
