package brakewright.worksheet;

import brakewright.battery.BatteryModel;
import brakewright.operation.Operation;
import brakewright.powertrain.DriveState;
import brakewright.powertrain.PackState;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;

/**
 * The thrust under all limits over charge state (rows) and speed (columns).
 *
 * @param charges the charge states [1]
 * @param speeds ascending from standstill [m/s]
 * @param pulls what the drive does
 * @param resistance of level road and calm air, per speed [N]
 */
public record ThrustMap(
        double[] charges, double[] speeds, DriveState[][] pulls, double[] resistance) {

    private static final int SPEED_STEPS = 40;

    /** Over the charge in use, from standstill to a top speed. */
    static ThrustMap upTo(double top, Build build, BatteryModel model, Operation operation) {
        double[] speeds = new double[SPEED_STEPS + 1];
        for (int column = 0; column <= SPEED_STEPS; column++) {
            speeds[column] = top * column / SPEED_STEPS;
        }
        return of(
                build,
                model,
                operation,
                BrakeMap.charges(build.use().chargeTo(), build.use().chargeFrom()),
                speeds);
    }

    static ThrustMap of(
            Build build,
            BatteryModel model,
            Operation operation,
            double[] charges,
            double[] speeds) {
        double[] resistance = new double[speeds.length];
        RoadLoad load = RoadLoad.of(build);
        for (int column = 0; column < speeds.length; column++) {
            resistance[column] = load.force(speeds[column], 0.0, 0.0);
        }
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
