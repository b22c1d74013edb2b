package brakewright.cli.chart;

import java.util.ArrayList;
import java.util.List;

/** A course on the drawing, in as few points as show no difference. */
final class Stroke {

    /** Deviations below that are not seen [units of the drawing]. */
    private static final double UNSEEN = 0.15;

    /** Of many points in a stretch so wide its first, lowest, highest and last tell all. */
    private static final double STRETCH = 1.5;

    /** A course of fewer points is filled. */
    private static final int FEW = 20;

    private Stroke() {}

    /** Thins points whose x does not fall: first by stretches, then on straight lines. */
    static List<double[]> thinned(List<double[]> points) {
        return straightened(points.size() > 300 ? stretches(points) : points);
    }

    /** Points between those of a course that has few, so that a label finds its place beside it. */
    static List<double[]> filled(List<double[]> points) {
        if (points.size() >= FEW) {
            return points;
        }
        List<double[]> filled = new ArrayList<>();
        for (int i = 0; i + 1 < points.size(); i++) {
            double[] from = points.get(i);
            double[] to = points.get(i + 1);
            for (int part = 0; part < FEW; part++) {
                double share = (double) part / FEW;
                filled.add(
                        new double[] {
                            from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])
                        });
            }
        }
        filled.add(points.get(points.size() - 1));
        return filled;
    }

    private static List<double[]> stretches(List<double[]> points) {
        List<double[]> kept = new ArrayList<>();
        int start = 0;
        while (start < points.size()) {
            int low = start;
            int high = start;
            int end = start;
            while (end + 1 < points.size()
                    && points.get(end + 1)[0] - points.get(start)[0] < STRETCH) {
                end++;
                low = points.get(end)[1] < points.get(low)[1] ? end : low;
                high = points.get(end)[1] > points.get(high)[1] ? end : high;
            }
            for (int i : new int[] {start, Math.min(low, high), Math.max(low, high), end}) {
                if (kept.isEmpty() || kept.get(kept.size() - 1) != points.get(i)) {
                    kept.add(points.get(i));
                }
            }
            start = end + 1;
        }
        return kept;
    }

    /** Leaves out points that lie on the way from the last one kept to the next. */
    private static List<double[]> straightened(List<double[]> points) {
        List<double[]> kept = new ArrayList<>();
        int from = 0;
        for (int i = 0; i < points.size(); i++) {
            if (i == 0 || i == points.size() - 1 || !isStraight(points, from, i + 1)) {
                kept.add(points.get(i));
                from = i;
            }
        }
        return kept;
    }

    private static boolean isStraight(List<double[]> points, int from, int to) {
        double[] start = points.get(from);
        double[] end = points.get(to);
        double wide = end[0] - start[0];
        double high = end[1] - start[1];
        double length = Math.hypot(wide, high);
        for (int i = from + 1; i < to; i++) {
            double x = points.get(i)[0] - start[0];
            double y = points.get(i)[1] - start[1];
            double off = length == 0.0 ? Math.hypot(x, y) : Math.abs(x * high - y * wide) / length;
            if (off > UNSEEN) {
                return false;
            }
        }
        return true;
    }

    /** Writes a course; a closed one returns to its beginning. */
    static String course(List<double[]> points, boolean isClosed) {
        StringBuilder course = new StringBuilder();
        String last = "";
        for (double[] point : points) {
            String place = Svg.number(point[0]) + " " + Svg.number(point[1]);
            if (!place.equals(last)) {
                course.append(course.isEmpty() ? "M" : "L").append(place);
                last = place;
            }
        }
        return course.append(isClosed ? "Z" : "").toString();
    }
}
