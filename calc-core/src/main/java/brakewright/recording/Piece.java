package brakewright.recording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/**
 * An unbroken part of a recording: columns over strictly ascending time. A field that is missing is
 * NaN.
 */
public final class Piece {

    private static final double[] MISSING = {};

    private final List<Place> sources;
    private final int[] lines;
    private final double[] time;

    /** By the place of its quantity; never changed, so that a changed copy shares the others. */
    private final double[][] columns;

    /** Each source with its first row, which stands where a line does. */
    private Piece(List<Place> sources, int[] lines, double[] time, double[][] columns) {
        this.sources = sources;
        this.lines = lines;
        this.time = time;
        this.columns = columns;
    }

    /**
     * Makes a piece.
     *
     * @param source the name of the file that it stood in
     * @param lines in which line each row stood
     * @param columns the values of each quantity, time among them, one for every row; NaN where a
     *     field is missing
     * @return the piece; the arrays are copied, and a column without any value is left out
     * @throws IllegalArgumentException if there is no time, no row, columns differ in length, or
     *     time does not ascend strictly
     */
    public static Piece of(String source, int[] lines, Map<Quantity, double[]> columns) {
        Map<Quantity, double[]> copies = new EnumMap<>(Quantity.class);
        columns.forEach((quantity, values) -> copies.put(quantity, values.clone()));
        return owning(List.of(new Place(source, 0)), lines.clone(), copies);
    }

    /** Keeps the arrays themselves, which nobody changes any more. */
    static Piece owning(String source, int[] lines, Map<Quantity, double[]> columns) {
        return owning(List.of(new Place(source, 0)), lines, columns);
    }

    private static Piece owning(List<Place> sources, int[] lines, Map<Quantity, double[]> columns) {
        double[] time = columns.get(Quantity.TIME);
        if (time == null || time.length == 0) {
            throw new IllegalArgumentException("a piece needs rows with a time");
        }
        for (int row = 1; row < time.length; row++) {
            if (!(time[row] > time[row - 1])) {
                throw new IllegalArgumentException("time must ascend, row " + row + " does not");
            }
        }
        if (lines.length != time.length || !Double.isFinite(time[0])) {
            throw new IllegalArgumentException("every row needs a line and a finite time");
        }
        double[][] kept = new double[Quantity.values().length][];
        Arrays.fill(kept, MISSING);
        columns.forEach(
                (quantity, values) -> {
                    if (values.length != time.length) {
                        throw new IllegalArgumentException(
                                quantity.key() + " must have a value for every row");
                    }
                    if (!Arrays.stream(values).allMatch(Double::isNaN)) {
                        kept[quantity.ordinal()] = values;
                    }
                });
        return new Piece(List.copyOf(sources), lines, time, kept);
    }

    /**
     * Returns the file that it began in.
     *
     * @return its name
     */
    public String source() {
        return sources.get(0).source();
    }

    /**
     * Returns how many rows it has.
     *
     * @return at least 1
     */
    public int rows() {
        return time.length;
    }

    /**
     * Returns the time of a row.
     *
     * @param row from 0
     * @return from the beginning of the recording's clock [s]
     */
    public double time(int row) {
        return time[row];
    }

    /**
     * Returns where a row stood.
     *
     * @param row from 0
     * @return its file and line
     */
    public Place place(int row) {
        String source = source();
        for (Place each : sources) {
            source = each.line() <= row ? each.source() : source;
        }
        return new Place(source, lines[row]);
    }

    /**
     * Returns whether a quantity was recorded.
     *
     * @param quantity which
     * @return true where at least one row has it
     */
    public boolean has(Quantity quantity) {
        return values(quantity).length > 0;
    }

    /**
     * Returns what was recorded.
     *
     * @return the quantities, time among them
     */
    public Set<Quantity> quantities() {
        Set<Quantity> all = EnumSet.noneOf(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            if (has(quantity)) {
                all.add(quantity);
            }
        }
        return all;
    }

    /** Empty where it was not recorded. */
    private double[] values(Quantity quantity) {
        return columns[quantity.ordinal()];
    }

    private Map<Quantity, double[]> each(UnaryOperator<double[]> change) {
        Map<Quantity, double[]> changed = new EnumMap<>(Quantity.class);
        quantities().forEach(quantity -> changed.put(quantity, change.apply(values(quantity))));
        return changed;
    }

    /**
     * Returns a field.
     *
     * @param quantity which
     * @param row from 0
     * @return in the unit of the quantity; NaN where it is missing
     */
    public double value(Quantity quantity, int row) {
        double[] values = values(quantity);
        return values.length == 0 ? Double.NaN : values[row];
    }

    /**
     * Returns how long it is.
     *
     * @return from the first to the last row [s]
     */
    public double seconds() {
        return time[time.length - 1] - time[0];
    }

    /**
     * Returns a part of it.
     *
     * @param from the first row of the part
     * @param to the row behind its last
     * @return the rows between
     * @throws IllegalArgumentException if there is none
     */
    public Piece part(int from, int to) {
        List<Place> kept = new ArrayList<>();
        kept.add(new Place(place(from).source(), 0));
        for (Place each : sources) {
            if (each.line() > from && each.line() < to) {
                kept.add(new Place(each.source(), each.line() - from));
            }
        }
        return owning(
                kept,
                Arrays.copyOfRange(lines, from, to),
                each(values -> Arrays.copyOfRange(values, from, to)));
    }

    /**
     * Returns it with a column put in or replaced.
     *
     * @param quantity which, not the time
     * @param values for every row; all NaN takes the column out
     * @return a changed copy
     * @throws IllegalArgumentException if the length is not that of the piece
     */
    public Piece with(Quantity quantity, double[] values) {
        Map<Quantity, double[]> changed = each(UnaryOperator.identity());
        changed.put(quantity, values.clone());
        return owning(sources, lines, changed);
    }

    /** Returns it with some of its rows alone, all of one file. */
    Piece rows(int[] kept) {
        return owning(
                source(),
                Arrays.stream(kept).map(row -> lines[row]).toArray(),
                each(values -> Arrays.stream(kept).mapToDouble(row -> values[row]).toArray()));
    }

    /** Returns it with the rows of another behind its own, which are later. */
    Piece before(Piece other) {
        int rows = rows();
        int[] bothLines = Arrays.copyOf(lines, rows + other.rows());
        System.arraycopy(other.lines, 0, bothLines, rows, other.rows());
        Map<Quantity, double[]> both = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            if (has(quantity) || other.has(quantity)) {
                double[] values = Arrays.copyOf(column(quantity), rows + other.rows());
                System.arraycopy(other.column(quantity), 0, values, rows, other.rows());
                both.put(quantity, values);
            }
        }
        List<Place> all = new ArrayList<>(sources);
        other.sources.forEach(each -> all.add(new Place(each.source(), each.line() + rows)));
        return owning(all, bothLines, both);
    }

    /**
     * Returns a column.
     *
     * @param quantity which
     * @return a copy; all NaN where it was not recorded
     */
    public double[] column(Quantity quantity) {
        if (has(quantity)) {
            return values(quantity).clone();
        }
        double[] missing = new double[time.length];
        Arrays.fill(missing, Double.NaN);
        return missing;
    }
}
