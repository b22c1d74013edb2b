package brakewright.worksheet;

import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import java.util.Arrays;
import java.util.List;

/**
 * Stops over the speed at which they begin, at one charge state, level dry road, as if nothing
 * opened; and what they would be at the deceleration that is wanted.
 *
 * @param charge the charge state at the beginning [1]
 * @param speeds at the beginning [m/s]
 * @param outcomes how each ends
 * @param wanted the distance at the wanted deceleration throughout, {@code v²/(2·a)} [m]
 */
public record StopCourse(
        double charge, double[] speeds, List<StopOutcome> outcomes, double[] wanted) {

    /** Copies the outcomes. */
    public StopCourse {
        outcomes = List.copyOf(outcomes);
    }

    static StopCourse of(Build build, Operation operation, double charge, double[] speeds) {
        Stop stop = new Stop(build, operation.brake(), Surroundings.of(build));
        double wanted = build.criteria().decelerationMin();
        return new StopCourse(
                charge,
                speeds.clone(),
                Arrays.stream(speeds).mapToObj(speed -> stop.from(speed, charge)).toList(),
                Arrays.stream(speeds).map(speed -> speed * speed / (2.0 * wanted)).toArray());
    }
}
