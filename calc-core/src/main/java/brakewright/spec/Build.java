package brakewright.spec;

import java.util.stream.DoubleStream;

/**
 * One vehicle with its rider, its use and its settings: everything a worksheet is computed from.
 *
 * @param title what the vehicle is called
 * @param rider the person aboard
 * @param vehicle the rolling vehicle
 * @param drive how the motors reach the road
 * @param motor one of its motors, all alike
 * @param controllers the motor controllers
 * @param battery the pack or packs
 * @param use what it will meet
 * @param margins how far limits stay below ratings
 * @param criteria what it is asked to do
 * @param settings what its controllers are told
 */
public record Build(
        String title,
        Rider rider,
        Vehicle vehicle,
        Drive drive,
        Motor motor,
        Controllers controllers,
        Battery battery,
        Use use,
        Margins margins,
        Criteria criteria,
        Settings settings) {

    /**
     * Validates what concerns several parts at once.
     *
     * @throws IllegalArgumentException if the motors cannot be shared evenly among the controllers
     */
    public Build {
        if (drive.motors() % controllers.count() != 0) {
            throw new IllegalArgumentException(
                    "motors must divide evenly among controllers, was "
                            + drive.motors()
                            + " motors and "
                            + controllers.count()
                            + " controllers");
        }
    }

    /**
     * Returns the mass that moves.
     *
     * @return rider, vehicle and cargo together [kg]
     */
    public double mass() {
        return rider.mass() + vehicle.mass() + vehicle.cargo();
    }

    /**
     * Returns the mass that must be accelerated, turning parts included.
     *
     * @return {@code m·(1 + j)} [kg]
     */
    public double inertia() {
        return mass() * (1.0 + vehicle.rotatingShare());
    }

    /**
     * Returns the highest speed that will be met.
     *
     * @return the speed cap or the highest speed in use, whichever is greater [m/s]
     */
    public double highestSpeed() {
        return Math.max(use.speedMax(), settings.speedCap().orElse(0.0));
    }

    /**
     * Returns the cell temperatures at which the packs are looked at.
     *
     * @return their own first, then the coldest and the warmest in use where they lie beyond it
     *     [°C]
     */
    public double[] cellTemperatures() {
        double own = battery.temperatureC();
        Climate climate = use.climate();
        return DoubleStream.of(
                        own,
                        Math.min(own, climate.coldestPackC()),
                        Math.max(own, climate.warmestPackC()))
                .distinct()
                .toArray();
    }

    /**
     * Returns this vehicle where the road is wet.
     *
     * @return a changed copy, its grip that of the wet road
     */
    public Build onWetRoad() {
        return withVehicle(vehicle.onWetRoad());
    }

    /**
     * Returns this vehicle with another title.
     *
     * @param replacement what it is called
     * @return a changed copy
     */
    public Build withTitle(String replacement) {
        Copy copy = new Copy(this);
        copy.title = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with another rider.
     *
     * @param replacement what takes its place
     * @return a changed copy
     */
    public Build withRider(Rider replacement) {
        Copy copy = new Copy(this);
        copy.rider = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with another chassis.
     *
     * @param replacement what takes its place
     * @return a changed copy
     */
    public Build withVehicle(Vehicle replacement) {
        Copy copy = new Copy(this);
        copy.vehicle = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with another drive.
     *
     * @param replacement what takes its place
     * @return a changed copy
     */
    public Build withDrive(Drive replacement) {
        Copy copy = new Copy(this);
        copy.drive = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with other motors.
     *
     * @param replacement what takes their place
     * @return a changed copy
     */
    public Build withMotor(Motor replacement) {
        Copy copy = new Copy(this);
        copy.motor = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with other controllers.
     *
     * @param replacement what takes their place
     * @return a changed copy
     */
    public Build withControllers(Controllers replacement) {
        Copy copy = new Copy(this);
        copy.controllers = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with another battery.
     *
     * @param replacement what takes its place
     * @return a changed copy
     */
    public Build withBattery(Battery replacement) {
        Copy copy = new Copy(this);
        copy.battery = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with another use.
     *
     * @param replacement what takes its place
     * @return a changed copy
     */
    public Build withUse(Use replacement) {
        Copy copy = new Copy(this);
        copy.use = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with other margins.
     *
     * @param replacement what takes their place
     * @return a changed copy
     */
    public Build withMargins(Margins replacement) {
        Copy copy = new Copy(this);
        copy.margins = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with other criteria.
     *
     * @param replacement what takes their place
     * @return a changed copy
     */
    public Build withCriteria(Criteria replacement) {
        Copy copy = new Copy(this);
        copy.criteria = replacement;
        return copy.made();
    }

    /**
     * Returns this vehicle with other settings.
     *
     * @param replacement the settings
     * @return a changed copy
     */
    public Build withSettings(Settings replacement) {
        Copy copy = new Copy(this);
        copy.settings = replacement;
        return copy.made();
    }

    /** What a changed copy is made of: the one place that lists all components. */
    private static final class Copy {

        private String title;
        private Rider rider;
        private Vehicle vehicle;
        private Drive drive;
        private Motor motor;
        private Controllers controllers;
        private Battery battery;
        private Use use;
        private Margins margins;
        private Criteria criteria;
        private Settings settings;

        Copy(Build from) {
            this.title = from.title;
            this.rider = from.rider;
            this.vehicle = from.vehicle;
            this.drive = from.drive;
            this.motor = from.motor;
            this.controllers = from.controllers;
            this.battery = from.battery;
            this.use = from.use;
            this.margins = from.margins;
            this.criteria = from.criteria;
            this.settings = from.settings;
        }

        Build made() {
            return new Build(
                    title,
                    rider,
                    vehicle,
                    drive,
                    motor,
                    controllers,
                    battery,
                    use,
                    margins,
                    criteria,
                    settings);
        }
    }
}
