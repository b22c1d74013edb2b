package brakewright.worksheet;

import brakewright.battery.BatteryModel;
import brakewright.limit.PackLimit;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;

/**
 * What braking in full sends into the pack over charge state (rows) and speed (columns), as it is
 * judged: a taper too narrow to hold is not counted.
 *
 * @param charges the charge states [1]
 * @param speeds the speeds [m/s]
 * @param asked what the motor brake current would send back if nothing held it; negative when drawn
 *     [A]
 * @param sent what pack limit and taper leave of it [A]
 * @param beyond by how much that is more than the pack may take; negative where it is less [A]
 * @param heldBack by how much what braking in full or in part would return is more than pack limit
 *     and taper let in; negative where they hold nothing back [A]
 */
public record ReturnMap(
        double[] charges,
        double[] speeds,
        double[][] asked,
        double[][] sent,
        double[][] beyond,
        double[][] heldBack) {

    static ReturnMap of(
            ElectricBrake brake,
            BatteryModel model,
            PackLimit mayTake,
            double cellsC,
            double[] charges,
            double[] speeds) {
        ReturnMap map =
                new ReturnMap(
                        charges.clone(),
                        speeds.clone(),
                        new double[charges.length][speeds.length],
                        new double[charges.length][speeds.length],
                        new double[charges.length][speeds.length],
                        new double[charges.length][speeds.length]);
        for (int row = 0; row < charges.length; row++) {
            PackState pack = PackState.of(model, charges[row], cellsC);
            ElectricBrake settled = brake.settled(pack);
            double let = brake.settledPackLimit(pack);
            double taken = mayTake.valueAt(charges[row], cellsC);
            for (int column = 0; column < speeds.length; column++) {
                double asked = brake.askedPackCurrent(speeds[column], pack);
                double sent = settled.packCurrent(speeds[column], pack);
                map.asked[row][column] = asked;
                map.sent[row][column] = sent;
                map.beyond[row][column] = sent - taken;
                map.heldBack[row][column] = brake.greatestAsked(speeds[column], pack) - let;
            }
        }
        return map;
    }
}
