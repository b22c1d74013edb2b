package brakewright.fitting;

import brakewright.numeric.LeastSquares;
import brakewright.numeric.Student;
import brakewright.powertrain.Powertrain;
import brakewright.recording.Stretch;
import brakewright.road.Gravity;
import brakewright.road.RoadLoad;
import brakewright.road.Slope;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Rolling resistance and drag area from stretches without drive or brake: what they lose of their
 * momentum, of the slope and of the motors' own drag is left for the tyres and the air.
 *
 * <p>{@code −m·(1+j)·dv/dt − m·g·sinθ − Fdrag = crr·m·g·cosθ + CdA·½·ρ·(v+w)·|v+w|}, a straight
 * line over stretches of three seconds. No voltage is needed for it but to see that nothing drove.
 */
final class CoastingFit {

    /**
     * Assumption: our own choice; beside what electronics draw, so little drives and brakes nobody
     * [W].
     */
    private static final double FREE = 5.0;

    /** Assumption: our own choice; slower, one pushes or steps off [m/s]. */
    private static final double LEAST_SPEED = 1.5;

    /** Assumption: our own choice; so long, the steps in which a speed is told even out [s]. */
    private static final double BLOCK = 3.0;

    /** Assumption: our own choice; fewer rolls differ by wind and road alone. */
    private static final int LEAST_ROLLS = 3;

    private static final int LEAST_BLOCKS = 8;
    private static final int VALUES = 2;

    /** Assumption: our own choice; a value that may be off by more is worth nothing [1]. */
    private static final double MOST_DOUBT = 0.5;

    /** Assumption: our own choice; a few watts either way count as none [1]. */
    private static final double OWN_ERROR = 0.02;

    private final Build build;
    private final RoadLoad perArea;
    private final Powertrain powertrain;
    private final double idlePower;
    private final List<double[]> columns = new ArrayList<>();
    private final List<Double> values = new ArrayList<>();
    private int rolls;

    private CoastingFit(Build build, double idlePower) {
        this.build = build;
        RoadLoad own = RoadLoad.of(build);
        this.perArea = new RoadLoad(own.mass(), 0.0, 1.0, own.airDensity());
        this.powertrain = Powertrain.of(build);
        this.idlePower = idlePower;
    }

    /** Asks with what electronics draw [W]. */
    static List<Fit> of(Build build, List<Stretch> stretches, double idlePower) {
        if (stretches.stream().noneMatch(each -> each.drawn().isPresent())) {
            return refused("voltage and current were not recorded together");
        }
        CoastingFit fit = new CoastingFit(build, idlePower);
        fit.gather(stretches);
        return fit.told();
    }

    private static List<Fit> refused(String reason) {
        return List.of(
                new Fit.Refused(Fitted.COASTING_ROLLING, reason),
                new Fit.Refused(Fitted.COASTING_DRAG, reason));
    }

    private List<Fit> told() {
        if (rolls < LEAST_ROLLS || values.size() < LEAST_BLOCKS) {
            return refused(
                    "it did not roll without drive or brake three times, and "
                            + LEAST_BLOCKS
                            + " times 3 s in all");
        }
        Optional<LeastSquares> solved = LeastSquares.of(columns, values);
        if (solved.isEmpty()) {
            return refused("speeds are too alike to tell one from the other");
        }
        double errors = Student.factor(values.size() - VALUES);
        return List.of(
                fit(Fitted.COASTING_ROLLING, solved.get(), 0, errors),
                fit(Fitted.COASTING_DRAG, solved.get(), 1, errors));
    }

    private Fit fit(Fitted what, LeastSquares solved, int which, double errors) {
        double value = solved.coefficients()[which];
        double doubt = errors * solved.errors()[which] + OWN_ERROR * Math.abs(value);
        return value > 0.0 && doubt <= MOST_DOUBT * value
                ? new Fit.Found(what, value, doubt, rolls)
                : new Fit.Refused(
                        what, "it may be off by more than half: speeds too alike, or too short");
    }

    private void gather(List<Stretch> stretches) {
        List<Stretch> roll = new ArrayList<>();
        for (Stretch each : stretches) {
            boolean isFree = isFree(each);
            if (!isFree || !each.follows()) {
                end(roll);
                roll.clear();
            }
            if (isFree) {
                roll.add(each);
            }
        }
        end(roll);
    }

    private boolean isFree(Stretch stretch) {
        return Math.min(stretch.from(), stretch.to()) > LEAST_SPEED
                && stretch.drawn().isPresent()
                && Math.abs(power(stretch) - idlePower) <= FREE;
    }

    private static double power(Stretch stretch) {
        Stretch.Drawn drawn = stretch.drawn().orElseThrow();
        return (drawn.outJoules() - drawn.backJoules()) / stretch.seconds();
    }

    /** The first and the last stretch are still letting go and pulling. */
    private void end(List<Stretch> roll) {
        int before = values.size();
        double seconds = 0.0;
        double momentum = 0.0;
        double rolling = 0.0;
        double air = 0.0;
        for (int i = 1; i < roll.size() - 1; i++) {
            Stretch each = roll.get(i);
            double speed = each.length() / each.seconds();
            double weight = build.mass() * Gravity.STANDARD * Slope.cosine(each.slope());
            double known = weight * each.slope() + powertrain.brakeForce(0.0, speed);
            momentum += build.inertia() * (each.from() - each.to()) - known * each.seconds();
            rolling += weight * each.seconds();
            air += perArea.airForce(speed + build.use().riding().headwind()) * each.seconds();
            seconds += each.seconds();
            if (seconds >= BLOCK) {
                columns.add(new double[] {rolling / seconds, air / seconds});
                values.add(momentum / seconds);
                seconds = 0.0;
                momentum = 0.0;
                rolling = 0.0;
                air = 0.0;
            }
        }
        rolls += values.size() > before ? 1 : 0;
    }
}
