package brakewright.recording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Makes pieces of the rows of one file: in order, each time once. What is broken is left out or put
 * right by a rule that has a name, and counted.
 */
public final class Cleaning {

    /**
     * Assumption: our own choice; where the clock falls back and then runs on for so many rows, it
     * began anew; fewer are rows out of order.
     */
    private static final int ROWS_OF_A_CLOCK = 10;

    /** Assumption: our own choice; a clock of whose rows more fall back than that never ran [1]. */
    private static final double SHARE_OUT_OF_ORDER = 0.2;

    /**
     * Assumption: our own choice; a row that is written late is not later than that, a wrong digit
     * of a time mostly farther off [s].
     */
    private static final double TIME_LEAP = 30.0;

    /** So many rows on either side of a leap must be in order, or the whole file is in none. */
    private static final int ROWS_BESIDE_A_LEAP = 2;

    private final String source;
    private final Repairs repairs;

    private Cleaning(String source, Repairs repairs) {
        this.source = source;
        this.repairs = repairs;
    }

    /**
     * Cleans the rows of a file.
     *
     * @param source its name
     * @param lines in which line each row stands
     * @param columns what was read, time among it; NaN where a field is missing
     * @param repairs to which is added what is repaired
     * @return its pieces in the order of the file, more than one where its clock began anew; none
     *     where no row has a time
     */
    public static List<Piece> of(
            String source, int[] lines, Map<Quantity, double[]> columns, Repairs repairs) {
        return new Cleaning(source, repairs).pieces(lines, columns);
    }

    private List<Piece> pieces(int[] lines, Map<Quantity, double[]> columns) {
        double[] time = columns.get(Quantity.TIME);
        if (time == null) {
            Arrays.stream(lines).forEach(line -> repairs.row(Repair.Rule.NO_TIME, place(line)));
            return List.of();
        }
        int[] timed = withoutLeaps(time, timed(time, lines), lines);
        List<Piece> pieces = new ArrayList<>();
        int from = 0;
        for (int to : ends(time, timed, lines)) {
            int[] order =
                    once(
                            time,
                            inOrder(time, Arrays.copyOfRange(timed, from, to), lines),
                            columns,
                            lines);
            from = to;
            if (order.length > 0) {
                pieces.add(Faults.leftOut(picked(lines, columns, order), repairs));
            }
        }
        return pieces;
    }

    private Place place(int line) {
        return new Place(source, line);
    }

    private int[] timed(double[] time, int[] lines) {
        int[] timed = new int[time.length];
        int count = 0;
        for (int row = 0; row < time.length; row++) {
            if (Double.isFinite(time[row])) {
                timed[count++] = row;
            } else {
                repairs.row(Repair.Rule.NO_TIME, place(lines[row]));
            }
        }
        return Arrays.copyOf(timed, count);
    }

    /** A row alone whose time is far from that of its neighbours, which are near each other. */
    private int[] withoutLeaps(double[] time, int[] timed, int[] lines) {
        int[] kept = new int[timed.length];
        int count = 0;
        for (int at = 0; at < timed.length; at++) {
            if (isLeap(time, timed, at)) {
                repairs.row(Repair.Rule.TIME_LEAP, place(lines[timed[at]]));
            } else {
                kept[count++] = timed[at];
            }
        }
        return Arrays.copyOf(kept, count);
    }

    private static boolean isLeap(double[] time, int[] timed, int at) {
        if (at == 0 || at + 1 == timed.length) {
            return false;
        }
        double own = time[timed[at]];
        double before = time[timed[at - 1]];
        double behind = time[timed[at + 1]];
        if (own >= before - TIME_LEAP && own <= behind + TIME_LEAP || behind < before) {
            return false;
        }
        int from = Math.max(0, at - ROWS_BESIDE_A_LEAP);
        int to = Math.min(timed.length - 1, at + ROWS_BESIDE_A_LEAP);
        int last = from;
        for (int row = from + 1; row <= to; row++) {
            if (row == at) {
                continue;
            }
            double step = time[timed[row]] - time[timed[last]];
            if (!(step >= 0.0 && step <= TIME_LEAP)) {
                return false;
            }
            last = row;
        }
        return true;
    }

    /** Where each clock ends, the last with the file. */
    private List<Integer> ends(double[] time, int[] timed, int[] lines) {
        List<Integer> ends = new ArrayList<>();
        int began = 0;
        int fallsBack = 0;
        for (int at = 1; at < timed.length; at++) {
            if (time[timed[at]] < time[timed[at - 1]]) {
                boolean ran = fallsBack <= SHARE_OUT_OF_ORDER * (at - began);
                if (ran && beginsAnew(time, timed, began, at)) {
                    repairs.row(Repair.Rule.CLOCK_ANEW, place(lines[timed[at]]));
                    ends.add(at);
                    began = at;
                    fallsBack = 0;
                } else {
                    fallsBack++;
                }
            }
        }
        ends.add(timed.length);
        return ends;
    }

    /**
     * Back to about the time at which it began, or before it, by more than half of what it had run,
     * and on from there for a while; what was before ran on as long. A row that was merely written
     * late is followed by later ones; behind a few whose times are wrong, most are earlier.
     */
    private static boolean beginsAnew(double[] time, int[] timed, int began, int at) {
        if (at + ROWS_OF_A_CLOCK > timed.length || at - began < ROWS_OF_A_CLOCK) {
            return false;
        }
        double first = time[timed[began]];
        double last = time[timed[at - 1]];
        double spacing = (last - first) / (at - began);
        double anew = time[timed[at]];
        if (anew > first + ROWS_OF_A_CLOCK * spacing
                || last - anew <= 0.5 * (last - first)
                || time[timed[at + 1]] > last) {
            return false;
        }
        for (int next = at + 1; next < at + ROWS_OF_A_CLOCK; next++) {
            if (!(time[timed[next]] >= time[timed[next - 1]])) {
                return false;
            }
        }
        return isBehindHalf(time, timed, began, at);
    }

    /** Of the rows just before, twice as many as a clock has at least, or all that there are. */
    private static boolean isBehindHalf(double[] time, int[] timed, int began, int at) {
        int from = Math.max(began, at - 2 * ROWS_OF_A_CLOCK);
        int later = 0;
        for (int row = from; row < at; row++) {
            if (time[timed[row]] > time[timed[at]]) {
                later++;
            }
        }
        return 2 * later >= at - from;
    }

    private int[] inOrder(double[] time, int[] rows, int[] lines) {
        double latest = Double.NEGATIVE_INFINITY;
        boolean isOrdered = true;
        for (int row : rows) {
            if (time[row] < latest) {
                repairs.row(Repair.Rule.OUT_OF_ORDER, place(lines[row]));
                isOrdered = false;
            }
            latest = Math.max(latest, time[row]);
        }
        return isOrdered
                ? rows
                : Arrays.stream(rows)
                        .boxed()
                        .sorted(Comparator.comparingDouble(row -> time[row]))
                        .mapToInt(Integer::intValue)
                        .toArray();
    }

    private int[] once(double[] time, int[] rows, Map<Quantity, double[]> columns, int[] lines) {
        int[] kept = new int[rows.length];
        int count = 0;
        for (int row : rows) {
            if (count > 0 && time[row] == time[kept[count - 1]]) {
                boolean isSame = isSame(columns, row, kept[count - 1]);
                repairs.row(
                        isSame ? Repair.Rule.REPEATED_ROW : Repair.Rule.REPEATED_TIME,
                        place(lines[row]));
            } else {
                kept[count++] = row;
            }
        }
        return Arrays.copyOf(kept, count);
    }

    private static boolean isSame(Map<Quantity, double[]> columns, int one, int other) {
        return columns.values().stream()
                .allMatch(values -> Double.compare(values[one], values[other]) == 0);
    }

    private Piece picked(int[] lines, Map<Quantity, double[]> columns, int[] rows) {
        Map<Quantity, double[]> picked = new EnumMap<>(Quantity.class);
        columns.forEach(
                (quantity, values) ->
                        picked.put(
                                quantity,
                                Arrays.stream(rows).mapToDouble(row -> values[row]).toArray()));
        return Piece.owning(source, Arrays.stream(rows).map(row -> lines[row]).toArray(), picked);
    }
}
