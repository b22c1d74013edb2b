package brakewright.limit;

import brakewright.machine.MotorModel;
import brakewright.machine.WindingHeat;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;
import java.util.Optional;

/** Sets up the heat balance of a vehicle's motor. */
public final class MotorHeatBalance {

    private MotorHeatBalance() {}

    /**
     * Returns the heat balance of one motor, its drag loss taken at the highest speed in use, where
     * it is greatest.
     *
     * @param build the vehicle
     * @return the heat balance; empty where the motor's thermal figures are not known
     */
    public static Optional<WindingHeat> of(Build build) {
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
                                        caseLoss(build)));
    }

    /**
     * Returns the power that drag turns into heat in one motor at the highest speed in use.
     *
     * @param build the vehicle
     * @return {@code T0·ω} [W]
     */
    public static double caseLoss(Build build) {
        Powertrain powertrain = Powertrain.of(build);
        double angularSpeed = powertrain.angularSpeed(build.use().speedMax());
        return powertrain.motor().dragTorque(angularSpeed) * angularSpeed;
    }
}
