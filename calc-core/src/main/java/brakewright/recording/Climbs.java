package brakewright.recording;

import brakewright.road.Slope;
import java.util.Arrays;

/**
 * How steep the road of a piece was: the recorded heights are averaged over {@link #SPAN} of the
 * way, and the slope is even from the middle of one span to that of the next.
 */
final class Climbs {

    /**
     * Assumption: our own choice; heights are told to a metre or wander by a few, which over less
     * makes slopes that no road has [m].
     */
    private static final double SPAN = 100.0;

    /** Assumption: our own choice; steeper than this no road is ridden [1]. */
    private static final double STEEPEST = 0.3;

    private final double[] ways;
    private final double[] middles;
    private final double[] heights;

    private Climbs(double[] ways, double[] middles, double[] heights) {
        this.ways = ways;
        this.middles = middles;
        this.heights = heights;
    }

    static Climbs of(Piece piece, double longestStep, Quantity speed) {
        double[] ways = ways(piece, longestStep, speed);
        double[] middles = new double[piece.rows()];
        double[] heights = new double[piece.rows()];
        int spans = 0;
        int rows = 0;
        double begin = Double.NEGATIVE_INFINITY;
        for (int row = 0; row < piece.rows(); row++) {
            double height = piece.value(Quantity.ALTITUDE, row);
            if (Double.isNaN(height)) {
                continue;
            }
            if (ways[row] - begin >= SPAN) {
                begin = ways[row];
                spans++;
                rows = 0;
            }
            rows++;
            middles[spans - 1] += (ways[row] - middles[spans - 1]) / rows;
            heights[spans - 1] += (height - heights[spans - 1]) / rows;
        }
        return new Climbs(ways, Arrays.copyOf(middles, spans), Arrays.copyOf(heights, spans));
    }

    /** How far each row is from the first; nothing is added where rows are no neighbours. */
    private static double[] ways(Piece piece, double longestStep, Quantity speed) {
        double[] ways = new double[piece.rows()];
        Neighbours.each(
                piece,
                longestStep,
                row -> !Double.isNaN(piece.value(speed, row)),
                (before, row, step) ->
                        ways[row] =
                                0.5
                                        * step
                                        * (Math.abs(piece.value(speed, before))
                                                + Math.abs(piece.value(speed, row))));
        for (int row = 1; row < ways.length; row++) {
            ways[row] += ways[row - 1];
        }
        return ways;
    }

    /** From one row to another; level where fewer than two spans have a height [1]. */
    double slope(int begin, int end) {
        if (middles.length < 2) {
            return 0.0;
        }
        double middle = 0.5 * (ways[begin] + ways[end]);
        int found = Arrays.binarySearch(middles, middle);
        int above = Math.max(1, Math.min(middles.length - 1, found < 0 ? -found - 1 : found));
        double length = middles[above] - middles[above - 1];
        if (!(length > 0.0)) {
            return 0.0;
        }
        double most = STEEPEST * length;
        double rise = heights[above] - heights[above - 1];
        return Slope.ofRise(Math.max(-most, Math.min(most, rise)), length);
    }
}
