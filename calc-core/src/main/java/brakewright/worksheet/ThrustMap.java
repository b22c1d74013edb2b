package brakewright.worksheet;

import brakewright.battery.BatteryModel;
import brakewright.operation.Operation;
import brakewright.powertrain.DriveState;
import brakewright.powertrain.PackState;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;

/**
 * The thrust under all limits over charge state (rows) and speed (columns), from standstill to the
 * top speed of the fullest pack or the highest speed in use, whichever is greater.
 *
 * @param charges the charge states, ascending [1]
 * @param speeds ascending from standstill [m/s]
 * @param pulls what the drive does
 * @param resistance of level road and calm air, per speed [N]
 */
public record ThrustMap(
        double[] charges, double[] speeds, DriveState[][] pulls, double[] resistance) {

    private static final int SPEED_STEPS = 40;

    static ThrustMap of(Build build, Operation operation, DriveSheet full) {
        double[] charges = BrakeMap.charges(build.use().chargeTo(), build.use().chargeFrom());
        double top = Math.max(full.topSpeedFlat().speed(), operation.topSpeed());
        double[] speeds = new double[SPEED_STEPS + 1];
        double[] resistance = new double[SPEED_STEPS + 1];
        RoadLoad load = RoadLoad.of(build);
        for (int column = 0; column <= SPEED_STEPS; column++) {
            speeds[column] = top * column / SPEED_STEPS;
            resistance[column] = load.force(speeds[column], 0.0, 0.0);
        }
        BatteryModel model = new BatteryModel(build.battery());
        DriveState[][] pulls = new DriveState[charges.length][speeds.length];
        for (int row = 0; row < charges.length; row++) {
            PackState pack = PackState.of(model, charges[row], build.battery().temperatureC());
            for (int column = 0; column < speeds.length; column++) {
                pulls[row][column] = operation.drive().at(speeds[column], pack);
            }
        }
        return new ThrustMap(charges, speeds, pulls, resistance);
    }
}
