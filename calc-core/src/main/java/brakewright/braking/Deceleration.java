package brakewright.braking;

import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;

/** How hard a vehicle slows on level road by its electric brake and the road alone. */
public final class Deceleration {

    private Deceleration() {}

    /**
     * Returns the deceleration at a speed, the high-voltage taper and the grip left out.
     *
     * <p>{@code (F_brake + F_road)/(m·(1 + j))}.
     *
     * <p>Assumption: the road is level and the wheels hold whatever the motors ask of them; {@link
     * brakewright.road.LoadTransfer#brakingGrip} says when they do not.
     *
     * @param build the vehicle
     * @param brake its electric brake
     * @param speed [m/s]
     * @param pack the pack
     * @return the deceleration [m/s²]
     */
    public static double electric(Build build, ElectricBrake brake, double speed, PackState pack) {
        double force =
                brake.powertrain().brakeForce(brake.motorCurrent(speed, pack), speed)
                        + RoadLoad.of(build).force(speed, 0.0, 0.0);
        return force / build.inertia();
    }
}
