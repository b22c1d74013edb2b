package brakewright.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Columns that a program holds become what a file of the same rows becomes. */
@Tag("law")
class RecordedRowsTest {

    private static final int ROWS = 40;

    private final Repairs repairs = new Repairs();

    private static double[] seconds() {
        return IntStream.range(0, ROWS).mapToDouble(row -> row).toArray();
    }

    private static double[] speeds() {
        return IntStream.range(0, ROWS).mapToDouble(row -> 4.0 + 0.1 * row).toArray();
    }

    @Test
    void whatIsBrokenIsRepairedAndToldByTheRow() {
        double[] time = seconds();
        time[19] = Double.NaN;
        double[] speed = speeds();
        speed[9] = 1000.0;

        Recording recording =
                RecordedRows.of("log", time).with(Quantity.WHEEL_SPEED, speed).recorded(repairs);

        assertThat(recording.rows()).isEqualTo(ROWS - 1);
        assertThat(repairs.all())
                .extracting(Repair::rule, repair -> repair.places().get(0))
                .containsExactly(
                        tuple(Repair.Rule.NO_TIME, new Place("log", 20)),
                        tuple(Repair.Rule.IMPOSSIBLE, new Place("log", 10)));
    }

    /** Rows behind the fall have the times of rows before it, and are no copies of them. */
    @Test
    void aClockThatBeganAnewLosesNoRow() {
        double[] time = seconds();
        for (int row = 20; row < ROWS; row++) {
            time[row] -= 20.0;
        }
        Recording recording =
                RecordedRows.of("log", time).with(Quantity.WHEEL_SPEED, speeds()).recorded(repairs);

        assertThat(recording.pieces()).extracting(Piece::rows).containsExactly(20, 20);
        assertThat(repairs.all()).extracting(Repair::rule).containsExactly(Repair.Rule.CLOCK_ANEW);
    }

    @Test
    void whatAProgramDoesWithItsArraysLaterChangesNothing() {
        double[] speed = speeds();
        RecordedRows rows = RecordedRows.of("log", seconds()).with(Quantity.WHEEL_SPEED, speed);
        RecordedRows more = rows.with(Quantity.PACK_VOLTAGE, speeds());
        Arrays.fill(speed, 0.0);

        Recording recording = rows.recorded(repairs);
        assertThat(recording.pieces().get(0).column(Quantity.WHEEL_SPEED))
                .containsExactly(speeds());
        assertThat(recording.has(Quantity.PACK_VOLTAGE)).isFalse();
        assertThat(more.recorded(repairs).has(Quantity.PACK_VOLTAGE)).isTrue();
    }

    @Test
    void aColumnOfOtherLengthIsRefused() {
        RecordedRows rows = RecordedRows.of("log", seconds());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> rows.with(Quantity.CHARGE, new double[ROWS - 1]))
                .withMessageContainingAll("charge", "40", "39");
    }

    @Test
    void rowsWithoutAnyTimeAreNoRecording() {
        RecordedRows rows = RecordedRows.of("log", new double[] {Double.NaN, Double.NaN});
        assertThat(rows.cleaned(repairs)).isEmpty();
        assertThatIllegalArgumentException().isThrownBy(() -> rows.recorded(repairs));
    }
}
