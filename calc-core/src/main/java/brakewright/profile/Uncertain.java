package brakewright.profile;

import brakewright.spec.Input;
import brakewright.spec.Require;
import brakewright.spec.Unit;

/**
 * An input that is not known exactly.
 *
 * @param input which
 * @param nominal its nominal value, in calculation units
 * @param low the lowest it may be, not above {@code nominal}
 * @param high the highest it may be, not below {@code nominal}
 */
public record Uncertain(Input input, double nominal, double low, double high) {

    /**
     * Validates the range.
     *
     * @throws IllegalArgumentException if the nominal value is not within it, or either end is not
     *     finite
     */
    public Uncertain {
        Require.within("nominal value of " + input.key(), nominal, low, high, Unit.RATIO);
        Require.within("range of " + input.key(), high - low, 0.0, Double.MAX_VALUE, Unit.RATIO);
    }

    double at(double share) {
        return low + share * (high - low);
    }
}
