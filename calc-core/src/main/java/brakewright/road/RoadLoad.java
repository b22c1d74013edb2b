package brakewright.road;

import brakewright.spec.Build;

/**
 * The force that rolling, slope and air put against the vehicle.
 *
 * <p>{@code F = m·g·(crr·cosθ + sinθ) + ½·ρ·CdA·(v+w)·|v+w|}, θ rising and w a headwind being
 * positive.
 *
 * <p>Source: Martin et al., J. Appl. Biomech. 14(3):276–291 (1998), who found the same sum to agree
 * with measured power to 2.7 W.
 *
 * @param mass that moves [kg]
 * @param rollingResistance crr [1]
 * @param dragArea CdA [m²]
 * @param airDensity ρ [kg/m³]
 */
public record RoadLoad(double mass, double rollingResistance, double dragArea, double airDensity) {

    /**
     * Returns the road load of a vehicle in its climate.
     *
     * @param build the vehicle
     * @return its road load
     */
    public static RoadLoad of(Build build) {
        return new RoadLoad(
                build.mass(),
                build.vehicle().rollingResistance(),
                build.vehicle().dragArea(),
                StandardAtmosphere.density(
                        build.use().climate().altitude(), build.use().climate().ambientC()));
    }

    /**
     * Returns the force against the vehicle.
     *
     * @param speed forward [m/s]
     * @param slope rise over run; negative downhill [1]
     * @param headwind [m/s]
     * @return the force; negative where the slope pulls harder than all else holds [N]
     */
    public double force(double speed, double slope, double headwind) {
        double alongRun = Slope.cosine(slope);
        return mass * Gravity.STANDARD * alongRun * (rollingResistance + slope)
                + airForce(speed + headwind);
    }

    /**
     * Returns the force of the air alone.
     *
     * @param airSpeed of the vehicle against the air [m/s]
     * @return the force against the motion; negative from behind [N]
     */
    public double airForce(double airSpeed) {
        return 0.5 * airDensity * dragArea * airSpeed * Math.abs(airSpeed);
    }
}
