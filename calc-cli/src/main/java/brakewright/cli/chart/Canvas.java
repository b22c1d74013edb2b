package brakewright.cli.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A frame with two axes, and labels beside what is drawn in it. */
final class Canvas {

    static final double WIDTH = 400.0;

    private static final double TOP = 30.0;
    private static final double HIGH = 208.0;
    private static final double RIGHT = WIDTH - 14.0;
    private static final double EDGE = 3.0;
    private static final double ROW = 19.0;
    private static final double SAMPLE = 26.0;

    /** How wide the hatching along a bound is. */
    private static final double HATCH = 7.0;

    final Svg svg = new Svg();
    final Box frame;

    private final Axis across;
    private final Axis up;
    private final String id;
    private final Places places;
    private final List<Runnable> labels = new ArrayList<>();
    private double foot;

    Canvas(String id, Axis across, Axis up) {
        this.id = id;
        this.across = across;
        this.up = up;
        double widest = 0.0;
        for (double tick : up.ticks()) {
            widest = Math.max(widest, Lettering.width(up.tick(tick)));
        }
        this.frame = new Box(EDGE + widest + 7.0, TOP, RIGHT, TOP + HIGH);
        this.places = new Places(frame);
        this.foot = frame.bottom() + 42.0;
    }

    double x(double value) {
        return frame.left() + frame.width() * across.share(value);
    }

    double y(double value) {
        return frame.bottom() - frame.height() * up.share(value);
    }

    /** How much of the foot lies left of a place [1]. */
    double shareAcross(double x) {
        return (x - frame.left()) / frame.width();
    }

    /** How much of the side lies below a place [1]. */
    double shareUp(double y) {
        return (frame.bottom() - y) / frame.height();
    }

    /** A place on the drawing; what lies beyond the frame is put on its edge. */
    double[] point(double x, double y) {
        return new double[] {
            Math.max(frame.left(), Math.min(frame.right(), x(x))),
            Math.max(frame.top(), Math.min(frame.bottom(), y(y)))
        };
    }

    /** Hatching of a kind, by the name under which it is painted. */
    String pattern(Role role) {
        return id + "-" + role.style();
    }

    /** What hatching looks like, before it is painted. */
    void define(Role role) {
        svg.raw(
                "<defs><pattern id=\""
                        + pattern(role)
                        + "\" width=\"6\" height=\"6\" patternUnits=\"userSpaceOnUse\""
                        + " patternTransform=\"rotate(45)\"><path class=\"c-hatch "
                        + role.style()
                        + "\" d=\"M0 0V6\"/></pattern></defs>");
    }

    /** Hairlines, numbers at both edges, and what they are. */
    void axes() {
        for (double tick : up.ticks()) {
            double line = y(tick);
            svg.line("c-hair", frame.left(), line, frame.right(), line);
            svg.anchored(
                    "c-tick",
                    "end",
                    frame.left() - 6.0,
                    line + 0.36 * Lettering.SIZE,
                    up.tick(tick));
        }
        svg.text("c-axis", EDGE, TOP - 14.0, Lettering.fitted(up.title(), WIDTH - 2.0 * EDGE));
        svg.line("c-base", frame.left(), frame.bottom(), frame.right(), frame.bottom());
        double free = Double.NEGATIVE_INFINITY;
        for (double tick : across.ticks()) {
            String text = across.tick(tick);
            double half = Lettering.width(text) / 2.0;
            double at = Math.max(half + EDGE, Math.min(WIDTH - EDGE - half, x(tick)));
            svg.line("c-base", x(tick), frame.bottom(), x(tick), frame.bottom() + 4.0);
            if (at - half > free) {
                svg.anchored("c-tick", "middle", at, frame.bottom() + 20.0, text);
                free = at + half + 3.0;
            }
        }
        svg.anchored(
                "c-axis",
                "end",
                frame.right(),
                frame.bottom() + 37.0,
                Lettering.fitted(across.title(), WIDTH - 2.0 * EDGE));
    }

    /** A course with its label. */
    void line(Line line, double[] places) {
        List<List<double[]>> parts = parts(line, places);
        List<double[]> longest = List.of();
        StringBuilder course = new StringBuilder();
        for (List<double[]> part : parts) {
            List<double[]> thinned = Stroke.thinned(part);
            this.places.avoid(thinned);
            course.append(Stroke.course(thinned, false));
            longest = part.size() > longest.size() ? part : longest;
        }
        if (!parts.isEmpty()) {
            svg.path("c-line " + line.role().style(), course.toString());
            label(line.label(), line.role(), longest);
        }
    }

    /** Between gaps; a place alone is drawn as a short dash. */
    private List<List<double[]>> parts(Line line, double[] places) {
        List<List<double[]>> parts = new ArrayList<>();
        List<double[]> part = new ArrayList<>();
        for (int i = 0; i < places.length; i++) {
            if (Double.isFinite(line.values()[i])) {
                part.add(point(places[i], line.values()[i]));
            }
            if (!part.isEmpty()
                    && (i == places.length - 1 || !Double.isFinite(line.values()[i + 1]))) {
                if (part.size() == 1) {
                    double[] only = part.get(0);
                    part.add(new double[] {Math.min(frame.right(), only[0] + 3.0), only[1]});
                }
                parts.add(part);
                part = new ArrayList<>();
            }
        }
        return parts;
    }

    /** A bound with what lies beyond it hatched; one outside the frame is not drawn. */
    void bound(Bound bound) {
        double at = bound.isUpright() ? x(bound.at()) : y(bound.at());
        boolean isShown =
                bound.isUpright()
                        ? at >= frame.left() && at <= frame.right()
                        : at >= frame.top() && at <= frame.bottom();
        if (!isShown) {
            return;
        }
        if (bound.isUpright()) {
            upright(bound, at);
            return;
        }
        if (bound.beyond() != Bound.Beyond.NEITHER) {
            boolean isAbove = bound.beyond() == Bound.Beyond.MORE;
            double top = isAbove ? Math.max(frame.top(), at - HATCH) : at;
            double bottom = isAbove ? at : Math.min(frame.bottom(), at + HATCH);
            svg.filled(
                    "c-zone",
                    pattern(bound.role()),
                    Stroke.course(
                            List.of(
                                    new double[] {frame.left(), top},
                                    new double[] {frame.right(), top},
                                    new double[] {frame.right(), bottom},
                                    new double[] {frame.left(), bottom}),
                            true));
        }
        svg.line("c-line " + bound.role().style(), frame.left(), at, frame.right(), at);
        List<double[]> course = new ArrayList<>();
        for (int step = 0; step <= 20; step++) {
            course.add(new double[] {frame.left() + frame.width() * step / 20.0, at});
        }
        places.avoid(course);
        label(bound.label(), bound.role(), course);
    }

    private void upright(Bound bound, double at) {
        svg.line("c-line " + bound.role().style(), at, frame.top(), at, frame.bottom());
        List<double[]> course = new ArrayList<>();
        for (int step = 0; step <= 20; step++) {
            course.add(new double[] {at, frame.bottom() - frame.height() * step / 20.0});
        }
        places.avoid(course);
        label(bound.label(), bound.role(), course);
    }

    /** Remembers a label; it is placed once all strokes are known. */
    void label(String text, Role role, List<double[]> course) {
        label(text, role, course, (x, y) -> true);
    }

    /** Likewise, best within what it names. */
    void label(String text, Role role, List<double[]> course, Places.Inside inside) {
        String shown = Lettering.fitted(text, 0.72 * frame.width());
        List<double[]> beside = Stroke.filled(course);
        labels.add(
                () -> {
                    Optional<Places.Spot> spot = places.within(shown, beside, inside);
                    if (spot.isPresent()) {
                        svg.text(
                                "c-label " + role.style(),
                                spot.get().left(),
                                spot.get().line(),
                                shown);
                    } else {
                        key(text, role);
                    }
                });
    }

    void avoid(List<double[]> course) {
        places.avoid(course);
    }

    /** Where there is no room beside a stroke its label stands below the chart with a sample. */
    private void key(String text, Role role) {
        foot += ROW;
        double line = foot - 5.0;
        double middle = line - 0.36 * Lettering.SIZE;
        svg.line("c-line " + role.style(), frame.left(), middle, frame.left() + SAMPLE, middle);
        double left = frame.left() + SAMPLE + 6.0;
        svg.text(
                "c-label " + role.style(), left, line, Lettering.fitted(text, WIDTH - EDGE - left));
    }

    String drawing(String title, String caption) {
        labels.forEach(Runnable::run);
        return svg.drawing(id, title, caption, WIDTH, foot);
    }
}
