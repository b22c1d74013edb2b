package brakewright.driving;

import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Spending;
import brakewright.spec.Build;

/**
 * What holding a speed takes, part by part.
 *
 * @param speed [m/s]
 * @param current per motor [A]; 0 where road and wind do all of it
 * @param terminals power that leaves the pack [W]
 * @param spent where the power of the cells goes [W]
 */
public record SteadyPower(double speed, double current, double terminals, Spending spent) {

    /**
     * Works out what a speed takes.
     *
     * @param build the vehicle
     * @param drive its drive as it is set
     * @param road the way ahead
     * @param speed that is held [m/s]
     * @param pack the pack that gives the power
     * @return the power
     */
    public static SteadyPower of(
            Build build, ElectricDrive drive, Road road, double speed, PackState pack) {
        Propulsion propulsion = new Propulsion(build, drive, road);
        double current = propulsion.holdingCurrent(speed);
        return new SteadyPower(
                speed,
                current,
                propulsion.terminalPower(current, speed),
                propulsion.spending(current, speed, pack));
    }

    /**
     * Returns whether the motors have something to do.
     *
     * @return false where road and wind carry the vehicle
     */
    public boolean isDriven() {
        return current > 0.0;
    }
}
