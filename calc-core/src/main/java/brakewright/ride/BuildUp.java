package brakewright.ride;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince54Integrator;

/**
 * The time in which the brakes build up from nothing in proportion to time, integrated over time
 * with the embedded Runge-Kutta pair of Dormand and Prince (1980).
 */
final class BuildUp {

    private static final double ABSOLUTE_TOLERANCE = 1e-8;
    private static final double RELATIVE_TOLERANCE = 1e-8;
    private static final int EVENT_ITERATIONS = 100;

    private final Braking braking;
    private final double duration;

    BuildUp(Braking braking, double duration) {
        this.braking = braking;
        this.duration = duration;
    }

    /**
     * Adds to the tally what happens while the brakes build up.
     *
     * @return the speed at the end; 0 if the vehicle stops before [m/s]
     */
    double add(double speed, double[] tally) {
        double[] state = new double[Tally.SIZE + 1];
        System.arraycopy(tally, 0, state, 0, Tally.SIZE);
        state[Tally.SIZE] = speed;
        DormandPrince54Integrator integrator =
                new DormandPrince54Integrator(
                        1e-9 * duration, duration, ABSOLUTE_TOLERANCE, RELATIVE_TOLERANCE);
        integrator.addEventHandler(new Standstill(), duration, 1e-9, EVENT_ITERATIONS);
        integrator.integrate(new Motion(), 0.0, state, duration, state);
        System.arraycopy(state, 0, tally, 0, Tally.SIZE);
        return Math.max(0.0, state[Tally.SIZE] < 1e-9 ? 0.0 : state[Tally.SIZE]);
    }

    private final class Motion implements FirstOrderDifferentialEquations {

        @Override
        public int getDimension() {
            return Tally.SIZE + 1;
        }

        @Override
        public void computeDerivatives(double time, double[] state, double[] rates) {
            double speed = Math.max(0.0, state[Tally.SIZE]);
            double force = Tally.rates(braking, speed, state[Tally.CHARGE], time / duration, rates);
            rates[Tally.SIZE] = -force / braking.inertia();
        }
    }

    /** Ends the build-up where the vehicle stands. */
    private static final class Standstill implements EventHandler {

        @Override
        public void init(double start, double[] state, double end) {}

        @Override
        public double g(double time, double[] state) {
            return state[Tally.SIZE];
        }

        @Override
        public Action eventOccurred(double time, double[] state, boolean increasing) {
            return Action.STOP;
        }

        @Override
        public void resetState(double time, double[] state) {}
    }
}
