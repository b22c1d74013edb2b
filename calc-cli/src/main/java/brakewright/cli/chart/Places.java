package brakewright.cli.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds places for labels: inside the frame, on no other label, and on as little else as it can.
 */
final class Places {

    /**
     * Where a label could stand.
     *
     * @param left where it begins
     * @param line on which it stands
     * @param cost how little it is liked [points of a stroke that it covers]
     */
    record Spot(double left, double line, double cost) {}

    /** Our own choice: so much room is left around a label. */
    private static final double APART = 1.5;

    /** How far a label keeps from the stroke that it belongs to. */
    private static final double OFF = 4.0;

    private final Box frame;
    private final List<Box> taken = new ArrayList<>();
    private final List<double[]> strokes = new ArrayList<>();

    Places(Box frame) {
        this.frame = frame;
    }

    /** Adds what labels should not cover. */
    void avoid(List<double[]> points) {
        for (int i = 0; i < points.size(); i++) {
            strokes.add(points.get(i));
            if (i > 0) {
                between(points.get(i - 1), points.get(i));
            }
        }
    }

    /** Points close enough that no label slips through between two of them. */
    private void between(double[] from, double[] to) {
        double apart = Math.hypot(to[0] - from[0], to[1] - from[1]);
        int steps = (int) Math.min(200.0, Math.ceil(apart / 3.0));
        for (int step = 1; step < steps; step++) {
            double share = (double) step / steps;
            strokes.add(
                    new double[] {
                        from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])
                    });
        }
    }

    /** Places a label along its stroke, best near its end; empty where there is no room. */
    Optional<Spot> along(String text, List<double[]> points) {
        return best(text, spots(text, points));
    }

    private static List<Spot> spots(String text, List<double[]> points) {
        List<Spot> spots = new ArrayList<>();
        double wide = Lettering.width(text);
        double above = OFF + Lettering.BELOW * Lettering.SIZE;
        double below = OFF + Lettering.ABOVE * Lettering.SIZE;
        int step = Math.max(1, points.size() / 40);
        for (int i = points.size() - 1; i >= 0; i -= step) {
            double[] point = points.get(i);
            double cost = 3.0 * (points.size() - 1 - i) / points.size();
            for (double left : new double[] {point[0] - wide, point[0] - wide / 2.0, point[0]}) {
                spots.add(new Spot(left, point[1] - above, cost));
                spots.add(new Spot(left, point[1] + below, cost + 0.5));
            }
            double middle = point[1] + 0.35 * Lettering.SIZE;
            spots.add(new Spot(point[0] + OFF + 2.0, middle, cost + 0.7));
            spots.add(new Spot(point[0] - OFF - 2.0 - wide, middle, cost + 0.7));
        }
        return spots;
    }

    /** Likewise, best where its middle stands within what it names. */
    Optional<Spot> within(String text, List<double[]> points, Inside inside) {
        double wide = Lettering.width(text);
        return best(
                text,
                spots(text, points).stream()
                        .map(
                                spot ->
                                        inside.holds(
                                                        spot.left() + wide / 2.0,
                                                        spot.line() - 0.35 * Lettering.SIZE)
                                                ? spot
                                                : new Spot(
                                                        spot.left(),
                                                        spot.line(),
                                                        spot.cost() + 9.0))
                        .toList());
    }

    /** Whether a place of the drawing is within something. */
    interface Inside {
        boolean holds(double x, double y);
    }

    /** Takes the best of some places; empty where there is no room at any. */
    Optional<Spot> best(String text, List<Spot> spots) {
        Spot found = null;
        double least = Double.POSITIVE_INFINITY;
        for (Spot spot : spots) {
            Box box = Box.ofText(text, spot.left(), spot.line()).grown(APART);
            if (frame.holds(box) && taken.stream().noneMatch(box::meets)) {
                double cost = spot.cost() + covered(box);
                if (cost < least) {
                    least = cost;
                    found = spot;
                }
            }
        }
        if (found == null) {
            return Optional.empty();
        }
        taken.add(Box.ofText(text, found.left(), found.line()).grown(APART));
        return Optional.of(found);
    }

    private long covered(Box box) {
        return strokes.stream().filter(point -> box.holds(point[0], point[1])).count();
    }
}
