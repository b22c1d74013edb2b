package brakewright.limit;

import java.util.OptionalDouble;

/** How what is set stands to what is permitted. */
public enum Standing {
    /** Nothing is set. */
    NOT_SET,
    /** It is permitted. */
    WITHIN,
    /** It is more than is permitted, by more than rounding. */
    OVER;

    /**
     * Compares a setting with its limit.
     *
     * @param set what is set, not negative; empty where nothing is
     * @param limit what is permitted, in the same unit
     * @return how it stands
     */
    public static Standing of(OptionalDouble set, double limit) {
        if (set.isEmpty()) {
            return NOT_SET;
        }
        return Severity.isExceeded(set.getAsDouble(), limit) ? OVER : WITHIN;
    }
}
