package brakewright.worksheet;

import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.ride.Deceleration;
import brakewright.spec.Build;
import java.util.Arrays;

/**
 * How hard the electric brake slows on level road, braking in full, over speed.
 *
 * @param wheelForce of all driven wheels, one for each speed [N]
 * @param deceleration with what the road takes [m/s²]
 */
public record BrakeForce(double[] wheelForce, double[] deceleration) {

    static BrakeForce of(Build build, ElectricBrake brake, PackState pack, double[] speeds) {
        ElectricBrake settled = brake.settled(pack);
        return new BrakeForce(
                Arrays.stream(speeds)
                        .map(
                                speed ->
                                        settled.powertrain()
                                                .brakeForce(
                                                        settled.motorCurrent(speed, pack), speed))
                        .toArray(),
                Arrays.stream(speeds)
                        .map(speed -> Deceleration.electric(build, settled, speed, pack))
                        .toArray());
    }
}
