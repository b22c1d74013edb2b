package brakewright.replay;

import brakewright.braking.Braking;
import brakewright.braking.Surroundings;
import brakewright.driving.Propulsion;
import brakewright.driving.Road;
import brakewright.machine.MotorModel;
import brakewright.machine.WindingHeat;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.powertrain.Spending;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;

/**
 * What drive and brakes do on a slope: as much as is wanted, as far as settings, packs and ground
 * permit. The electric brake comes first, the friction brake takes the rest.
 *
 * <p>Assumption: a rider rolls where the road wants less braking than the motors' own drag gives,
 * and where what is permitted does not overcome that drag.
 */
final class Forces {

    /**
     * Assumption: our own choice; at walking pace a foot on the ground stops what the brakes do
     * not.
     */
    static final double WALKING = 1.4;

    private final Build build;
    private final Operation operation;
    private final double slope;
    private final RoadLoad load;
    private final double headwind;
    private final double idlePower;
    private final double windingC;
    private final Powertrain powertrain;
    private final ElectricBrake electric;
    private final Propulsion propulsion;
    private final Braking braking;

    Forces(Build build, Operation operation, double slope) {
        this.build = build;
        this.operation = operation;
        this.slope = slope;
        this.load = RoadLoad.of(build);
        this.headwind = build.use().riding().headwind();
        this.idlePower = build.use().riding().idlePower();
        this.windingC = build.use().climate().ambientC();
        this.powertrain = operation.drive().powertrain();
        this.electric = operation.brake();
        this.propulsion = new Propulsion(build, operation.drive(), new Road(slope, headwind));
        this.braking =
                new Braking(
                        build,
                        operation.brake(),
                        Surroundings.of(build).withSlope(slope).withHeadwind(headwind));
    }

    private Forces(Forces other, double windingC) {
        this.build = other.build;
        this.operation = other.operation;
        this.slope = other.slope;
        this.load = other.load;
        this.headwind = other.headwind;
        this.idlePower = other.idlePower;
        this.windingC = windingC;
        this.powertrain = Powertrain.at(build, windingC);
        ElectricDrive drive = operation.drive();
        ElectricBrake brake = operation.brake();
        this.electric =
                new ElectricBrake(
                        powertrain,
                        brake.motorCurrent(),
                        brake.packCurrent(),
                        brake.taper(),
                        brake.endsBelow());
        this.propulsion =
                other.propulsion.withDrive(
                        new ElectricDrive(
                                powertrain,
                                drive.motorCurrent(),
                                drive.packCurrent(),
                                drive.taper()));
        this.braking = other.braking.withBrake(electric);
    }

    /** The same with windings at a temperature [°C]. */
    Forces withWindings(double temperatureC) {
        return temperatureC == windingC ? this : new Forces(this, temperatureC);
    }

    double resistance(double speed) {
        return propulsion.resistance(speed);
    }

    /** How hard the brakes slow the vehicle in full [m/s²]. */
    double deceleration(double speed, PackState pack) {
        return braking.slowing(speed, pack) / build.inertia();
    }

    /**
     * Does what is wanted, as far as it is permitted.
     *
     * @param wanted force; negative to slow down [N]
     * @param speed [m/s]
     * @param pack the packs in this step
     */
    Flow flow(double wanted, double speed, PackUnderway.Step pack) {
        return wanted < 0.0 ? braked(-wanted, speed, pack) : driven(wanted, speed, pack);
    }

    private Flow driven(double wanted, double speed, PackUnderway.Step pack) {
        double permitted = propulsion.fullCurrent(speed, pack.out());
        double most = propulsion.thrust(permitted, speed);
        double full = most > 0.0 ? permitted : 0.0;
        boolean isFull = wanted >= most;
        double force = isFull ? most : wanted;
        double current = isFull ? full : force > 0.0 ? powertrain.thrustCurrent(force, speed) : 0.0;
        double packCurrent = pack.current(propulsion.terminalPower(current, speed));
        return new Flow(
                force,
                current,
                packCurrent,
                pack.voltage(packCurrent),
                isFull,
                propulsion.spending(current, speed, pack.out()).withPack(pack.loss(packCurrent)));
    }

    private Flow braked(double wanted, double speed, PackUnderway.Step pack) {
        double most = braking.motorCurrent(speed, pack.into(), 1.0);
        double current = Math.min(most, powertrain.brakeCurrent(wanted, speed));
        double electricForce = Math.min(wanted, braking.electricForce(current, speed, 1.0));
        double left = wanted - electricForce;
        double friction = speed < WALKING ? left : Math.min(left, braking.frictionForce(1.0));
        double force = electricForce + friction;
        double returned = braking.packPower(current, speed);
        double packCurrent = pack.current(idlePower - returned);
        double air = load.airForce(speed + headwind) * speed;
        double climbing = (load.force(0.0, slope, 0.0) - rolling()) * speed;
        double roll = rolling() * speed;
        return new Flow(
                -force,
                -current,
                packCurrent,
                pack.voltage(packCurrent),
                force < wanted,
                new Spending(
                        air,
                        roll,
                        climbing,
                        -force * speed - air - roll - climbing,
                        friction * speed,
                        braking.driveLossPower(electricForce, speed),
                        braking.dragPower(electricForce, current, speed),
                        braking.copperPower(current),
                        braking.controllerPower(returned),
                        idlePower,
                        pack.loss(packCurrent)));
    }

    private double rolling() {
        return braking.rollingForce();
    }

    /** What holds a full pull down. */
    Holder pulling(double speed, PackState pack) {
        ElectricDrive drive = operation.drive();
        return switch (propulsion.rule(speed, pack)) {
            case GROUND -> Holder.GROUND;
            case POWER_BESIDE_ELECTRONICS -> Holder.PACK_POWER;
            case MOTOR_CURRENT, STANDSTILL -> Holder.MOTOR_DRIVE_CURRENT;
            case PACK_CURRENT ->
                    drive.settledPackLimit(pack) < drive.packCurrent()
                            ? Holder.LOW_VOLTAGE_TAPER
                            : Holder.PACK_DISCHARGE_CURRENT;
            case VOLTAGE -> Holder.PACK_VOLTAGE;
        };
    }

    /** What holds the electric brake down where all brakes are too weak. */
    Holder slowing(double speed, PackState pack) {
        double set = electric.motorCurrentAt(speed);
        double settled = electric.settledMotorCurrent(speed, pack, 1.0);
        if (braking.motorCurrent(speed, pack, 1.0) < settled) {
            return Holder.GROUND;
        }
        if (settled >= set) {
            return Holder.MOTOR_BRAKE_CURRENT;
        }
        return electric.isHeldByTaper(pack) ? Holder.HIGH_VOLTAGE_TAPER : Holder.PACK_REGEN_CURRENT;
    }

    /** The heat balance of a motor that turns. */
    WindingHeat.Temperatures warmed(Underway from, double current, double speed, double seconds) {
        return build.motor()
                .heat()
                .map(
                        heat -> {
                            MotorModel motor = powertrain.motor();
                            return new WindingHeat(
                                            heat,
                                            motor.lossResistance(20.0),
                                            build.motor().windingLimitC(),
                                            build.use().climate().ambientC(),
                                            powertrain.dragLoss(speed) / build.drive().motors())
                                    .after(
                                            new WindingHeat.Temperatures(
                                                    from.windingC(), from.caseC()),
                                            Math.abs(current),
                                            seconds);
                        })
                .orElseGet(() -> new WindingHeat.Temperatures(from.windingC(), from.caseC()));
    }
}
