package brakewright.ride;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;

/**
 * Everything that brakes a vehicle at a speed and charge state, and where the power goes.
 *
 * <p>The electric brake is held back by the pack limit (high-voltage taper included) and by the
 * grip of the driven wheels; what the pack is not asked to take is simply not braked.
 */
final class Braking {

    private final BatteryModel pack;
    private final double temperatureC;
    private final ElectricBrake brake;
    private final Powertrain powertrain;
    private final RoadLoad road;
    private final double rollingForce;
    private final double slopeForce;
    private final double gripForce;
    private final double frictionForce;
    private final double efficiency;
    private final double controllerEfficiency;
    private final int motors;
    private final double inertia;
    private final double chargePerCoulomb;

    Braking(Build build, ElectricBrake brake, Surroundings surroundings) {
        this.pack = new BatteryModel(build.battery());
        this.temperatureC = surroundings.cellsC();
        this.brake = brake;
        this.powertrain = brake.powertrain();
        this.road = RoadLoad.of(build);
        double length = Math.hypot(1.0, surroundings.slope());
        this.rollingForce = road.force(0.0, 0.0, 0.0) / length;
        this.slopeForce = road.mass() * Gravity.STANDARD * surroundings.slope() / length;
        this.gripForce =
                build.mass()
                        * Gravity.STANDARD
                        * new LoadTransfer(build.vehicle().axles())
                                .brakingGrip(surroundings.grip());
        this.frictionForce =
                surroundings.frictionBrake()
                        ? build.mass() * build.vehicle().frictionBrake().orElse(0.0)
                        : 0.0;
        this.efficiency = build.drive().efficiency();
        this.controllerEfficiency = build.controllers().efficiency();
        this.motors = build.drive().motors();
        this.inertia = build.inertia();
        this.chargePerCoulomb = 1.0 / (3600.0 * pack.capacityAh());
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

    /**
     * Returns the motor current at a speed.
     *
     * @param share of the brakes that has built up [1]
     */
    double motorCurrent(double speed, PackState state, double share) {
        double asked =
                powertrain.suppliedBrakeCurrent(
                        share * brake.motorCurrent(), speed, state.greatestPower());
        double limited =
                powertrain.limitedBrakeCurrent(
                        asked, speed, state.powerReturnedBy(brake.settledPackLimit(state)));
        return Math.min(limited, powertrain.brakeCurrent(gripForce, speed));
    }

    double electricForce(double current, double speed) {
        return powertrain.brakeForce(current, speed);
    }

    double frictionForce(double share) {
        return share * frictionForce;
    }

    double rollingForce() {
        return rollingForce;
    }

    double airForce(double speed) {
        return road.airForce(speed);
    }

    /** The part of the weight that points uphill; negative downhill. */
    double slopeForce() {
        return slopeForce;
    }

    double roadForce(double speed) {
        return rollingForce + slopeForce + road.airForce(speed);
    }

    double packPower(double current, double speed) {
        return powertrain.returnedPower(current, speed);
    }

    double copperPower(double current) {
        return powertrain.copperLoss(current);
    }

    /** The loss in controllers, whichever way the power goes. */
    double controllerPower(double packPower) {
        return packPower >= 0.0
                ? packPower * (1.0 / controllerEfficiency - 1.0)
                : -packPower * (1.0 - controllerEfficiency);
    }

    double dragPower(double speed) {
        double angularSpeed = powertrain.angularSpeed(speed);
        return motors * powertrain.motor().dragTorque(angularSpeed) * angularSpeed;
    }

    double driveLossPower(double electricForce, double speed) {
        return electricForce * speed * (1.0 - efficiency);
    }

    /** The pack current that the settings let in at a charge state, the taper included [A]. */
    double settledLimit(double charge) {
        return brake.settledPackLimit(pack(charge));
    }

    double fadeSpeed(PackState state) {
        return powertrain.fadeSpeed(
                brake.motorCurrent(), state.powerReturnedBy(brake.settledPackLimit(state)));
    }

    double crossoverSpeed() {
        return powertrain.crossoverSpeed(brake.motorCurrent());
    }
}
