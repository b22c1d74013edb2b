package brakewright.cli.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A quantity over two others: the more of it, the deeper the shade, and lines of equal value carry
 * their number. Regions stand on it with an edge of their own.
 *
 * @param title what is shown, in a few words
 * @param caption what to see in it
 * @param across the quantity at the foot
 * @param up the quantity at the side
 * @param shade the quantity that is shown; it is shaded from 0 on
 * @param xs places at the foot, ascending
 * @param ys places at the side, ascending
 * @param values a row for each of {@code ys}
 * @param regions what holds where, below the first
 */
public record FieldChart(
        String title,
        String caption,
        Axis across,
        Axis up,
        Axis shade,
        double[] xs,
        double[] ys,
        double[][] values,
        List<Region> regions)
        implements Chart {

    private static final int MOST_COLUMNS = 9;

    /** Copies the regions. */
    public FieldChart {
        regions = List.copyOf(regions);
    }

    @Override
    public String svg(String id) {
        Canvas canvas = new Canvas(id, across, up);
        regions.stream()
                .filter(Region::isHatched)
                .map(Region::role)
                .distinct()
                .forEach(canvas::define);
        canvas.axes();
        double[] levels = Arrays.stream(shade.ticks()).filter(level -> level >= 0.0).toArray();
        for (double level : levels) {
            String area = areas(canvas, values, level);
            if (!area.isEmpty()) {
                canvas.svg.raw(
                        "<path class=\"c-shade\" fill-rule=\"evenodd\" d=\"" + area + "\"/>");
            }
        }
        for (Region region : regions) {
            String area = areas(canvas, region.values(), region.from());
            if (region.isHatched() && !area.isEmpty()) {
                canvas.svg.filled("c-zone", canvas.pattern(region.role()), area);
            }
        }
        for (double level : levels) {
            for (List<double[]> line : lines(canvas, values, level)) {
                canvas.svg.path("c-level", Stroke.course(line, false));
                canvas.avoid(line);
            }
        }
        regions.forEach(region -> edge(canvas, region));
        for (double level : levels) {
            longest(lines(canvas, values, level))
                    .forEach(
                            line ->
                                    canvas.label(
                                            shade.tick(level) + " " + shade.unit(),
                                            Role.GROUND,
                                            line));
        }
        return canvas.drawing(title, caption);
    }

    private void edge(Canvas canvas, Region region) {
        List<List<double[]>> edges = lines(canvas, region.values(), region.from());
        for (List<double[]> line : edges) {
            canvas.svg.path("c-line " + region.role().style(), Stroke.course(line, false));
            canvas.avoid(line);
        }
        longest(edges)
                .forEach(
                        line ->
                                canvas.label(
                                        region.label(),
                                        region.role(),
                                        line,
                                        (x, y) ->
                                                region.values()[nearest(ys, up, canvas.shareUp(y))][
                                                                nearest(
                                                                        xs,
                                                                        across,
                                                                        canvas.shareAcross(x))]
                                                        >= region.from()));
    }

    /** The place that is nearest to a share of an axis. */
    private static int nearest(double[] places, Axis axis, double share) {
        int nearest = 0;
        for (int i = 1; i < places.length; i++) {
            if (Math.abs(axis.share(places[i]) - share)
                    < Math.abs(axis.share(places[nearest]) - share)) {
                nearest = i;
            }
        }
        return nearest;
    }

    /** One of them, or none. */
    private static List<List<double[]>> longest(List<List<double[]>> lines) {
        return lines.stream()
                .max((one, other) -> Integer.compare(one.size(), other.size()))
                .map(List::of)
                .orElse(List.of());
    }

    private String areas(Canvas canvas, double[][] of, double level) {
        StringBuilder course = new StringBuilder();
        new Contour(xs, ys, of, level)
                .areas()
                .forEach(area -> course.append(Stroke.course(drawn(canvas, area), true)));
        return course.toString();
    }

    private List<List<double[]>> lines(Canvas canvas, double[][] of, double level) {
        return new Contour(xs, ys, of, level)
                .lines().stream().map(line -> drawn(canvas, line)).toList();
    }

    private static List<double[]> drawn(Canvas canvas, List<double[]> course) {
        return Stroke.thinned(
                course.stream().map(point -> canvas.point(point[0], point[1])).toList());
    }

    /** The highest row first, as on the chart, in a few columns. */
    @Override
    public Grid numbers() {
        int every = (xs.length + MOST_COLUMNS - 1) / MOST_COLUMNS;
        List<String> heads = new ArrayList<>();
        heads.add(up.title() + " \\ " + across.title());
        for (int column = 0; column < xs.length; column += every) {
            heads.add(across.fine(xs[column]));
        }
        List<List<String>> rows = new ArrayList<>();
        for (int row = ys.length - 1; row >= 0; row--) {
            List<String> told = new ArrayList<>();
            told.add(up.fine(ys[row]));
            for (int column = 0; column < xs.length; column += every) {
                told.add(shade.fine(values[row][column]));
            }
            rows.add(told);
        }
        return new Grid(heads, rows);
    }
}
