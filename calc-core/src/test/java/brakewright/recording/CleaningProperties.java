package brakewright.recording;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.IntRange;

/** What is broken is left out and told, and nothing else is touched. */
@Tag("law")
class CleaningProperties {

    private static final Set<Repair.Rule> LEFT_OUT =
            EnumSet.of(
                    Repair.Rule.NO_TIME,
                    Repair.Rule.TIME_LEAP,
                    Repair.Rule.REPEATED_ROW,
                    Repair.Rule.REPEATED_TIME,
                    Repair.Rule.FROZEN,
                    Repair.Rule.OVERLAP);

    private static final double[] BROKEN = {
        Double.NaN, 0.0, -1.0, 0.04, 5.0, 99.0, 1e6, -1e6, Double.POSITIVE_INFINITY
    };

    @Provide
    Arbitrary<Rows> rides() {
        return Rows.ridden();
    }

    @Property(tries = 100)
    void whatWasRiddenIsTakenAsItStands(@ForAll("rides") Rows rows) {
        Repairs repairs = new Repairs();
        Recording recording = rows.recorded(repairs);
        assertThat(repairs.all()).isEmpty();
        assertThat(recording.pieces()).hasSize(1);
        assertSame(rows, recording.pieces().get(0));
    }

    /** Neighbours that change places, as two tasks of a recorder may write them. */
    @Property(tries = 100)
    void rowsThatChangedPlacesAreSortedAndTold(@ForAll("rides") Rows rows, @ForAll long seed) {
        int[] order = IntStream.range(0, rows.count()).toArray();
        Random random = new Random(seed);
        int swaps = 0;
        for (int row = 0; row + 1 < order.length; row += 2) {
            if (random.nextInt(4) == 0) {
                order[row]++;
                order[row + 1]--;
                swaps++;
            }
        }
        Repairs repairs = new Repairs();
        Recording recording = rows.picked(order).recorded(repairs);
        assertThat(recording.pieces()).hasSize(1);
        assertSame(rows, recording.pieces().get(0));
        assertThat(count(repairs, Set.of(Repair.Rule.OUT_OF_ORDER))).isEqualTo(swaps);
        assertThat(repairs.all()).hasSize(swaps == 0 ? 0 : 1);
    }

    @Property(tries = 100)
    void rowsThatStandTwiceCountOnce(
            @ForAll("rides") Rows rows, @ForAll @IntRange(min = 1, max = 9) int every) {
        int[] order =
                IntStream.range(0, rows.count())
                        .flatMap(row -> IntStream.range(0, row % every == 0 ? 2 : 1).map(i -> row))
                        .toArray();
        Repairs repairs = new Repairs();
        Recording recording = rows.picked(order).recorded(repairs);
        assertSame(rows, recording.pieces().get(0));
        assertThat(repairs.all())
                .singleElement()
                .satisfies(
                        repair -> {
                            assertThat(repair.rule()).isEqualTo(Repair.Rule.REPEATED_ROW);
                            assertThat(repair.count()).isEqualTo(order.length - rows.count());
                        });
    }

    /** In any order whatever, with rows twice and fields of any kind broken. */
    @Property(tries = 300)
    void whatIsNotTakenIsCounted(
            @ForAll("rides") Rows rows,
            @ForAll long seed,
            @ForAll @IntRange(min = 0, max = 12) int faults,
            @ForAll boolean isShuffled) {
        Random random = new Random(seed);
        int[] order = IntStream.range(0, rows.count()).toArray();
        for (int i = order.length - 1; isShuffled && i > 0; i--) {
            int other = random.nextInt(i + 1);
            int kept = order[i];
            order[i] = order[other];
            order[other] = kept;
        }
        Rows given = rows.picked(order);
        List<Quantity> quantities = List.copyOf(rows.columns().keySet());
        for (int fault = 0; fault < faults; fault++) {
            given =
                    given.with(
                            quantities.get(random.nextInt(quantities.size())),
                            random.nextInt(rows.count()),
                            BROKEN[random.nextInt(BROKEN.length)]);
        }
        Repairs repairs = new Repairs();
        assertCounted(given, given.recorded(repairs), repairs);
    }

    /** Half a position is none. */
    @Example
    void latitudeAndLongitudeStandAndFallTogether() {
        Rows rows =
                Rows.ridden(40, 1)
                        .with(Quantity.LONGITUDE, 7, Double.NaN)
                        .with(Quantity.LONGITUDE, 9, 500.0)
                        .with(Quantity.LATITUDE, 11, Double.NaN);
        Piece piece = rows.recorded(new Repairs()).pieces().get(0);
        for (int row = 0; row < piece.rows(); row++) {
            boolean isBroken = row == 7 || row == 9 || row == 11;
            assertThat(Double.isNaN(piece.value(Quantity.LATITUDE, row))).isEqualTo(isBroken);
            assertThat(Double.isNaN(piece.value(Quantity.LONGITUDE, row))).isEqualTo(isBroken);
        }
    }

    /** One wrong digit in a date costs one row, not all that follow it. */
    @Property(tries = 100)
    void oneTimeThatLeapsAheadCostsItsRowAlone(
            @ForAll("rides") Rows rows,
            @ForAll @IntRange(min = 1, max = 28) int row,
            @ForAll @IntRange(min = 2, max = 9) int digits) {
        double leap = Math.pow(10.0, digits);
        Rows given = rows.with(Quantity.TIME, row, rows.value(Quantity.TIME, row) + leap);
        Repairs repairs = new Repairs();
        Recording recording = given.recorded(repairs);
        assertThat(recording.pieces()).hasSize(1);
        assertThat(recording.rows()).isEqualTo(rows.count() - 1);
        assertThat(repairs.all())
                .singleElement()
                .satisfies(
                        repair -> {
                            assertThat(repair.rule()).isEqualTo(Repair.Rule.TIME_LEAP);
                            assertThat(repair.places())
                                    .containsExactly(new Place("ride.csv", row + 2));
                        });
    }

    /** Where positions stand still with all else, the recorder did. */
    @Example
    void aFreezeIsLeftOutAndBecomesAGap() {
        Rows rows = Rows.ridden(90, 3);
        Rows frozen = rows;
        for (int row = 31; row < 60; row++) {
            frozen = repeated(frozen, 30, row);
        }
        Repairs repairs = new Repairs();
        Recording recording = frozen.recorded(repairs);
        assertThat(recording.gaps()).hasSize(1);
        assertThat(recording.rows()).isEqualTo(61);
        assertThat(count(repairs, Set.of(Repair.Rule.FROZEN))).isEqualTo(29);
    }

    /** A coarse recorder without positions tells a steady ride by rows that repeat. */
    @Example
    void steadyRidingIsNotTakenForFreezes() {
        Rows rows = Rows.ridden(90, 3).without(Quantity.LATITUDE).without(Quantity.LONGITUDE);
        for (int row = 0; row < 90; row++) {
            rows = repeated(rows, row - row % 18, row);
        }
        Repairs repairs = new Repairs();
        Recording recording = rows.recorded(repairs);
        assertThat(recording.gaps()).isEmpty();
        assertThat(recording.rows()).isEqualTo(90);
        assertThat(repairs.all())
                .singleElement()
                .satisfies(
                        repair -> {
                            assertThat(repair.rule()).isEqualTo(Repair.Rule.REPEATING);
                            assertThat(repair.count()).isEqualTo(5 * 17);
                        });
    }

    /** A row that holds what another does, at its own time. */
    private static Rows repeated(Rows rows, int from, int to) {
        Rows repeated = rows;
        for (Quantity quantity : rows.columns().keySet()) {
            if (quantity != Quantity.TIME) {
                repeated = repeated.with(quantity, to, rows.value(quantity, from));
            }
        }
        return repeated;
    }

    @Example
    void rowsWithoutAnyTimeGiveNoPiece() {
        Rows rows = Rows.ridden(30, 1).without(Quantity.TIME);
        Repairs repairs = new Repairs();
        assertThat(rows.cleaned("ride.csv", repairs)).isEmpty();
        assertThat(count(repairs, Set.of(Repair.Rule.NO_TIME))).isEqualTo(30);
    }

    private static void assertSame(Rows rows, Piece piece) {
        assertThat(piece.rows()).isEqualTo(rows.count());
        rows.columns()
                .forEach(
                        (quantity, values) ->
                                assertThat(piece.column(quantity)).containsExactly(values));
    }

    /** Rows given are rows taken and rows told; fields of them likewise. */
    private static void assertCounted(Rows given, Recording taken, Repairs repairs) {
        Map<Integer, Integer> rowAt = new HashMap<>();
        for (int row = 0; row < given.count(); row++) {
            rowAt.put(given.lines()[row], row);
        }
        Map<Quantity, Integer> missing = new HashMap<>();
        for (Piece piece : taken.pieces()) {
            for (int row = 0; row < piece.rows(); row++) {
                int from = rowAt.remove(piece.place(row).line());
                for (Quantity quantity : given.columns().keySet()) {
                    double before = given.value(quantity, from);
                    double after = piece.value(quantity, row);
                    if (!Double.isNaN(after)) {
                        assertThat(after).isEqualTo(before);
                    } else if (!Double.isNaN(before)) {
                        missing.merge(quantity, 1, Integer::sum);
                    }
                }
            }
        }
        int rowsTold =
                repairs.all().stream()
                        .filter(repair -> repair.quantity().isEmpty())
                        .filter(repair -> LEFT_OUT.contains(repair.rule()))
                        .mapToInt(Repair::count)
                        .sum();
        assertThat(rowsTold).isEqualTo(rowAt.size());
        for (Quantity quantity : given.columns().keySet()) {
            int told =
                    isPosition(quantity)
                            ? told(repairs, Quantity.LATITUDE)
                                    + told(repairs, Quantity.LONGITUDE)
                                    + halves(given)
                            : told(repairs, quantity);
            assertThat(told).isGreaterThanOrEqualTo(missing.getOrDefault(quantity, 0));
        }
    }

    private static boolean isPosition(Quantity quantity) {
        return quantity == Quantity.LATITUDE || quantity == Quantity.LONGITUDE;
    }

    /** Positions of which one half was missing from the beginning. */
    private static int halves(Rows rows) {
        return (int)
                IntStream.range(0, rows.count())
                        .filter(
                                row ->
                                        Double.isNaN(
                                                rows.value(Quantity.LATITUDE, row)
                                                        + rows.value(Quantity.LONGITUDE, row)))
                        .count();
    }

    private static int told(Repairs repairs, Quantity quantity) {
        return repairs.all().stream()
                .filter(repair -> repair.quantity().equals(Optional.of(quantity)))
                .mapToInt(Repair::count)
                .sum();
    }

    private static int count(Repairs repairs, Set<Repair.Rule> rules) {
        return repairs.all().stream()
                .filter(repair -> rules.contains(repair.rule()))
                .mapToInt(Repair::count)
                .sum();
    }
}
