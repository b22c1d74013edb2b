package brakewright.worksheet;

import brakewright.limit.Severity;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;

/**
 * The electric brake over speed at one charge state, as it is judged: a taper too narrow to hold is
 * not counted.
 *
 * @param charge the charge state [1]
 * @param mayTake what the pack may take there [A]
 * @param current into the pack, one for each speed; negative when drawn [A]
 * @param isExceeded whether that is more than the pack may take
 * @param isHeldBack whether pack limit or taper hold the motor current down
 */
public record BrakeRow(
        double charge,
        double mayTake,
        double[] current,
        boolean[] isExceeded,
        boolean[] isHeldBack) {

    static BrakeRow of(ElectricBrake brake, PackState pack, double mayTake, double[] speeds) {
        ElectricBrake settled = brake.settled(pack);
        BrakeRow row =
                new BrakeRow(
                        pack.charge(),
                        mayTake,
                        new double[speeds.length],
                        new boolean[speeds.length],
                        new boolean[speeds.length]);
        for (int i = 0; i < speeds.length; i++) {
            row.current[i] = settled.packCurrent(speeds[i], pack);
            row.isExceeded[i] = Severity.isExceeded(row.current[i], mayTake);
            row.isHeldBack[i] = settled.isHeldBack(speeds[i], pack);
        }
        return row;
    }
}
