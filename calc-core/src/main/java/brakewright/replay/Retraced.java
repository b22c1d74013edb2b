package brakewright.replay;

import brakewright.recording.Ride;
import brakewright.recording.Stretch;
import brakewright.spec.Build;
import java.util.List;

/** What the model takes, stretch by stretch, to ride as a recording did. */
public final class Retraced {

    private Retraced() {}

    /**
     * Returns the power at the terminals.
     *
     * @param build the vehicle
     * @param ride on it
     * @param stretches of the ride
     * @return of each the mean, positive out of the packs [W]; NaN where the vehicle as described
     *     could not have ridden so, or brakes by friction, which no recording tells
     */
    public static double[] powers(Build build, Ride ride, List<Stretch> stretches) {
        return new Retrace(build, ride, stretches).powers();
    }
}
