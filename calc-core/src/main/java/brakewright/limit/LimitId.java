package brakewright.limit;

import java.util.Arrays;
import java.util.Optional;

/** The settings for which there is a limit. */
public enum LimitId {
    /** Highest motor current when driving, per motor. */
    MOTOR_DRIVE_CURRENT("motor-drive-current", "A"),
    /** Highest motor current when braking, per motor. */
    MOTOR_BRAKE_CURRENT("motor-brake-current", "A"),
    /** Highest current out of the pack. */
    PACK_DISCHARGE_CURRENT("pack-discharge-current", "A"),
    /** Highest current into the pack. */
    PACK_REGEN_CURRENT("pack-regen-current", "A"),
    /** The voltages over which the drive fades as the pack empties. */
    LOW_VOLTAGE_TAPER("low-voltage-taper", "V"),
    /** The voltages over which the electric brake fades as the pack fills. */
    HIGH_VOLTAGE_TAPER("high-voltage-taper", "V"),
    /** Highest speed. */
    SPEED_CAP("speed-cap", "m/s");

    private final String key;
    private final String unit;

    LimitId(String key, String unit) {
        this.key = key;
        this.unit = unit;
    }

    /**
     * Returns the name that worksheets use.
     *
     * @return the name, lower case with hyphens
     */
    public String key() {
        return key;
    }

    /**
     * Returns the unit of the limit.
     *
     * @return the unit
     */
    public String unit() {
        return unit;
    }

    /**
     * Finds a limit by its name.
     *
     * @param key the name
     * @return the limit; empty if there is none of that name
     */
    public static Optional<LimitId> ofKey(String key) {
        return Arrays.stream(values()).filter(id -> id.key.equals(key)).findFirst();
    }
}
