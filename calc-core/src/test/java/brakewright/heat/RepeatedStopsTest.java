package brakewright.heat;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.limit.Limits;
import brakewright.machine.Copper;
import brakewright.operation.Operation;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.ElectricDrive;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Motor;
import brakewright.spec.MotorHeat;
import brakewright.spec.Taper;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Stops in a row of a board whose charge in use runs from 1 to 0.1; half way is 0.55. */
@Tag("law")
class RepeatedStopsTest {

    private static final Build BOARD = Builds.trailBoard();
    private static final double SPEED = 8.0;

    /** A taper from 47 V to 50 V holds the brake back at the 50.3 V of the full pack alone. */
    @Test
    void theHotterOfAFullAndAHalfFullPackIsTold() {
        Operation set = Operation.of(BOARD, Limits.of(BOARD));
        ElectricBrake faded = set.brake().withTaper(Optional.of(new Taper(47.0, 50.0)));
        double full = stops(faded, set.drive(), 1.0).windingC();
        double half = stops(faded, set.drive(), 0.55).windingC();
        assertThat(half).isGreaterThan(full + 1.0);
        assertThat(
                        RepeatedStops.hottest(BOARD, faded, set.drive(), SPEED, 3)
                                .orElseThrow()
                                .windingC())
                .isEqualTo(half);
    }

    /** 10 kA heat 60 J/K by more than 4 MW. */
    @Test
    void aWindingThatMeltsWhileTheSpeedIsRegainedIsToldAtTheMeltingPoint() {
        Operation set = Operation.of(BOARD, Limits.of(BOARD));
        ElectricDrive harsh =
                new ElectricDrive(set.drive().powertrain(), 1e4, 1e4, Optional.empty());
        assertThat(stops(set.brake(), harsh, 0.55).windingC()).isEqualTo(Copper.MELTING_C);
    }

    /** A thread of copper of 0.1 J/K that hardly reaches its case. */
    @Test
    void aWindingThatMeltsInAStopIsToldAtTheMeltingPoint() {
        Motor old = BOARD.motor();
        Build thread =
                Builds.withMotor(
                        BOARD, old.withHeat(Optional.of(new MotorHeat(100.0, 1.6, 0.1, 450.0))));
        Operation set = Operation.of(thread, Limits.of(thread));
        ElectricBrake hard =
                new ElectricBrake(set.brake().powertrain(), 60.0, 40.0, Optional.empty());
        assertThat(
                        RepeatedStops.of(thread, hard, set.drive(), SPEED, 0.55, 1)
                                .orElseThrow()
                                .windingC())
                .isEqualTo(Copper.MELTING_C);
    }

    private static RepeatedStops stops(ElectricBrake brake, ElectricDrive drive, double charge) {
        return RepeatedStops.of(BOARD, brake, drive, SPEED, charge, 3).orElseThrow();
    }
}
