package brakewright.braking;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.road.FrictionBrake;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RoadLoad;
import brakewright.road.Slope;
import brakewright.spec.Build;

/**
 * Everything that brakes a vehicle at a speed and charge state, and where the power goes.
 *
 * <p>The electric brake is held back by the pack limit (high-voltage taper included) and by the
 * grip that the friction brake leaves the driven wheels; what the pack is not asked to take is
 * simply not braked. The friction brake gives at most {@code μ·g·cosθ}, all that the road carries.
 *
 * <p>Assumption: no wheel slides. The rider, or what governs the brake, eases it at the grip; a
 * locked wheel grips less and takes longer. The friction brake acts on both axles as they are
 * loaded (see {@link LoadTransfer#brakingGripBeside}). A vehicle that tips before its wheels slide
 * is braked as if it did not: the limits tell of tipping.
 *
 * <p>Assumption: the efficiencies of drive and controllers are the same at every load and speed, as
 * no maps of small ones are to be had; the windings keep their temperature.
 */
public final class Braking {

    private final BatteryModel pack;
    private final double temperatureC;
    private final ElectricBrake brake;
    private final Powertrain powertrain;
    private final RoadLoad road;
    private final double rollingForce;
    private final double slopeForce;
    private final double headwind;
    private final LoadTransfer transfer;
    private final double grip;
    private final double mass;

    /** What presses on the road, {@code g·cosθ} [m/s²]. */
    private final double normal;

    private final double frictionBrake;
    private final double gripForce;
    private final double efficiency;
    private final double controllerEfficiency;
    private final double inertia;
    private final double chargePerCoulomb;

    /**
     * Sets up everything that brakes a vehicle.
     *
     * @param build the vehicle
     * @param brake its electric brake as it is set
     * @param surroundings where it brakes
     */
    public Braking(Build build, ElectricBrake brake, Surroundings surroundings) {
        this.pack = new BatteryModel(build.battery());
        this.temperatureC = surroundings.cellsC();
        this.brake = brake;
        this.powertrain = brake.powertrain();
        this.road = RoadLoad.of(build);
        this.mass = build.mass();
        double cosine = Slope.cosine(surroundings.slope());
        this.normal = Gravity.pressing(surroundings.slope());
        this.rollingForce = road.force(0.0, 0.0, 0.0) * cosine;
        this.headwind = surroundings.headwind();
        this.slopeForce = mass * normal * surroundings.slope();
        this.transfer = new LoadTransfer(build.vehicle().axles());
        this.grip = surroundings.grip();
        this.frictionBrake =
                surroundings.frictionBrake() ? build.vehicle().frictionBrake().orElse(0.0) : 0.0;
        this.gripForce = gripBeside(frictionDeceleration(1.0));
        this.efficiency = build.drive().efficiency();
        this.controllerEfficiency = build.controllers().efficiency();
        this.inertia = build.inertia();
        this.chargePerCoulomb = 1.0 / (3600.0 * pack.capacityAh());
    }

    private Braking(Braking other, ElectricBrake brake) {
        this.pack = other.pack;
        this.temperatureC = other.temperatureC;
        this.brake = brake;
        this.powertrain = brake.powertrain();
        this.road = other.road;
        this.rollingForce = other.rollingForce;
        this.slopeForce = other.slopeForce;
        this.headwind = other.headwind;
        this.transfer = other.transfer;
        this.grip = other.grip;
        this.mass = other.mass;
        this.normal = other.normal;
        this.frictionBrake = other.frictionBrake;
        this.gripForce = other.gripForce;
        this.efficiency = other.efficiency;
        this.controllerEfficiency = other.controllerEfficiency;
        this.inertia = other.inertia;
        this.chargePerCoulomb = other.chargePerCoulomb;
    }

    /**
     * Returns the same with another electric brake, as with windings that have become warm.
     *
     * @param replacement the brake
     * @return a changed copy
     */
    public Braking withBrake(ElectricBrake replacement) {
        return new Braking(this, replacement);
    }

    /** The mass that must be slowed, turning parts included [kg]. */
    double inertia() {
        return inertia;
    }

    PackState pack(double charge) {
        return PackState.of(pack, within(charge), temperatureC);
    }

    double cellVoltage(double packCurrent, double charge) {
        return pack.cellVoltage(packCurrent, within(charge), temperatureC);
    }

    /**
     * A stop that begins full or empty leaves the tabulated charge by a hair; nothing is
     * extrapolated.
     */
    private static double within(double charge) {
        return Math.max(0.0, Math.min(1.0, charge));
    }

    double chargePerCoulomb() {
        return chargePerCoulomb;
    }

    /** How fast the charge state rises while braking [1/s]. */
    double chargeRate(double speed, double charge, double share) {
        PackState state = pack(charge);
        double power = packPower(motorCurrent(speed, state, share), speed);
        return state.currentInto(power) * chargePerCoulomb;
    }

    /**
     * Returns the motor current at a speed.
     *
     * @param speed [m/s]
     * @param state the pack
     * @param share of the brakes that has built up [1]
     * @return per motor [A]
     */
    public double motorCurrent(double speed, PackState state, double share) {
        return Math.min(
                currentBeforeGrip(speed, state, share),
                powertrain.brakeCurrent(gripForce(share), speed));
    }

    private double currentBeforeGrip(double speed, PackState state, double share) {
        return brake.settledMotorCurrent(speed, state, share);
    }

    /**
     * Returns the force of the driven wheels.
     *
     * <p>Assumption: where the motors' drag alone is more than grip leaves, the wheels turn more
     * slowly than the vehicle goes and pass on what grip leaves; what that wears in the tyres is
     * counted as drag.
     *
     * @param current per motor [A]
     * @param speed [m/s]
     * @param share of the brakes that has built up [1]
     * @return the force [N]
     */
    public double electricForce(double current, double speed, double share) {
        return Math.min(gripForce(share), powertrain.brakeForce(current, speed));
    }

    /**
     * Returns the force of the friction brake, at most what the road carries.
     *
     * @param share of the brakes that has built up [1]
     * @return the force; 0 where there is no such brake [N]
     */
    public double frictionForce(double share) {
        return mass * frictionDeceleration(share);
    }

    private double frictionDeceleration(double share) {
        return FrictionBrake.carried(share * frictionBrake, grip, normal);
    }

    /** What grip leaves the driven wheels [N]. */
    private double gripForce(double share) {
        return share == 1.0 || frictionBrake == 0.0
                ? gripForce
                : gripBeside(frictionDeceleration(share));
    }

    private double gripBeside(double deceleration) {
        return mass * normal * transfer.brakingGripBeside(grip, deceleration / normal);
    }

    /**
     * Returns the force that slows the vehicle with all brakes in full.
     *
     * @param speed [m/s]
     * @param state the pack
     * @return the force; not positive where the slope is as strong [N]
     */
    public double slowing(double speed, PackState state) {
        return electricForce(motorCurrent(speed, state, 1.0), speed, 1.0)
                + frictionForce(1.0)
                + roadForce(speed);
    }

    /** Whether grip may hold the driven wheels back at any speed up to one. */
    boolean mayMeetGrip(double fastest) {
        return powertrain.brakeForce(brake.motorCurrent(), fastest) > gripForce;
    }

    /**
     * Returns by how much the electric brake in full is more than grip leaves the driven wheels.
     *
     * @param speed [m/s]
     * @param state the pack
     * @return the surplus; negative where grip holds nothing back [N]
     */
    double beyondGrip(double speed, PackState state) {
        return powertrain.brakeForce(currentBeforeGrip(speed, state, 1.0), speed) - gripForce;
    }

    /**
     * The force that slows the vehicle with all brakes in full, if the driven wheels gripped
     * without end; above the fade speed it bends upwards.
     */
    double slowingBeforeGrip(double speed, PackState state) {
        return powertrain.brakeForce(currentBeforeGrip(speed, state, 1.0), speed)
                + frictionForce(1.0)
                + roadForce(speed);
    }

    /**
     * Returns a force that the brakes exceed at all speeds up to one.
     *
     * <p>Up to the fade speed the current does not fall with speed, beyond it does not rise; so it
     * is least at one of both ends, and drag and air at standstill. Where the brake ends between
     * them it is nothing at the lower end.
     *
     * @param low the lowest speed, above standstill [m/s]
     * @param high the highest [m/s]
     * @param state the pack
     * @return a lower bound of the force that slows the vehicle [N]
     */
    double leastSlowing(double low, double high, PackState state) {
        double current =
                Math.min(currentBeforeGrip(low, state, 1.0), currentBeforeGrip(high, state, 1.0));
        return electricForce(current, 0.0, 1.0) + frictionForce(1.0) + roadForce(0.0);
    }

    /**
     * Returns what the tyres put against the vehicle.
     *
     * @return the force [N]
     */
    public double rollingForce() {
        return rollingForce;
    }

    double airForce(double speed) {
        return road.airForce(speed + headwind);
    }

    /** The part of the weight that points uphill; negative downhill. */
    double slopeForce() {
        return slopeForce;
    }

    double roadForce(double speed) {
        return rollingForce + slopeForce + airForce(speed);
    }

    /**
     * Returns the power that braking sends to the pack.
     *
     * @param current per motor [A]
     * @param speed [m/s]
     * @return at its terminals; negative where the pack must supply it [W]
     */
    public double packPower(double current, double speed) {
        return powertrain.returnedPower(current, speed);
    }

    /**
     * Returns the loss in the windings.
     *
     * @param current per motor [A]
     * @return of all motors [W]
     */
    public double copperPower(double current) {
        return powertrain.copperLoss(current);
    }

    /**
     * Returns the loss in controllers, whichever way the power goes.
     *
     * @param packPower that reaches the pack; negative when drawn [W]
     * @return the loss [W]
     */
    public double controllerPower(double packPower) {
        return packPower >= 0.0
                ? packPower * (1.0 / controllerEfficiency - 1.0)
                : -packPower * (1.0 - controllerEfficiency);
    }

    /**
     * Returns the loss in the motors' friction and iron; without current it is all that the wheels
     * pass on.
     *
     * @param electricForce of the driven wheels [N]
     * @param current per motor [A]
     * @param speed [m/s]
     * @return the loss [W]
     */
    public double dragPower(double electricForce, double current, double speed) {
        if (current == 0.0) {
            return electricForce * speed * efficiency;
        }
        return powertrain.dragLoss(speed);
    }

    /**
     * Returns what is lost in belt, chain or gears.
     *
     * @param electricForce of the driven wheels [N]
     * @param speed [m/s]
     * @return the loss [W]
     */
    public double driveLossPower(double electricForce, double speed) {
        return electricForce * speed * (1.0 - efficiency);
    }

    /** What the electric brake would send back beyond what the pack is let take [W]. */
    double beyondPackLimit(double speed, PackState state, double share) {
        return brake.returnedBeyondLimit(speed, state, share);
    }

    double fadeSpeed(PackState state) {
        return brake.settled(state).fadeSpeed(state);
    }

    /** The speed below which the electric brake does not act [m/s]. */
    double endsBelow() {
        return brake.endsBelow();
    }

    double crossoverSpeed() {
        return powertrain.crossoverSpeed(brake.motorCurrent());
    }
}
