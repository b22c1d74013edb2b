package brakewright.operation;

import brakewright.battery.AlongCharge;
import brakewright.battery.BatteryModel;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What the motors ask of the packs at the highest speed, and what the settings let through, at one
 * cell temperature and some charge states.
 */
final class Flow {

    private final ElectricBrake brake;
    private final ElectricDrive drive;
    private final BatteryModel model;
    private final double cellsC;
    private final double topSpeed;
    private final double[] charges;
    private final PackState[] states;
    private final double[] returnAsked;
    private final double[] returnPermitted;
    private final double[] drawAsked;
    private final double[] drawPermitted;

    private Flow(Operation operation, BatteryModel model, double cellsC, PackState[] states) {
        this.brake = operation.brake();
        this.drive = operation.drive();
        this.model = model;
        this.cellsC = cellsC;
        this.topSpeed = operation.topSpeed();
        this.charges = Arrays.stream(states).mapToDouble(PackState::charge).toArray();
        this.states = states;
        this.returnAsked = new double[states.length];
        this.returnPermitted = new double[states.length];
        this.drawAsked = new double[states.length];
        this.drawPermitted = new double[states.length];
        for (int i = 0; i < states.length; i++) {
            PackState state = states[i];
            returnAsked[i] = brake.greatestAsked(topSpeed, state);
            returnPermitted[i] = brake.settledPackLimit(state);
            drawAsked[i] = drive.greatestAsked(topSpeed, state);
            drawPermitted[i] = drive.settledPackLimit(state);
        }
    }

    /** At each temperature that the cells may have, in their order. */
    static List<Flow> each(
            Build build, Operation operation, AlongCharge givers, AlongCharge takers) {
        return Arrays.stream(build.cellTemperatures())
                .mapToObj(
                        cellsC ->
                                new Flow(
                                        operation,
                                        givers.model(),
                                        cellsC,
                                        PackState.of(givers, takers, cellsC)))
                .toList();
    }

    PackState at(double charge) {
        return PackState.of(model, charge, cellsC);
    }

    PackState[] states() {
        return states;
    }

    /** By how much the motors ask to return more than is let in, at one of the charge states. */
    double returnHeldBack(int place) {
        return returnAsked[place] - returnPermitted[place];
    }

    /** The same between them. */
    double returnHeldBack(PackState state) {
        return brake.greatestAsked(topSpeed, state) - brake.settledPackLimit(state);
    }

    /** By how much the motors ask to draw more than is let out, at one of the charge states. */
    double drawHeldBack(int place) {
        return drawAsked[place] - drawPermitted[place];
    }

    /** The same between them. */
    double drawHeldBack(PackState state) {
        return drive.greatestAsked(topSpeed, state) - drive.settledPackLimit(state);
    }

    /** The current into the packs at these and further charge states, all ascending [A]. */
    double[] returned(double[] all) {
        return held(
                all, returnAsked, returnPermitted, state -> brake.greatestReturn(topSpeed, state));
    }

    /** The current out of the packs at these and further charge states, all ascending [A]. */
    double[] drawn(double[] all) {
        return held(all, drawAsked, drawPermitted, state -> drive.greatestDraw(topSpeed, state));
    }

    private double[] held(
            double[] all, double[] asked, double[] permitted, ToDoubleFunction<PackState> between) {
        double[] currents = new double[all.length];
        int known = 0;
        for (int i = 0; i < all.length; i++) {
            boolean isKnown = known < charges.length && all[i] == charges[known];
            currents[i] =
                    isKnown
                            ? Math.min(asked[known], permitted[known])
                            : between.applyAsDouble(at(all[i]));
            known += isKnown ? 1 : 0;
        }
        return currents;
    }
}
