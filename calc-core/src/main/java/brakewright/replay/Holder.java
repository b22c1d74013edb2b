package brakewright.replay;

import java.util.Locale;

/** What holds a vehicle back, or lets it go too fast. */
public enum Holder {
    /** The speed cap that is set. */
    SPEED_CAP,
    /** The drive current that is set. */
    MOTOR_DRIVE_CURRENT,
    /** The pack discharge current that is set. */
    PACK_DISCHARGE_CURRENT,
    /** The taper of the drive as the voltage falls. */
    LOW_VOLTAGE_TAPER,
    /** The sagged voltage, which leaves no more against the back-EMF. */
    PACK_VOLTAGE,
    /** The greatest power of the packs. */
    PACK_POWER,
    /** What the wheels grip, or where vehicle or rider tip. */
    GROUND,
    /** The brake current that is set. */
    MOTOR_BRAKE_CURRENT,
    /** The pack regen current that is set. */
    PACK_REGEN_CURRENT,
    /** The taper of the electric brake as the voltage rises. */
    HIGH_VOLTAGE_TAPER;

    /**
     * Returns the name that files use.
     *
     * @return lower case with hyphens
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
