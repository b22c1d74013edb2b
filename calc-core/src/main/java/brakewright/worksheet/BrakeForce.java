package brakewright.worksheet;

import brakewright.braking.Deceleration;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;

/**
 * How hard the electric brake slows on level road, braking in full, over speed.
 *
 * @param wheelForce of all driven wheels, one for each speed [N]
 * @param deceleration with what the road takes [m/s²]
 */
public record BrakeForce(double[] wheelForce, double[] deceleration) {

    static BrakeForce of(Build build, ElectricBrake brake, PackState pack, double[] speeds) {
        ElectricBrake settled = brake.settled(pack);
        BrakeForce force = new BrakeForce(new double[speeds.length], new double[speeds.length]);
        for (int i = 0; i < speeds.length; i++) {
            force.wheelForce[i] =
                    settled.powertrain()
                            .brakeForce(settled.motorCurrent(speeds[i], pack), speeds[i]);
            force.deceleration[i] = Deceleration.electric(build, settled, speeds[i], pack);
        }
        return force;
    }
}
