package brakewright.operation;

import brakewright.limit.Limits;
import brakewright.spec.Build;

/**
 * A pull at the set draw that lasts as long as the hardest in use, at any charge in use: what the
 * protection's under-voltage trip sees of it.
 */
public final class HardPull {

    private final SagCourse course;

    /**
     * Sets up the pull.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param operation its settings in effect
     * @param cellsC cell temperature [°C]
     */
    public HardPull(Build build, Limits limits, Operation operation, double cellsC) {
        this.course =
                new SagCourse(
                        build,
                        limits.battery(),
                        operation,
                        new Sag.Draw(
                                operation.drive().packCurrent(),
                                true,
                                cellsC,
                                build.use().effort().hardPull()));
    }

    /**
     * The cells of the pack that are nearest to its trip, or furthest beyond it.
     *
     * @param trip of that pack [V]
     * @param cell voltage in its emptiest group [V]; infinite without any trip, or where nothing is
     *     drawn: a pack that is empty at rest is no matter of settings
     */
    public record Loaded(double trip, double cell) {}

    /**
     * Returns the charge states between which all runs smoothly.
     *
     * @return ascending over the charge in use, both ends included; not to be changed [1]
     */
    public double[] charges() {
        return course.charges();
    }

    /**
     * Looks for the cells that are in danger of the trip.
     *
     * @param charge the charge state [1]
     * @return the nearest to it
     */
    public Loaded nearestToTrip(double charge) {
        return course.nearestToTrip(charge);
    }
}
