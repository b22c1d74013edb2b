package brakewright.braking;

import brakewright.numeric.Accuracy;
import brakewright.numeric.GaussRule;

/**
 * Adds up a tally while the vehicle slows from one speed to another, by adaptive quadrature over
 * speed: {@code dt = m·dv/F}.
 *
 * <p>A panel is integrated by a Gauss-Legendre rule and again in two halves; where time, distance
 * or charge differ by more than the tolerance, the halves are treated likewise. Within a panel the
 * charge state is taken to move in proportion to the energy of motion, which the halving checks
 * too.
 */
final class SpeedIntegral {

    /** What two estimates must agree about; energies then do, too. */
    private static final Counted[] HELD_TOGETHER = {
        Counted.TIME, Counted.DISTANCE, Counted.CHARGE, Counted.CURRENT_SQUARED
    };

    /** Differences of these too small to matter, each in its own unit. */
    private static final double[] NEGLIGIBLE = {1e-8, 1e-8, 1e-10, 1e-5};

    private static final int DEEPEST = 12;

    private static final GaussRule RULE = GaussRule.of(5);

    private final Braking braking;
    private final Tally.Peak peak;
    private final double[] rates = new double[Counted.COUNT];
    private double leastForce = Double.POSITIVE_INFINITY;
    private double leastForceSpeed;
    private double chargePerEnergy;

    SpeedIntegral(Braking braking, Tally.Peak peak) {
        this.braking = braking;
        this.peak = peak;
    }

    /** What a panel adds to the tally, and the fastest rise of the charge in it. */
    private static final class Panel {

        private final double[] sums = new double[Counted.COUNT];
        private double peakRate;
        private double peakCharge;
    }

    /** The least force met so far [N]. */
    double leastForce() {
        return leastForce;
    }

    /** The speed at which that was [m/s]. */
    double leastForceSpeed() {
        return leastForceSpeed;
    }

    /** Adds to the tally what happens between two speeds, the higher one first. */
    void add(double from, double to, double[] tally) {
        double force = Tally.rates(braking, from, Counted.CHARGE.in(tally), 1.0, rates);
        peak.meet(Counted.CHARGE.in(rates), Counted.CHARGE.in(tally));
        chargePerEnergy = Counted.CHARGE.in(rates) * braking.inertia() / (2.0 * from * force);
        refine(from, to, panel(from, to, Counted.CHARGE.in(tally)), tally, 0);
    }

    private void refine(double from, double to, Panel whole, double[] tally, int depth) {
        double middle = 0.5 * (from + to);
        Panel upper = panel(from, middle, Counted.CHARGE.in(tally));
        Panel lower = panel(middle, to, Counted.CHARGE.in(tally) + Counted.CHARGE.in(upper.sums));
        if (depth >= DEEPEST || agrees(whole.sums, upper.sums, lower.sums)) {
            for (int i = 0; i < Counted.COUNT; i++) {
                tally[i] += upper.sums[i] + lower.sums[i];
            }
            peak.meet(upper.peakRate, upper.peakCharge);
            peak.meet(lower.peakRate, lower.peakCharge);
            return;
        }
        refine(from, middle, upper, tally, depth + 1);
        refine(middle, to, lower, tally, depth + 1);
    }

    private static boolean agrees(double[] whole, double[] upper, double[] lower) {
        for (int i = 0; i < HELD_TOGETHER.length; i++) {
            Counted held = HELD_TOGETHER[i];
            double halves = held.in(upper) + held.in(lower);
            if (!Accuracy.INTEGRAL.isMetBy(held.in(whole), halves, NEGLIGIBLE[i])) {
                return false;
            }
        }
        return true;
    }

    private Panel panel(double from, double to, double chargeAtStart) {
        Panel panel = new Panel();
        double[] sums = panel.sums;
        for (int node = 0; node < RULE.nodes(); node++) {
            double speed = RULE.point(node, from, to);
            double charge = chargeAtStart + chargePerEnergy * (from * from - speed * speed);
            double force = Tally.rates(braking, speed, charge, 1.0, rates);
            if (Counted.CHARGE.in(rates) > panel.peakRate) {
                panel.peakRate = Counted.CHARGE.in(rates);
                panel.peakCharge = charge;
            }
            if (force < leastForce) {
                leastForce = force;
                leastForceSpeed = speed;
            }
            double step = -RULE.weight(node, from, to) * braking.inertia() / force;
            for (int i = 0; i < Counted.COUNT; i++) {
                sums[i] += step * rates[i];
            }
        }
        double energy = from * from - to * to;
        if (energy > 0.0) {
            chargePerEnergy = Counted.CHARGE.in(sums) / energy;
        }
        return panel;
    }
}
