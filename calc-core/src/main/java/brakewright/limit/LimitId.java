package brakewright.limit;

import brakewright.spec.Unit;
import java.util.Arrays;
import java.util.Optional;

/** The settings for which there is a limit. */
public enum LimitId {
    /** Highest motor current when driving, per motor. */
    MOTOR_DRIVE_CURRENT("motor-drive-current", Unit.AMPERE),
    /** Highest motor current when braking, per motor. */
    MOTOR_BRAKE_CURRENT("motor-brake-current", Unit.AMPERE),
    /** Highest current out of the pack. */
    PACK_DISCHARGE_CURRENT("pack-discharge-current", Unit.AMPERE),
    /** Highest current into the pack. */
    PACK_REGEN_CURRENT("pack-regen-current", Unit.AMPERE),
    /** The voltages over which the drive fades as the pack empties. */
    LOW_VOLTAGE_TAPER("low-voltage-taper", Unit.VOLT),
    /** The voltages over which the electric brake fades as the pack fills. */
    HIGH_VOLTAGE_TAPER("high-voltage-taper", Unit.VOLT),
    /** Highest speed. */
    SPEED_CAP("speed-cap", Unit.METRE_PER_SECOND);

    private final String key;
    private final Unit unit;

    LimitId(String key, Unit unit) {
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
    public Unit unit() {
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
