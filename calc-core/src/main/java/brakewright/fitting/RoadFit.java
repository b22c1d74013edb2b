package brakewright.fitting;

import brakewright.numeric.LeastSquares;
import brakewright.numeric.Student;
import brakewright.recording.Ride;
import brakewright.recording.Stretch;
import brakewright.replay.Retraced;
import brakewright.road.Gravity;
import brakewright.road.RoadLoad;
import brakewright.road.Slope;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Rolling resistance and drag area from the energy balance: those with which the model takes as
 * much as was measured, block by block.
 *
 * <p>Source: Gauss-Newton, the slope of the model's power by the force by a finite difference, kept
 * once a round moves the values by less than their errors. A block is one event; what electronics
 * draw is fitted beside them.
 */
final class RoadFit {

    /**
     * Assumption: our own choice; so long, what a coarse speed makes of pulling and braking within
     * evens out [s].
     */
    private static final double BLOCK = 10.0;

    /** Assumption: our own choice; with fewer blocks three values are as good as free. */
    private static final int LEAST_BLOCKS = 12;

    /** Assumption: our own choice; a value that may be off by more is worth nothing [1]. */
    private static final double MOST_DOUBT = 0.5;

    /**
     * Assumption: our own choice; while the speed changes faster, the mass counts more than the
     * road, and what is lost depends on what happens within a second [m/s²].
     */
    private static final double STEADY = 0.5;

    /**
     * Assumption: our own choice; stretches of a second stand for what changes within them, by
     * which rides that the model made come back off by up to about one per cent. No more is claimed
     * [1].
     */
    private static final double OWN_ERROR = 0.02;

    private static final int VALUES = 3;
    private static final int ROUNDS = 4;
    private static final double ROLLING_STEP = 1e-3;

    /** Assumption: our own choice; a round that moves a value by less of its error is the last. */
    private static final double SETTLED = 0.01;

    private static final double LEAST_ROLLING = 1e-4;
    private static final double LEAST_AREA = 1e-3;
    private static final double MOST_ROLLING = 0.3;
    private static final double MOST_AREA = 5.0;

    private final Build build;
    private final Ride ride;
    private final List<Stretch> stretches;

    private RoadFit(Build build, Ride ride, List<Stretch> stretches) {
        this.build = build;
        this.ride = ride;
        this.stretches = stretches;
    }

    static List<Fit> of(Build build, Ride ride, List<Stretch> stretches) {
        if (stretches.stream().noneMatch(each -> each.drawn().isPresent())) {
            return refused("voltage and current were not recorded together");
        }
        return new RoadFit(build, ride, stretches).fits();
    }

    private static List<Fit> refused(String reason) {
        return List.of(
                new Fit.Refused(Fitted.ROLLING_RESISTANCE, reason),
                new Fit.Refused(Fitted.DRAG_AREA, reason));
    }

    private List<Fit> fits() {
        double rolling = Math.max(LEAST_ROLLING, build.vehicle().rollingResistance());
        double area = Math.max(LEAST_AREA, build.vehicle().dragArea());
        double rollingError = 0.0;
        double areaError = 0.0;
        int blocks = 0;
        double[] byForce = {};
        boolean isFar = true;
        boolean isSettled = false;
        for (int round = 0; round < ROUNDS && !isSettled; round++) {
            List<double[]> columns = new ArrayList<>();
            List<Double> values = new ArrayList<>();
            double[] own = powers(rolling, area);
            byForce = isFar ? byForce(own, rolling, area) : byForce;
            gather(own, byForce, columns, values);
            blocks = values.size();
            if (blocks < LEAST_BLOCKS) {
                return refused(
                        "fewer than "
                                + LEAST_BLOCKS
                                + " times 10 s of even riding within what the settings permit");
            }
            Optional<LeastSquares> solved = LeastSquares.of(columns, values);
            if (solved.isEmpty()) {
                return refused("speeds are too alike to tell one from the other");
            }
            double[] change = solved.get().coefficients();
            rolling = within(rolling + change[0], LEAST_ROLLING, MOST_ROLLING);
            area = within(area + change[1], LEAST_AREA, MOST_AREA);
            rollingError = solved.get().errors()[0];
            areaError = solved.get().errors()[1];
            double moved =
                    Math.max(Math.abs(change[0]) / rollingError, Math.abs(change[1]) / areaError);
            isFar = moved > 1.0;
            isSettled = moved <= SETTLED;
        }
        double errors = Student.factor(blocks - VALUES);
        return List.of(
                fit(
                        Fitted.ROLLING_RESISTANCE,
                        rolling,
                        errors * rollingError + OWN_ERROR * rolling,
                        blocks),
                fit(Fitted.DRAG_AREA, area, errors * areaError + OWN_ERROR * area, blocks));
    }

    private static double within(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }

    private static Fit fit(Fitted what, double value, double doubt, int blocks) {
        return doubt <= MOST_DOUBT * value
                ? new Fit.Found(what, value, doubt, blocks)
                : new Fit.Refused(
                        what, "it may be off by more than half: speeds too alike, or too short");
    }

    private double[] powers(double rolling, double area) {
        return Retraced.powers(
                build.withVehicle(
                        build.vehicle().withRollingResistance(rolling).withDragArea(area)),
                ride,
                stretches);
    }

    /** By how much the power rises with the force, stretch by stretch [m/s]. */
    private double[] byForce(double[] own, double rolling, double area) {
        double[] slopes = powers(rolling + ROLLING_STEP, area);
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = (slopes[i] - own[i]) / (ROLLING_STEP * weight(stretches.get(i)));
        }
        return slopes;
    }

    private double weight(Stretch stretch) {
        return build.mass() * Gravity.STANDARD * Slope.cosine(stretch.slope());
    }

    /** A block ends with its length, with a gap, and where the model has no answer. */
    private void gather(
            double[] own, double[] byForce, List<double[]> columns, List<Double> values) {
        RoadLoad load = RoadLoad.of(build);
        RoadLoad perArea = new RoadLoad(load.mass(), 0.0, 1.0, load.airDensity());
        double headwind = build.use().riding().headwind();
        double[] sums = new double[2];
        double lacking = 0.0;
        double seconds = 0.0;
        for (int i = 0; i < own.length; i++) {
            Stretch each = stretches.get(i);
            boolean isWhole = each.drawn().isPresent() && !Double.isNaN(own[i] + byForce[i]);
            if (!isWhole || !each.follows()) {
                sums = new double[2];
                lacking = 0.0;
                seconds = 0.0;
            }
            if (!isWhole) {
                continue;
            }
            Stretch.Drawn drawn = each.drawn().get();
            double speed = each.length() / each.seconds();
            sums[0] += byForce[i] * weight(each) * each.seconds();
            sums[1] += byForce[i] * perArea.airForce(speed + headwind) * each.seconds();
            lacking += drawn.outJoules() - drawn.backJoules() - own[i] * each.seconds();
            seconds += each.seconds();
            if (seconds >= BLOCK) {
                columns.add(new double[] {sums[0] / seconds, sums[1] / seconds, 1.0});
                values.add(lacking / seconds);
                sums = new double[2];
                lacking = 0.0;
                seconds = 0.0;
            }
        }
    }
}
