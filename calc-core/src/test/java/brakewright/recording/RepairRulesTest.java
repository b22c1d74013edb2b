package brakewright.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.spec.Battery;
import brakewright.spec.Builds;
import brakewright.spec.Pack;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Each rule with rows that only it touches, and with rows just inside it that none touches. */
@Tag("law")
class RepairRulesTest {

    private static final int ROWS = 60;
    private static final double SPEED = 5.0;

    /** Metres on a degree of latitude, roughly. */
    private static final double DEGREE = 111_195.0;

    private final Repairs repairs = new Repairs();
    private final Rows ridden = ridden();

    /** Straight to the north at 5 m/s, a row a second; row n stands on line n + 2. */
    private static Rows ridden() {
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        columns.put(Quantity.TIME, IntStream.range(0, ROWS).mapToDouble(row -> row).toArray());
        columns.put(Quantity.WHEEL_SPEED, filled(row -> SPEED));
        columns.put(Quantity.LATITUDE, filled(row -> 45.0 + SPEED * row / DEGREE));
        columns.put(Quantity.LONGITUDE, filled(row -> 7.0));
        columns.put(Quantity.PACK_VOLTAGE, filled(row -> 38.0 - 0.01 * row));
        columns.put(Quantity.CHARGE, filled(row -> 0.9 - 0.0001 * row));
        return new Rows(columns, IntStream.range(0, ROWS).map(row -> row + 2).toArray());
    }

    private static double[] filled(IntToDoubleFunction value) {
        return IntStream.range(0, ROWS).mapToDouble(value).toArray();
    }

    private static Rows withoutPositions(Rows rows) {
        return rows.without(Quantity.LATITUDE).without(Quantity.LONGITUDE);
    }

    @Test
    void aRowWithoutATimeIsLeftOut() {
        Piece piece = cleaned(ridden.with(Quantity.TIME, 20, Double.NaN));

        assertRows(Repair.Rule.NO_TIME, 22);
        assertThat(piece.rows()).isEqualTo(ROWS - 1);
        assertThat(piece.time(20)).isEqualTo(21.0);
    }

    @Test
    void aTimeMoreThanHalfAMinuteAheadOfItsNeighboursIsLeftOut() {
        Piece piece = cleaned(ridden.with(Quantity.TIME, 20, 51.5));

        assertRows(Repair.Rule.TIME_LEAP, 22);
        assertThat(piece.rows()).isEqualTo(ROWS - 1);
        assertThat(piece.time(20)).isEqualTo(21.0);
    }

    /** Its row is early by what a row may be late, wherever in the file it stands. */
    @ParameterizedTest
    @ValueSource(ints = {1, 9, 10, 19, 20, 28})
    void aTimeLessThanHalfAMinuteAheadIsPutWhereItBelongs(int row) {
        Piece piece = cleaned(withoutPositions(ridden).with(Quantity.TIME, row, row + 30.5));

        assertOutOfOrder(30);
        assertThat(piece.rows()).isEqualTo(ROWS);
        assertThat(piece.time(row + 29)).isEqualTo(row + 30.0);
        assertThat(piece.time(row + 30)).isEqualTo(row + 30.5);
    }

    @Test
    void aTimeAheadOfAllThatFollowIsPutLast() {
        Piece piece = cleaned(withoutPositions(ridden).with(Quantity.TIME, 40, 70.5));

        assertOutOfOrder(19);
        assertThat(piece.rows()).isEqualTo(ROWS);
        assertThat(piece.time(ROWS - 1)).isEqualTo(70.5);
    }

    /** Ten would be as many as a clock has at least. */
    @ParameterizedTest
    @ValueSource(ints = {2, 9})
    void fewRowsAheadOfTheOthersAreNoClockOfTheirOwn(int ahead) {
        Rows rows = withoutPositions(ridden);
        for (int row = 12; row < 12 + ahead; row++) {
            rows = rows.with(Quantity.TIME, row, row + 28.5);
        }
        Piece piece = cleaned(rows);

        assertOutOfOrder(28);
        assertThat(piece.rows()).isEqualTo(ROWS);
    }

    private void assertOutOfOrder(int rows) {
        assertThat(repairs.all())
                .singleElement()
                .extracting(Repair::rule, Repair::count)
                .containsExactly(Repair.Rule.OUT_OF_ORDER, rows);
    }

    @Test
    void aTimeThatLeapsAndStaysIsTakenForAGap() {
        Rows gap = ridden;
        for (int row = 20; row < ROWS; row++) {
            gap = gap.with(Quantity.TIME, row, row + 100.0);
        }
        assertUntouched(gap);
    }

    @Test
    void rowsThatChangedPlacesAreSorted() {
        int[] order = IntStream.range(0, ROWS).toArray();
        order[20] = 21;
        order[21] = 20;
        Piece piece = cleaned(ridden.picked(order));

        assertRows(Repair.Rule.OUT_OF_ORDER, 23);
        assertThat(piece.column(Quantity.CHARGE))
                .containsExactly(ridden.columns().get(Quantity.CHARGE));
    }

    @Test
    void aRowThatStandsAgainIsLeftOut() {
        int[] order = IntStream.range(0, ROWS + 1).map(row -> row > 20 ? row - 1 : row).toArray();
        Piece piece = cleaned(ridden.picked(order));

        assertRows(Repair.Rule.REPEATED_ROW, 23);
        assertThat(piece.column(Quantity.TIME))
                .containsExactly(ridden.columns().get(Quantity.TIME));
    }

    @Test
    void ofTwoRowsOfOneTimeTheLaterIsLeftOut() {
        Piece piece = cleaned(ridden.with(Quantity.TIME, 21, 20.0));

        assertRows(Repair.Rule.REPEATED_TIME, 23);
        assertThat(piece.value(Quantity.CHARGE, 20)).isEqualTo(ridden.value(Quantity.CHARGE, 20));
    }

    @Test
    void timesThatDifferByTheLeastAreTwo() {
        assertUntouched(ridden.with(Quantity.TIME, 21, Math.nextUp(20.0)));
    }

    @Test
    void aClockThatFallsBackAndRunsOnForTenRowsBeganAnew() {
        List<Piece> pieces = fallenBackAt(ROWS - 10).cleaned("ride.csv", repairs);

        assertRows(Repair.Rule.CLOCK_ANEW, ROWS - 10 + 2);
        assertThat(pieces).extracting(Piece::rows).containsExactly(ROWS - 10, 10);
    }

    @Test
    void nineRowsThatFallBackAreOutOfOrder() {
        Piece piece = cleaned(fallenBackAt(ROWS - 9));

        assertRows(Repair.Rule.OUT_OF_ORDER, IntStream.range(ROWS - 9 + 2, ROWS + 2).toArray());
        assertThat(piece.rows()).isEqualTo(ROWS);
    }

    /** A wrong time just before it hides no clock that began anew. */
    @ParameterizedTest
    @ValueSource(doubles = {-20.5, 20.5})
    void aClockThatBeganAnewIsKnownBehindAWrongTime(double off) {
        Rows rows = fallenBackAt(30).with(Quantity.TIME, 29, 29 + off);

        assertThat(rows.cleaned("ride.csv", repairs))
                .extracting(Piece::rows)
                .containsExactly(30, 30);
    }

    private Rows fallenBackAt(int from) {
        Rows rows = withoutPositions(ridden);
        for (int row = from; row < ROWS; row++) {
            rows = rows.with(Quantity.TIME, row, row - from + 0.5);
        }
        return rows;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.9, 1000.5, -38.0, Double.POSITIVE_INFINITY})
    void aValueBeyondWhatIsPossibleIsLeftOut(double volts) {
        Piece piece = cleaned(ridden.with(Quantity.PACK_VOLTAGE, 20, volts));

        assertFields(Repair.Rule.IMPOSSIBLE, Quantity.PACK_VOLTAGE, 22);
        assertLeftOut(piece, Quantity.PACK_VOLTAGE, 20);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0, 1000.0})
    void aValueAtTheEndOfWhatIsPossibleStays(double volts) {
        assertUntouched(ridden.with(Quantity.PACK_VOLTAGE, 20, volts));
    }

    @Test
    void aPositionOfTwoZeroesIsNone() {
        Piece piece =
                cleaned(ridden.with(Quantity.LATITUDE, 20, 0.0).with(Quantity.LONGITUDE, 20, 0.0));

        assertFields(Repair.Rule.IMPOSSIBLE, Quantity.LATITUDE, 22);
        assertLeftOut(piece, Quantity.LATITUDE, 20);
        assertThat(piece.value(Quantity.LONGITUDE, 20)).isNaN();
    }

    @Test
    void aRideAcrossTheEquatorStays() {
        Rows rows = ridden;
        for (int row = 0; row < ROWS; row++) {
            rows = rows.with(Quantity.LATITUDE, row, SPEED * (row - 20) / DEGREE);
        }
        assertUntouched(rows);
    }

    @Test
    void aSpeedThatLeapsAwayAndBackIsLeftOut() {
        Piece piece = cleaned(ridden.with(Quantity.WHEEL_SPEED, 20, SPEED + 15.5));

        assertFields(Repair.Rule.SPIKE, Quantity.WHEEL_SPEED, 22);
        assertLeftOut(piece, Quantity.WHEEL_SPEED, 20);
    }

    @Test
    void aSpeedThatLeapsLessOrStaysIsKept() {
        assertUntouched(ridden.with(Quantity.WHEEL_SPEED, 20, SPEED + 14.5));
        assertUntouched(
                ridden.with(Quantity.WHEEL_SPEED, 20, SPEED + 15.5)
                        .with(Quantity.WHEEL_SPEED, 21, SPEED + 15.5));
    }

    @Test
    void rowsThatRepeatForFiveSecondsOnTheWayAreFrozen() {
        Piece piece = cleaned(repeated(ridden, 20, 25));

        assertRows(Repair.Rule.FROZEN, 23, 24, 25, 26, 27);
        assertThat(piece.rows()).isEqualTo(ROWS - 5);
        assertThat(piece.time(21)).isEqualTo(26.0);
    }

    @Test
    void rowsThatRepeatForLessOrAtAWalkStay() {
        assertUntouched(repeated(ridden, 20, 24));
        assertUntouched(repeated(ridden.with(Quantity.WHEEL_SPEED, 20, 1.0), 20, 30));
    }

    @Test
    void whatRepeatsForTheFourthTimeIsASteadyRide() {
        Rows rows = withoutPositions(ridden);
        for (int from : List.of(0, 10, 20, 30)) {
            rows = repeated(rows, from, from + 5);
        }
        Piece piece = cleaned(rows);

        assertThat(repairs.all())
                .singleElement()
                .extracting(Repair::rule, Repair::count)
                .containsExactly(Repair.Rule.REPEATING, 20);
        assertThat(piece.rows()).isEqualTo(ROWS);
    }

    @Test
    void whatRepeatsForTheThirdTimeIsStillAFreeze() {
        Rows rows = withoutPositions(ridden);
        for (int from : List.of(0, 10, 20)) {
            rows = repeated(rows, from, from + 5);
        }
        Piece piece = cleaned(rows);

        assertThat(repairs.all())
                .singleElement()
                .extracting(Repair::rule, Repair::count)
                .containsExactly(Repair.Rule.FROZEN, 15);
        assertThat(piece.rows()).isEqualTo(ROWS - 15);
    }

    /** All but the time as in the first of them. */
    private static Rows repeated(Rows rows, int from, int to) {
        Rows repeated = rows;
        for (Quantity quantity : rows.columns().keySet()) {
            for (int row = from + 1; row <= to && quantity != Quantity.TIME; row++) {
                repeated = repeated.with(quantity, row, rows.value(quantity, from));
            }
        }
        return repeated;
    }

    /** 30 m of scatter and 70 m that could be ridden in the second. */
    @Test
    void aPositionBeyondAHundredMetresOfTheLastIsLeftOut() {
        Piece piece = cleaned(awayFromTheLast(101.0));

        assertFields(Repair.Rule.POSITION_LEAP, Quantity.LATITUDE, 22);
        assertLeftOut(piece, Quantity.LATITUDE, 20);
        assertThat(piece.value(Quantity.LONGITUDE, 20)).isNaN();
    }

    @Test
    void aPositionWithinAHundredMetresOfTheLastStays() {
        assertUntouched(awayFromTheLast(99.0));
    }

    private Rows awayFromTheLast(double metres) {
        return ridden.with(
                Quantity.LATITUDE, 20, ridden.value(Quantity.LATITUDE, 19) + metres / DEGREE);
    }

    /** After 35 m that the wheels rode, where 30 m may be scatter. */
    @Test
    void aPositionThatStandsStillWhileTheWheelsTurnIsLeftOut() {
        Piece piece = cleaned(standingStill(17));

        assertFields(Repair.Rule.POSITION_STUCK, Quantity.LATITUDE, 19);
        assertThat(piece.value(Quantity.LATITUDE, 16))
                .isEqualTo(piece.value(Quantity.LATITUDE, 10));
        assertThat(piece.value(Quantity.LATITUDE, 17)).isNaN();
        assertThat(piece.value(Quantity.LONGITUDE, 17)).isNaN();
        assertThat(piece.value(Quantity.LATITUDE, 18))
                .isEqualTo(ridden.value(Quantity.LATITUDE, 18));
    }

    @Test
    void aPositionThatStandsStillForThirtyMetresStays() {
        assertUntouched(standingStill(16));
    }

    private Rows standingStill(int to) {
        Rows rows = ridden;
        for (int row = 11; row <= to; row++) {
            rows = rows.with(Quantity.LATITUDE, row, ridden.value(Quantity.LATITUDE, 10));
        }
        return rows;
    }

    @Test
    void aChargeThatLeapsByMoreThanATenthAndComesBackIsLeftOut() {
        Piece piece = cleaned(ridden.with(Quantity.CHARGE, 20, 0.78));

        assertFields(Repair.Rule.CHARGE_LEAP, Quantity.CHARGE, 22);
        assertLeftOut(piece, Quantity.CHARGE, 20);
    }

    @Test
    void aChargeThatLeapsLessOrStaysIsKept() {
        assertUntouched(ridden.with(Quantity.CHARGE, 20, 0.81));
        Rows fallen = ridden;
        for (int row = 20; row < ROWS; row++) {
            fallen = fallen.with(Quantity.CHARGE, row, 0.5);
        }
        assertUntouched(fallen);
    }

    @Test
    void rowsWithinTheTimeOfAnotherPieceAreLeftOut() {
        Recording recording = joined(ridden.part(0, 32), ridden.part(30, ROWS));

        assertRows(Repair.Rule.OVERLAP, 32, 33);
        assertThat(recording.rows()).isEqualTo(ROWS);
        assertThat(recording.pieces()).hasSize(1);
    }

    @Test
    void piecesThatFollowEachOtherStay() {
        assertThat(joined(ridden.part(0, 30), ridden.part(30, ROWS)).rows()).isEqualTo(ROWS);
        assertThat(repairs.all()).isEmpty();
    }

    private Recording joined(Rows one, Rows other) {
        List<Piece> pieces = new ArrayList<>(one.cleaned("ride.csv", repairs));
        pieces.addAll(other.cleaned("ride.csv", repairs));
        return Joining.join(pieces, true, repairs);
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0 / 1.27, 1.27})
    void aSpeedAQuarterOffThePositionsGivesWayToTheirs(double share) {
        Ride ride = told(share, ROWS);

        assertThat(repairs.all())
                .singleElement()
                .satisfies(
                        repair -> {
                            assertThat(repair.rule()).isEqualTo(Repair.Rule.SPEED_CONTRADICTED);
                            assertThat(repair.quantity()).contains(Quantity.WHEEL_SPEED);
                            assertThat(repair.count()).isEqualTo(ROWS);
                            assertThat(repair.places().get(0)).isEqualTo(at(2));
                        });
        // DEGREE is that of a sphere to half a metre: 5e-6 of itself.
        assertThat(ride.recording().pieces().get(0).value(Quantity.SATELLITE_SPEED, 20))
                .isCloseTo(SPEED, within(1e-5 * SPEED));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1.0 / 1.23, 1.23})
    void aSpeedWithinAQuarterOfThePositionsStays(double share) {
        told(share, ROWS);
        assertThat(repairs.all()).isEmpty();
    }

    /** The 40 rows span 195 m, where 200 m are wanted. */
    @Test
    void aShortRideContradictsNoSpeed() {
        told(1.27, 40);
        assertThat(repairs.all()).isEmpty();
    }

    private Ride told(double share, int rows) {
        Rows changed = ridden;
        for (int row = 0; row < ROWS; row++) {
            changed = changed.with(Quantity.WHEEL_SPEED, row, share * SPEED);
        }
        return Ride.of(changed.part(0, rows).recorded(repairs), 3.0, 0.0, repairs).orElseThrow();
    }

    /** Half the cut-off and 1.15 times the charging limit of the cells in series. */
    @Test
    void aVoltageThatTheCellsCannotHaveIsLeftOut() {
        Battery battery = Builds.trailBoard().battery();
        Pack pack = battery.packs().get(0);
        double least = 0.5 * pack.series() * pack.cell().voltageMin();
        double most = 1.15 * pack.series() * pack.cell().voltageMax();
        Recording recording =
                ridden.with(Quantity.PACK_VOLTAGE, 20, least - 0.01)
                        .with(Quantity.PACK_VOLTAGE, 21, least + 0.01)
                        .with(Quantity.PACK_VOLTAGE, 22, most - 0.01)
                        .with(Quantity.PACK_VOLTAGE, 23, most + 0.01)
                        .recorded(repairs);
        assertThat(repairs.all()).isEmpty();

        Piece piece = CellVolts.leftOut(recording, battery, repairs).pieces().get(0);

        assertFields(Repair.Rule.VOLTS_BEYOND_CELLS, Quantity.PACK_VOLTAGE, 22, 25);
        assertThat(piece.value(Quantity.PACK_VOLTAGE, 20)).isNaN();
        assertThat(piece.value(Quantity.PACK_VOLTAGE, 21)).isEqualTo(least + 0.01);
        assertThat(piece.value(Quantity.PACK_VOLTAGE, 22)).isEqualTo(most - 0.01);
        assertThat(piece.value(Quantity.PACK_VOLTAGE, 23)).isNaN();
    }

    private Piece cleaned(Rows rows) {
        List<Piece> pieces = rows.cleaned("ride.csv", repairs);
        assertThat(pieces).hasSize(1);
        return pieces.get(0);
    }

    private void assertUntouched(Rows rows) {
        Piece piece = cleaned(rows);
        assertThat(repairs.all()).isEmpty();
        rows.columns()
                .forEach(
                        (quantity, values) ->
                                assertThat(piece.column(quantity)).containsExactly(values));
    }

    private void assertRows(Repair.Rule rule, int... lines) {
        assertThat(repairs.all()).containsExactly(repair(rule, Optional.empty(), lines));
    }

    private void assertFields(Repair.Rule rule, Quantity quantity, int... lines) {
        assertThat(repairs.all()).containsExactly(repair(rule, Optional.of(quantity), lines));
    }

    private static Repair repair(Repair.Rule rule, Optional<Quantity> quantity, int... lines) {
        List<Place> places = Arrays.stream(lines).mapToObj(RepairRulesTest::at).toList();
        return new Repair(rule, quantity, lines.length, places);
    }

    private static Place at(int line) {
        return new Place("ride.csv", line);
    }

    /** One field is gone, its neighbours stand. */
    private void assertLeftOut(Piece piece, Quantity quantity, int row) {
        assertThat(piece.rows()).isEqualTo(ROWS);
        assertThat(piece.value(quantity, row)).isNaN();
        assertThat(piece.value(quantity, row - 1)).isEqualTo(ridden.value(quantity, row - 1));
        assertThat(piece.value(quantity, row + 1)).isEqualTo(ridden.value(quantity, row + 1));
    }
}
