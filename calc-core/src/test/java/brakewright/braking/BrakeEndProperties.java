package brakewright.braking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.operation.SetBuild;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Controllers;
import brakewright.spec.Motor;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** A speed below which the controllers do not brake. */
@Tag("law")
@Domain(SetBuild.class)
@Domain(DomainContext.Global.class)
class BrakeEndProperties {

    private static final double INTEGRATED = 1e-6;

    /** Above it nothing changes, below it no current flows: what is left is the motors' drag. */
    @Property
    void itActsDownToThatSpeedAndNoFurther(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 8.0) double end,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 16.0) double speed) {
        ElectricBrake whole = brake(endingAt(any, 0.0));
        ElectricBrake ended = brake(endingAt(any, end));
        PackState pack = fullest(any);
        if (speed < end) {
            assertThat(ended.motorCurrent(speed, pack)).isZero();
            assertThat(ended.packCurrent(speed, pack)).isZero();
            assertThat(ended.greatestReturn(speed, pack)).isZero();
        } else {
            assertThat(ended.motorCurrent(speed, pack)).isEqualTo(whole.motorCurrent(speed, pack));
            assertThat(ended.packCurrent(speed, pack)).isEqualTo(whole.packCurrent(speed, pack));
            assertThat(ended.greatestReturn(speed, pack))
                    .isEqualTo(whole.greatestReturn(speed, pack));
        }
        assertThat(ended.fadeSpeed(pack)).isGreaterThanOrEqualTo(end);
    }

    /** While the brakes build up, the peak is read off a parabola through a step; 4e-4 was met. */
    private static final double PARABOLA = 2e-3;

    /** From below it a stop is one without electric brake, and from above never a shorter one. */
    @Property(tries = 200)
    void aStopIsNeverShorterForIt(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 8.0) double end,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 12.0) double speed) {
        Build whole = endingAt(any, 0.0);
        Build ended = endingAt(any, end);
        double charge = any.use().chargeFrom();
        StopOutcome before = stop(whole, brake(whole), speed, charge);
        StopOutcome after = stop(ended, brake(ended), speed, charge);
        if (speed <= end) {
            Powertrain train = Powertrain.of(any);
            ElectricBrake none = new ElectricBrake(train, 0.0, 0.0, Optional.empty());
            same(after, stop(whole, none, speed, charge));
        }
        if (after instanceof StopOutcome.Stopped longer
                && before instanceof StopOutcome.Stopped shorter) {
            assertThat(longer.distance())
                    .isGreaterThanOrEqualTo(shorter.distance() * (1.0 - INTEGRATED));
            assertThat(longer.peakPackCurrent())
                    .isLessThanOrEqualTo(shorter.peakPackCurrent() * (1.0 + PARABOLA) + 1e-9);
        }
        if (before instanceof StopOutcome.Unstoppable) {
            assertThat(after).isInstanceOf(StopOutcome.Unstoppable.class);
        }
    }

    /**
     * The force jumps there, also while the brakes build up: a little faster is a little longer.
     */
    @Example
    void aStopGrowsEvenlyWithTheSpeedWhereTheBrakeEndsWhileItBuildsUp() {
        Build build = endingAt(Builds.trailBoard(), 2.9);
        double step = 1e-5;
        double last = Double.NaN;
        double first = Double.NaN;
        for (int i = 0; i <= 100; i++) {
            StopOutcome outcome = stop(build, strong(build), 3.0 + i * step, 0.5);
            double distance = ((StopOutcome.Stopped) outcome).distance();
            double growth = distance - last;
            first = i == 1 ? growth : first;
            assertThat(i < 2 || Math.abs(growth - first) < 0.01 * first).as("step %d", i).isTrue();
            last = distance;
        }
        assertThat(first).isPositive();
    }

    /** Motors whose drag alone is more than grip leaves: where it holds, the force bends. */
    @Example
    void aMarkBesideTheSpeedAtWhichGripHoldsTheDragMovesNoStop() {
        Build board = slippery(Builds.trailBoard());
        ElectricBrake none = new ElectricBrake(Powertrain.of(board), 0.0, 0.0, Optional.empty());
        StopOutcome whole = stop(endingAt(board, 0.0), none, 3.0, 0.5);
        for (double end = 0.4; end < 0.8; end += 0.01) {
            ElectricBrake ended =
                    new ElectricBrake(Powertrain.of(board), 0.0, 0.0, Optional.empty(), end);
            same(stop(endingAt(board, end), ended, 3.0, 0.5), whole);
        }
    }

    /** A descent that is steeper than road and drag is held at no speed below it. */
    @Property(tries = 200)
    void noDescentIsHeldBelowIt(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 8.0) double end,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 0.99) double share,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.3) double slope) {
        Build build = endingAt(any, end);
        double speed = share * end;
        Limits limits = Limits.of(build);
        Descent descent =
                Descent.of(
                        build,
                        brake(build),
                        limits,
                        build.battery().temperatureC(),
                        slope,
                        speed,
                        build.use().chargeFrom());
        double drag = Powertrain.of(build).brakeForce(0.0, speed);
        double pull = -RoadLoad.of(build).force(speed, -slope, 0.0);
        assertThat(descent.available()).isLessThanOrEqualTo(drag * (1.0 + INTEGRATED));
        if (pull > drag * (1.0 + INTEGRATED)) {
            assertThat(descent.isHeld()).isFalse();
            assertThat(descent.end()).isEqualTo(DescentEnd.NOT_HELD);
        }
    }

    /** Down a slope that only the current holds, the vehicle comes down to that speed and stays. */
    @Property(tries = 200)
    void downhillItRollsOnAtThatSpeed(
            @ForAll Build any, @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 3.0) double end) {
        Build build = endingAt(Builds.trailBoard().withSettings(any.settings()), end);
        double slope = 0.08;
        Surroundings down = Surroundings.of(build).withSlope(-slope);
        StopOutcome outcome =
                new Stop(build, strong(build), down).from(6.0, build.use().chargeTo());
        assertThat(outcome).isInstanceOf(StopOutcome.Unstoppable.class);
        assertThat(((StopOutcome.Unstoppable) outcome).heldAt()).isCloseTo(end, within(1e-6));
    }

    /** A board whose brake ends below 5.4 km/h: on the level it stops, down 8 % it keeps those. */
    @Example
    void aSpeedIsHeldDownhillWhereTheBrakeEnds() {
        Build board = endingAt(Builds.trailBoard(), 1.5);
        Surroundings level = Surroundings.of(board);
        double charge = board.use().chargeTo();
        assertThat(new Stop(board, strong(board), level).from(6.0, charge))
                .isInstanceOf(StopOutcome.Stopped.class);
        StopOutcome down = new Stop(board, strong(board), level.withSlope(-0.08)).from(6.0, charge);
        assertThat(down).isInstanceOf(StopOutcome.Unstoppable.class);
        assertThat(((StopOutcome.Unstoppable) down).heldAt()).isCloseTo(1.5, within(1e-6));
    }

    private static void same(StopOutcome one, StopOutcome other) {
        assertThat(one.getClass()).isEqualTo(other.getClass());
        if (one instanceof StopOutcome.Stopped stopped) {
            double expected = ((StopOutcome.Stopped) other).distance();
            assertThat(stopped.distance()).isCloseTo(expected, within(INTEGRATED * expected));
        }
    }

    private static StopOutcome stop(Build build, ElectricBrake brake, double speed, double charge) {
        return new Stop(build, brake, Surroundings.of(build)).from(speed, charge);
    }

    private static ElectricBrake strong(Build build) {
        return new ElectricBrake(
                Powertrain.of(build),
                40.0,
                40.0,
                Optional.empty(),
                build.controllers().brakeEndsBelow());
    }

    private static ElectricBrake brake(Build build) {
        return Operation.of(build, Limits.of(build)).brake();
    }

    private static PackState fullest(Build build) {
        return PackState.of(
                new BatteryModel(build.battery()),
                build.use().chargeFrom(),
                build.battery().temperatureC());
    }

    private static Build slippery(Build build) {
        Motor old = build.motor();
        return Builds.withMotor(build, old.withViscousDrag(0.1));
    }

    private static Build endingAt(Build build, double end) {
        Controllers old = build.controllers();
        return Builds.withControllers(build, old.withBrakeEndsBelow(end));
    }
}
