package brakewright.worksheet;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import java.util.TreeSet;

/**
 * The electric brake over charge state (rows) and speed (columns), the high-voltage taper left out,
 * cells at their own temperature and windings at that of the air.
 *
 * @param charges the charge states, ascending [1]
 * @param speeds ascending from standstill [m/s]
 * @param askedPackCurrent what the motor brake current would send back; negative when drawn [A]
 * @param packCurrent the same after the pack regen limit [A]
 * @param motorCurrent per motor, after it [A]
 * @param cellVoltage of the cells in the worst group [V]
 * @param wheelForce of all driven wheels against the motion [N]
 * @param mayTake what the pack may take, per charge state [A]
 */
public record BrakeMap(
        double[] charges,
        double[] speeds,
        double[][] askedPackCurrent,
        double[][] packCurrent,
        double[][] motorCurrent,
        double[][] cellVoltage,
        double[][] wheelForce,
        double[] mayTake) {

    private static final int SPEED_STEPS = 40;
    private static final int CHARGE_STEPS = 20;

    static BrakeMap of(Build build, BatteryModel model, Limits limits, Operation operation) {
        double[] charges = charges(build.use().chargeTo(), build.use().chargeFrom());
        double[] speeds = new double[SPEED_STEPS + 1];
        for (int column = 0; column <= SPEED_STEPS; column++) {
            speeds[column] = operation.topSpeed() * column / SPEED_STEPS;
        }
        BrakeMap map =
                new BrakeMap(
                        charges,
                        speeds,
                        new double[charges.length][speeds.length],
                        new double[charges.length][speeds.length],
                        new double[charges.length][speeds.length],
                        new double[charges.length][speeds.length],
                        new double[charges.length][speeds.length],
                        new double[charges.length]);
        double temperature = build.battery().temperatureC();
        for (int row = 0; row < charges.length; row++) {
            map.mayTake[row] = limits.packRegen().valueAt(charges[row], temperature);
            map.fill(row, model, PackState.of(model, charges[row], temperature), operation.brake());
        }
        return map;
    }

    private void fill(int row, BatteryModel model, PackState state, ElectricBrake brake) {
        for (int column = 0; column < speeds.length; column++) {
            double speed = speeds[column];
            double current = brake.motorCurrent(speed, state);
            askedPackCurrent[row][column] = brake.askedPackCurrent(speed, state);
            motorCurrent[row][column] = current;
            packCurrent[row][column] = brake.packCurrent(speed, state);
            cellVoltage[row][column] =
                    model.cellVoltage(
                            packCurrent[row][column], state.charge(), state.temperatureC());
            wheelForce[row][column] = brake.powertrain().brakeForce(current, speed);
        }
    }

    /** Both ends of the charge in use and every 5 % between. */
    static double[] charges(double low, double high) {
        TreeSet<Double> points = new TreeSet<>();
        points.add(low);
        points.add(high);
        for (int step = 0; step <= CHARGE_STEPS; step++) {
            double charge = (double) step / CHARGE_STEPS;
            if (charge > low && charge < high) {
                points.add(charge);
            }
        }
        return points.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
