package brakewright.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.Powertrain;
import brakewright.spec.AnyBuild;
import brakewright.spec.BrakedBuilds;
import brakewright.spec.Build;
import brakewright.spec.Builds;
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

/** Stops on the way of which the electric brake vanishes. */
@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class VanishingBrakeProperties {

    /** The quadrature's own relative tolerance, with room for its sum over many panels. */
    private static final double QUADRATURE = 1e-6;

    /** Where grip begins to hold the brake back within a panel; 1.4e-5 was met. */
    private static final double UNSEEN_BEND = 1e-4;

    /** While the brakes build up, the peak is read off a parabola through a step; 4e-4 was met. */
    private static final double PARABOLA = 2e-3;

    /** A handful of operations on numbers of like size, and a speed found to 1e-9. */
    private static final double ROUNDING = 1e-7;

    @Property(tries = 300)
    void neverStopsShorterThanWithTheBrakeAllTheWay(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 20.0) double lasts) {
        Stop stop = stop(build);
        StopOutcome.Stopped vanishing = stopped(stop.from(speed, charge, lasts));
        StopOutcome.Stopped whole = stopped(stop.from(speed, charge));
        assertThat(vanishing.distance())
                .isGreaterThanOrEqualTo(whole.distance() * (1.0 - QUADRATURE));
        assertThat(vanishing.time()).isGreaterThanOrEqualTo(whole.time() * (1.0 - QUADRATURE));
    }

    @Property(tries = 300)
    void stopsNoLaterTheLongerTheBrakeLasts(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 5.0) double lasts,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 2.0) double longer) {
        Stop stop = stop(build);
        assertThat(stopped(stop.from(speed, charge, lasts + longer)).distance())
                .isLessThanOrEqualTo(
                        stopped(stop.from(speed, charge, lasts)).distance() * (1.0 + UNSEEN_BEND));
    }

    /**
     * A moment longer slows by the deceleration of that moment and no more, and each bit of speed
     * takes its own bit of way: {@code v·Δv/a}.
     */
    @Property(tries = 300)
    void isContinuousInTheTimeThatTheBrakeLasts(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 3.0) double lasts) {
        Stop stop = stop(build);
        StopOutcome.Stopped one = stopped(stop.from(speed, charge, lasts));
        double moment = 1e-3;
        double other = stopped(stop.from(speed, charge, lasts + moment)).distance();
        Braking whole = new Braking(build, brake(build), Surroundings.of(build));
        double hardest = 0.0;
        for (int step = 0; step <= 100; step++) {
            double here = Math.max(1e-9, speed * step / 100.0);
            hardest = Math.max(hardest, whole.slowing(here, whole.pack(charge)));
        }
        double most =
                2.0 * speed * moment * hardest / whole.inertia() / one.leastDeceleration()
                        + speed * moment;
        assertThat(other).isCloseTo(one.distance(), within(most + QUADRATURE * one.distance()));
    }

    @Property(tries = 200)
    void aBrakeThatLastsForNoTimeIsNone(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        ElectricBrake brake = brake(build);
        ElectricBrake none = new ElectricBrake(brake.powertrain(), 0.0, 0.0, Optional.empty());
        double without =
                stopped(new Stop(build, none, Surroundings.of(build)).from(speed, charge))
                        .distance();
        assertThat(stopped(stop(build).from(speed, charge, 0.0)).distance())
                .isCloseTo(without, within(QUADRATURE * without));
    }

    @Property(tries = 200)
    void aBrakeThatOutlastsTheStopMakesNoDifference(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Stop stop = stop(build);
        StopOutcome.Stopped whole = stopped(stop.from(speed, charge));
        StopOutcome.Stopped outlasted = stopped(stop.from(speed, charge, 1.001 * whole.time()));
        assertThat(outlasted.distance())
                .isCloseTo(whole.distance(), within(UNSEEN_BEND * whole.distance()));
        assertThat(outlasted.time()).isCloseTo(whole.time(), within(UNSEEN_BEND * whole.time()));
        assertThat(outlasted.peakPackCurrent())
                .isCloseTo(whole.peakPackCurrent(), within(PARABOLA * whole.peakPackCurrent()));
    }

    /** While the brakes build up, the speed is integrated and not counted. */
    @Property(tries = 200)
    void theEnergyOfMotionIsAccountedFor(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 3.0) double lasts) {
        StopOutcome.Stopped stopped = stopped(stop(build).from(speed, charge, lasts));
        double energy = 0.5 * build.inertia() * speed * speed;
        StopProperties.ledgerCloses(stopped, energy, QUADRATURE);
    }

    /**
     * Two constant forces, one after the other: worked out by hand. The time at which the brake
     * vanishes is known to {@link #NEGLIGIBLE_TIME}, the speed there to as much of the
     * deceleration.
     */
    @Property(tries = 200)
    void twoConstantForcesStopAsTheLawsOfMotionSay(
            @ForAll @Scale(6) @DoubleRange(min = 2.0, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 2.0) double friction,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 20.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double part) {
        Build build = BrakedBuilds.frictionOnly(friction);
        Powertrain train = Powertrain.of(build);
        ElectricBrake brake = new ElectricBrake(train, current, 1e6, Optional.empty());
        Braking braking = new Braking(build, brake, Surroundings.of(build));
        Assume.that(braking.motorCurrent(speed, braking.pack(0.5), 1.0) == current);
        double both = friction + train.brakeForce(current, speed) / build.inertia();
        double lasts = part * speed / both;
        double left = speed - both * lasts;
        double expected = lasts * (speed + left) / 2.0 + left * left / (2.0 * friction);
        StopOutcome.Stopped stopped =
                stopped(new Stop(build, brake, Surroundings.of(build)).from(speed, 0.5, lasts));
        assertThat(stopped.distance()).isCloseTo(expected, within(ROUNDING * expected));
        double time = lasts + left / friction;
        assertThat(stopped.time()).isCloseTo(time, within(ROUNDING * time));
    }

    /** Level road without any resistance: once the brake is gone nothing slows. */
    @Example
    void whatNothingSlowsDoesNotStop() {
        Build build = BrakedBuilds.frictionOnly(0.0);
        ElectricBrake brake = new ElectricBrake(Powertrain.of(build), 10.0, 1e6, Optional.empty());
        Stop stop = new Stop(build, brake, Surroundings.of(build));
        assertThat(stop.from(8.0, 0.5)).isInstanceOf(StopOutcome.Stopped.class);
        assertThat(stop.from(8.0, 0.5, 1.0)).isInstanceOf(StopOutcome.Unstoppable.class);
    }

    @Example
    void aTimeBeforeTheBeginningIsRefused() {
        Stop stop = stop(Builds.trailBoard());
        assertThatThrownBy(() -> stop.from(8.0, 0.5, -0.1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("-0.1 s");
        assertThatThrownBy(() -> stop.from(8.0, 0.5, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static ElectricBrake brake(Build build) {
        return Operation.of(build, Limits.of(build)).brake();
    }

    private static Stop stop(Build build) {
        return new Stop(build, brake(build), Surroundings.of(build));
    }

    private static StopOutcome.Stopped stopped(StopOutcome outcome) {
        Assume.that(outcome instanceof StopOutcome.Stopped);
        return (StopOutcome.Stopped) outcome;
    }
}
