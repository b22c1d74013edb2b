package brakewright.recording;

import java.util.Locale;

/** The highest or lowest of a ride. */
public enum Extreme {
    /** Of the speed, in any one row. */
    HIGHEST_SPEED,
    /** Of the pack's voltage. */
    LOWEST_VOLTAGE,
    /** Of the pack's voltage. */
    HIGHEST_VOLTAGE,
    /** Of the current out of the pack. */
    HIGHEST_CURRENT_OUT,
    /** Of the current into the pack, positive. */
    HIGHEST_CURRENT_BACK,
    /** Of a motor's current, either way, positive. */
    HIGHEST_MOTOR_CURRENT,
    /** Of the cells' temperature. */
    WARMEST_PACK,
    /** Of the motor's temperature. */
    WARMEST_MOTOR;

    /**
     * Returns the name that files use.
     *
     * @return lower case with underscores
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
