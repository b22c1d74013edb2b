package brakewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.review.Operation;
import brakewright.road.RoadLoad;
import brakewright.spec.AnyBuild;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class DescentProperties {

    private static final double CELLS_C = 25.0;
    private static final double ROUNDING = 1e-9;

    /** The charge state is raised in steps of 0.25 %. */
    private static final double CHARGE_STEP = 0.0025;

    @Property(tries = 300)
    void theBrakeHoldsTheSteepestSlopeAndNoSteeper(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Descent level = descent(build, 0.0, speed, charge);
        double steepest = level.steepestHeld();
        Assume.that(steepest < 10.0);
        Descent edge = descent(build, steepest, speed, charge);
        double weight = build.mass() * 9.80665;
        assertThat(edge.pull()).isCloseTo(edge.available(), within(ROUNDING * weight));
        assertThat(descent(build, steepest * 1.0001, speed, charge).isHeld()).isFalse();
        assertThat(descent(build, steepest * 0.9999, speed, charge).isHeld()).isTrue();
        assertThat(edge.steepestHeld()).isEqualTo(steepest);
    }

    @Property(tries = 300)
    void thePullIsTheRoadLoadTurnedRound(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.5) double slope) {
        Descent descent = descent(build, slope, speed, 0.5);
        double angle = Math.atan(slope);
        RoadLoad load = RoadLoad.of(build);
        double expected =
                build.mass()
                                * 9.80665
                                * (Math.sin(angle) - load.rollingResistance() * Math.cos(angle))
                        - load.airForce(speed);
        assertThat(descent.pull()).isCloseTo(expected, within(ROUNDING * build.mass() * 9.80665));
    }

    /** At the current that is named, the brake is as strong as the pull, or drag alone stronger. */
    @Property(tries = 300)
    void theNamedCurrentHolds(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.5) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Descent descent = descent(build, slope, speed, charge);
        Powertrain train = brake(build).powertrain();
        double force = train.brakeForce(descent.motorCurrent(), speed);
        assertThat(force).isGreaterThanOrEqualTo(descent.pull() * (1.0 - ROUNDING));
        if (descent.motorCurrent() > 0.0) {
            assertThat(force).isCloseTo(descent.pull(), within(ROUNDING * force));
            PackState pack = PackState.of(new BatteryModel(build.battery()), charge, CELLS_C);
            double power = train.returnedPower(descent.motorCurrent(), speed);
            assertThat(descent.packCurrent()).isEqualTo(pack.currentInto(power));
        } else {
            assertThat(descent.packCurrent()).isZero();
        }
    }

    /** Where holding draws from the pack, both end empty. */
    @Property(tries = 300)
    void aGreaterChargeNeverEndsLower(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.3) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double other) {
        Descent emptier = descent(build, slope, speed, Math.min(one, other));
        Descent fuller = descent(build, slope, speed, Math.max(one, other));
        if (emptier.isHeld() && emptier.packCurrent() < 0.0) {
            assertThat(emptier.endCharge()).isZero();
            assertThat(fuller.isHeld() ? fuller.endCharge() : 0.0).isZero();
            return;
        }
        assertThat(emptier.endCharge()).isBetween(Math.min(one, other), 1.0);
        assertThat(fuller.endCharge())
                .isGreaterThanOrEqualTo(Math.max(one, other))
                .isGreaterThan(emptier.endCharge() - 1.001 * CHARGE_STEP);
    }

    /** At a walk the brake draws more for its windings than the slope returns. */
    @Example
    void aDescentForEverDoesNotEmptyThePack() {
        Descent descent = descent(Builds.trailBoard(), 0.12, 0.3, 0.5);
        assertThat(descent.isHeld()).isTrue();
        assertThat(descent.packCurrent()).isNegative();
        assertThat(descent.distance()).isFinite();
    }

    @Property(tries = 300)
    void theDistanceIsWhatFillsThePack(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 20.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.3) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Descent descent = descent(build, slope, speed, charge);
        assertThat(descent.distance()).isNotNaN().isNotNegative();
        Assume.that(descent.packCurrent() > 0.0 && !Double.isInfinite(descent.distance()));
        double coulombs =
                (descent.endCharge() - charge)
                        * 3600.0
                        * new BatteryModel(build.battery()).capacityAh();
        PackState end =
                PackState.of(new BatteryModel(build.battery()), descent.endCharge(), CELLS_C);
        double power = brake(build).powertrain().returnedPower(descent.motorCurrent(), speed);
        double most =
                power / PackState.of(new BatteryModel(build.battery()), charge, CELLS_C).voltage();
        double least = power / (end.voltage() + most * highestResistance(build));
        double seconds = descent.distance() / speed;
        assertThat(seconds)
                .isBetween(coulombs / most * (1.0 - ROUNDING), coulombs / least * (1.0 + ROUNDING));
    }

    private static double highestResistance(Build build) {
        double highest = 0.0;
        for (int step = 0; step <= 1000; step++) {
            highest =
                    Math.max(
                            highest,
                            new BatteryModel(build.battery()).resistance(step / 1000.0, CELLS_C));
        }
        return 1.01 * highest;
    }

    private static ElectricBrake brake(Build build) {
        return Operation.of(build, Limits.of(build)).brake();
    }

    private static Descent descent(Build build, double slope, double speed, double charge) {
        return Descent.of(build, brake(build), Limits.of(build), CELLS_C, slope, speed, charge);
    }
}
