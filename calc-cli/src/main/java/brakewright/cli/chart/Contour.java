package brakewright.cli.chart;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where a quantity over two others passes a value, between the places where it is known straight
 * on.
 *
 * <p>Each cell of the grid is crossed by the edges of which one end is at least the value and the
 * other is not; a cell with two such corners across from each other is joined in its middle where
 * the mean of all four is at least the value. Around the grid nothing is, so that every course
 * closes.
 *
 * <p>Source: the usual marching of squares (C. Maple, Geometric design and space planning using the
 * marching squares and marching cube algorithms, 2003; from memory).
 */
final class Contour {

    /** A point of a course, and whether the way to the next one runs along the edge of the grid. */
    private record Turn(double[] point, boolean isEdge) {}

    private record Leg(long to, boolean isEdge) {}

    private final double[] xs;
    private final double[] ys;
    private final double[][] values;
    private final double at;
    private final Map<Long, Leg> legs = new HashMap<>();
    private final List<List<Turn>> courses = new ArrayList<>();

    /**
     * Finds the courses.
     *
     * @param xs places, ascending
     * @param ys places, ascending
     * @param values a row for each of {@code ys}
     * @param at the value
     */
    Contour(double[] xs, double[] ys, double[][] values, double at) {
        this.xs = xs;
        this.ys = ys;
        this.values = values;
        this.at = at;
        for (int row = -1; row < ys.length; row++) {
            for (int column = -1; column < xs.length; column++) {
                cell(row, column);
            }
        }
        while (!legs.isEmpty()) {
            courses.add(course(legs.keySet().iterator().next()));
        }
        courses.sort((one, other) -> Double.compare(lowest(one), lowest(other)));
    }

    /** The closed edges of all that is at least the value. */
    List<List<double[]>> areas() {
        return courses.stream().map(course -> course.stream().map(Turn::point).toList()).toList();
    }

    /** The same without what runs along the edge of the grid. */
    List<List<double[]>> lines() {
        List<List<double[]>> lines = new ArrayList<>();
        for (List<Turn> course : courses) {
            int size = course.size();
            int start = 0;
            while (start < size && !course.get(start).isEdge()) {
                start++;
            }
            List<double[]> line = new ArrayList<>();
            for (int i = 1; i <= size; i++) {
                Turn turn = course.get((start + i) % size);
                line.add(turn.point());
                if (turn.isEdge()) {
                    keep(lines, line);
                    line = new ArrayList<>();
                }
            }
            if (start == size) {
                line.add(line.get(0));
            }
            keep(lines, line);
        }
        return lines;
    }

    private static void keep(List<List<double[]>> lines, List<double[]> line) {
        if (line.size() > 1) {
            lines.add(line);
        }
    }

    private static double lowest(List<Turn> course) {
        return course.stream().mapToDouble(turn -> turn.point()[0]).min().orElse(0.0);
    }

    private boolean isWithin(int row, int column) {
        return value(row, column) >= at;
    }

    private double value(int row, int column) {
        boolean isOutside = row < 0 || column < 0 || row >= ys.length || column >= xs.length;
        double value = isOutside ? Double.NEGATIVE_INFINITY : values[row][column];
        return Double.isNaN(value) ? Double.NEGATIVE_INFINITY : value;
    }

    private void cell(int row, int column) {
        int corners =
                (isWithin(row, column) ? 1 : 0)
                        + (isWithin(row, column + 1) ? 2 : 0)
                        + (isWithin(row + 1, column + 1) ? 4 : 0)
                        + (isWithin(row + 1, column) ? 8 : 0);
        boolean isEdge = row < 0 || column < 0 || row == ys.length - 1 || column == xs.length - 1;
        long foot = flat(row, column);
        long head = flat(row + 1, column);
        long left = upright(row, column);
        long right = upright(row, column + 1);
        switch (corners) {
            case 1 -> leg(foot, left, isEdge);
            case 2 -> leg(right, foot, isEdge);
            case 3 -> leg(right, left, isEdge);
            case 4 -> leg(head, right, isEdge);
            case 5 -> across(row, column, new long[] {foot, right, head, left}, isEdge);
            case 6 -> leg(head, foot, isEdge);
            case 7 -> leg(head, left, isEdge);
            case 8 -> leg(left, head, isEdge);
            case 9 -> leg(foot, head, isEdge);
            case 10 -> across(row, column, new long[] {right, head, left, foot}, isEdge);
            case 11 -> leg(right, head, isEdge);
            case 12 -> leg(left, right, isEdge);
            case 13 -> leg(foot, right, isEdge);
            case 14 -> leg(left, foot, isEdge);
            default -> {}
        }
    }

    /**
     * Two corners across from each other.
     *
     * @param around the edges in their order, at the first a corner that is within begins
     */
    private void across(int row, int column, long[] around, boolean isEdge) {
        boolean isJoined = isMiddleWithin(row, column);
        leg(around[0], around[isJoined ? 1 : 3], isEdge);
        leg(around[2], around[isJoined ? 3 : 1], isEdge);
    }

    private boolean isMiddleWithin(int row, int column) {
        return value(row, column)
                        + value(row, column + 1)
                        + value(row + 1, column)
                        + value(row + 1, column + 1)
                >= 4.0 * at;
    }

    private void leg(long from, long to, boolean isEdge) {
        legs.put(from, new Leg(to, isEdge));
    }

    private List<Turn> course(long start) {
        List<Turn> course = new ArrayList<>();
        long edge = start;
        for (Leg leg = legs.remove(edge); leg != null; leg = legs.remove(edge)) {
            course.add(new Turn(point(edge), leg.isEdge()));
            edge = leg.to();
        }
        return course;
    }

    private long flat(int row, int column) {
        return 2L * ((row + 1L) * (xs.length + 2L) + column + 1L);
    }

    private long upright(int row, int column) {
        return flat(row, column) + 1L;
    }

    /** Where the value is passed on an edge; beyond the grid at its end. */
    private double[] point(long edge) {
        boolean isUpright = edge % 2 == 1;
        long node = edge / 2;
        int row = (int) (node / (xs.length + 2L)) - 1;
        int column = (int) (node % (xs.length + 2L)) - 1;
        double from = value(row, column);
        double to = isUpright ? value(row + 1, column) : value(row, column + 1);
        double share =
                Double.isInfinite(from)
                        ? 1.0
                        : Double.isInfinite(to) ? 0.0 : (at - from) / (to - from);
        return isUpright
                ? new double[] {at(xs, column), between(ys, row, share)}
                : new double[] {between(xs, column, share), at(ys, row)};
    }

    private static double between(double[] places, int from, double share) {
        double start = at(places, from);
        return start + share * (at(places, from + 1) - start);
    }

    private static double at(double[] places, int place) {
        return places[Math.max(0, Math.min(places.length - 1, place))];
    }
}
