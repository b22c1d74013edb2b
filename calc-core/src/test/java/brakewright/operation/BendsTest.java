package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.Limits;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Curve;
import brakewright.spec.Joining;
import brakewright.spec.Protection;
import brakewright.spec.RoundFigures;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Where over the charge something bends, worked out by hand: {@code 30 V + 10 V·s}, 0.5 Ω. */
@Tag("law")
class BendsTest {

    private static final Offset<Double> ROUNDING = within(1e-9);

    /** Motors that ask for nothing, and pack currents of 4 A either way. */
    private static final Settings STILL = RoundFigures.set(0.0, 0.0, 4.0, 4.0);

    @Test
    void nothingBendsWhereNothingIsReached() {
        assertThat(bends(RoundFigures.vehicle().withSettings(STILL), 0.0, 1.0)).isEmpty();
    }

    /** 3.8 V per cell at rest at a charge of 0.8, 3.2 V at 0.2. */
    @Test
    void aVoltageBoundIsUsedUpAtRest() {
        Build build =
                RoundFigures.fed(RoundFigures.cell(3.2, 3.8), Protection.UNKNOWN)
                        .withSettings(STILL);
        assertThat(bends(build, 0.1, 0.5, 0.9)).containsExactly(new double[] {0.2, 0.8}, ROUNDING);
    }

    /** 4 A into the pack raise it by 2 V: to 36 V at 0.4. Without any it is at 38 V at 0.8. */
    @Test
    void aHighTaperBeginsUnderTheWholeCurrentAndHasEndedAtRest() {
        Build build = RoundFigures.vehicle().withSettings(high(36.0, 38.0));
        assertThat(bends(build, 0.1, 0.5, 1.0)).containsExactly(new double[] {0.4, 0.8}, ROUNDING);
    }

    /** 4 A out of the pack lower it by 2 V: to 34 V at 0.6. Without any it is at 32 V at 0.2. */
    @Test
    void aLowTaperBeginsUnderTheWholeCurrentAndHasEndedAtRest() {
        Build build = RoundFigures.vehicle().withSettings(low(34.0, 32.0));
        assertThat(bends(build, 0.1, 0.5, 1.0)).containsExactly(new double[] {0.2, 0.6}, ROUNDING);
    }

    /** 20 A at 10 m/s return 160 W: 4 A at 38 V and 2 V more, at a charge of 0.8. */
    @Test
    void whatTheMotorsReturnMeetsThePackRegenCurrent() {
        Build build = RoundFigures.vehicle().withSettings(RoundFigures.set(0.0, 20.0, 4.0, 4.0));
        assertThat(bends(build, 0.1, 0.5, 0.9)).containsExactly(new double[] {0.8}, ROUNDING);
    }

    /** 20 A at 10 m/s draw 240 W: 8 A at 34 V less 4 V, at a charge of 0.4. */
    @Test
    void whatTheMotorsDrawMeetsThePackDischargeCurrent() {
        Build build = RoundFigures.vehicle().withSettings(RoundFigures.set(20.0, 0.0, 8.0, 4.0));
        assertThat(bends(build, 0.1, 0.5, 0.9)).containsExactly(new double[] {0.4}, ROUNDING);
    }

    /**
     * At 5 °C the pack has 1 Ω: 160 W are 4 A at 36 V and 4 V more. The coldest cells in use count
     * beside the pack's own.
     */
    @Test
    void coldCellsBendElsewhere() {
        Build warm =
                RoundFigures.fed(RoundFigures.resistingCold(2.0), Protection.UNKNOWN)
                        .withSettings(RoundFigures.set(0.0, 20.0, 4.0, 4.0));
        Build cold = RoundFigures.coldestAt(warm, 5.0);
        assertThat(bends(cold, 0.1, 0.5, 0.9)).containsExactly(new double[] {0.6, 0.8}, ROUNDING);
    }

    /**
     * A second pack has four times the resistance where both are empty and as much where they are
     * full, {@code 2 Ω − 1.5 Ω·s}: 0.4 Ω and 0.25 Ω together. Halfway, 1.25 Ω beside 0.5 Ω are
     * 0.357 Ω, where on a straight line they would be 0.325 Ω.
     */
    @Test
    void packsThatShareUnevenlyAreSolvedFor() {
        Cell other =
                Builds.withResistanceByCharge(
                        RoundFigures.CELL,
                        Curve.of(new double[] {0.0, 1.0}, new double[] {4.0, 1.0}));
        Build build =
                RoundFigures.vehicle()
                        .withBattery(
                                Builds.joined(
                                        Joining.PARALLEL,
                                        List.of(
                                                RoundFigures.pack(
                                                        RoundFigures.CELL, Protection.UNKNOWN),
                                                RoundFigures.pack(other, Protection.UNKNOWN))))
                        .withSettings(high(35.0 + 4.0 * (0.5 * 1.25 / 1.75), 39.0));
        assertThat(bends(build, 0.0, 1.0)).containsExactly(new double[] {0.5, 0.9}, ROUNDING);
    }

    /** 3.75 V per cell at rest and 37.5 V of the pack, at a charge of 0.75. */
    @Test
    void whatIsLookedAtAnywayIsNotToldAgain() {
        Build bound =
                RoundFigures.fed(RoundFigures.cell(2.0, 3.75), Protection.UNKNOWN)
                        .withSettings(STILL);
        Build taper = RoundFigures.vehicle().withSettings(high(36.5, 37.5));
        assertThat(bends(bound, 0.5, 0.75, 0.9)).isEmpty();
        assertThat(bends(taper, 0.45, 0.75, 0.9)).isEmpty();
    }

    private static double[] bends(Build build, double... points) {
        Limits limits = Limits.of(build);
        Operation operation = Operation.of(build, limits);
        List<Flow> flows =
                Flow.each(
                        build,
                        operation,
                        limits.battery().along(points),
                        limits.battery().into().along(points));
        double[] found = Bends.of(limits, operation, points, flows);
        Arrays.sort(found);
        return found;
    }

    private static Settings high(double begins, double ends) {
        return STILL.withHighVoltageTaper(Optional.of(new Taper(begins, ends)));
    }

    private static Settings low(double begins, double ends) {
        return STILL.withLowVoltageTaper(Optional.of(new Taper(begins, ends)));
    }
}
