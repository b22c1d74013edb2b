package brakewright.outside;

import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Controllers;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Drive;
import brakewright.spec.Motor;
import java.util.Optional;
import java.util.OptionalDouble;

/** Motors on a bench: nothing is lost but in their copper, and one metre is one radian. */
final class Machines {

    /** The temperature at which a given resistance holds. */
    static final double REFERENCE_C = 20.0;

    private Machines() {}

    static double radiansPerSecond(double rpm) {
        return rpm * 2.0 * Math.PI / 60.0;
    }

    static double rpm(double radiansPerSecond) {
        return radiansPerSecond * 60.0 / (2.0 * Math.PI);
    }

    /** Kv of a motor whose dc-equivalent torque constant is known. */
    static double kvOf(double torqueConstant) {
        return 60.0 / (2.0 * Math.PI * torqueConstant);
    }

    static Motor motor(double kvRpmPerVolt, double resistance, double noLoadCurrent) {
        return new Motor(
                kvRpmPerVolt,
                resistance,
                1,
                0.0,
                noLoadCurrent,
                0.0,
                OptionalDouble.empty(),
                200.0,
                Optional.empty());
    }

    static Build bench(Motor motor, CurrentBasis basis) {
        Controllers ideal = new Controllers(1, basis, 1e4, 1e4, 1e4, 1.0, OptionalDouble.empty());
        Build board = Builds.withControllers(Builds.trailBoard(), ideal);
        return Builds.withMotor(Builds.withDrive(board, new Drive(1, 1.0, 1.0), 2.0), motor);
    }

    static Powertrain powertrain(Motor motor, CurrentBasis basis) {
        return Powertrain.at(bench(motor, basis), REFERENCE_C);
    }
}
