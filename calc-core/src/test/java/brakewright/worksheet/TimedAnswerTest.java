package brakewright.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.battery.WorstGroup;
import brakewright.operation.FirstStop;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Curve;
import brakewright.spec.Onset;
import brakewright.spec.Relaxation;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Each answer is what the packs do after the time that is told with it. */
class TimedAnswerTest {

    private static final Build BOARD =
            Builds.withCells(
                    Builds.trailBoard(),
                    cell ->
                            Builds.relaxing(
                                    cell,
                                    new Relaxation(
                                            0.9, 62.5, Curve.constant(1.0), new Onset(0.7, 4.0))));
    private static final Worksheet SHEET = Worksheet.of(BOARD);
    private static final BatteryModel PACK = SHEET.limits().battery();
    private static final double CELLS = BOARD.battery().temperatureC();

    @Test
    void theLoadedVoltageIsThatAfterItsHorizon() {
        double drawn = SHEET.operation().drive().packCurrent();
        double seconds = TimedAnswer.LOADED.horizon().seconds(SHEET);
        for (PackRow row : SHEET.packAt(0.9, 0.5)) {
            assertThat(row.loadedVoltage().orElseThrow())
                    .isCloseTo(
                            row.openCircuitVoltage()
                                    - drawn * PACK.resistance(row.charge(), CELLS, seconds),
                            within(1e-9));
        }
    }

    @Test
    void theCellsOfTheFirstStopAreThoseAfterItsHorizon() {
        FirstStop stop = SHEET.firstStops().get(0);
        double seconds = TimedAnswer.FIRST_STOP.horizon().seconds(SHEET);
        assertThat(stop.cellVoltage())
                .isCloseTo(
                        PACK.into()
                                .packs()
                                .get(0)
                                .highestCellVoltage(
                                        stop.packCurrent(), stop.charge(), CELLS, seconds),
                        within(1e-9));
    }

    /** Near full, where the cells' ceiling holds it down, what may be taken just reaches it. */
    @Test
    void whatMayBeTakenReachesTheCeilingAfterItsHorizon() {
        double seconds = TimedAnswer.MAY_TAKE.horizon().seconds(SHEET);
        assertThat(seconds).isGreaterThan(10.0);
        PackRow row = SHEET.packAt(0.97).get(0);
        var pack = PACK.into().packs().get(0);
        double resistance =
                pack.groupResistance(
                        pack.worst(WorstGroup.End.FULLEST), row.charge(), CELLS, seconds);
        double room =
                pack.pack().cell().voltageMax()
                        - pack.worst(WorstGroup.End.FULLEST).openCircuitVoltage(row.charge());
        assertThat(row.takeBoundBy().key()).isEqualTo("voltage-ceiling");
        assertThat(row.mayTake()).isCloseTo(room / resistance, within(1e-9));
    }

    @Test
    void theLongerTheHorizonTheMoreThePackResists() {
        List<Double> resistances =
                List.of(Horizon.INSTANT, Horizon.PULSE, Horizon.BRAKING, Horizon.ENDLESS).stream()
                        .map(each -> PACK.resistance(0.5, CELLS, each.seconds(SHEET)))
                        .toList();
        assertThat(resistances).isSorted();
        assertThat(resistances.get(3)).isGreaterThan(resistances.get(2));
    }
}
