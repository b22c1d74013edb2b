package brakewright.limit;

import brakewright.numeric.Rounding;
import brakewright.spec.Require;
import brakewright.spec.Unit;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * What the pack may give or take: the least of its constraints at every charge state and
 * temperature.
 *
 * <p>The static part is the least of the constraints that do not depend on the charge state; the
 * others set the charge state to which it holds.
 */
public final class PackLimit {

    /** Whether a current must stop at a high charge state or at a low one. */
    private enum Side {
        TAKING,
        GIVING
    }

    private final LimitId id;
    private final Side side;
    private final List<PackConstraint> constraints;
    private final double[] knots;
    private final @Nullable Supplier<PackLimit> sustained;
    private final @Nullable Supplier<PackLimit> brief;

    private PackLimit(
            LimitId id,
            Side side,
            List<PackConstraint> constraints,
            double[] knots,
            @Nullable Supplier<PackLimit> sustained,
            @Nullable Supplier<PackLimit> brief) {
        this.id = id;
        this.side = side;
        this.constraints = List.copyOf(constraints);
        this.knots = knots;
        this.sustained = sustained;
        this.brief = brief;
    }

    static PackLimit taking(List<PackConstraint> constraints, double[] knots) {
        return new PackLimit(
                LimitId.PACK_REGEN_CURRENT, Side.TAKING, constraints, knots, null, null);
    }

    static PackLimit giving(List<PackConstraint> constraints, double[] knots) {
        return new PackLimit(
                LimitId.PACK_DISCHARGE_CURRENT, Side.GIVING, constraints, knots, null, null);
    }

    /** The same limit, which is another one for a current that lasts. */
    PackLimit lasting(Supplier<PackLimit> other) {
        return new PackLimit(id, side, constraints, knots, other, brief);
    }

    /** The same limit, which is another one for a current that is over within a pulse. */
    PackLimit passing(Supplier<PackLimit> other) {
        return new PackLimit(id, side, constraints, knots, sustained, other);
    }

    /**
     * Returns which current is limited.
     *
     * @return the limit's identity
     */
    public LimitId id() {
        return id;
    }

    /**
     * Forms the same limit for a current that flows for many minutes: the cells' continuous ratings
     * hold, however short the braking and pulling in use, and voltages shift across the resistance
     * of an endless current.
     *
     * @return the limit; this one where none of its conditions asks how long the current flows
     */
    public PackLimit sustained() {
        return sustained == null ? this : sustained.get();
    }

    /**
     * Forms the same limit for a current that is over within the pulse that cell resistances are
     * given for, however long braking in use lasts.
     *
     * @return the limit; this one where none of its conditions asks how long the current flows
     */
    public PackLimit brief() {
        return brief == null ? this : brief.get();
    }

    /**
     * Returns the conditions.
     *
     * @return the constraints, none left out
     */
    public List<PackConstraint> constraints() {
        return constraints;
    }

    /**
     * Returns the permitted current of the packs: all controllers together.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return the least of all constraints, of all controllers together [A], not negative
     * @throws IllegalArgumentException if an argument is NaN
     */
    public double valueAt(double charge, double temperatureC) {
        requireNumbers(charge, temperatureC);
        double least = Double.POSITIVE_INFINITY;
        for (PackConstraint constraint : constraints) {
            least = Math.min(least, constraint.limitAt(charge, temperatureC));
        }
        return least;
    }

    /**
     * Evaluates all constraints with their working.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return the limit there, of all controllers together
     * @throws IllegalArgumentException if an argument is NaN
     */
    public Limit at(double charge, double temperatureC) {
        requireNumbers(charge, temperatureC);
        return new Limit(
                id, constraints.stream().map(each -> each.at(charge, temperatureC)).toList());
    }

    /**
     * Evaluates the constraints that do not depend on the charge state.
     *
     * @param temperatureC the cell temperature [°C]
     * @return the static part of the limit, of all controllers together
     * @throws IllegalArgumentException if the temperature is NaN
     */
    public Limit staticPart(double temperatureC) {
        Require.number("cell temperature", temperatureC, Unit.CELSIUS);
        return new Limit(
                id,
                constraints.stream()
                        .filter(RatingConstraint.class::isInstance)
                        .map(each -> ((RatingConstraint) each).at(temperatureC))
                        .toList());
    }

    /**
     * Returns the charge state to which a current is permitted: for a current into the pack the
     * highest below which it always is, for one out of it the lowest above which it always is. Only
     * the constraints that depend on the charge state are asked.
     *
     * @param current of the pack, of all controllers together [A]
     * @param temperatureC the cell temperature [°C]
     * @return the charge state [1]; 1 for a current into the pack that is permitted up to full, 0
     *     for one that is forbidden at empty already; the other way round for one out of it
     * @throws IllegalArgumentException if an argument is NaN
     */
    public double chargeBound(double current, double temperatureC) {
        Require.number("current of the pack", current, Unit.AMPERE);
        Require.number("cell temperature", temperatureC, Unit.CELSIUS);
        double bound = side == Side.TAKING ? 1.0 : 0.0;
        for (PackConstraint constraint : constraints) {
            if (constraint instanceof VoltageConstraint voltage) {
                double own = chargeBound(voltage, current, temperatureC);
                bound = side == Side.TAKING ? Math.min(bound, own) : Math.max(bound, own);
            }
        }
        return bound;
    }

    /** A limit that is asked of itself leaves nothing but rounding. */
    private static boolean isUsedUp(double slack, double headroom) {
        return slack < -Rounding.OF_A_FORMULA * Math.abs(headroom);
    }

    private static void requireNumbers(double charge, double temperatureC) {
        Require.number("charge state", charge, Unit.RATIO);
        Require.number("cell temperature", temperatureC, Unit.CELSIUS);
    }

    /** Walks from the harmless end, knot by knot, until the slack is used up. */
    private double chargeBound(VoltageConstraint constraint, double current, double temperatureC) {
        int last = knots.length - 1;
        double inner = side == Side.TAKING ? knots[0] : knots[last];
        double innerSlack = constraint.slack(current, inner, temperatureC);
        if (isUsedUp(innerSlack, constraint.headroom(inner))) {
            return inner;
        }
        for (int step = 1; step <= last; step++) {
            double outer = side == Side.TAKING ? knots[step] : knots[last - step];
            double outerSlack = constraint.slack(current, outer, temperatureC);
            if (isUsedUp(outerSlack, constraint.headroom(outer))) {
                return constraint.exhausted(current, inner, outer, temperatureC);
            }
            inner = outer;
            innerSlack = outerSlack;
        }
        return inner;
    }
}
