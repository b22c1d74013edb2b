package brakewright.braking;

import brakewright.numeric.Accuracy;

/**
 * The time in which the brakes build up from nothing in proportion to time, integrated over time.
 *
 * <p>The classical Runge-Kutta formula of fourth order, with step doubling: each step is taken once
 * whole and once in two halves; where the two differ by more than the tolerance the step is halved,
 * otherwise their difference, which is the leading error, is taken off too.
 *
 * <p>Source: Press et al., Numerical Recipes, adaptive step-size control by step doubling (from
 * memory).
 */
final class BuildUp {

    private static final int SPEED = Counted.COUNT;
    private static final int SIZE = Counted.COUNT + 1;
    private static final int DEEPEST = 12;
    private static final int ARRIVAL_HALVINGS = 60;

    /** How often what is returned is looked at in a step. */
    private static final int PLACES = 8;

    private static final int[] INTERPOLATED = {SPEED, Counted.CHARGE.ordinal()};

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
        double[] state = new double[SIZE];
        System.arraycopy(tally, 0, state, 0, Counted.COUNT);
        state[SPEED] = speed;
        double ends = braking.endsBelow();
        if (ends > 0.0 && speed >= ends) {
            state = advance(state, from, to - from, ends, 0);
            double passed = Counted.TIME.in(state) - Counted.TIME.in(tally);
            if (state[SPEED] <= ends && passed < to - from) {
                state[SPEED] = Math.nextDown(ends);
                state = advance(state, from + passed, to - from - passed, 0.0, 0);
            }
        } else {
            state = advance(state, from, to - from, 0.0, 0);
        }
        System.arraycopy(state, 0, tally, 0, Counted.COUNT);
        return Math.max(0.0, state[SPEED]);
    }

    /** Goes on for some time, at most until the speed has fallen to the lowest. */
    private double[] advance(double[] state, double from, double length, double lowest, int depth) {
        double[] whole = step(state, from, length, lowest);
        double[] half = step(state, from, length / 2.0, lowest);
        double[] halves = step(half, from + length / 2.0, length / 2.0, lowest);
        boolean arrives = halves[SPEED] <= lowest;
        if (arrives && depth >= DEEPEST) {
            return arrival(state, from, length, lowest);
        }
        if (!arrives && (depth >= DEEPEST || agree(whole, halves))) {
            for (int i = 0; i < SIZE; i++) {
                halves[i] += (halves[i] - whole[i]) / 15.0;
            }
            remember(state, half, halves, from, length);
            return halves;
        }
        double[] middle = advance(state, from, length / 2.0, lowest, depth + 1);
        return middle[SPEED] <= lowest
                ? middle
                : advance(middle, from + length / 2.0, length / 2.0, lowest, depth + 1);
    }

    /**
     * The fastest the charge state rose in a step. What is returned is a parabola over the share of
     * the brakes wherever nothing holds it back, so it is looked at where the parabola through the
     * highest of some places and its neighbours is highest, too.
     */
    private void remember(double[] start, double[] half, double[] end, double from, double length) {
        double[] rates = new double[PLACES + 1];
        int highest = 0;
        for (int place = 0; place <= PLACES; place++) {
            double part = (double) place / PLACES;
            rates[place] = met(between(start, half, end, part), from + part * length);
            highest = rates[place] > rates[highest] ? place : highest;
        }
        if (highest > 0 && highest < PLACES) {
            double lean = rates[highest - 1] - rates[highest + 1];
            double bend = rates[highest - 1] - 2.0 * rates[highest] + rates[highest + 1];
            double part = (highest + lean / (2.0 * bend)) / PLACES;
            met(between(start, half, end, part), from + part * length);
        }
    }

    /** How fast the charge state rises, which is remembered. */
    private double met(double[] state, double time) {
        double rate = Counted.CHARGE.in(slope(state, time, 0.0));
        peak.meet(rate, Counted.CHARGE.in(state));
        return rate;
    }

    /** Speed and charge state on a parabola through the beginning, the middle and the end. */
    private static double[] between(double[] start, double[] half, double[] end, double part) {
        double first = (2.0 * part - 1.0) * (part - 1.0);
        double second = 4.0 * part * (1.0 - part);
        double third = part * (2.0 * part - 1.0);
        double[] state = new double[SIZE];
        for (int i : INTERPOLATED) {
            state[i] = first * start[i] + second * half[i] + third * end[i];
        }
        return state;
    }

    /** The loss in the pack is what terminals and cells differ by, so it does where they do. */
    private static boolean agree(double[] whole, double[] halves) {
        for (int i = 0; i < SIZE; i++) {
            if (i != Counted.PACK.ordinal()
                    && !Accuracy.INTEGRAL.isMetBy(whole[i], halves[i], Accuracy.INTEGRAL.size())) {
                return false;
            }
        }
        return true;
    }

    /** Shortens the step until the vehicle just has the lowest speed at its end. */
    private double[] arrival(double[] state, double from, double length, double lowest) {
        double before = 0.0;
        double after = length;
        for (int i = 0; i < ARRIVAL_HALVINGS; i++) {
            double middle = 0.5 * (before + after);
            if (step(state, from, middle, lowest)[SPEED] > lowest) {
                before = middle;
            } else {
                after = middle;
            }
        }
        double[] end = step(state, from, before, lowest);
        end[SPEED] = lowest;
        return end;
    }

    private double[] step(double[] state, double time, double length, double lowest) {
        double[] first = slope(state, time, lowest);
        double[] second = slope(moved(state, first, length / 2.0), time + length / 2.0, lowest);
        double[] third = slope(moved(state, second, length / 2.0), time + length / 2.0, lowest);
        double[] fourth = slope(moved(state, third, length), time + length, lowest);
        double[] end = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            end[i] =
                    state[i]
                            + length
                                    / 6.0
                                    * (first[i] + 2.0 * second[i] + 2.0 * third[i] + fourth[i]);
        }
        return end;
    }

    private static double[] moved(double[] state, double[] slope, double length) {
        double[] moved = new double[SIZE];
        for (int i = 0; i < SIZE; i++) {
            moved[i] = state[i] + length * slope[i];
        }
        return moved;
    }

    /** What changes how fast; a trial step below the lowest speed still brakes as at that. */
    private double[] slope(double[] state, double time, double lowest) {
        double[] slope = new double[SIZE];
        double force =
                Tally.rates(
                        braking,
                        Math.max(lowest, state[SPEED]),
                        Counted.CHARGE.in(state),
                        time / duration,
                        slope);
        slope[SPEED] = -force / braking.inertia();
        return slope;
    }
}
