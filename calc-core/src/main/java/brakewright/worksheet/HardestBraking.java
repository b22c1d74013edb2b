package brakewright.worksheet;

import brakewright.battery.BatteryModel;
import brakewright.braking.Deceleration;
import brakewright.limit.Limits;
import brakewright.numeric.Accuracy;
import brakewright.numeric.Greatest;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.road.Gravity;
import brakewright.spec.Build;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;

/**
 * The hardest that the electric brake and the road slow a vehicle on level road, over the speeds
 * and charge states in use.
 *
 * <p>At one charge state what slows it bends only where the brake begins to fade and where it
 * begins to draw; these speeds and both ends are looked at, and the peak between neighbours is
 * sought. The charge states are those at which what flows may turn.
 *
 * @param deceleration of the vehicle by the electric brake and the road [m/s²]
 * @param brakeForce of the electric brake alone on the tyres [N]
 * @param tyreUse that force as a multiple of the weight [1]
 */
public record HardestBraking(double deceleration, double brakeForce, double tyreUse) {

    /**
     * Finds the hardest braking.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param operation its settings in effect
     * @return the hardest of each
     */
    static HardestBraking of(Build build, Limits limits, Operation operation) {
        BatteryModel model = limits.battery();
        Operation trusted = operation.trusted(limits);
        double deceleration = 0.0;
        double force = 0.0;
        for (double charge : trusted.bends(build, limits)) {
            PackState pack = PackState.of(model, charge, build.battery().temperatureC());
            ElectricBrake brake = trusted.brake().settled(pack);
            Powertrain powertrain = brake.powertrain();
            double[] corners = corners(brake, pack, operation.topSpeed());
            deceleration =
                    Math.max(
                            deceleration,
                            greatest(
                                    speed -> Deceleration.electric(build, brake, speed, pack),
                                    corners));
            force =
                    Math.max(
                            force,
                            greatest(
                                    speed ->
                                            powertrain.brakeForce(
                                                    brake.motorCurrent(speed, pack), speed),
                                    corners));
        }
        return new HardestBraking(deceleration, force, force / (build.mass() * Gravity.STANDARD));
    }

    /**
     * Returns what the rider feels.
     *
     * @return the deceleration as a multiple of gravity [1]
     */
    public double felt() {
        return deceleration / Gravity.STANDARD;
    }

    private static double[] corners(ElectricBrake brake, PackState pack, double top) {
        return DoubleStream.of(
                        0.0,
                        brake.endsBelow(),
                        brake.powertrain().crossoverSpeed(brake.motorCurrent()),
                        brake.fadeSpeed(pack),
                        top)
                .filter(speed -> speed <= top)
                .sorted()
                .distinct()
                .toArray();
    }

    private static double greatest(DoubleUnaryOperator of, double[] corners) {
        double greatest = of.applyAsDouble(corners[0]);
        for (int i = 1; i < corners.length; i++) {
            double inside = Greatest.between(of, corners[i - 1], corners[i], Accuracy.MODEL);
            greatest =
                    Math.max(
                            greatest,
                            Math.max(of.applyAsDouble(inside), of.applyAsDouble(corners[i])));
        }
        return greatest;
    }
}
