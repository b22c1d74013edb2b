package brakewright.limit;

import brakewright.spec.Build;
import brakewright.spec.Protection;
import java.util.OptionalDouble;

/** How long the trips of a protection wait, against the lateness of the regen limiter. */
public final class TripDelay {

    private TripDelay() {}

    /**
     * Returns how long a trip that braking may pass waits.
     *
     * @param build the vehicle
     * @param trip a constraint on what its packs take
     * @return the delay [s]; empty where it is not known, or the constraint is no such trip
     */
    public static OptionalDouble of(Build build, PackConstraint trip) {
        Protection protection = build.battery().pack(trip.pack()).protection();
        return switch (trip.id()) {
            case PROTECTION_CHARGE_TRIP -> protection.chargeTripDelay();
            case PROTECTION_OVERVOLTAGE_TRIP -> protection.overvoltageTripDelay();
            default -> OptionalDouble.empty();
        };
    }

    /**
     * Returns whether a trip is known to open before the regen limiter acts.
     *
     * @param build the vehicle
     * @param trip a constraint on what its packs take
     * @return false where its delay is not known
     */
    public static boolean isQuicker(Build build, PackConstraint trip) {
        return of(build, trip).orElse(Double.POSITIVE_INFINITY)
                < build.controllers().regenResponse();
    }
}
