package brakewright.profile;

import brakewright.limit.LimitId;
import java.util.EnumSet;
import java.util.Set;

/** Which settings' checks a change of one setting can move. */
public final class Bearing {

    private Bearing() {}

    /**
     * Returns them.
     *
     * @param setting the setting that is changed
     * @return itself, its pack current where it is one of the motor, and the taper made for that
     */
    public static Set<LimitId> on(LimitId setting) {
        return switch (setting) {
            case MOTOR_DRIVE_CURRENT ->
                    EnumSet.of(
                            LimitId.MOTOR_DRIVE_CURRENT,
                            LimitId.PACK_DISCHARGE_CURRENT,
                            LimitId.LOW_VOLTAGE_TAPER);
            case MOTOR_BRAKE_CURRENT ->
                    EnumSet.of(LimitId.MOTOR_BRAKE_CURRENT, LimitId.PACK_REGEN_CURRENT);
            case PACK_DISCHARGE_CURRENT, LOW_VOLTAGE_TAPER ->
                    EnumSet.of(LimitId.PACK_DISCHARGE_CURRENT, LimitId.LOW_VOLTAGE_TAPER);
            case PACK_REGEN_CURRENT, HIGH_VOLTAGE_TAPER -> EnumSet.of(LimitId.PACK_REGEN_CURRENT);
            case SPEED_CAP -> EnumSet.allOf(LimitId.class);
        };
    }
}
