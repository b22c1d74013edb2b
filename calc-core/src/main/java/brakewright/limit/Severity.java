package brakewright.limit;

import brakewright.numeric.Rounding;

/**
 * How far a value is from its limit: {@code (value − limit)/max(value, limit)}, from −1, nothing
 * asked, over 0, on the limit, to 1, where nothing is permitted. It is continuous, and positive
 * exactly where the limit is exceeded.
 *
 * <p>Assumption: our own choice of form; a ratio that stays bounded at both ends can be searched.
 */
public final class Severity {

    private Severity() {}

    /**
     * Compares a value with its limit.
     *
     * @param value what is asked, not negative, in the unit of the limit
     * @param limit what is permitted, not negative; may be infinite
     * @return the severity [1]
     */
    public static double of(double value, double limit) {
        if (Double.isInfinite(limit)) {
            return -1.0;
        }
        double greater = Math.max(value, limit);
        return greater == 0.0 ? 0.0 : excess(value, limit) / greater;
    }

    /**
     * Returns the same as a share of the limit: {@code (value − limit)/limit}.
     *
     * @param severity below 1
     * @return by what share of the limit it is exceeded; negative where it is kept [1]
     */
    public static double shareOfLimit(double severity) {
        return severity > 0.0 ? severity / (1.0 - severity) : severity;
    }

    /**
     * Returns whether a value exceeds its limit by more than rounding.
     *
     * @param value what is asked, not negative, in the unit of the limit
     * @param limit what is permitted, not negative; may be infinite
     * @return true if it is too much
     */
    public static boolean isExceeded(double value, double limit) {
        return excess(value, limit) > 0.0;
    }

    /**
     * Returns how far a value exceeds its limit; what differs by rounding alone is equal.
     *
     * @param value what is asked, not negative, in the unit of the limit
     * @param limit what is permitted, not negative; may be infinite
     * @return value less limit, in their unit
     */
    public static double excess(double value, double limit) {
        double excess = value - limit;
        return Math.abs(excess) <= Rounding.OF_A_FORMULA * value ? 0.0 : excess;
    }
}
