package brakewright.limit;

import brakewright.machine.MotorModel;
import brakewright.machine.WindingHeat;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;
import java.util.Optional;
import java.util.OptionalDouble;

/** Sets up the heat balance of a vehicle's motor. */
public final class MotorHeatBalance {

    private MotorHeatBalance() {}

    /**
     * Returns the heat balance of one motor, its drag loss taken at the highest speed that is met,
     * where it is greatest.
     *
     * @param build the vehicle
     * @return the heat balance; empty where the motor's thermal figures are not known
     */
    public static Optional<WindingHeat> of(Build build) {
        return at(build, build.highestSpeed());
    }

    /**
     * Returns the heat balance of one motor with its drag loss at a speed.
     *
     * @param build the vehicle
     * @param speed [m/s]; 0 for a vehicle that stands
     * @return the heat balance; empty where the motor's thermal figures are not known
     */
    public static Optional<WindingHeat> at(Build build, double speed) {
        MotorModel motor = new MotorModel(build.motor(), build.controllers().basis());
        return build.motor()
                .heat()
                .map(
                        heat ->
                                new WindingHeat(
                                        heat,
                                        motor.lossResistance(20.0),
                                        build.motor().windingLimitC(),
                                        build.use().climate().ambientC(),
                                        caseLoss(build, speed)));
    }

    /**
     * Returns how long a current may flow from cold.
     *
     * @param build the vehicle
     * @param speed at which the drag loss is taken [m/s]; 0 for a vehicle that stands
     * @param current per motor [A]
     * @return the time to the winding limit [s]; empty where it is never reached or not known
     */
    public static OptionalDouble timeToLimit(Build build, double speed, double current) {
        return at(build, speed)
                .map(heat -> heat.timeToLimit(heat.cold(), current))
                .orElse(OptionalDouble.empty());
    }

    /**
     * Returns the power that drag turns into heat in one motor.
     *
     * @param build the vehicle
     * @param speed [m/s]
     * @return {@code T0·ω} [W]
     */
    public static double caseLoss(Build build, double speed) {
        Powertrain powertrain = Powertrain.of(build);
        double angularSpeed = powertrain.angularSpeed(speed);
        return powertrain.motor().dragTorque(angularSpeed) * angularSpeed;
    }
}
