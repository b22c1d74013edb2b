package brakewright.powertrain;

import brakewright.machine.MotorModel;
import brakewright.spec.Build;
import brakewright.spec.Controllers;
import brakewright.spec.Drive;
import java.util.function.DoubleSupplier;

/**
 * All motors, their reduction and their controllers.
 *
 * <p>With n motors, reduction G, wheel radius r, mechanical efficiency η, controller efficiency ηc
 * and {@code ω = G·v/r}:
 *
 * <pre>
 * driving:  F = n·(kt·I − T0)·G·η/r      p = n·(kt·ω·I + Re·I²)/ηc
 * braking:  F = n·(kt·I + T0)·G/(η·r)    p = n·(kt·ω·I − Re·I²)·ηc
 * </pre>
 *
 * <p>Where {@code kt·ω < Re·I} the braking bracket is negative: the pack supplies that power, and
 * ηc divides instead of multiplying.
 *
 * <p>Assumption: both efficiencies are the same at every load, speed and temperature, as no maker
 * of such parts publishes more than one figure.
 *
 * <p>Source: conservation of energy; regenerative braking of a separately excited machine as in
 * Dubey, Fundamentals of Electrical Drives, chapter 5.
 */
public final class Powertrain {

    private final MotorModel motor;
    private final int motors;
    private final double efficiency;
    private final double controllerEfficiency;
    private final double turnsPerMetre;
    private final double lossResistance;
    private final double windingC;

    private Powertrain(
            MotorModel motor,
            Drive drive,
            Controllers controllers,
            double wheelRadius,
            double windingC) {
        this.motor = motor;
        this.motors = drive.motors();
        this.efficiency = drive.efficiency();
        this.controllerEfficiency = controllers.efficiency();
        this.turnsPerMetre = drive.reduction() / wheelRadius;
        this.lossResistance = motor.lossResistance(windingC);
        this.windingC = windingC;
    }

    /**
     * Sets up the power balance of a vehicle, its windings at the temperature of the air.
     *
     * <p>Assumption: nominal results are those of a cold winding. That is the side that sends most
     * back; a winding at 100 °C draws some 30 % more copper loss for the same pull, which
     * tolerances of the motor's resistance can stand for.
     *
     * @param build the vehicle
     * @return its power train
     */
    public static Powertrain of(Build build) {
        return at(build, build.use().climate().ambientC());
    }

    /**
     * Sets up the power balance of a vehicle at a winding temperature.
     *
     * @param build the vehicle
     * @param windingC the winding temperature [°C]
     * @return its power train
     */
    public static Powertrain at(Build build, double windingC) {
        return new Powertrain(
                new MotorModel(build.motor(), build.controllers().basis()),
                build.drive(),
                build.controllers(),
                build.vehicle().wheelRadius(),
                windingC);
    }

    /**
     * Returns the model of one motor.
     *
     * @return the motor
     */
    public MotorModel motor() {
        return motor;
    }

    /**
     * Returns how fast the motors turn.
     *
     * @param speed [m/s]
     * @return ω = G·v/r [rad/s]
     */
    public double angularSpeed(double speed) {
        return turnsPerMetre * speed;
    }

    /**
     * Returns how fast the vehicle goes.
     *
     * @param angularSpeed of the motors [rad/s]
     * @return v = ω·r/G [m/s]
     */
    public double speed(double angularSpeed) {
        return angularSpeed / turnsPerMetre;
    }

    /**
     * Returns the force of the electric brake on the road.
     *
     * @param current per motor [A]
     * @param speed [m/s]
     * @return the force of all driven wheels against the motion [N]
     */
    public double brakeForce(double current, double speed) {
        double torque = motor.torqueConstant() * current + motor.dragTorque(angularSpeed(speed));
        return motors * torque * turnsPerMetre / efficiency;
    }

    /**
     * Returns the current that makes a brake force.
     *
     * @param force of all driven wheels [N]
     * @param speed [m/s]
     * @return the current per motor [A]; 0 where the drag alone is as strong
     */
    public double brakeCurrent(double force, double speed) {
        double torque = force * efficiency / (motors * turnsPerMetre);
        return Math.max(
                0.0, (torque - motor.dragTorque(angularSpeed(speed))) / motor.torqueConstant());
    }

    /**
     * Returns the thrust on the road.
     *
     * @param current per motor [A]
     * @param speed [m/s]
     * @return the force of all driven wheels; 0 where the current does not overcome the drag [N]
     */
    public double thrust(double current, double speed) {
        double torque = motor.torqueConstant() * current - motor.dragTorque(angularSpeed(speed));
        return Math.max(0.0, motors * torque * turnsPerMetre * efficiency);
    }

    /**
     * Returns the current that makes a thrust.
     *
     * @param force of all driven wheels, not negative [N]
     * @param speed [m/s]
     * @return the current per motor [A]
     */
    public double thrustCurrent(double force, double speed) {
        double torque = force / (motors * turnsPerMetre * efficiency);
        return (torque + motor.dragTorque(angularSpeed(speed))) / motor.torqueConstant();
    }

    /**
     * Returns what the motors' friction and iron take while they turn.
     *
     * @param speed [m/s]
     * @return {@code n·T0·ω} [W]
     */
    public double dragLoss(double speed) {
        double angularSpeed = angularSpeed(speed);
        return motors * motor.dragTorque(angularSpeed) * angularSpeed;
    }

    /**
     * Returns the power that driving takes from the pack.
     *
     * @param current per motor [A]
     * @param speed [m/s]
     * @return the power at the pack's terminals [W]
     */
    public double drawnPower(double current, double speed) {
        double bracket =
                (motor.torqueConstant() * angularSpeed(speed) + lossResistance * current) * current;
        return motors * bracket / controllerEfficiency;
    }

    /**
     * Returns the power that braking sends to the pack.
     *
     * @param current per motor [A]
     * @param speed [m/s]
     * @return the power at the pack's terminals; negative where the pack must supply it [W]
     */
    public double returnedPower(double current, double speed) {
        double bracket =
                (motor.torqueConstant() * angularSpeed(speed) - lossResistance * current) * current;
        return bracket >= 0.0
                ? motors * bracket * controllerEfficiency
                : motors * bracket / controllerEfficiency;
    }

    /**
     * Returns the speed below which a brake current draws from the pack.
     *
     * <p>{@code kt·ω = Re·I}.
     *
     * @param current per motor [A]
     * @return the speed [m/s]
     */
    public double crossoverSpeed(double current) {
        return speed(lossResistance * current / motor.torqueConstant());
    }

    /**
     * Returns the brake current that a limit on the returned power leaves.
     *
     * <p>The smaller root of {@code n·(kt·ω·I − Re·I²)·ηc = p}: a controller that raises the brake
     * current from nothing is stopped there.
     *
     * @param asked the brake current asked for, per motor [A]
     * @param speed [m/s]
     * @param powerLimit highest returned power [W], not negative
     * @return the lesser of what is asked and the smaller root [A]
     */
    public double limitedBrakeCurrent(double asked, double speed, double powerLimit) {
        double backEmf = motor.torqueConstant() * angularSpeed(speed);
        double perMotor = powerLimit / (motors * controllerEfficiency);
        double discriminant = backEmf * backEmf - 4.0 * lossResistance * perMotor;
        if (discriminant < 0.0) {
            return asked;
        }
        double sum = backEmf + Math.sqrt(discriminant);
        return sum == 0.0 ? asked : Math.min(asked, 2.0 * perMotor / sum);
    }

    /**
     * Returns the drive current that a limit on the drawn power leaves.
     *
     * <p>The positive root of {@code n·(kt·ω·I + Re·I²)/ηc = p}.
     *
     * @param asked the drive current asked for, per motor [A]
     * @param speed [m/s]
     * @param powerLimit highest drawn power [W], not negative
     * @return the lesser of what is asked and the root [A]
     */
    public double limitedDriveCurrent(double asked, double speed, double powerLimit) {
        double backEmf = motor.torqueConstant() * angularSpeed(speed);
        double perMotor = powerLimit * controllerEfficiency / motors;
        double sum = backEmf + Math.sqrt(backEmf * backEmf + 4.0 * lossResistance * perMotor);
        return sum == 0.0 ? 0.0 : Math.min(asked, 2.0 * perMotor / sum);
    }

    /**
     * Returns the speed above which a limit on the returned power weakens the electric brake.
     *
     * <p>Where {@code Re·I² ≤ p'} (p' the limit per motor before the controller's loss) that is
     * {@code kt·ω = p'/I + Re·I}; a current beyond that meets the limit where its power curve first
     * touches it, {@code kt·ω = 2·√(Re·p')}.
     *
     * @param current the brake current asked for, per motor [A]
     * @param powerLimit highest returned power [W], not negative
     * @return the speed [m/s]; infinite for no current
     */
    public double fadeSpeed(double current, double powerLimit) {
        if (current == 0.0) {
            return Double.POSITIVE_INFINITY;
        }
        double perMotor = powerLimit / (motors * controllerEfficiency);
        double backEmf =
                lossResistance * current * current <= perMotor
                        ? perMotor / current + lossResistance * current
                        : 2.0 * Math.sqrt(lossResistance * perMotor);
        return speed(backEmf / motor.torqueConstant());
    }

    /**
     * Returns the brake current, up to one asked for, that returns most.
     *
     * <p>The returned power peaks at {@code I = kt·ω/(2·Re)}.
     *
     * @param asked highest brake current, per motor [A]
     * @param speed [m/s]
     * @return the lesser of what is asked and the peak [A]
     */
    public double mostReturningCurrent(double asked, double speed) {
        return Math.min(
                asked, motor.torqueConstant() * angularSpeed(speed) / (2.0 * lossResistance));
    }

    /**
     * Returns the brake current that a source can still supply where braking draws power.
     *
     * <p>The larger root of {@code n·(Re·I² − kt·ω·I)/ηc = p}.
     *
     * @param asked the brake current asked for, per motor [A]
     * @param speed [m/s]
     * @param greatestPower that can be drawn, not negative [W]; asked for where braking draws
     * @return the lesser of what is asked and the root [A]
     */
    public double suppliedBrakeCurrent(double asked, double speed, DoubleSupplier greatestPower) {
        double backEmf = motor.torqueConstant() * angularSpeed(speed);
        if (lossResistance * asked <= backEmf) {
            return asked;
        }
        double perMotor = greatestPower.getAsDouble() * controllerEfficiency / motors;
        double root =
                (backEmf + Math.sqrt(backEmf * backEmf + 4.0 * lossResistance * perMotor))
                        / (2.0 * lossResistance);
        return Math.min(asked, root);
    }

    /**
     * Returns the supply voltage that the motors need.
     *
     * @param current per motor [A]
     * @param speed [m/s]
     * @return the voltage [V]
     */
    public double voltageNeed(double current, double speed) {
        return motor.voltageNeed(angularSpeed(speed), current, windingC);
    }

    /**
     * Returns the copper loss of all motors.
     *
     * @param current per motor [A]
     * @return the loss [W]
     */
    public double copperLoss(double current) {
        return motors * lossResistance * current * current;
    }
}
