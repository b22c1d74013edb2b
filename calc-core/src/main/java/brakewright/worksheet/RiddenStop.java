package brakewright.worksheet;

import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import java.util.Arrays;
import java.util.List;

/**
 * The stop from the highest speed at a charge state at which one rides, level dry road, as if
 * nothing opened.
 *
 * @param charge the charge state at its beginning [1]
 * @param isSafe whether braking is safe for the packs there
 * @param outcome how it ends
 */
public record RiddenStop(double charge, boolean isSafe, StopOutcome outcome) {

    static List<RiddenStop> all(Build build, Operation operation, RiddenCharges ridden) {
        Stop stop = new Stop(build, operation.brake(), Surroundings.of(build));
        return Arrays.stream(ridden.mapped())
                .mapToObj(
                        charge ->
                                new RiddenStop(
                                        charge,
                                        ridden.isSafe(charge),
                                        stop.from(operation.topSpeed(), charge)))
                .toList();
    }

    /**
     * Computes the stops of a vehicle whose settings are not reviewed.
     *
     * @param build the vehicle
     * @param ridden where, and whether it is safe there
     * @return the stops, in their order
     */
    public static List<RiddenStop> with(Build build, RiddenCharges ridden) {
        return all(build, Operation.of(build, Limits.of(build)), ridden);
    }
}
