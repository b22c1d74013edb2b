package brakewright.operation;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.limit.PackConstraint;
import brakewright.numeric.Accuracy;
import brakewright.numeric.Root;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Taper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The charge states, between the points of the packs' curves, at which what flows or what is
 * permitted bends: a taper begins or has ended, a voltage bound is used up at rest, the motors'
 * asking meets what the settings let through. Between neighbours everything runs smoothly, so that
 * what is exceeded between two points is exceeded at one of them, too.
 */
final class Bends {

    private final BatteryModel model;
    private final double[] points;
    private final List<Double> found = new ArrayList<>();

    private Bends(BatteryModel model, double[] points) {
        this.model = model;
        this.points = points;
    }

    /**
     * Finds them.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param operation its settings in effect
     * @param points the charge states looked at anyway, ascending
     * @return the charge states besides, in any order
     */
    static double[] of(Build build, Limits limits, Operation operation, double[] points) {
        Bends bends = new Bends(limits.battery(), points);
        bends.bounds(limits.packRegen().constraints());
        bends.bounds(limits.packDischarge().constraints());
        for (double cellsC : build.cellTemperatures()) {
            bends.flows(operation, cellsC);
        }
        return bends.found.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Where a voltage bound is used up without any current. */
    private void bounds(List<PackConstraint> constraints) {
        for (PackConstraint constraint : constraints) {
            if (constraint.variesWithCharge()) {
                straight(Arrays.stream(points).map(constraint::headroomAt).toArray());
            }
        }
    }

    private void flows(Operation operation, double cellsC) {
        PackState[] states = new PackState[points.length];
        for (int i = 0; i < points.length; i++) {
            states[i] = PackState.of(model, points[i], cellsC);
        }
        ElectricBrake brake = operation.brake();
        ElectricDrive drive = operation.drive();
        brake.taper().ifPresent(taper -> taper(taper, brake.packCurrent(), states));
        drive.taper().ifPresent(taper -> taper(taper, -drive.packCurrent(), states));
        double top = operation.topSpeed();
        meeting(states, state -> brake.greatestAsked(top, state) - brake.settledPackLimit(state));
        meeting(states, state -> drive.greatestAsked(top, state) - drive.settledPackLimit(state));
    }

    /**
     * Where the voltage under the whole current meets the taper's beginning, and at rest its end.
     */
    private void taper(Taper taper, double current, PackState[] states) {
        Difference begins = state -> state.terminalVoltage(current) - taper.begins();
        if (model.isEven()) {
            straight(Arrays.stream(states).mapToDouble(begins::of).toArray());
        } else {
            meeting(states, begins);
        }
        straight(
                Arrays.stream(states)
                        .mapToDouble(state -> state.voltage() - taper.ends())
                        .toArray());
    }

    private void straight(double[] values) {
        for (int i = 0; i + 1 < points.length; i++) {
            if (values[i] * values[i + 1] < 0.0) {
                found.add(
                        points[i]
                                + (points[i + 1] - points[i])
                                        * values[i]
                                        / (values[i] - values[i + 1]));
            }
        }
    }

    private interface Difference {
        double of(PackState state);
    }

    private void meeting(PackState[] states, Difference difference) {
        double cellsC = states[0].temperatureC();
        double before = difference.of(states[0]);
        for (int i = 1; i < states.length; i++) {
            double here = difference.of(states[i]);
            if (before * here < 0.0) {
                found.add(
                        Root.between(
                                charge -> difference.of(PackState.of(model, charge, cellsC)),
                                points[i - 1],
                                points[i],
                                Accuracy.INNERMOST));
            }
            before = here;
        }
    }
}
