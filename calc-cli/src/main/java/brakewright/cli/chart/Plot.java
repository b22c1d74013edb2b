package brakewright.cli.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Courses and bounds over one quantity.
 *
 * @param title what is shown, in a few words
 * @param caption what to see in it
 * @param across the quantity at the foot
 * @param up the quantity at the side
 * @param places of all courses, ascending
 * @param lines a value at each place
 * @param bounds values that cross the chart
 */
public record Plot(
        String title,
        String caption,
        Axis across,
        Axis up,
        double[] places,
        List<Line> lines,
        List<Bound> bounds)
        implements Chart {

    /** Our own choice: a longer table is told in every so many rows. */
    private static final int MOST_ROWS = 60;

    /** Checks that each course has a value at each place. */
    public Plot {
        lines = List.copyOf(lines);
        bounds = List.copyOf(bounds);
        for (Line line : lines) {
            if (line.values().length != places.length) {
                throw new IllegalArgumentException(
                        line.label()
                                + " must have "
                                + places.length
                                + " values, had "
                                + line.values().length);
            }
        }
    }

    @Override
    public String svg(String id) {
        Canvas canvas = new Canvas(id, across, up);
        bounds.stream()
                .filter(bound -> bound.beyond() != Bound.Beyond.NEITHER)
                .map(Bound::role)
                .distinct()
                .forEach(canvas::define);
        canvas.axes();
        bounds.forEach(canvas::bound);
        lines.forEach(line -> canvas.line(line, places));
        return canvas.drawing(title, caption);
    }

    @Override
    public Grid numbers() {
        List<String> heads = new ArrayList<>();
        heads.add(across.title());
        lines.forEach(line -> heads.add(line.label() + unit(up)));
        int every = (places.length + MOST_ROWS - 1) / MOST_ROWS;
        double[] told =
                IntStream.range(0, places.length)
                        .filter(i -> i % every == 0)
                        .mapToDouble(i -> places[i])
                        .toArray();
        List<String> names = across.apart(told);
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < places.length; i += every) {
            List<String> row = new ArrayList<>();
            row.add(names.get(i / every));
            for (Line line : lines) {
                row.add(up.fine(line.values()[i]));
            }
            rows.add(row);
        }
        for (Bound bound : bounds) {
            List<String> row = new ArrayList<>(List.of(bound.label()));
            row.add((bound.isUpright() ? across : up).fine(bound.at()));
            while (row.size() < heads.size()) {
                row.add("");
            }
            rows.add(row.subList(0, heads.size()));
        }
        return new Grid(heads, rows);
    }

    private static String unit(Axis axis) {
        return axis.unit().isEmpty() ? "" : " [" + axis.unit() + "]";
    }
}
