package brakewright.driving;

import brakewright.numeric.Accuracy;
import brakewright.numeric.GaussRule;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Spending;
import brakewright.spec.Build;
import brakewright.spec.Require;
import brakewright.spec.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Pulling away from a standstill with everything the settings permit.
 *
 * <p>{@code t = ∫ m·(1 + j)/(F(v) − R(v)) dv}, by adaptive Gauss-Legendre quadrature over speed
 * from corner to corner of the thrust: a panel is integrated once whole and once in two halves, and
 * halved further where time, distance or energy differ. The charge state is that of the beginning
 * throughout, as a pull takes a small part of it.
 *
 * <p>Source: Newton's second law.
 */
public final class StandingStart {

    private static final int DEEPEST = 14;
    private static final int PROBES = 16;
    private static final int HALVINGS = 45;
    private static final GaussRule RULE = GaussRule.of(5);

    private final Propulsion propulsion;

    /**
     * Sets up the starts of a vehicle.
     *
     * @param build the vehicle
     * @param drive its drive as it is set
     * @param road the way ahead
     */
    public StandingStart(Build build, ElectricDrive drive, Road road) {
        this.propulsion = new Propulsion(build, drive, road);
    }

    /**
     * What it takes to reach a speed.
     *
     * @param time [s]
     * @param distance [m]
     * @param spent where the energy went [J]
     */
    public record Reached(double time, double distance, Spending spent) {

        private static final Reached NOTHING = new Reached(0.0, 0.0, Spending.NONE);

        private Reached plus(Reached other) {
            return new Reached(
                    time + other.time, distance + other.distance, spent.plus(other.spent, 1.0));
        }

        private boolean agrees(Reached other) {
            return near(time, other.time)
                    && near(distance, other.distance)
                    && near(spent.sum(), other.spent.sum());
        }

        private static boolean near(double one, double other) {
            return Accuracy.INTEGRAL.isMetBy(one, other, Accuracy.MODEL.size());
        }
    }

    /**
     * Pulls away from a standstill.
     *
     * @param speed to be reached [m/s], positive
     * @param pack the pack
     * @return what it takes; empty where the speed is not reached
     * @throws IllegalArgumentException if the speed is not positive
     */
    public Optional<Reached> to(double speed, PackState pack) {
        Require.positive("speed", speed, Unit.METRE_PER_SECOND);
        if (accelerating(speed, pack) <= 0.0) {
            return Optional.empty();
        }
        Reached sum = Reached.NOTHING;
        double from = 0.0;
        for (double to : corners(speed, pack)) {
            Optional<Reached> whole = panel(from, to, pack);
            Optional<Reached> piece =
                    whole.isEmpty() ? whole : refine(from, to, whole.get(), pack, 0);
            if (piece.isEmpty()) {
                return Optional.empty();
            }
            sum = sum.plus(piece.get());
            from = to;
        }
        return Optional.of(sum);
    }

    /** The speeds up to one at which something else begins to rule the thrust, and that speed. */
    private List<Double> corners(double speed, PackState pack) {
        List<Double> corners = new ArrayList<>();
        double below = 0.0;
        for (int probe = 1; probe <= PROBES; probe++) {
            double above = speed * probe / PROBES;
            if (propulsion.rule(below, pack) != propulsion.rule(above, pack)) {
                corners.add(corner(below, above, pack));
            }
            below = above;
        }
        corners.removeIf(corner -> corner <= 0.0 || corner >= speed);
        corners.add(speed);
        return corners;
    }

    private double corner(double below, double above, PackState pack) {
        Propulsion.Rule rule = propulsion.rule(below, pack);
        double low = below;
        double high = above;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = 0.5 * (low + high);
            if (propulsion.rule(middle, pack) == rule) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    /**
     * Returns the thrust at a speed: what the settings permit, the pack gives beside the
     * electronics and the ground bears.
     *
     * @param speed [m/s]
     * @param pack the pack
     * @return of all driven wheels [N]
     */
    public double thrust(double speed, PackState pack) {
        return propulsion.thrust(propulsion.fullCurrent(speed, pack), speed);
    }

    /**
     * One point of a pull.
     *
     * @param speed [m/s]
     * @param thrust of all driven wheels [N]
     * @param acceleration [m/s²]
     * @param time since the point before [s]; 0 for the first
     */
    public record Point(double speed, double thrust, double acceleration, double time) {}

    /**
     * Returns points of a pull from a standstill, evenly spaced over the speed.
     *
     * @param speed of the last, which is reached [m/s]
     * @param parts between them
     * @param pack the pack
     * @return the points, slowest first
     */
    public List<Point> points(double speed, int parts, PackState pack) {
        List<Point> all = new ArrayList<>();
        double before = 0.0;
        for (int part = 0; part <= parts; part++) {
            double there = speed * part / parts;
            double reached = part == 0 ? 0.0 : to(there, pack).orElseThrow().time();
            all.add(
                    new Point(
                            there,
                            thrust(there, pack),
                            acceleration(there, pack),
                            reached - before));
            before = reached;
        }
        return all;
    }

    /**
     * Returns the acceleration at a speed.
     *
     * @param speed [m/s]
     * @param pack the pack
     * @return the acceleration; negative where the vehicle slows with full thrust [m/s²]
     */
    public double acceleration(double speed, PackState pack) {
        return accelerating(speed, pack) / propulsion.inertia();
    }

    private double accelerating(double speed, PackState pack) {
        return thrust(speed, pack) - propulsion.resistance(speed);
    }

    private Optional<Reached> refine(
            double from, double to, Reached whole, PackState pack, int depth) {
        double middle = 0.5 * (from + to);
        Optional<Reached> lower = panel(from, middle, pack);
        Optional<Reached> upper = panel(middle, to, pack);
        if (lower.isEmpty() || upper.isEmpty()) {
            return Optional.empty();
        }
        Reached halves = lower.get().plus(upper.get());
        if (depth >= DEEPEST || whole.agrees(halves)) {
            return Optional.of(halves);
        }
        Optional<Reached> first = refine(from, middle, lower.get(), pack, depth + 1);
        Optional<Reached> second = refine(middle, to, upper.get(), pack, depth + 1);
        return first.isEmpty() || second.isEmpty()
                ? Optional.empty()
                : Optional.of(first.get().plus(second.get()));
    }

    private Optional<Reached> panel(double from, double to, PackState pack) {
        Reached sum = Reached.NOTHING;
        for (int node = 0; node < RULE.nodes(); node++) {
            double speed = RULE.point(node, from, to);
            double current = propulsion.fullCurrent(speed, pack);
            double force = propulsion.thrust(current, speed) - propulsion.resistance(speed);
            if (!(force > 0.0)) {
                return Optional.empty();
            }
            double time = RULE.weight(node, from, to) * propulsion.inertia() / force;
            sum =
                    sum.plus(
                            new Reached(
                                    time,
                                    speed * time,
                                    Spending.NONE.plus(
                                            propulsion.spending(current, speed, pack), time)));
        }
        return Optional.of(sum);
    }
}
