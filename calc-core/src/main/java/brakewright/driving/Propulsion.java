package brakewright.driving;

import brakewright.numeric.Accuracy;
import brakewright.numeric.Root;
import brakewright.powertrain.DriveState;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.powertrain.Spending;
import brakewright.powertrain.TopSpeed;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RiderBalance;
import brakewright.road.RoadLoad;
import brakewright.road.Slope;
import brakewright.spec.Build;

/**
 * Everything that drives a vehicle at a speed, and where the power goes.
 *
 * <p>The thrust is held back by what the wheels grip, and by where the vehicle or its rider tips.
 *
 * <p>Assumption: grip and tipping are those of level ground on a slope too; at 15 % the load on the
 * road is 1 % less.
 */
public final class Propulsion {

    private final ElectricDrive drive;
    private final Powertrain powertrain;
    private final RoadLoad load;
    private final Road road;
    private final double efficiency;
    private final double controllerEfficiency;
    private final double inertia;
    private final double idlePower;
    private final double rollingForce;
    private final double slopeForce;
    private final double groundForce;

    /**
     * Sets up everything that drives a vehicle.
     *
     * @param build the vehicle
     * @param drive its drive as it is set
     * @param road the way ahead
     */
    public Propulsion(Build build, ElectricDrive drive, Road road) {
        this.drive = drive;
        this.powertrain = drive.powertrain();
        this.load = RoadLoad.of(build);
        this.road = road;
        this.efficiency = build.drive().efficiency();
        this.controllerEfficiency = build.controllers().efficiency();
        this.inertia = build.inertia();
        this.idlePower = build.use().riding().idlePower();
        double weight = load.mass() * Gravity.STANDARD;
        double cosine = Slope.cosine(road.slope());
        this.rollingForce = weight * load.rollingResistance() * cosine;
        this.slopeForce = weight * road.slope() * cosine;
        LoadTransfer transfer = new LoadTransfer(build.vehicle().axles());
        this.groundForce =
                weight
                        * Math.min(
                                transfer.drivingGrip(build.vehicle().grip()),
                                Math.min(transfer.drivingTip(), RiderBalance.tip(build.rider())));
    }

    private Propulsion(Propulsion other, ElectricDrive drive) {
        this.drive = drive;
        this.powertrain = drive.powertrain();
        this.load = other.load;
        this.road = other.road;
        this.efficiency = other.efficiency;
        this.controllerEfficiency = other.controllerEfficiency;
        this.inertia = other.inertia;
        this.idlePower = other.idlePower;
        this.rollingForce = other.rollingForce;
        this.slopeForce = other.slopeForce;
        this.groundForce = other.groundForce;
    }

    /**
     * Returns the same with another drive, as with windings that have become warm.
     *
     * @param replacement the drive
     * @return a changed copy
     */
    public Propulsion withDrive(ElectricDrive replacement) {
        return new Propulsion(this, replacement);
    }

    /** The mass that must be speeded up, turning parts included [kg]. */
    double inertia() {
        return inertia;
    }

    /**
     * Returns what slope, tyres and air put against the vehicle.
     *
     * @param speed [m/s]
     * @return the force; negative where slope and wind push harder [N]
     */
    public double resistance(double speed) {
        return load.force(speed, road.slope(), road.headwind());
    }

    /** The current per motor that holds a speed; 0 where the road does it [A]. */
    double holdingCurrent(double speed) {
        double resistance = resistance(speed);
        return resistance > 0.0 ? powertrain.thrustCurrent(resistance, speed) : 0.0;
    }

    /**
     * Returns the current with everything that is permitted, and no more than the ground bears.
     *
     * @param speed [m/s]
     * @param pack the pack
     * @return per motor [A]
     */
    public double fullCurrent(double speed, PackState pack) {
        double current = permitted(speed, drive.at(speed, pack), pack);
        return powertrain.thrust(current, speed) <= groundForce
                ? current
                : Math.min(current, powertrain.thrustCurrent(groundForce, speed));
    }

    /** What the settings permit, as far as the pack gives it beside what electronics draw. */
    private double permitted(double speed, DriveState state, PackState pack) {
        if (Double.isInfinite(pack.greatestPower())) {
            return state.motorCurrent();
        }
        double left = Math.max(0.0, pack.greatestPower() - idlePower);
        return powertrain.limitedDriveCurrent(state.motorCurrent(), speed, left);
    }

    /** What holds the thrust down. */
    public enum Rule {
        /** What the wheels grip, or where vehicle or rider tip. */
        GROUND,
        /** What the pack gives beside the electronics. */
        POWER_BESIDE_ELECTRONICS,
        /** The motor current that is set. */
        MOTOR_CURRENT,
        /** The pack current that is set, its taper included. */
        PACK_CURRENT,
        /** The sagged voltage. */
        VOLTAGE,
        /** Nothing: the drive does not move. */
        STANDSTILL;

        private static Rule of(TopSpeed.Holder holder) {
            return switch (holder) {
                case MOTOR_CURRENT -> MOTOR_CURRENT;
                case PACK_CURRENT -> PACK_CURRENT;
                case VOLTAGE -> VOLTAGE;
                case STANDSTILL -> STANDSTILL;
            };
        }
    }

    /**
     * Returns what holds the thrust down at a speed; where it changes, the thrust bends.
     *
     * @param speed [m/s]
     * @param pack the pack
     * @return the first thing that gives no more
     */
    public Rule rule(double speed, PackState pack) {
        DriveState state = drive.at(speed, pack);
        double current = permitted(speed, state, pack);
        if (powertrain.thrust(current, speed) > groundForce) {
            return Rule.GROUND;
        }
        return current < state.motorCurrent()
                ? Rule.POWER_BESIDE_ELECTRONICS
                : Rule.of(state.holder());
    }

    /**
     * The highest speed that can be held, never beyond it: past the last power of the pack no
     * current flows at all. 0 where the vehicle does not move off [m/s].
     */
    double steadySpeed(PackState pack) {
        double top = TopSpeed.find(drive, load, road.slope(), road.headwind(), pack).speed();
        if (top == 0.0 || reserve(top, pack) >= 0.0) {
            return top;
        }
        return reserve(0.0, pack) <= 0.0
                ? 0.0
                : Root.onSide(
                        speed -> reserve(speed, pack),
                        0.0,
                        top,
                        Accuracy.INNERMOST,
                        Root.Side.NOT_NEGATIVE);
    }

    /** What is left of the full current where a speed is held; negative where it cannot be [A]. */
    double reserve(double speed, PackState pack) {
        return fullCurrent(speed, pack) - holdingCurrent(speed);
    }

    /**
     * Returns the thrust that a current makes.
     *
     * @param current per motor [A]
     * @param speed [m/s]
     * @return of all driven wheels [N]
     */
    public double thrust(double current, double speed) {
        return powertrain.thrust(current, speed);
    }

    /**
     * Returns what leaves the pack's terminals while driving.
     *
     * @param current per motor [A]
     * @param speed [m/s]
     * @return the power, electronics included [W]
     */
    public double terminalPower(double current, double speed) {
        return powertrain.drawnPower(current, speed) + idlePower;
    }

    /**
     * Splits the power that the cells give.
     *
     * @param current per motor, enough to turn it [A]
     * @param speed [m/s]
     * @param pack the pack
     * @return part by part [W]; what is left of the thrust over the resistance moves the vehicle
     */
    public Spending spending(double current, double speed, PackState pack) {
        double thrust = current > 0.0 ? powertrain.thrust(current, speed) : 0.0;
        double air = load.airForce(speed + road.headwind()) * speed;
        double drag = current > 0.0 ? powertrain.dragLoss(speed) : 0.0;
        double copper = powertrain.copperLoss(current);
        double drawn = powertrain.drawnPower(current, speed);
        double packCurrent = -pack.currentInto(-(drawn + idlePower));
        return new Spending(
                air,
                rollingForce * speed,
                slopeForce * speed,
                thrust * speed - air - (rollingForce + slopeForce) * speed,
                0.0,
                thrust * speed * (1.0 / efficiency - 1.0),
                drag,
                copper,
                drawn * (1.0 - controllerEfficiency),
                idlePower,
                packCurrent * packCurrent * pack.resistance());
    }
}
