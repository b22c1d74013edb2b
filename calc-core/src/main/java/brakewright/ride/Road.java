package brakewright.ride;

/**
 * The way ahead.
 *
 * @param slope rise over run; negative downhill [1]
 * @param headwind [m/s]; negative from behind
 */
public record Road(double slope, double headwind) {

    /** Level and calm. */
    public static final Road LEVEL = new Road(0.0, 0.0);
}
