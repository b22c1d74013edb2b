package brakewright.braking;

import brakewright.numeric.Accuracy;
import brakewright.numeric.Root;
import java.util.function.DoubleUnaryOperator;

/**
 * The time in which the brakes build up from nothing in proportion to time, integrated over time.
 *
 * <p>The classical Runge-Kutta formula of fourth order, with step doubling: each step is taken once
 * whole and once in two halves; where the two differ by more than the tolerance the step is halved,
 * otherwise their difference, which is the leading error, is taken off too. A step ends where the
 * pack limit begins or ceases to hold the brake back, as the force bends there.
 *
 * <p>Source: Press et al., Numerical Recipes, adaptive step-size control by step doubling (from
 * memory).
 */
final class BuildUp {

    private static final int DEEPEST = 12;
    private static final int ARRIVAL_HALVINGS = 60;

    /** How often what is returned is looked at in a step. */
    private static final int PLACES = 8;

    private final Braking braking;
    private final double duration;
    private final Tally.Peak peak;

    BuildUp(Braking braking, double duration, Tally.Peak peak) {
        this.braking = braking;
        this.duration = duration;
        this.peak = peak;
    }

    /**
     * Adds to the tally what happens while the brakes build up. Where the electric brake ends, the
     * force jumps, so the steps end there, too.
     *
     * @param from the time since the brakes began to act [s]
     * @param to likewise, at most the duration [s]
     * @return the speed at the end; 0 if the vehicle stops before [m/s]
     */
    double add(double speed, double[] tally, double from, double to) {
        double[] state = tally.clone();
        Counted.SPEED.put(state, speed);
        double ends = braking.endsBelow();
        if (ends > 0.0 && speed >= ends) {
            state = advance(state, from, to - from, ends);
            double passed = Counted.TIME.in(state) - Counted.TIME.in(tally);
            if (Counted.SPEED.in(state) <= ends && passed < to - from) {
                Counted.SPEED.put(state, Math.nextDown(ends));
                state = advance(state, from + passed, to - from - passed, 0.0);
            }
        } else {
            state = advance(state, from, to - from, 0.0);
        }
        System.arraycopy(state, 0, tally, 0, Counted.COUNT);
        return Math.max(0.0, Counted.SPEED.in(state));
    }

    /** Goes on for some time, at most until the speed has fallen to the lowest. */
    private double[] advance(double[] state, double from, double length, double lowest) {
        double bend = bend(state, from, length, lowest);
        double[] there = refine(new Step(state, from, bend, lowest), 0);
        return bend < length && Counted.SPEED.in(there) > lowest
                ? refine(new Step(there, from + bend, length - bend, lowest), 0)
                : there;
    }

    /** How long until the pack limit begins or ceases to hold the brake back, at most a length. */
    private double bend(double[] state, double from, double length, double lowest) {
        Step whole = new Step(state, from, length, lowest);
        DoubleUnaryOperator beyond =
                passed -> {
                    double[] there = whole.after(passed);
                    return braking.beyondPackLimit(
                            Math.max(lowest, Counted.SPEED.in(there)),
                            braking.pack(Counted.CHARGE.in(there)),
                            (from + passed) / duration);
                };
        return beyond.applyAsDouble(0.0) * beyond.applyAsDouble(length) < 0.0
                ? Root.between(beyond, 0.0, length, Accuracy.MODEL)
                : length;
    }

    private double[] refine(Step step, int depth) {
        double[] half = step.after(step.length / 2.0);
        Step second = step.second(half);
        double[] end = second.after(second.length);
        double lowest = step.lowest;
        boolean arrives = Counted.SPEED.in(end) <= lowest;
        if (arrives && depth >= DEEPEST) {
            return arrival(step);
        }
        double[] whole = step.after(step.length);
        if (!arrives && (depth >= DEEPEST || agree(whole, end))) {
            for (int i = 0; i < Counted.COUNT; i++) {
                end[i] += (end[i] - whole[i]) / 15.0;
            }
            remember(step, half, end);
            return end;
        }
        double[] middle = refine(step.first(), depth + 1);
        return Counted.SPEED.in(middle) <= lowest ? middle : refine(step.second(middle), depth + 1);
    }

    /**
     * The fastest the charge state rose in a step. What is returned is a parabola over the share of
     * the brakes wherever nothing holds it back, so it is looked at where the parabola through the
     * highest of some places and its neighbours is highest, too.
     */
    private void remember(Step step, double[] half, double[] end) {
        double[] rates = new double[PLACES + 1];
        int highest = 0;
        for (int place = 0; place <= PLACES; place++) {
            rates[place] = met(step, half, end, (double) place / PLACES);
            highest = rates[place] > rates[highest] ? place : highest;
        }
        if (highest > 0 && highest < PLACES) {
            double lean = rates[highest - 1] - rates[highest + 1];
            double bend = rates[highest - 1] - 2.0 * rates[highest] + rates[highest + 1];
            met(step, half, end, (highest + lean / (2.0 * bend)) / PLACES);
        }
    }

    /** How fast the charge state rises at a part of a step, which is remembered. */
    private double met(Step step, double[] half, double[] end, double part) {
        double speed = between(Counted.SPEED, step.state, half, end, part);
        double charge = between(Counted.CHARGE, step.state, half, end, part);
        double rate =
                braking.chargeRate(
                        Math.max(0.0, speed), charge, (step.from + part * step.length) / duration);
        peak.meet(rate, charge);
        return rate;
    }

    /** A parabola through the beginning, the middle and the end. */
    private static double between(
            Counted what, double[] start, double[] half, double[] end, double part) {
        double first = (2.0 * part - 1.0) * (part - 1.0);
        double second = 4.0 * part * (1.0 - part);
        double third = part * (2.0 * part - 1.0);
        return first * what.in(start) + second * what.in(half) + third * what.in(end);
    }

    /** The loss in the pack is what terminals and cells differ by, so it does where they do. */
    private static boolean agree(double[] whole, double[] halves) {
        for (int i = 0; i < Counted.COUNT; i++) {
            if (i != Counted.PACK.ordinal()
                    && !Accuracy.INTEGRAL.isMetBy(whole[i], halves[i], Accuracy.INTEGRAL.size())) {
                return false;
            }
        }
        return true;
    }

    /** Shortens the step until the vehicle just has the lowest speed at its end. */
    private static double[] arrival(Step step) {
        double before = 0.0;
        double after = step.length;
        for (int i = 0; i < ARRIVAL_HALVINGS; i++) {
            double middle = 0.5 * (before + after);
            if (Counted.SPEED.in(step.after(middle)) > step.lowest) {
                before = middle;
            } else {
                after = middle;
            }
        }
        double[] end = step.after(before);
        Counted.SPEED.put(end, step.lowest);
        return end;
    }

    /** A step from a state, and what the formula gives for it or any part of it. */
    private final class Step {

        private final double[] state;
        private final double from;
        private final double length;
        private final double lowest;
        private final double[] slope;

        Step(double[] state, double from, double length, double lowest) {
            this(state, from, length, lowest, slope(state, from, lowest));
        }

        private Step(double[] state, double from, double length, double lowest, double[] slope) {
            this.state = state;
            this.from = from;
            this.length = length;
            this.lowest = lowest;
            this.slope = slope;
        }

        Step first() {
            return new Step(state, from, length / 2.0, lowest, slope);
        }

        Step second(double[] half) {
            return new Step(half, from + length / 2.0, length / 2.0, lowest);
        }

        double[] after(double passed) {
            double middle = from + passed / 2.0;
            double[] second = slope(moved(slope, passed / 2.0), middle, lowest);
            double[] third = slope(moved(second, passed / 2.0), middle, lowest);
            double[] fourth = slope(moved(third, passed), from + passed, lowest);
            double[] end = new double[Counted.COUNT];
            for (int i = 0; i < Counted.COUNT; i++) {
                end[i] =
                        state[i]
                                + passed
                                        / 6.0
                                        * (slope[i] + 2.0 * second[i] + 2.0 * third[i] + fourth[i]);
            }
            return end;
        }

        private double[] moved(double[] along, double passed) {
            double[] moved = new double[Counted.COUNT];
            for (int i = 0; i < Counted.COUNT; i++) {
                moved[i] = state[i] + passed * along[i];
            }
            return moved;
        }
    }

    /** What changes how fast; a trial step below the lowest speed still brakes as at that. */
    private double[] slope(double[] state, double time, double lowest) {
        double[] slope = new double[Counted.COUNT];
        Tally.rates(
                braking,
                Math.max(lowest, Counted.SPEED.in(state)),
                Counted.CHARGE.in(state),
                time / duration,
                slope);
        return slope;
    }
}
