package brakewright.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.Limits;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A minute of even riding, a row a second, with one thing too much for ten of them. */
@Tag("law")
class HeldLimitsTest {

    private static final int ROWS = 60;
    private static final int FROM = 20;
    private static final int TO = 30;

    private final Build board = Builds.trailBoard();
    private final Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);

    private void even(Quantity quantity, double value) {
        double[] values = new double[ROWS];
        Arrays.fill(values, value);
        columns.put(quantity, values);
    }

    private void peak(Quantity quantity, double value) {
        Arrays.fill(columns.get(quantity), FROM, TO, value);
    }

    private Recording recording() {
        if (!columns.containsKey(Quantity.TIME)) {
            columns.put(Quantity.TIME, IntStream.range(0, ROWS).asDoubleStream().toArray());
            even(Quantity.WHEEL_SPEED, 5.0);
            even(Quantity.PACK_VOLTAGE, 38.0);
            even(Quantity.PACK_CURRENT, 5.0);
            even(Quantity.CHARGE, 0.6);
        }
        int[] lines = IntStream.range(2, ROWS + 2).toArray();
        return new Recording(List.of(Piece.of("ride.csv", lines, columns)), List.of(), 5.0);
    }

    private HeldLimits held() {
        return HeldLimits.of(board, Ride.of(recording(), 3.0, 0.0, new Repairs()).orElseThrow());
    }

    @Test
    void whatIsWithinThemIsNotTold() {
        assertThat(held().exceeded()).isEmpty();
        assertThat(held().chargeFrom()).isEqualTo(HeldLimits.ChargeSource.RECORDED);
    }

    /** Ten rows a second apart last nine seconds, and half a step to either side. */
    @Test
    void aCurrentThatThePackMayNotGiveIsToldWithPlaceTimeAndLimit() {
        recording();
        peak(Quantity.PACK_CURRENT, 200.0);
        Exceeded exceeded = held().exceeded().get(0);

        assertThat(exceeded.what()).isEqualTo(Exceeded.What.PACK_MAY_GIVE);
        assertThat(exceeded.rows()).isEqualTo(TO - FROM);
        assertThat(exceeded.seconds()).isCloseTo(TO - FROM, within(1.0));
        assertThat(exceeded.first().place().line()).isEqualTo(FROM + 2);
        assertThat(exceeded.limit())
                .isCloseTo(
                        Limits.of(board).packDischarge().valueAt(0.6, 20.0),
                        within(0.2 * exceeded.limit()));
    }

    @Test
    void aCurrentThatThePackMayNotTakeIsToldApart() {
        recording();
        peak(Quantity.PACK_CURRENT, -150.0);

        assertThat(held().exceeded())
                .extracting(Exceeded::what)
                .contains(Exceeded.What.PACK_MAY_TAKE)
                .doesNotContain(Exceeded.What.PACK_MAY_GIVE);
    }

    @Test
    void aVoltageBelowTheCutOffOfTheCellsIsTold() {
        recording();
        double floor =
                board.battery().packs().get(0).series()
                        * board.battery().packs().get(0).cell().voltageMin();
        peak(Quantity.PACK_VOLTAGE, floor - 0.5);

        assertThat(held().exceeded()).extracting(Exceeded::what).contains(Exceeded.What.CELL_FLOOR);
        assertThat(held().lowestCell().orElseThrow().value())
                .isCloseTo((floor - 0.5) / board.battery().packs().get(0).series(), within(1e-12));
    }

    /** From the fullest in use, as nobody knows better. */
    @Test
    void withoutAChargeItIsCounted() {
        recording();
        columns.remove(Quantity.CHARGE);

        assertThat(held().chargeFrom()).isEqualTo(HeldLimits.ChargeSource.COUNTED);
    }

    @Test
    void aVoltageThatSoManyCellsCannotHaveIsLeftOutAndTold() {
        recording();
        peak(Quantity.PACK_VOLTAGE, 4.0);
        Repairs repairs = new Repairs();
        Recording left = CellVolts.leftOut(recording(), board.battery(), repairs);

        assertThat(repairs.all())
                .singleElement()
                .satisfies(
                        repair -> {
                            assertThat(repair.rule()).isEqualTo(Repair.Rule.VOLTS_BEYOND_CELLS);
                            assertThat(repair.count()).isEqualTo(TO - FROM);
                        });
        assertThat(left.pieces().get(0).value(Quantity.PACK_VOLTAGE, FROM)).isNaN();
        assertThat(left.pieces().get(0).value(Quantity.PACK_VOLTAGE, TO)).isEqualTo(38.0);
    }
}
