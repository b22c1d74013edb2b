package brakewright.spec;

import java.util.OptionalDouble;

/**
 * What a fuse can interrupt. An empty value is not known.
 *
 * @param voltage highest direct voltage at which it clears [V], positive
 * @param capacity largest fault current that it clears there [A], positive
 */
public record FuseBreaking(OptionalDouble voltage, OptionalDouble capacity) {

    /** Nothing is known. */
    public static final FuseBreaking UNKNOWN =
            new FuseBreaking(OptionalDouble.empty(), OptionalDouble.empty());

    /**
     * Validates the ratings.
     *
     * @throws IllegalArgumentException if a number is not positive
     */
    public FuseBreaking {
        voltage.ifPresent(value -> Require.positive("fuse voltage", value, Unit.VOLT));
        capacity.ifPresent(value -> Require.positive("fuse breaking capacity", value, Unit.AMPERE));
    }

    /**
     * Returns whether both are known.
     *
     * @return false where one is missing
     */
    public boolean isKnown() {
        return voltage.isPresent() && capacity.isPresent();
    }
}
