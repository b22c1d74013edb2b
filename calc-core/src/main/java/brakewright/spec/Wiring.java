package brakewright.spec;

import java.util.OptionalDouble;

/**
 * What carries the pack current, by rating. An empty value is a part that is not described.
 *
 * @param fuseRating of the main fuse [A], positive
 * @param fuseBreaking what that fuse can interrupt
 * @param wireAmpacity of the main conductors [A], positive
 * @param plugRating of the main plug, continuous [A], positive
 * @param plugIsAntiSpark whether the plug connects through a resistor first
 */
public record Wiring(
        OptionalDouble fuseRating,
        FuseBreaking fuseBreaking,
        OptionalDouble wireAmpacity,
        OptionalDouble plugRating,
        boolean plugIsAntiSpark) {

    /** Nothing is described. */
    public static final Wiring NONE =
            new Wiring(
                    OptionalDouble.empty(),
                    FuseBreaking.UNKNOWN,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    false);

    /**
     * Validates the ratings.
     *
     * @throws IllegalArgumentException if a number is not positive
     */
    public Wiring {
        Require.positive("fuse rating", fuseRating, Unit.AMPERE);
        Require.positive("wire ampacity", wireAmpacity, Unit.AMPERE);
        Require.positive("plug rating", plugRating, Unit.AMPERE);
    }

    /**
     * Returns whether every part is described.
     *
     * @return false where one is missing
     */
    public boolean isKnown() {
        return fuseRating.isPresent() && wireAmpacity.isPresent() && plugRating.isPresent();
    }
}
