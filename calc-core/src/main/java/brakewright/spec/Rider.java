package brakewright.spec;

/**
 * The person aboard.
 *
 * @param mass with gear [kg], positive
 * @param stance how they are carried
 * @param massHeight mass centre above the deck or seat [m], positive
 * @param supportHalfLength from the middle to the edge of what supports them, along the direction
 *     of travel [m], positive
 */
public record Rider(double mass, Stance stance, double massHeight, double supportHalfLength) {

    /**
     * Validates the rider.
     *
     * @throws IllegalArgumentException if a number is not positive
     */
    public Rider {
        Require.positive("rider mass", mass, Unit.KILOGRAM);
        Require.positive("rider mass-centre height", massHeight, Unit.METRE);
        Require.positive("rider support half length", supportHalfLength, Unit.METRE);
    }

    /**
     * Returns this rider with another mass.
     *
     * @param replacement with gear [kg], positive
     * @return a changed copy
     */
    public Rider withMass(double replacement) {
        return new Rider(replacement, stance, massHeight, supportHalfLength);
    }
}
