package brakewright.spec;

import java.util.OptionalDouble;

/**
 * What a cell's maker permits for a short time.
 *
 * @param dischargeCurrent [A]; empty where none is rated
 * @param chargeCurrent [A]; empty where none is rated
 * @param time how long it may last [s], positive
 */
public record PulseRating(
        OptionalDouble dischargeCurrent, OptionalDouble chargeCurrent, double time) {

    /**
     * Validates the rating.
     *
     * @throws IllegalArgumentException if a number is not positive
     */
    public PulseRating {
        dischargeCurrent.ifPresent(
                value -> Require.positive("discharge pulse", value, Unit.AMPERE));
        chargeCurrent.ifPresent(value -> Require.positive("charge pulse", value, Unit.AMPERE));
        Require.positive("pulse time", time, Unit.SECOND);
    }
}
