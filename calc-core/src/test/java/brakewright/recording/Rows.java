package brakewright.recording;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/**
 * The rows of a file before anything was done with them.
 *
 * @param columns as read
 * @param lines in which line each row stands, no two in the same
 */
record Rows(Map<Quantity, double[]> columns, int[] lines) {

    /** Metres on a degree of latitude, roughly. */
    private static final double DEGREE = 111_195.0;

    /** A ride that no rule finds fault with: rows 0.4 to 1 s apart, the speed smooth, no stand. */
    static Arbitrary<Rows> ridden() {
        return Combinators.combine(
                        Arbitraries.integers().between(30, 90),
                        Arbitraries.longs().between(0, 1L << 40))
                .as(Rows::ridden);
    }

    static Rows ridden(int count, long seed) {
        Random random = new Random(seed);
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        for (Quantity quantity :
                List.of(
                        Quantity.TIME,
                        Quantity.WHEEL_SPEED,
                        Quantity.LATITUDE,
                        Quantity.LONGITUDE,
                        Quantity.PACK_VOLTAGE,
                        Quantity.PACK_CURRENT,
                        Quantity.CHARGE)) {
            columns.put(quantity, new double[count]);
        }
        double time = random.nextInt(1000);
        double speed = 5.0;
        double way = 0.0;
        for (int row = 0; row < count; row++) {
            double step = 0.4 + 0.6 * random.nextDouble();
            double last = speed;
            speed = Math.max(2.0, Math.min(12.0, speed + step * 4.0 * (random.nextDouble() - 0.5)));
            way += 0.5 * (last + speed) * step;
            time += step;
            columns.get(Quantity.TIME)[row] = time;
            columns.get(Quantity.WHEEL_SPEED)[row] = speed;
            columns.get(Quantity.LATITUDE)[row] = 45.0 + way / DEGREE;
            columns.get(Quantity.LONGITUDE)[row] = 7.0;
            columns.get(Quantity.PACK_VOLTAGE)[row] = 40.0 - random.nextDouble();
            columns.get(Quantity.PACK_CURRENT)[row] = 30.0 * random.nextDouble() - 10.0;
            columns.get(Quantity.CHARGE)[row] = 0.9 - 0.001 * row;
        }
        return new Rows(columns, IntStream.range(0, count).map(row -> row + 2).toArray());
    }

    int count() {
        return lines.length;
    }

    double value(Quantity quantity, int row) {
        return columns.get(quantity)[row];
    }

    /** The rows in another order, some perhaps twice or not at all, on lines of their own. */
    Rows picked(int... rows) {
        Map<Quantity, double[]> picked = new EnumMap<>(Quantity.class);
        columns.forEach(
                (quantity, values) ->
                        picked.put(
                                quantity,
                                Arrays.stream(rows).mapToDouble(row -> values[row]).toArray()));
        return new Rows(picked, IntStream.range(0, rows.length).map(row -> row + 2).toArray());
    }

    Rows part(int from, int to) {
        Rows part = picked(IntStream.range(from, to).toArray());
        return new Rows(part.columns, Arrays.copyOfRange(lines, from, to));
    }

    /** The same rows with one field changed. */
    Rows with(Quantity quantity, int row, double value) {
        Map<Quantity, double[]> changed = new EnumMap<>(columns);
        double[] values = changed.get(quantity).clone();
        values[row] = value;
        changed.put(quantity, values);
        return new Rows(changed, lines);
    }

    /** The same rows without a column. */
    Rows without(Quantity quantity) {
        Map<Quantity, double[]> changed = new EnumMap<>(columns);
        changed.remove(quantity);
        return new Rows(changed, lines);
    }

    List<Piece> cleaned(String source, Repairs repairs) {
        return Cleaning.of(source, lines, columns, repairs);
    }

    /** Cleaned and joined, as the rows of one clock. */
    Recording recorded(Repairs repairs) {
        return Joining.join(cleaned("ride.csv", repairs), true, repairs);
    }
}
