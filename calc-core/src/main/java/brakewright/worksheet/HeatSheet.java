package brakewright.worksheet;

import brakewright.limit.MotorHeatBalance;
import brakewright.machine.WindingHeat;
import brakewright.review.Operation;
import brakewright.spec.Build;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How one motor warms, from the temperature of the air.
 *
 * @param known the results; empty where the motor's thermal figures are not known
 */
public record HeatSheet(Optional<Known> known) {

    /**
     * What is known of the motor's heat.
     *
     * @param continuousCurrent that the winding bears for ever [A]
     * @param timeAtDriveSetting until the winding limit at the drive current; empty if never [s]
     * @param timeAtBrakeSetting until the winding limit at the brake current; empty if never [s]
     * @param caseLoss the drag loss that was counted [W]
     * @param speed at which that arises [m/s]
     */
    public record Known(
            double continuousCurrent,
            OptionalDouble timeAtDriveSetting,
            OptionalDouble timeAtBrakeSetting,
            double caseLoss,
            double speed) {}

    static HeatSheet of(Build build, Operation operation) {
        return new HeatSheet(MotorHeatBalance.of(build).map(heat -> known(build, operation, heat)));
    }

    private static Known known(Build build, Operation operation, WindingHeat heat) {
        return new Known(
                heat.continuousCurrent(),
                heat.timeToLimit(heat.cold(), operation.drive().motorCurrent()),
                heat.timeToLimit(heat.cold(), operation.brake().motorCurrent()),
                MotorHeatBalance.caseLoss(build),
                build.use().speedMax());
    }
}
