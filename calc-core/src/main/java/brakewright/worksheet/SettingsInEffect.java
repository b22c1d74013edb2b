package brakewright.worksheet;

import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.spec.Taper;
import java.util.Optional;

/**
 * The settings that a sheet counts with: those given, and for each current that is not given its
 * limit. Pack currents are of all controllers together.
 *
 * @param motorDrive motor drive current, per motor [A]
 * @param motorBrake motor brake current, per motor [A]
 * @param packDischarge pack discharge current [A]
 * @param packRegen pack regen current [A]
 * @param lowVoltageTaper as set; empty where none is
 * @param highVoltageTaper as set; empty where none is
 * @param isHighVoltageTaperTrusted whether that taper is set and wide enough to be counted on
 * @param brakeEndsBelow the speed below which the controllers do not brake [m/s]
 * @param topSpeed the highest speed that will be met: the speed cap or the highest speed in use,
 *     whichever is greater [m/s]
 */
public record SettingsInEffect(
        double motorDrive,
        double motorBrake,
        double packDischarge,
        double packRegen,
        Optional<Taper> lowVoltageTaper,
        Optional<Taper> highVoltageTaper,
        boolean isHighVoltageTaperTrusted,
        double brakeEndsBelow,
        double topSpeed) {

    static SettingsInEffect of(Limits limits, Operation operation) {
        ElectricBrake brake = operation.brake();
        return new SettingsInEffect(
                operation.drive().motorCurrent(),
                brake.motorCurrent(),
                operation.drive().packCurrent(),
                brake.packCurrent(),
                operation.drive().taper(),
                brake.taper(),
                brake.taper().filter(limits.highVoltageTaper()::isWideEnough).isPresent(),
                brake.endsBelow(),
                operation.topSpeed());
    }

    /**
     * Returns whether the high-voltage taper is set, and too narrow to be counted on.
     *
     * @return true where what flows is told without it
     */
    public boolean isHighVoltageTaperLeftOut() {
        return highVoltageTaper.isPresent() && !isHighVoltageTaperTrusted;
    }
}
