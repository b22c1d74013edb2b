package brakewright.road;

import brakewright.spec.Build;

/** The brake that does not depend on the pack. */
public final class FrictionBrake {

    private FrictionBrake() {}

    /**
     * Returns how hard it slows a vehicle, turning parts left out: as hard as it is described, at
     * most what the road carries, {@code μ·g·cosθ}.
     *
     * @param build the vehicle
     * @param grip μ [1]
     * @param slope rise over run, either way [1]
     * @return the deceleration [m/s²]; 0 where no such brake is described
     */
    public static double deceleration(Build build, double grip, double slope) {
        return carried(build.vehicle().frictionBrake().orElse(0.0), grip, Gravity.pressing(slope));
    }

    /**
     * Returns how much of a deceleration the road carries, both axles braking as they are loaded.
     *
     * @param asked [m/s²]
     * @param grip μ [1]
     * @param pressing {@code g·cosθ} [m/s²]
     * @return the deceleration, at most {@code μ·g·cosθ} [m/s²]
     */
    public static double carried(double asked, double grip, double pressing) {
        return Math.min(asked, grip * pressing);
    }

    /**
     * Returns its force.
     *
     * @param build the vehicle
     * @param grip μ [1]
     * @param slope rise over run, either way [1]
     * @return the force [N]; 0 where no such brake is described
     */
    public static double force(Build build, double grip, double slope) {
        return build.mass() * deceleration(build, grip, slope);
    }
}
