package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.limit.Severity;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;

/**
 * Where braking, in full or in part, stays within what the packs may take: over charge state (rows)
 * and speed (columns), cells at their own temperature.
 *
 * @param charges the charge states, ascending [1]
 * @param speeds ascending from standstill [m/s]
 * @param severities of what is sent back against what may be taken, positive where it is too much
 *     [1]
 * @param evaluation the verdict on the whole
 */
public record VerdictGrid(
        double[] charges, double[] speeds, double[][] severities, Evaluation evaluation) {

    private static final int CHARGE_STEPS = 20;
    private static final int SPEED_STEPS = 40;

    /**
     * Evaluates a vehicle over 21 charge states and 41 speeds.
     *
     * @param build the vehicle with its settings
     * @return the grid
     */
    public static VerdictGrid of(Build build) {
        Limits limits = Limits.of(build);
        Operation operation = Operation.of(build, limits);
        ElectricBrake brake = operation.trusted(limits).brake();
        BatteryModel model = limits.battery();
        double cellsC = build.battery().temperatureC();
        double[] charges = steps(build.use().chargeTo(), build.use().chargeFrom(), CHARGE_STEPS);
        double[] speeds = steps(0.0, operation.topSpeed(), SPEED_STEPS);
        double[][] severities = new double[charges.length][speeds.length];
        for (int row = 0; row < charges.length; row++) {
            PackState pack = PackState.of(model, charges[row], cellsC);
            double mayTake = limits.packRegen().valueAt(charges[row], cellsC);
            for (int column = 0; column < speeds.length; column++) {
                severities[row][column] =
                        Severity.of(brake.greatestReturn(speeds[column], pack), mayTake);
            }
        }
        return new VerdictGrid(
                charges, speeds, severities, Evaluation.of(build, limits, operation));
    }

    private static double[] steps(double from, double to, int count) {
        double[] steps = new double[count + 1];
        for (int i = 0; i <= count; i++) {
            steps[i] = i == count ? to : from + (to - from) * i / count;
        }
        return steps;
    }
}
