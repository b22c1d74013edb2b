package brakewright.worksheet;

import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import java.util.Optional;

/**
 * Above which speed the pack, not the motor brake current, decides how hard the vehicle brakes: a
 * higher one buys nothing there.
 *
 * @param charge the charge state [1]
 * @param speed above which the brake is held back; 0 where it is at any speed [m/s]
 * @param isHeldByTaper whether the high-voltage taper holds it back, not the pack regen current
 */
public record Fading(double charge, double speed, boolean isHeldByTaper) {

    static Optional<Fading> at(double charge, PackState pack, Operation operation) {
        ElectricBrake brake = operation.brake();
        double speed = brake.settled(pack).fadeSpeed(pack);
        return speed < operation.topSpeed()
                ? Optional.of(new Fading(charge, speed, brake.isHeldByTaper(pack)))
                : Optional.empty();
    }
}
