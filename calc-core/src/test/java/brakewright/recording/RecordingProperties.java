package brakewright.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What becomes of a recording that is cut, thinned, shuffled or spoiled. */
class RecordingProperties {

    private static final int ROWS = 240;

    /** Ten rows a second of a ride whose speed never changes faster than the sum of its waves. */
    private static Map<Quantity, double[]> ride(double fast, double wave) {
        double[] time = new double[ROWS];
        double[] speed = new double[ROWS];
        double[] current = new double[ROWS];
        double[] volts = new double[ROWS];
        for (int row = 0; row < ROWS; row++) {
            time[row] = 0.1 * row;
            speed[row] = fast * (1.0 + Math.sin(wave * time[row]));
            current[row] = 20.0 * Math.cos(wave * time[row]) + 5.0;
            volts[row] = 40.0 - 0.05 * current[row];
        }
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        columns.put(Quantity.TIME, time);
        columns.put(Quantity.WHEEL_SPEED, speed);
        columns.put(Quantity.PACK_CURRENT, current);
        columns.put(Quantity.PACK_VOLTAGE, volts);
        return columns;
    }

    private static Map<Quantity, double[]> picked(Map<Quantity, double[]> columns, int... rows) {
        Map<Quantity, double[]> picked = new EnumMap<>(Quantity.class);
        columns.forEach(
                (quantity, values) ->
                        picked.put(
                                quantity,
                                Arrays.stream(rows).mapToDouble(row -> values[row]).toArray()));
        return picked;
    }

    private static int[] lines(int... rows) {
        return Arrays.stream(rows).map(row -> row + 2).toArray();
    }

    private static Ride told(List<Piece> pieces, Repairs repairs) {
        return Ride.of(Joining.join(pieces, false, repairs), 3.0, 0.0, repairs).orElseThrow();
    }

    private static Ride told(Map<Quantity, double[]> columns, int... rows) {
        Repairs repairs = new Repairs();
        return told(Cleaning.of("ride.csv", lines(rows), picked(columns, rows), repairs), repairs);
    }

    private static int[] all() {
        return IntStream.range(0, ROWS).toArray();
    }

    private static void assertSameTotals(Ride one, Ride other) {
        assertThat(one.ways().bySpeed()).isCloseTo(other.ways().bySpeed(), within(1e-9));
        Energy energy = one.energy().orElseThrow();
        Energy same = other.energy().orElseThrow();
        assertThat(energy.outAh()).isCloseTo(same.outAh(), within(1e-12));
        assertThat(energy.backAh()).isCloseTo(same.backAh(), within(1e-12));
        assertThat(energy.outWh().orElseThrow())
                .isCloseTo(same.outWh().orElseThrow(), within(1e-10));
        assertThat(one.pace().held().orElseThrow().value())
                .isEqualTo(other.pace().held().orElseThrow().value());
        assertThat(one.stops()).hasSameSizeAs(other.stops());
    }

    @Property
    void cuttingInTwoAndJoiningChangesNoTotal(
            @ForAll @IntRange(min = 2, max = ROWS - 2) int cut,
            @ForAll @DoubleRange(min = 1.0, max = 8.0) double fast,
            @ForAll @DoubleRange(min = 0.2, max = 1.5) double wave) {
        Map<Quantity, double[]> columns = ride(fast, wave);
        int[] first = IntStream.range(0, cut).toArray();
        int[] second = IntStream.range(cut, ROWS).toArray();
        Repairs repairs = new Repairs();
        List<Piece> pieces = new ArrayList<>();
        pieces.addAll(Cleaning.of("a.csv", lines(first), picked(columns, first), repairs));
        pieces.addAll(Cleaning.of("b.csv", lines(second), picked(columns, second), repairs));

        Ride joined = told(pieces, repairs);

        assertSameTotals(joined, told(columns, all()));
        assertThat(joined.recording().pieces()).hasSize(1);
        assertThat(joined.recording().pieces().get(0).place(cut))
                .isEqualTo(new Place("b.csv", cut + 2));
        assertThat(joined.repairs()).isEmpty();
    }

    @Property
    void rowsThatTwoFilesShareCountOnce(@ForAll @IntRange(min = 5, max = 200) int cut) {
        Map<Quantity, double[]> columns = ride(4.0, 0.7);
        int[] first = IntStream.range(0, cut + 4).toArray();
        int[] second = IntStream.range(cut, ROWS).toArray();
        Repairs repairs = new Repairs();
        List<Piece> pieces = new ArrayList<>();
        pieces.addAll(Cleaning.of("b.csv", lines(second), picked(columns, second), repairs));
        pieces.addAll(Cleaning.of("a.csv", lines(first), picked(columns, first), repairs));

        Ride joined = Ride.of(Joining.join(pieces, true, repairs), 3.0, 0.0, repairs).orElseThrow();

        assertSameTotals(joined, told(columns, all()));
        assertThat(joined.repairs())
                .singleElement()
                .satisfies(
                        repair -> {
                            assertThat(repair.rule()).isEqualTo(Repair.Rule.OVERLAP);
                            assertThat(repair.count()).isEqualTo(4);
                        });
    }

    @Property
    void shuffledRowsAreSortedAndTold(@ForAll long seed) {
        Map<Quantity, double[]> columns = ride(4.0, 0.7);
        List<Integer> rows = new ArrayList<>(Arrays.stream(all()).boxed().toList());
        Collections.shuffle(rows, new Random(seed));

        Ride shuffled = told(columns, rows.stream().mapToInt(Integer::intValue).toArray());

        assertSameTotals(shuffled, told(columns, all()));
        assertThat(shuffled.repairs())
                .extracting(Repair::rule)
                .containsExactly(Repair.Rule.OUT_OF_ORDER);
    }

    /** Ten rows in a row happen to ascend from about the beginning: no clock that began anew. */
    @Example
    void shuffledRowsThatAscendForAWhileAreSortedAndTold() {
        shuffledRowsAreSortedAndTold(-7266988064469951275L);
    }

    @Property
    void repeatedRowsCountOnceAndAreTold(@ForAll @IntRange(min = 0, max = ROWS - 1) int twice) {
        Map<Quantity, double[]> columns = ride(4.0, 0.7);
        int[] rows =
                IntStream.concat(IntStream.rangeClosed(0, twice), IntStream.range(twice, ROWS))
                        .toArray();

        Ride repeated = told(columns, rows);

        assertSameTotals(repeated, told(columns, all()));
        assertThat(repeated.repairs())
                .singleElement()
                .satisfies(
                        repair -> {
                            assertThat(repair.rule()).isEqualTo(Repair.Rule.REPEATED_ROW);
                            assertThat(repair.places())
                                    .containsExactly(new Place("ride.csv", twice + 2));
                        });
    }

    @Property
    void aBrokenFieldChangesTheDistanceByLittleAndIsTold(
            @ForAll @IntRange(min = 1, max = ROWS - 2) int broken,
            @ForAll @DoubleRange(min = 101.0, max = 1e9) double value) {
        Map<Quantity, double[]> columns = ride(4.0, 0.7);
        double whole = told(columns, all()).ways().bySpeed();
        columns.get(Quantity.WHEEL_SPEED)[broken] = value;

        Ride spoiled = told(columns, all());

        assertThat(spoiled.ways().bySpeed()).isCloseTo(whole, within(0.25 * 2.8 * 0.04));
        assertThat(spoiled.repairs())
                .singleElement()
                .satisfies(
                        repair -> {
                            assertThat(repair.rule()).isEqualTo(Repair.Rule.IMPOSSIBLE);
                            assertThat(repair.quantity()).contains(Quantity.WHEEL_SPEED);
                            assertThat(repair.places())
                                    .containsExactly(new Place("ride.csv", broken + 2));
                        });
    }

    /** Both sums lie within their doubt of the true way, for the greatest rate there is. */
    @Property
    void thinningChangesTheDistanceWithinTheStatedDoubt(
            @ForAll @IntRange(min = 2, max = 12) int every,
            @ForAll @DoubleRange(min = 1.0, max = 8.0) double fast,
            @ForAll @DoubleRange(min = 0.2, max = 1.5) double wave) {
        Map<Quantity, double[]> columns = ride(fast, wave);
        int[] thin =
                IntStream.range(0, ROWS)
                        .filter(row -> row % every == 0 || row == ROWS - 1)
                        .toArray();
        double rate = fast * wave;
        Ride whole = told(columns, all());
        Ride thinned = told(columns, thin);

        double doubt =
                Ways.doubt(whole.recording(), Quantity.WHEEL_SPEED, rate)
                        + Ways.doubt(thinned.recording(), Quantity.WHEEL_SPEED, rate);

        assertThat(thinned.ways().bySpeed())
                .isCloseTo(whole.ways().bySpeed(), within(doubt + 1e-9));
    }

    @Property
    void nothingIsAddedAcrossAGap(
            @ForAll @DoubleRange(min = 3.0, max = 1e5) double pause,
            @ForAll @IntRange(min = 10, max = 200) int cut) {
        Map<Quantity, double[]> columns = ride(4.0, 0.7);
        int[] first = IntStream.range(0, cut).toArray();
        int[] second = IntStream.range(cut, ROWS).toArray();
        double apart =
                told(columns, first).ways().bySpeed() + told(columns, second).ways().bySpeed();
        double[] time = columns.get(Quantity.TIME);
        for (int row = cut; row < ROWS; row++) {
            time[row] += pause;
        }

        Ride paused = told(columns, all());

        assertThat(paused.ways().bySpeed()).isCloseTo(apart, within(1e-9));
        assertThat(paused.recording().gaps())
                .singleElement()
                .satisfies(
                        gap ->
                                assertThat(gap.seconds().orElseThrow())
                                        .isCloseTo(pause + 0.1, within(1e-6)));
    }

    @Property
    void theSignIsProvedWhicheverWayTheFileCounts(
            @ForAll @DoubleRange(min = 1.0, max = 8.0) double fast, @ForAll boolean isTurned) {
        Map<Quantity, double[]> columns = ride(fast, 0.9);
        double[] current = columns.get(Quantity.PACK_CURRENT);
        double[] out = current.clone();
        for (int row = 0; row < ROWS && isTurned; row++) {
            current[row] = -current[row];
        }
        Recording recording =
                Joining.join(
                        Cleaning.of("ride.csv", lines(all()), columns, new Repairs()),
                        false,
                        new Repairs());

        CurrentSign sign = CurrentSign.proved(recording).orElseThrow();

        assertThat(sign.isOutPositive()).isEqualTo(!isTurned);
        assertThat(sign.settle(recording).pieces().get(0).column(Quantity.PACK_CURRENT))
                .containsExactly(out, within(0.0));
    }
}
