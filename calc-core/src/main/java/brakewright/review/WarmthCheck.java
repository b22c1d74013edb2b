package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.heat.PackHeat;
import brakewright.heat.WarmRide;
import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.limit.Severity;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.Unit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far an ordinary ride warms the cells of a pack, held against what is left from the warmest
 * pack in use to the temperature at which they may not be charged any more: braking sends current
 * into them.
 */
final class WarmthCheck extends Check {

    private final WarmRide ride;
    private final PackHeat heat;

    private WarmthCheck(Held held, WarmRide ride) {
        super(held);
        this.ride = ride;
        this.heat = ride.heat();
    }

    /**
     * Makes the checks of all packs.
     *
     * @param build the vehicle
     * @param model its packs
     * @param operation its settings in effect
     * @return a check for each pack, the one that is too warm first before the others; none where
     *     nothing is sent back, for a pack whose temperature cannot be predicted, or whose cells
     *     are too warm before they are ridden: then what is stated tells it
     */
    static List<Check> of(Build build, BatteryModel model, Operation operation) {
        if (operation.brake().motorCurrent() <= 0.0 || operation.brake().packCurrent() <= 0.0) {
            return List.of();
        }
        return WarmRide.ofEach(build, model, operation.drive()).stream()
                .filter(ride -> ride.heat().startC() <= ride.heat().chargeLimitC())
                .sorted(Comparator.comparingDouble(WarmthCheck::warmAfter))
                .<Check>map(ride -> new WarmthCheck(held(build, ride.heat()), ride))
                .toList();
    }

    private static double warmAfter(WarmRide ride) {
        return ride.heat().warmAfter().orElse(Double.POSITIVE_INFINITY);
    }

    private static Held held(Build build, PackHeat heat) {
        return new Held(
                Topic.RETURN_INTO_WARM_CELLS,
                Optional.of(LimitId.PACK_REGEN_CURRENT),
                ConstraintId.TEMPERATURE_WINDOW,
                build.battery().which(heat.pack() - 1),
                heat.highestC());
    }

    @Override
    double severity() {
        return Severity.of(
                Math.max(0.0, heat.highestC() - heat.startC()),
                heat.chargeLimitC() - heat.startC());
    }

    @Override
    OptionalDouble charge() {
        return OptionalDouble.empty();
    }

    @Override
    boolean isNever() {
        return false;
    }

    @Override
    boolean isNoWorseThan(Check other) {
        return false;
    }

    @Override
    Finding finding() {
        return held().finding()
                .valued(heat.highestC(), heat.chargeLimitC(), Unit.CELSIUS)
                .atSpeed(ride.speed())
                .atTemperature(heat.highestC())
                .unless(
                        new Condition.RiddenUpTo(
                                heat.warmAfter().orElse(heat.time()),
                                ride.speed(),
                                heat.chargeLimitC(),
                                heat.startC(),
                                heat.highestC()))
                .build();
    }
}
