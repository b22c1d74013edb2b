package brakewright.review;

import brakewright.heat.PackHeat;
import brakewright.heat.WarmRide;
import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.limit.Severity;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.Unit;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How far an ordinary ride warms the cells, held against what is left from the warmest pack in use
 * to the temperature at which they may not be charged any more: braking sends current into them.
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
     * Makes the check.
     *
     * @param build the vehicle
     * @param operation its settings in effect
     * @return the check; empty where nothing is sent back, no temperature can be predicted, or the
     *     cells are too warm before they are ridden: then what is stated tells it
     */
    static Optional<Check> of(Build build, Operation operation) {
        if (operation.brake().motorCurrent() <= 0.0 || operation.brake().packCurrent() <= 0.0) {
            return Optional.empty();
        }
        return WarmRide.of(build, operation.drive())
                .filter(ride -> ride.heat().startC() <= ride.heat().chargeLimitC())
                .map(ride -> new WarmthCheck(held(build, ride.heat()), ride));
    }

    private static Held held(Build build, PackHeat heat) {
        return new Held(
                Topic.RETURN_INTO_WARM_CELLS,
                Optional.of(LimitId.PACK_REGEN_CURRENT),
                ConstraintId.TEMPERATURE_WINDOW,
                build.battery().number(heat.pack() - 1),
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
