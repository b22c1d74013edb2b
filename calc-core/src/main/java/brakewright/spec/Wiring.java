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

    /**
     * Returns this wiring with another fuse.
     *
     * @param replacement its rating [A], positive; empty where none is described
     * @return a changed copy
     */
    public Wiring withFuseRating(OptionalDouble replacement) {
        return new Wiring(replacement, fuseBreaking, wireAmpacity, plugRating, plugIsAntiSpark);
    }

    /**
     * Returns this wiring with a fuse that breaks otherwise.
     *
     * @param replacement what it can interrupt
     * @return a changed copy
     */
    public Wiring withFuseBreaking(FuseBreaking replacement) {
        return new Wiring(fuseRating, replacement, wireAmpacity, plugRating, plugIsAntiSpark);
    }

    /**
     * Returns this wiring with another wire.
     *
     * @param replacement what it bears [A], positive; empty where none is described
     * @return a changed copy
     */
    public Wiring withWireAmpacity(OptionalDouble replacement) {
        return new Wiring(fuseRating, fuseBreaking, replacement, plugRating, plugIsAntiSpark);
    }

    /**
     * Returns this wiring with another plug.
     *
     * @param replacement its rating [A], positive; empty where none is described
     * @return a changed copy
     */
    public Wiring withPlugRating(OptionalDouble replacement) {
        return new Wiring(fuseRating, fuseBreaking, wireAmpacity, replacement, plugIsAntiSpark);
    }

    /**
     * Returns this wiring with a plug of the other kind.
     *
     * @param replacement whether it limits the inrush
     * @return a changed copy
     */
    public Wiring withPlugIsAntiSpark(boolean replacement) {
        return new Wiring(fuseRating, fuseBreaking, wireAmpacity, plugRating, replacement);
    }
}
