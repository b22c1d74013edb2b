package brakewright.driving;

import brakewright.spec.Build;

/**
 * The way ahead.
 *
 * @param slope rise over run; negative downhill [1]
 * @param headwind [m/s]; negative from behind
 */
public record Road(double slope, double headwind) {

    /** Level and calm. */
    public static final Road LEVEL = new Road(0.0, 0.0);

    /**
     * Returns level road against the headwind in use.
     *
     * @param build the vehicle and its use
     * @return the way on which it goes far
     */
    public static Road ofUse(Build build) {
        return new Road(0.0, build.use().riding().headwind());
    }
}
