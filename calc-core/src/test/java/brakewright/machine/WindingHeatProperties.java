package brakewright.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.machine.WindingHeat.Temperatures;
import brakewright.spec.AnyBuild;
import brakewright.spec.MotorHeat;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class WindingHeatProperties {

    private static final double LIMIT_C = 125.0;
    private static final double AIR_C = 20.0;
    private static final double RESISTANCE = 0.05;
    private static final double CASE_LOSS = 3.0;

    /** Rounding of temperatures of some hundred degrees. */
    private static final double ROUNDING_K = 1e-8;

    private static final double INTEGRATED = 1e-6;

    @Property(tries = 100)
    void agreesWithANumericalSolution(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 60.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 600.0) double time,
            @ForAll @Scale(6) @DoubleRange(min = -10.0, max = 120.0) double windingC,
            @ForAll @Scale(6) @DoubleRange(min = -10.0, max = 120.0) double caseC) {
        WindingHeat model = model(heat);
        Temperatures exact = model.after(new Temperatures(windingC, caseC), current, time);
        Assume.that(exact.windingC() < 1e6);
        assertClose(exact, integrated(heat, current, time, windingC, caseC), INTEGRATED);
    }

    @Example
    void agreesWithANumericalSolutionOfARunAway() {
        MotorHeat heat = new MotorHeat(0.5, 1.5, 40.0, 300.0);
        WindingHeat model = model(heat);
        assertThat(model.runsAway(60.0)).isTrue();
        assertClose(
                model.after(new Temperatures(70.0, 50.0), 60.0, 120.0),
                integrated(heat, 60.0, 120.0, 70.0, 50.0),
                INTEGRATED);
    }

    /** A winding that holds next to nothing leaves a case that cools alone, by 1/e in its time. */
    @Property
    void aVeryLightWindingLosesNoDigits(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 40.0, max = 120.0) double caseC) {
        MotorHeat light = heat.withWindingHeatCapacity(1e-12);
        WindingHeat model = new WindingHeat(light, RESISTANCE, LIMIT_C, AIR_C, 0.0);
        Temperatures start = new Temperatures(caseC, caseC);
        double time = heat.caseHeatCapacity() * heat.caseToAir();
        Temperatures end = model.after(start, 0.0, time);
        double expected = AIR_C + (caseC - AIR_C) / Math.E;
        assertThat(end.caseC()).isCloseTo(expected, within(1e-9 * caseC));
        assertThat(end.windingC()).isCloseTo(expected, within(1e-9 * caseC));
    }

    @Property
    void twoTimesAreAsGoodAsTheirSum(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 300.0) double first,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 300.0) double second) {
        WindingHeat model = model(heat);
        Temperatures once = model.after(model.cold(), current, first + second);
        Temperatures twice =
                model.after(model.after(model.cold(), current, first), current, second);
        assertClose(twice, once, 1e-9);
    }

    /** The form that explanations write: what is left of the balance dies away or grows. */
    @Property
    void thePartsAboutTheBalanceAreTheSame(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 300.0) double time,
            @ForAll @Scale(6) @DoubleRange(min = -10.0, max = 120.0) double windingC,
            @ForAll @Scale(6) @DoubleRange(min = -10.0, max = 120.0) double caseC) {
        WindingHeat model = model(heat);
        Temperatures start = new Temperatures(windingC, caseC);
        WindingResponse response = model.response(start, current);
        Assume.that(Math.abs(response.balance().windingK()) < 1e5);
        assertClose(
                model.temperatures(response.risesAt(time)),
                model.after(start, current, time),
                1e-9);
    }

    /** What leads to a rise leads to it. */
    @Property
    void theRiseBeforehandBecomesTheOneAsked(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 60.0) double time,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 120.0) double rise,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 120.0) double shell) {
        WindingHeat model = model(heat);
        WindingResponse response = model.response(model.cold(), current);
        Assume.that(Math.abs(response.balance().windingK()) < 1e4);
        double before = response.before(rise, time, shell).windingK();
        Assume.that(Math.abs(before) < 1e4);
        Temperatures start = model.temperatures(new WindingHeat.Rises(before, shell));
        assertThat(model.after(start, current, time).windingC())
                .isCloseTo(AIR_C + rise, within(1e-6));
    }

    @Property
    void noTimeChangesNothing(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 100.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = -10.0, max = 120.0) double windingC,
            @ForAll @Scale(6) @DoubleRange(min = -10.0, max = 120.0) double caseC) {
        Temperatures start = new Temperatures(windingC, caseC);
        assertClose(model(heat).after(start, current, 0.0), start, 1e-9);
    }

    @Property
    void aHotterStartIsNeverCoolerLater(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 900.0) double time,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 60.0) double windingHotter,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 60.0) double caseHotter) {
        WindingHeat model = model(heat);
        Temperatures cool = model.after(model.cold(), current, time);
        Temperatures hot =
                model.after(
                        new Temperatures(AIR_C + windingHotter, AIR_C + caseHotter), current, time);
        double rounding = 1e-12 * cool.windingC() + ROUNDING_K;
        assertThat(hot.windingC()).isGreaterThanOrEqualTo(cool.windingC() - rounding);
        assertThat(hot.caseC()).isGreaterThanOrEqualTo(cool.caseC() - rounding);
    }

    @Property
    void moreCurrentIsNeverCooler(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double other,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 900.0) double time) {
        WindingHeat model = model(heat);
        double less = model.after(model.cold(), Math.min(one, other), time).windingC();
        double more = model.after(model.cold(), Math.max(one, other), time).windingC();
        assertThat(more).isGreaterThanOrEqualTo(less - 1e-12 * less - ROUNDING_K);
    }

    @Property
    void aCurrentRunsAwayWhereItHasNoSteadyState(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 200.0) double current) {
        WindingHeat model = model(heat);
        assertThat(model.steady(current).isEmpty()).isEqualTo(model.runsAway(current));
    }

    @Property
    void theSteadyStateNoLongerMoves(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 60.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 2000.0) double time) {
        WindingHeat model = model(heat);
        Optional<Temperatures> steady = model.steady(current);
        Assume.that(steady.isPresent() && steady.get().windingC() < 1000.0);
        assertClose(model.after(steady.get(), current, time), steady.get(), 1e-8);
    }

    @Property
    void theContinuousCurrentSettlesAtTheLimit(@ForAll MotorHeat heat) {
        WindingHeat model = model(heat);
        double current = model.continuousCurrent();
        assertThat(current).isPositive();
        assertThat(model.steady(current).orElseThrow().windingC())
                .isCloseTo(LIMIT_C, within(ROUNDING_K));
    }

    @Property
    void theTimeToTheLimitLeadsToTheLimit(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 1.05, max = 20.0) double multiple) {
        WindingHeat model = model(heat);
        double current = multiple * model.continuousCurrent();
        double time = model.timeToLimit(model.cold(), current).orElseThrow();
        assertThat(model.after(model.cold(), current, time).windingC())
                .isCloseTo(LIMIT_C, within(1e-5));
    }

    @Property
    void belowTheContinuousCurrentTheLimitIsNeverReached(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.999) double share) {
        WindingHeat model = model(heat);
        assertThat(model.timeToLimit(model.cold(), share * model.continuousCurrent())).isEmpty();
    }

    @Property
    void theHighestCurrentForATimeReachesTheLimitThen(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 600.0) double time) {
        WindingHeat model = model(heat);
        double current = model.highestCurrentFor(model.cold(), time);
        assertThat(model.after(model.cold(), current, time).windingC())
                .isCloseTo(LIMIT_C, within(1e-5));
    }

    @Property
    void timeToLimitAndHighestCurrentAreInverse(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 1.05, max = 4.0) double multiple) {
        WindingHeat model = model(heat);
        double current = multiple * model.continuousCurrent();
        double time = model.timeToLimit(model.cold(), current).orElseThrow();
        assertThat(model.highestCurrentFor(model.cold(), time))
                .isCloseTo(current, within(1e-6 * current));
    }

    /** An hour at full pull is a long climb, not an error. */
    @Property
    void aLongTimeStillHasAHighestCurrent(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 600.0, max = 7200.0) double time) {
        WindingHeat model = model(heat);
        assertThat(model.highestCurrentFor(model.cold(), time))
                .isGreaterThanOrEqualTo(model.continuousCurrent() * (1.0 - 1e-9));
    }

    @Property
    void aWindingAtItsLimitBearsNothing(
            @ForAll MotorHeat heat,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 60.0) double beyond) {
        WindingHeat model = model(heat);
        Temperatures hot = new Temperatures(LIMIT_C + beyond, 80.0);
        assertThat(model.highestCurrentFor(hot, 10.0)).isZero();
        assertThat(model.timeToLimit(hot, 5.0)).hasValue(0.0);
    }

    @Example
    void aCaseLossThatAloneReachesTheLimitLeavesNoContinuousCurrent() {
        WindingHeat model =
                new WindingHeat(
                        new MotorHeat(0.5, 2.0, 40.0, 300.0), RESISTANCE, LIMIT_C, AIR_C, 60.0);
        assertThat(model.continuousCurrent()).isZero();
    }

    private static WindingHeat model(MotorHeat heat) {
        return new WindingHeat(heat, RESISTANCE, LIMIT_C, AIR_C, CASE_LOSS);
    }

    private static Temperatures integrated(
            MotorHeat heat, double current, double time, double windingC, double caseC) {
        double[] state = {windingC, caseC};
        new DormandPrince853Integrator(1e-9, time, 1e-11, 1e-11)
                .integrate(new Balance(heat, current), 0.0, state, time, state);
        return new Temperatures(state[0], state[1]);
    }

    private static void assertClose(Temperatures got, Temperatures expected, double relative) {
        assertThat(got.windingC())
                .isCloseTo(
                        expected.windingC(),
                        within(relative * Math.max(100.0, Math.abs(expected.windingC()))));
        assertThat(got.caseC())
                .isCloseTo(
                        expected.caseC(),
                        within(relative * Math.max(100.0, Math.abs(expected.windingC()))));
    }

    /** Both heat balances as they are written down, without any rearrangement. */
    private record Balance(MotorHeat heat, double current)
            implements FirstOrderDifferentialEquations {

        @Override
        public int getDimension() {
            return 2;
        }

        @Override
        public void computeDerivatives(double t, double[] state, double[] slope) {
            double copper = RESISTANCE * (1.0 + 0.00393 * (state[0] - 20.0)) * current * current;
            double inward = (state[0] - state[1]) / heat.windingToCase();
            double outward = (state[1] - AIR_C) / heat.caseToAir();
            slope[0] = (copper - inward) / heat.windingHeatCapacity();
            slope[1] = (inward - outward + CASE_LOSS) / heat.caseHeatCapacity();
        }
    }
}
