package brakewright.operation;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.limit.PackConstraint;
import brakewright.numeric.Accuracy;
import brakewright.numeric.Root;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.spec.Taper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

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
     * @param limits of the vehicle
     * @param operation its settings in effect
     * @param points the charge states looked at anyway, ascending
     * @param flows what flows there, at each cell temperature
     * @return the charge states besides, in any order
     */
    static double[] of(Limits limits, Operation operation, double[] points, List<Flow> flows) {
        Bends bends = new Bends(limits.battery(), points);
        bends.bounds(limits.packRegen().constraints());
        bends.bounds(limits.packDischarge().constraints());
        for (Flow flow : flows) {
            bends.flow(operation, flow);
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

    private void flow(Operation operation, Flow flow) {
        ElectricBrake brake = operation.brake();
        ElectricDrive drive = operation.drive();
        brake.taper().ifPresent(taper -> taper(taper, brake.packCurrent(), flow));
        drive.taper().ifPresent(taper -> taper(taper, -drive.packCurrent(), flow));
        meeting(flow, flow::returnHeldBack, flow::returnHeldBack);
        meeting(flow, flow::drawHeldBack, flow::drawHeldBack);
    }

    /**
     * Where the voltage under the whole current meets the taper's beginning, and at rest its end.
     */
    private void taper(Taper taper, double current, Flow flow) {
        PackState[] states = flow.states();
        Difference begins = state -> state.terminalVoltage(current) - taper.begins();
        if (model.isEven()) {
            straight(Arrays.stream(states).mapToDouble(begins::of).toArray());
        } else {
            meeting(flow, place -> begins.of(states[place]), begins);
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

    private void meeting(Flow flow, IntToDoubleFunction known, Difference between) {
        double before = known.applyAsDouble(0);
        for (int i = 1; i < points.length; i++) {
            double here = known.applyAsDouble(i);
            if (before * here < 0.0) {
                found.add(
                        Root.between(
                                charge -> between.of(flow.at(charge)),
                                points[i - 1],
                                points[i],
                                Accuracy.INNERMOST));
            }
            before = here;
        }
    }
}
