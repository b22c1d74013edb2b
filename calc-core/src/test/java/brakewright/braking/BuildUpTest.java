package brakewright.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.worksheet.Worksheet;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds the integration of the build-up against the library's integrator, to 1e-6 relative. */
class BuildUpTest {

    private static final double TOLERANCE = 1e-6;

    @ParameterizedTest(name = "from {0} m/s at {1}, {2} s")
    @CsvSource({"3.0, 0.5, 0.2", "8.0, 0.8, 0.2", "11.0, 1.0, 0.5", "6.0, 0.2, 1.0"})
    void agreesWithTheLibrarysIntegrator(double speed, double charge, double duration) {
        Build build = Builds.trailBoard();
        Braking braking =
                new Braking(build, Worksheet.of(build).operation().brake(), Surroundings.of(build));
        double[] tally = new double[Counted.COUNT];
        Counted.CHARGE.put(tally, charge);
        BuildUp buildUp = new BuildUp(braking, duration, new Tally.Peak(charge));
        double end = buildUp.add(speed, tally, 0.0, duration);

        double[] state = new double[Counted.COUNT];
        Counted.CHARGE.put(state, charge);
        Counted.SPEED.put(state, speed);
        new DormandPrince853Integrator(1e-9, 0.01, 1e-11, 1e-11)
                .integrate(new Motion(braking, duration), 0.0, state, duration, state);

        assertThat(end).isCloseTo(Counted.SPEED.in(state), within(TOLERANCE * speed));
        for (int i = 0; i < Counted.COUNT; i++) {
            assertThat(tally[i])
                    .isCloseTo(state[i], within(TOLERANCE * (1.0 + Math.abs(state[i]))));
        }
    }

    private record Motion(Braking braking, double duration)
            implements FirstOrderDifferentialEquations {

        @Override
        public int getDimension() {
            return Counted.COUNT;
        }

        @Override
        public void computeDerivatives(double time, double[] state, double[] rates) {
            Tally.rates(
                    braking,
                    Counted.SPEED.in(state),
                    Counted.CHARGE.in(state),
                    time / duration,
                    rates);
        }
    }
}
