package brakewright.powertrain;

/**
 * What the drive does at a speed under all its limits.
 *
 * @param motorCurrent per motor [A]
 * @param packCurrent out of the pack [A]
 * @param packVoltage at its terminals [V]
 * @param thrust of all driven wheels [N]
 * @param holder what holds it down
 */
public record DriveState(
        double motorCurrent,
        double packCurrent,
        double packVoltage,
        double thrust,
        TopSpeed.Holder holder) {}
