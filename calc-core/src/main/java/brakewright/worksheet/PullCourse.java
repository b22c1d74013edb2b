package brakewright.worksheet;

import brakewright.limit.MotorHeatBalance;
import brakewright.machine.WindingHeat;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import java.util.Optional;

/**
 * How one motor's winding warms at the drive current that is set, beginning at the temperature of
 * the air.
 *
 * @param current per motor [A]
 * @param seconds since the beginning, ascending from 0 [s]
 * @param windingC at each of them [°C]
 * @param limitC what the winding bears [°C]
 * @param hardPull the length of a hard pull in use [s]
 */
public record PullCourse(
        double current, double[] seconds, double[] windingC, double limitC, double hardPull) {

    private static final int STEPS = 60;

    /** Our own choice: a little beyond the limit, and what never reaches it for so long [s]. */
    private static final double BEYOND = 1.15;

    private static final double LONGEST = 1800.0;

    static Optional<PullCourse> of(Build build, Operation operation) {
        return MotorHeatBalance.of(build).map(heat -> of(build, operation, heat));
    }

    private static PullCourse of(Build build, Operation operation, WindingHeat heat) {
        double current = operation.drive().motorCurrent();
        double hardPull = build.use().effort().hardPull();
        double end =
                Math.max(
                        2.0 * hardPull,
                        Math.min(
                                LONGEST,
                                BEYOND * heat.timeToLimit(heat.cold(), current).orElse(LONGEST)));
        double[] seconds = new double[STEPS + 1];
        double[] windingC = new double[STEPS + 1];
        for (int step = 0; step <= STEPS; step++) {
            seconds[step] = end * step / STEPS;
            windingC[step] = heat.after(heat.cold(), current, seconds[step]).windingC();
        }
        return new PullCourse(current, seconds, windingC, heat.windingLimitC(), hardPull);
    }
}
