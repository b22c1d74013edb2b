package brakewright.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.limit.Limits;
import brakewright.machine.Copper;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.Powertrain;
import brakewright.spec.BrakedBuilds;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Motor;
import brakewright.spec.Taper;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The hotter of a hard pull and ten stops, each solved by itself; or none where there is none. */
@Tag("law")
class HardRidingTest {

    /** The library's integrator is asked for 1e-10. */
    private static final double SOLVED = 1e-6;

    private static final double SPEED = 8.0;

    /** Pulled at 70 A for its 20 s, hardly braked: the pull is hotter. */
    @Test
    void aLongPullIsHotterThanGentleStops() {
        Build board = Builds.trailBoard();
        ElectricDrive hard = drive(board, 70.0);
        TwoBodies pulled = TwoBodies.of(board);
        pulled.warm(70.0, board.use().effort().hardPull());
        assertThat(tenStops(board, brake(board, 5.0), hard)).isLessThan(pulled.hottest());
        assertThat(HardRiding.hottest(board, brake(board, 5.0), hard, SPEED).orElseThrow())
                .isCloseTo(pulled.hottest(), within(SOLVED));
    }

    /** Ten stops at 60 A with what the drive takes between them outlast one pull of 20 s. */
    @Test
    void tenHardStopsAreHotterThanAGentlePull() {
        Build board = Builds.trailBoard();
        ElectricDrive gentle = drive(board, 25.0);
        TwoBodies pulled = TwoBodies.of(board);
        pulled.warm(25.0, board.use().effort().hardPull());
        double stopped = tenStops(board, brake(board, 60.0), gentle);
        assertThat(stopped).isGreaterThan(pulled.hottest());
        assertThat(HardRiding.hottest(board, brake(board, 60.0), gentle, SPEED).orElseThrow())
                .isCloseTo(stopped, within(SOLVED));
    }

    /** The pull alone would be an answer, and a cooler one. */
    @Test
    void aVehicleThatDoesNotStopHasNoAnswer() {
        Build bare = BrakedBuilds.frictionOnly(0.0);
        Motor old = bare.motor();
        Build bench =
                Builds.withMotor(
                        bare,
                        old.withNoLoadCurrent(0.0)
                                .withViscousDrag(0.0)
                                .withHeat(Builds.trailBoard().motor().heat()));
        assertThat(bench.motor().heat()).isPresent();
        assertThat(HardRiding.hottest(bench, brake(bench, 0.0), drive(bench, 30.0), SPEED))
                .isEmpty();
    }

    /** A taper holds back the brake of the full pack, which warms its motors less than half way. */
    @Test
    void stopsAreTakenWhereTheyAreHotter() {
        Build board = Builds.trailBoard();
        ElectricBrake tapered =
                new ElectricBrake(
                        Powertrain.of(board), 60.0, 30.0, Optional.of(new Taper(44.0, 50.0)));
        ElectricDrive gentle = drive(board, 25.0);
        double half = 0.5 * (board.use().chargeFrom() + board.use().chargeTo());
        double full = board.use().chargeFrom();
        double hotter =
                RepeatedStops.of(board, tapered, gentle, SPEED, half, 10).orElseThrow().windingC();
        assertThat(
                        RepeatedStops.of(board, tapered, gentle, SPEED, full, 10)
                                .orElseThrow()
                                .windingC())
                .isLessThan(hotter);
        assertThat(
                        RepeatedStops.hottest(board, tapered, gentle, SPEED, 10)
                                .orElseThrow()
                                .windingC())
                .isEqualTo(hotter);
    }

    /** A runaway soon leaves the numbers that a computer holds; the copper has melted before. */
    @Test
    void noWindingIsHotterThanItsCopperMeltsAt() {
        Build board = Builds.trailBoard();
        for (double current : new double[] {500.0, 2867.0, 5000.0}) {
            ElectricDrive furious = drive(board, current);
            ElectricBrake gentle = brake(board, 30.0);
            double full = board.use().chargeFrom();
            assertThat(
                            RepeatedStops.of(board, gentle, furious, SPEED, full, 10)
                                    .orElseThrow()
                                    .windingC())
                    .isEqualTo(Copper.MELTING_C);
            assertThat(HardRiding.hottest(board, gentle, furious, SPEED).orElseThrow())
                    .isEqualTo(Copper.MELTING_C);
        }
    }

    @Test
    void aVehicleThatDoesNotMoveOffAgainHasNoAnswer() {
        Build board = Builds.trailBoard();
        assertThat(HardRiding.hottest(board, brake(board, 40.0), drive(board, 0.0), SPEED))
                .isEmpty();
    }

    @Test
    void aMotorOfUnknownHeatHasNoAnswer() {
        Build trike = Builds.parcelTrike();
        Operation operation = Operation.of(trike, Limits.of(trike));
        assertThat(trike.motor().heat()).isEmpty();
        assertThat(HardRiding.hottest(trike, operation.brake(), operation.drive(), 4.0)).isEmpty();
    }

    private static double tenStops(Build board, ElectricBrake brake, ElectricDrive drive) {
        double charge = board.use().chargeFrom();
        StopOutcome.Stopped stopped =
                (StopOutcome.Stopped)
                        new Stop(board, brake, Surroundings.of(board)).from(SPEED, charge);
        double pulling = RepeatedStops.regaining(board, drive, SPEED, charge).orElseThrow();
        TwoBodies bodies = TwoBodies.of(board);
        for (int stop = 1; stop <= 10; stop++) {
            bodies.warm(stopped.effectiveMotorCurrent(), stopped.time());
            if (stop < 10) {
                bodies.warm(drive.motorCurrent(), pulling);
            }
        }
        return bodies.hottest();
    }

    private static ElectricBrake brake(Build build, double current) {
        return new ElectricBrake(Powertrain.of(build), current, 30.0, Optional.empty());
    }

    private static ElectricDrive drive(Build build, double current) {
        return new ElectricDrive(Powertrain.of(build), current, 60.0, Optional.empty());
    }
}
