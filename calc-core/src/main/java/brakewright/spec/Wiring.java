package brakewright.spec;

import java.util.OptionalDouble;

/**
 * What carries the pack current, by rating. An empty value is a part that is not described.
 *
 * @param fuseRating of the main fuse [A], positive
 * @param wireAmpacity of the main conductors [A], positive
 * @param plugRating of the main plug, continuous [A], positive
 */
public record Wiring(
        OptionalDouble fuseRating, OptionalDouble wireAmpacity, OptionalDouble plugRating) {

    /**
     * Validates the ratings.
     *
     * @throws IllegalArgumentException if a number is not positive
     */
    public Wiring {
        fuseRating.ifPresent(value -> Require.positive("fuse rating", value, "A"));
        wireAmpacity.ifPresent(value -> Require.positive("wire ampacity", value, "A"));
        plugRating.ifPresent(value -> Require.positive("plug rating", value, "A"));
    }
}
