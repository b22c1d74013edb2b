package brakewright.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.braking.BrakesInMotion;
import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.spec.AnyBuild;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class RepeatedStopsProperties {

    /** The library's integrator is asked for 1e-10. */
    private static final double SOLVED = 1e-7;

    /** A vehicle that hardly brakes or pulls takes the integrator many steps [s]. */
    private static final double LONG = 300.0;

    /** A brake that fades at speed is strongest last; 0.44 K and 1.0 % of the rise were met. */
    private static final double COOLER_K = 0.5;

    @Property(tries = 200)
    void moreStopsAreNeverCooler(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 15.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @IntRange(min = 2, max = 10) int stops) {
        Optional<RepeatedStops> once = stops(build, speed, charge, 1);
        Optional<RepeatedStops> often = stops(build, speed, charge, stops);
        Assume.that(once.isPresent() && often.isPresent());
        assertThat(often.get().windingC()).isGreaterThanOrEqualTo(once.get().windingC());
        assertThat(once.get().windingC())
                .isGreaterThanOrEqualTo(build.use().climate().ambientC() - 1e-9);
        assertThat(often.get().limitC()).isEqualTo(build.motor().windingLimitC());
    }

    /** Stop, pull, stop, pull, ... stop: both heat balances solved in steps by the library. */
    @Property(tries = 60)
    void agreesWithBothHeatBalancesSolvedInSteps(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 15.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 0.9) double charge,
            @ForAll @IntRange(min = 1, max = 4) int stops) {
        Optional<RepeatedStops> told = stops(build, speed, charge, stops);
        Assume.that(told.isPresent());
        Operation operation = Operation.of(build, Limits.of(build));
        StopOutcome.Stopped stopped = stopped(build, operation, speed, charge);
        double pulling =
                RepeatedStops.regaining(build, operation.drive(), speed, charge).orElse(0.0);
        Assume.that(stopped.time() < LONG && pulling < LONG);
        TwoBodies bodies = TwoBodies.of(build);
        for (int stop = 1; stop <= stops; stop++) {
            bodies.warm(stopped.effectiveMotorCurrent(), stopped.time());
            if (stop < stops) {
                bodies.warm(operation.drive().motorCurrent(), pulling);
            }
        }
        double rise = bodies.hottest() - build.use().climate().ambientC();
        assertThat(told.get().windingC())
                .isCloseTo(bodies.hottest(), within(SOLVED * (1.0 + rise)));
    }

    /** The brake current as it flows warms the winding like its mean square, or a little more. */
    @Example
    void theMeanSquareWarmsAsTheCurrentItself() {
        Build board = Builds.trailBoard();
        Operation operation = Operation.of(board, Limits.of(board));
        for (double packCurrent : new double[] {3.0, 10.0, 40.0}) {
            ElectricBrake brake =
                    new ElectricBrake(
                            operation.brake().powertrain(), 60.0, packCurrent, Optional.empty());
            RepeatedStops told =
                    RepeatedStops.of(board, brake, operation.drive(), 11.0, 0.5, 5).orElseThrow();
            double pulling =
                    RepeatedStops.regaining(board, operation.drive(), 11.0, 0.5).orElseThrow();
            TwoBodies bodies = TwoBodies.of(board);
            for (int stop = 1; stop <= 5; stop++) {
                bodies.stop(new BrakesInMotion(board, brake, Surroundings.of(board)), 11.0, 0.5);
                if (stop < 5) {
                    bodies.warm(operation.drive().motorCurrent(), pulling);
                }
            }
            assertThat(told.windingC())
                    .as("at %s A into the pack", packCurrent)
                    .isBetween(bodies.hottest() - COOLER_K, bodies.hottest());
        }
    }

    @Example
    void aVehicleThatDoesNotMoveOffAgainHasNoAnswerBeyondOneStop() {
        Build board = Builds.trailBoard();
        Operation operation = Operation.of(board, Limits.of(board));
        ElectricDrive idle =
                new ElectricDrive(operation.drive().powertrain(), 0.0, 50.0, Optional.empty());
        assertThat(RepeatedStops.of(board, operation.brake(), idle, 8.0, 0.5, 1)).isPresent();
        assertThat(RepeatedStops.of(board, operation.brake(), idle, 8.0, 0.5, 2)).isEmpty();
    }

    @Property(tries = 200)
    void aMotorOfUnknownHeatHasNoAnswer(@ForAll Build build) {
        assertThat(stops(build, 5.0, 0.5, 2).isPresent())
                .satisfiesAnyOf(
                        present -> assertThat(present).isFalse(),
                        present -> assertThat(build.motor().heat()).isPresent());
    }

    private static StopOutcome.Stopped stopped(
            Build build, Operation operation, double speed, double charge) {
        return (StopOutcome.Stopped)
                new Stop(build, operation.brake(), Surroundings.of(build)).from(speed, charge);
    }

    private static Optional<RepeatedStops> stops(
            Build build, double speed, double charge, int stops) {
        Operation operation = Operation.of(build, Limits.of(build));
        return RepeatedStops.of(build, operation.brake(), operation.drive(), speed, charge, stops);
    }
}
