package brakewright.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.machine.WindingHeat.Temperatures;
import brakewright.spec.Builds;
import brakewright.spec.CurrentBasis;
import brakewright.spec.Motor;
import brakewright.spec.MotorHeat;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Windings that turn on their way: one that is colder than its case peaks before both cool, one
 * that is hotter dips before both warm. Held against small steps of both heat balances.
 */
@Tag("law")
class WindingPeakTest {

    private static final MotorHeat HEAT = new MotorHeat(0.5, 1.5, 40.0, 300.0);
    private static final double RESISTANCE = 0.05;
    private static final double LIMIT_C = 125.0;
    private static final double AIR_C = 20.0;
    private static final double CASE_LOSS = 3.0;
    private static final double HOUR = 3600.0;

    /** Two thousandths of the fast time constant, some 15 s. */
    private static final double STEP = 0.03;

    /**
     * Runge-Kutta leaves (STEP/15 s)⁴ of some hundred degrees, the peak between two steps less than
     * its curvature, 0.1 K/s² at most, times STEP²/8.
     */
    private static final double STEPPED_K = 2e-5;

    /** The limit is crossed at 0.01 K/s or faster in these cases. */
    private static final double STEPPED_S = 1e-2;

    private static final WindingHeat MODEL =
            new WindingHeat(HEAT, RESISTANCE, LIMIT_C, AIR_C, CASE_LOSS);

    @Test
    void aWindingColderThanItsCasePeaksBelowTheLimit() {
        Temperatures start = new Temperatures(20.0, 124.0);
        double current = MODEL.highestCurrentFor(start, HOUR);
        assertThat(current).isLessThan(0.95 * MODEL.continuousCurrent());
        assertThat(peak(start, current, HOUR)).isCloseTo(LIMIT_C, within(STEPPED_K));
        assertThat(MODEL.after(start, current, HOUR).windingC()).isLessThan(LIMIT_C - 10.0);
    }

    /** The peak comes after a minute or so; before it the limit is where the time ends. */
    @Test
    void aTimeThatEndsBeforeThePeakPermitsMore() {
        Temperatures start = new Temperatures(20.0, 124.0);
        double current = MODEL.highestCurrentFor(start, 10.0);
        assertThat(current).isGreaterThan(MODEL.highestCurrentFor(start, HOUR));
        assertThat(peak(start, current, 10.0)).isCloseTo(LIMIT_C, within(STEPPED_K));
    }

    @Test
    void theLimitIsReachedOnTheWayToThePeak() {
        Temperatures start = new Temperatures(20.0, 124.0);
        double current = 1.05 * MODEL.highestCurrentFor(start, HOUR);
        assertThat(current).isLessThan(MODEL.continuousCurrent());
        assertThat(MODEL.timeToLimit(start, current).orElseThrow())
                .isCloseTo(reached(start, current).orElseThrow(), within(STEPPED_S));
    }

    @Test
    void aPeakBelowTheLimitNeverReachesIt() {
        Temperatures start = new Temperatures(20.0, 124.0);
        double current = 0.95 * MODEL.highestCurrentFor(start, HOUR);
        assertThat(MODEL.timeToLimit(start, current)).isEmpty();
        assertThat(reached(start, current)).isEmpty();
    }

    @Test
    void aWindingHotterThanItsCaseDipsBeforeItReachesTheLimit() {
        Temperatures start = new Temperatures(120.0, 20.0);
        double current = 1.2 * MODEL.continuousCurrent();
        assertThat(MODEL.after(start, current, 10.0).windingC()).isLessThan(110.0);
        assertThat(MODEL.timeToLimit(start, current).orElseThrow())
                .isCloseTo(reached(start, current).orElseThrow(), within(STEPPED_S));
        assertThat(MODEL.timeToLimit(start, 0.9 * MODEL.continuousCurrent())).isEmpty();
    }

    /** It stands at its limit and cools when nothing flows: it is there from the first moment. */
    @Test
    void aWindingThatStartsAtItsLimitIsThereAtOnce() {
        Temperatures start = new Temperatures(LIMIT_C, AIR_C);
        assertThat(MODEL.timeToLimit(start, 0.0)).hasValue(0.0);
        assertThat(MODEL.highestCurrentFor(start, 10.0)).isZero();
    }

    /** In air of −20 °C a current little above the continuous one leads little beyond the limit. */
    @Test
    void theLimitIsReachedInFrostToo() {
        WindingHeat frost = new WindingHeat(HEAT, RESISTANCE, LIMIT_C, -20.0, CASE_LOSS);
        double current = 1.02 * frost.continuousCurrent();
        double time = frost.timeToLimit(frost.cold(), current).orElseThrow();
        assertThat(frost.after(frost.cold(), current, time).windingC())
                .isCloseTo(LIMIT_C, within(1e-5));
    }

    /** Copper at −20 °C has 1 − 0.00393·40 of its resistance at 20 °C. */
    @Test
    void aLongTimeInFrostLeadsToItsSteadyState() {
        WindingHeat frost = new WindingHeat(HEAT, RESISTANCE, LIMIT_C, -20.0, CASE_LOSS);
        Temperatures steady = frost.steady(20.0).orElseThrow();
        double copper = RESISTANCE * (1.0 + 0.00393 * (steady.windingC() - 20.0)) * 400.0;
        assertThat(steady.caseC()).isCloseTo(-20.0 + 1.5 * (copper + CASE_LOSS), within(1e-9));
        assertThat(steady.windingC()).isCloseTo(steady.caseC() + 0.5 * copper, within(1e-9));
        Temperatures late = frost.after(frost.cold(), 20.0, 30.0 * HOUR);
        assertThat(late.windingC()).isCloseTo(steady.windingC(), within(1e-6));
        assertThat(late.caseC()).isCloseTo(steady.caseC(), within(1e-6));
    }

    /**
     * 0.06 Ω between terminals, a hundred kelvins above 20 °C: 0.06·1.393, three quarters of it.
     */
    @Test
    void aHotMotorLosesMore() {
        Motor motor = Builds.trailBoard().motor();
        assertThat(new MotorModel(motor, CurrentBasis.DC_EQUIVALENT).lossResistance(120.0))
                .isCloseTo(0.06 * 1.393, within(1e-12));
        assertThat(new MotorModel(motor, CurrentBasis.PHASE_PEAK).lossResistance(120.0))
                .isCloseTo(0.75 * 0.06 * 1.393, within(1e-12));
    }

    /** A motor of many thin turns: 300 Ω, whose winding bears less than half an ampere. */
    @Test
    void aSmallMotorBearsASmallCurrent() {
        WindingHeat small = new WindingHeat(HEAT, 300.0, LIMIT_C, AIR_C, CASE_LOSS);
        double current = small.highestCurrentFor(small.cold(), HOUR);
        assertThat(current).isBetween(small.continuousCurrent(), 0.5);
        assertThat(small.after(small.cold(), current, HOUR).windingC())
                .isCloseTo(LIMIT_C, within(1e-5));
    }

    @Test
    void theLimitIsTheOneGiven() {
        assertThat(MODEL.windingLimitC()).isEqualTo(LIMIT_C);
    }

    private static double peak(Temperatures start, double current, double time) {
        double[] state = {start.windingC(), start.caseC()};
        double peak = state[0];
        int steps = (int) Math.ceil(time / STEP);
        for (int i = 0; i < steps; i++) {
            step(state, current, time / steps);
            peak = Math.max(peak, state[0]);
        }
        return peak;
    }

    /** When the limit is first passed within an hour, by a straight line within the step. */
    private static OptionalDouble reached(Temperatures start, double current) {
        double[] state = {start.windingC(), start.caseC()};
        for (int i = 0; i * STEP < HOUR; i++) {
            double before = state[0];
            step(state, current, STEP);
            if (state[0] >= LIMIT_C) {
                return OptionalDouble.of(STEP * (i + (LIMIT_C - before) / (state[0] - before)));
            }
        }
        return OptionalDouble.empty();
    }

    /** One step of the classical Runge-Kutta formula. */
    private static void step(double[] state, double current, double time) {
        double[] a = slope(state[0], state[1], current);
        double[] b = slope(state[0] + time / 2.0 * a[0], state[1] + time / 2.0 * a[1], current);
        double[] c = slope(state[0] + time / 2.0 * b[0], state[1] + time / 2.0 * b[1], current);
        double[] d = slope(state[0] + time * c[0], state[1] + time * c[1], current);
        for (int k = 0; k < 2; k++) {
            state[k] += time / 6.0 * (a[k] + 2.0 * b[k] + 2.0 * c[k] + d[k]);
        }
    }

    private static double[] slope(double windingC, double caseC, double current) {
        double copper = RESISTANCE * (1.0 + 0.00393 * (windingC - 20.0)) * current * current;
        double inward = (windingC - caseC) / HEAT.windingToCase();
        double outward = (caseC - AIR_C) / HEAT.caseToAir();
        return new double[] {
            (copper - inward) / HEAT.windingHeatCapacity(),
            (inward - outward + CASE_LOSS) / HEAT.caseHeatCapacity()
        };
    }
}
