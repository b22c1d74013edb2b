package brakewright.replay;

import brakewright.recording.Ride;
import brakewright.recording.Stretch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The road of a recorded ride, with its own speeds as those that are allowed: what would another
 * charge, rider or setting make of it?
 *
 * <p>Each leg is about {@link #LEG} long, as fast as it was ridden in the mean, and ends where the
 * vehicle stood, for as long. What a gap left out is not part of it.
 */
public final class RecordedRoad {

    /** Assumption: our own choice; over less, the steps of a coarse speed count too much [m]. */
    private static final double LEG = 25.0;

    /** Assumption: our own choice; slower it stands [m/s]. */
    private static final double STANDING = 0.2;

    private final List<Leg> legs = new ArrayList<>();
    private double length;
    private double seconds;
    private double rise;

    private RecordedRoad() {}

    /**
     * Makes a route of a recorded ride.
     *
     * @param ride that was recorded
     * @return the route; empty where nothing was ridden
     */
    public static Optional<Route> of(Ride ride) {
        List<Stretch> stretches = Stretch.all(ride);
        RecordedRoad road = new RecordedRoad();
        stretches.forEach(road::add);
        road.end();
        if (road.legs.isEmpty()) {
            return Optional.empty();
        }
        double exit = stretches.get(stretches.size() - 1).to();
        return Optional.of(new Route(road.legs, exit < STANDING ? 0.0 : exit));
    }

    private void add(Stretch stretch) {
        if (stretch.length() <= STANDING * stretch.seconds()) {
            end();
            stand(stretch.seconds());
            return;
        }
        length += stretch.length();
        seconds += stretch.seconds();
        double run = Math.sqrt(1.0 + stretch.slope() * stretch.slope());
        rise += stretch.length() * stretch.slope() / run;
        if (length >= LEG) {
            end();
        }
    }

    private void end() {
        if (length > 0.0) {
            legs.add(new Leg(length, rise, length / seconds, 0.0));
        }
        length = 0.0;
        seconds = 0.0;
        rise = 0.0;
    }

    /** Before it has moved, nobody waits for it. */
    private void stand(double time) {
        if (!legs.isEmpty()) {
            Leg last = legs.remove(legs.size() - 1);
            legs.add(new Leg(last.length(), last.rise(), last.speed(), last.standing() + time));
        }
    }
}
