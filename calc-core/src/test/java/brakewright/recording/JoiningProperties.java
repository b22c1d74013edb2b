package brakewright.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** How a ride is parted into files changes nothing. */
@Tag("law")
class JoiningProperties {

    private static final String[] FILES = {"c.csv", "a.csv", "d.csv", "b.csv", "e.csv"};

    @Provide
    Arbitrary<Rows> rides() {
        return Rows.ridden();
    }

    /** Wherever it is cut, in whatever order the files are given, with freezes of any length. */
    @Property(tries = 200)
    void aRideInFilesIsTheRide(
            @ForAll("rides") Rows smooth, @ForAll long seed, @ForAll boolean isDated) {
        Random random = new Random(seed);
        Rows rows = withFreezes(smooth, random);
        Repairs repairs = new Repairs();
        Recording whole = joined(List.of(rows), isDated, repairs);
        List<Rows> files = cut(rows, random);
        if (isDated) {
            Collections.shuffle(files, random);
        }
        Recording parted = joined(files, isDated, repairs);
        assertThat(repairs.all()).isEmpty();
        assertThat(parted.longestStep()).isEqualTo(whole.longestStep());
        assertThat(parted.pieces()).hasSameSizeAs(whole.pieces());
        for (int i = 0; i < whole.pieces().size(); i++) {
            Piece one = whole.pieces().get(i);
            Piece other = parted.pieces().get(i);
            assertThat(other.quantities()).isEqualTo(one.quantities());
            for (Quantity quantity : one.quantities()) {
                assertThat(other.column(quantity)).containsExactly(one.column(quantity));
            }
        }
        for (int i = 0; i < whole.gaps().size(); i++) {
            Gap one = whole.gaps().get(i);
            Gap other = parted.gaps().get(i);
            assertThat(other.seconds()).isEqualTo(one.seconds());
            assertThat(other.leastDistance()).isEqualTo(one.leastDistance());
            assertThat(other.after().line()).isEqualTo(one.after().line());
            assertThat(other.before().line()).isEqualTo(one.before().line());
        }
    }

    /** Every row is still found in the file and line that it came from. */
    @Property(tries = 100)
    void everyRowKeepsItsPlace(@ForAll("rides") Rows rows, @ForAll long seed) {
        List<Rows> files = cut(rows, new Random(seed));
        Recording recording = joined(files, true, new Repairs());
        Piece piece = recording.pieces().get(0);
        int at = 0;
        for (int file = 0; file < files.size(); file++) {
            for (int line : files.get(file).lines()) {
                assertThat(piece.place(at++)).isEqualTo(new Place(FILES[file], line));
            }
        }
        assertThat(at).isEqualTo(piece.rows());
    }

    /** The earlier file's rows are taken; the other's are told, and what is left of it follows. */
    @Property(tries = 100)
    void whatTwoFilesBothHoldCountsOnce(
            @ForAll("rides") Rows rows,
            @ForAll @IntRange(min = 1, max = 15) int from,
            @ForAll @IntRange(min = 16, max = 29) int to) {
        Repairs repairs = new Repairs();
        Recording recording =
                joined(List.of(rows.part(0, to), rows.part(from, rows.count())), true, repairs);
        assertThat(recording.pieces()).hasSize(1);
        assertThat(recording.pieces().get(0).column(Quantity.PACK_CURRENT))
                .containsExactly(rows.columns().get(Quantity.PACK_CURRENT));
        assertThat(repairs.all())
                .singleElement()
                .satisfies(
                        repair -> {
                            assertThat(repair.rule()).isEqualTo(Repair.Rule.OVERLAP);
                            assertThat(repair.count()).isEqualTo(to - from);
                        });
    }

    /** Another recorder ran on while the first froze. */
    @Property(tries = 50)
    void aFileWithinTheGapOfAnotherFillsIt(@ForAll long seed) {
        Rows rows = Rows.ridden(90, seed);
        int from = rows.count() / 3;
        int to = 2 * rows.count() / 3;
        Rows outer =
                rows.picked(
                        IntStream.range(0, rows.count())
                                .filter(row -> row < from || row >= to)
                                .toArray());
        Repairs repairs = new Repairs();
        Recording recording = joined(List.of(outer, rows.part(from, to)), true, repairs);
        assertThat(repairs.all()).isEmpty();
        assertThat(recording.gaps()).isEmpty();
        assertThat(recording.pieces().get(0).column(Quantity.TIME))
                .containsExactly(rows.columns().get(Quantity.TIME));
    }

    /** Without dates, a clock that begins at 0 again says nothing of the time between. */
    @Property(tries = 50)
    void aClockBegunAnewHidesHowLongTheGapWas(
            @ForAll("rides") Rows rows, @ForAll @DoubleRange(min = 0.0, max = 1e4) double pause) {
        Rows late = later(rows, 0, -rows.value(Quantity.TIME, 0));
        int half = late.count() / 2;
        Rows second = later(late.part(half, late.count()), 0, -late.value(Quantity.TIME, half));
        Rows first = later(late.part(0, half), 0, pause);
        Recording recording = joined(List.of(first, second), false, new Repairs());
        assertThat(recording.pieces()).hasSize(2);
        assertThat(recording.gaps())
                .singleElement()
                .satisfies(
                        gap -> {
                            assertThat(gap.seconds()).isEmpty();
                            assertThat(gap.leastDistance()).isPresent();
                        });
        assertThat(recording.pieces().get(0).column(Quantity.CHARGE))
                .containsExactly(first.columns().get(Quantity.CHARGE));
    }

    /** One file may hold what two recordings wrote, one behind the other. */
    @Property(tries = 50)
    void aClockBegunAnewWithinAFileParts(@ForAll("rides") Rows rows) {
        int half = rows.count() / 2;
        Rows anew =
                later(rows, half, rows.value(Quantity.TIME, 0) - rows.value(Quantity.TIME, half));
        Repairs repairs = new Repairs();
        Recording recording = joined(List.of(anew), false, repairs);
        assertThat(recording.pieces()).hasSize(2);
        assertThat(recording.pieces().get(0).rows()).isEqualTo(half);
        assertThat(recording.gaps().get(0).seconds()).isEmpty();
        assertThat(repairs.all())
                .singleElement()
                .satisfies(
                        repair -> {
                            assertThat(repair.rule()).isEqualTo(Repair.Rule.CLOCK_ANEW);
                            assertThat(repair.places())
                                    .containsExactly(new Place(FILES[0], anew.lines()[half]));
                        });
    }

    /** Resting on both sides, a pack tells by its voltage what was used meanwhile. */
    @Example
    void aGapTellsTheStepOfTheRestVoltage() {
        Rows rows = Rows.ridden(40, 7);
        Rows resting = later(rows, 20, 600.0);
        for (int row = 19; row <= 20; row++) {
            resting =
                    resting.with(Quantity.WHEEL_SPEED, row, 0.0)
                            .with(Quantity.PACK_CURRENT, row, 0.2)
                            .with(Quantity.PACK_VOLTAGE, row, row == 19 ? 41.2 : 39.7);
        }
        Gap gap = joined(List.of(resting), true, new Repairs()).gaps().get(0);
        assertThat(gap.voltageStep().orElseThrow()).isCloseTo(-1.5, within(1e-12));
        Gap loaded =
                joined(List.of(resting.with(Quantity.PACK_CURRENT, 20, 12.0)), true, new Repairs())
                        .gaps()
                        .get(0);
        assertThat(loaded.voltageStep()).isEmpty();
    }

    private static Recording joined(List<Rows> files, boolean isDated, Repairs repairs) {
        List<Piece> pieces = new ArrayList<>();
        for (int file = 0; file < files.size(); file++) {
            pieces.addAll(files.get(file).cleaned(FILES[file], repairs));
        }
        return Joining.join(pieces, isDated, repairs);
    }

    /** Cut in one to four places, on the lines where the rows stood. */
    private static List<Rows> cut(Rows rows, Random random) {
        int[] cuts =
                IntStream.concat(
                                IntStream.of(0, rows.count()),
                                random.ints(1 + random.nextInt(4), 1, rows.count()))
                        .sorted()
                        .distinct()
                        .toArray();
        List<Rows> files = new ArrayList<>();
        for (int i = 1; i < cuts.length; i++) {
            files.add(rows.part(cuts[i - 1], cuts[i]));
        }
        return files;
    }

    /** From some rows on, later by up to a minute. */
    private static Rows withFreezes(Rows rows, Random random) {
        Rows frozen = rows;
        for (int i = random.nextInt(20); i > 0; i--) {
            frozen = later(frozen, random.nextInt(rows.count()), 60.0 * random.nextDouble());
        }
        return frozen;
    }

    private static Rows later(Rows rows, int from, double seconds) {
        double[] time = rows.columns().get(Quantity.TIME).clone();
        for (int row = from; row < time.length; row++) {
            time[row] += seconds;
        }
        Rows later = rows;
        for (int row : IntStream.range(from, time.length).toArray()) {
            later = later.with(Quantity.TIME, row, time[row]);
        }
        return later;
    }
}
