package brakewright.cli.chart;

import java.util.List;

/**
 * Parts beside each other, each with its name and value.
 *
 * @param title what is shown, in a few words
 * @param caption what to see in it
 * @param axis the quantity that the bars are long; from 0 on
 * @param parts from the top down
 */
public record Bars(String title, String caption, Axis axis, List<Part> parts) implements Chart {

    private static final double ROW = 25.0;
    private static final double TOP = 6.0;
    private static final double HIGH = 11.0;
    private static final double EDGE = 3.0;

    /**
     * One bar.
     *
     * @param name what it is
     * @param value how long
     */
    public record Part(String name, double value) {}

    /** Copies the parts. */
    public Bars {
        parts = List.copyOf(parts);
    }

    @Override
    public String svg(String id) {
        Svg svg = new Svg();
        double names =
                Math.min(
                        0.42 * Canvas.WIDTH,
                        parts.stream()
                                .mapToDouble(part -> Lettering.width(part.name()))
                                .max()
                                .orElse(0.0));
        double values =
                parts.stream()
                        .mapToDouble(part -> Lettering.width(written(part)))
                        .max()
                        .orElse(0.0);
        double left = EDGE + names + 8.0;
        double room = Canvas.WIDTH - EDGE - values - 6.0 - left;
        double line = TOP;
        for (Part part : parts) {
            double middle = line + ROW / 2.0;
            double wide = room * Math.max(0.0, Math.min(1.0, axis.share(part.value())));
            double base = middle + 0.36 * Lettering.SIZE;
            svg.anchored("c-axis", "end", left - 8.0, base, Lettering.fitted(part.name(), names));
            svg.rectangle(
                    "c-bar",
                    new Box(
                            left,
                            middle - HIGH / 2.0,
                            left + Math.max(0.5, wide),
                            middle + HIGH / 2.0));
            svg.text("c-tick", left + wide + 6.0, base, written(part));
            line += ROW;
        }
        svg.line("c-base", left, TOP, left, line);
        return svg.drawing(id, title, caption, Canvas.WIDTH, line + TOP);
    }

    private String written(Part part) {
        return number(part) + (axis.unit().isEmpty() ? "" : " " + axis.unit());
    }

    private static String number(Part part) {
        return Axis.written(part.value(), 1);
    }

    @Override
    public Grid numbers() {
        return new Grid(
                List.of("part", axis.title()),
                parts.stream().map(part -> List.of(part.name(), number(part))).toList());
    }
}
