package brakewright.road;

/** The slope on which forces along it are even. */
public final class Slope {

    private Slope() {}

    /**
     * Returns how far a slope goes along the level for its length.
     *
     * @param slope rise over run, either way [1]
     * @return {@code cosθ = 1/√(1 + tan²θ)}, above 0 to 1 [1]
     */
    public static double cosine(double slope) {
        return slope == 0.0 ? 1.0 : 1.0 / Math.hypot(1.0, slope);
    }

    /**
     * Returns the slope of a piece of road.
     *
     * @param rise its end above its beginning [m]
     * @param length along the road, more than the rise either way [m]
     * @return rise over run [1]
     */
    public static double ofRise(double rise, double length) {
        return rise / Math.sqrt((length - rise) * (length + rise));
    }

    /**
     * Returns the slope that a force holds.
     *
     * <p>{@code sinθ + c·cosθ = F/(m·g)}, solved for tanθ: the left side is {@code √(1 + c²)·sin(θ
     * + arctan c)}.
     *
     * <p>Source: equilibrium on a slope.
     *
     * @param multiple the force along the slope as a multiple of the weight, {@code F/(m·g)}
     * @param coefficient c, what loads the force in proportion to what presses on the road, such as
     *     rolling resistance uphill; negative where that helps, as it does downhill [1]
     * @return rise over run [1]; infinite where any slope is held
     */
    public static double held(double multiple, double coefficient) {
        double reach = Math.hypot(1.0, coefficient);
        if (multiple >= reach) {
            return Double.POSITIVE_INFINITY;
        }
        double angle = Math.asin(multiple / reach) - Math.atan(coefficient);
        return angle >= Math.PI / 2.0 ? Double.POSITIVE_INFINITY : Math.tan(angle);
    }
}
