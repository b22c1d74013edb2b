package brakewright.recording;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Rows of one source as they were measured, a column for each quantity; a field that is missing is
 * NaN. Nothing is wrong with rows that are out of order, broken or there twice: that is found when
 * a recording is made of them.
 */
public final class RecordedRows {

    private final String source;
    private final int rows;
    private final Map<Quantity, double[]> columns;

    private RecordedRows(String source, int rows, Map<Quantity, double[]> columns) {
        this.source = source;
        this.rows = rows;
        this.columns = columns;
    }

    /**
     * Begins with the times.
     *
     * @param source its name, with which repairs are told
     * @param time of each row, from any beginning [s]
     * @return rows of nothing else
     */
    public static RecordedRows of(String source, double[] time) {
        return new RecordedRows(source, time.length, Map.of()).having(Quantity.TIME, time);
    }

    /**
     * Returns these rows with another column.
     *
     * @param quantity which; a current of the pack is positive out of it
     * @param values one for each row, in the unit of the quantity
     * @return a changed copy
     * @throws IllegalArgumentException if there are not as many values as times
     */
    public RecordedRows with(Quantity quantity, double[] values) {
        if (values.length != rows) {
            throw new IllegalArgumentException(
                    "column "
                            + quantity.key()
                            + " must have "
                            + rows
                            + " values, one for each"
                            + " time, was "
                            + values.length);
        }
        return having(quantity, values);
    }

    private RecordedRows having(Quantity quantity, double[] values) {
        Map<Quantity, double[]> more = new EnumMap<>(Quantity.class);
        more.putAll(columns);
        more.put(quantity, values.clone());
        return new RecordedRows(source, rows, Collections.unmodifiableMap(more));
    }

    /**
     * Cleans the rows, for {@link Joining} with those of other sources.
     *
     * @param repairs to which is added what is repaired, the first row being line 1
     * @return their pieces, more than one where their clock began anew; none where no row has a
     *     time
     */
    public List<Piece> cleaned(Repairs repairs) {
        int[] lines = IntStream.rangeClosed(1, rows).toArray();
        return Cleaning.of(source, lines, columns, repairs);
    }

    /**
     * Makes a recording of these rows alone.
     *
     * @param repairs to which is added what is repaired, the first row being line 1
     * @return what is left of them, in pieces where rows are missing or their clock began anew
     * @throws IllegalArgumentException if no row has a time
     */
    public Recording recorded(Repairs repairs) {
        return Joining.join(cleaned(repairs), false, repairs);
    }
}
