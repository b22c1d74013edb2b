package brakewright.fitting;

import brakewright.numeric.Student;
import brakewright.recording.Piece;
import brakewright.recording.Quantity;
import brakewright.recording.Recording;
import java.util.ArrayList;
import java.util.List;

/**
 * What a whole charge holds: the slope of the charge that flowed over the shown charge, wherever
 * that falls, a line of its own height for each piece. A shown charge is surest where it falls, and
 * all falls count, as the first and the last alone may be off by what the display lags.
 *
 * <p>Errors of falls that follow each other are alike, so they are summed up in ten groups of a
 * piece; the step in which the charge is shown is added to the doubt.
 *
 * <p>Source: least squares; the variance that is robust to clusters of Liang and Zeger, Biometrika
 * 73 (1986).
 *
 * <p>What the vehicle shows as charge may itself be counted with a capacity that somebody entered;
 * then that one is found again.
 */
final class CapacityFit {

    /** Assumption: our own choice; a capacity that may be off by more is worth nothing [1]. */
    private static final double MOST_DOUBT = 0.1;

    /** Assumption: our own choice; a lag of the display hardly lasts longer than one of them. */
    private static final int GROUPS = 10;

    /**
     * Assumption: our own choice; what flows between rows is taken for straight, by which rides
     * that the model made, rows half a second apart, come back off by up to 0.2 %. No more is
     * claimed [1].
     */
    private static final double OWN_ERROR = 0.003;

    private static final int LEAST_FALLS = 3;
    private static final double HOUR = 3600.0;

    private final List<List<double[]>> pieces = new ArrayList<>();
    private double steps;
    private double used;

    private CapacityFit() {}

    static Fit of(Recording recording) {
        if (!recording.has(Quantity.CHARGE) || !recording.has(Quantity.PACK_CURRENT)) {
            return refused("charge and current were not recorded together");
        }
        CapacityFit fit = new CapacityFit();
        recording.pieces().forEach(piece -> fit.add(piece, recording.longestStep()));
        return fit.told();
    }

    private static Fit refused(String reason) {
        return new Fit.Refused(Fitted.CAPACITY, reason);
    }

    private void add(Piece piece, double longestStep) {
        List<double[]> falls = falls(piece, longestStep);
        if (falls.size() < LEAST_FALLS) {
            return;
        }
        double finest = Double.POSITIVE_INFINITY;
        double flowed = 0.0;
        double shown = 0.0;
        for (int i = 0; i < falls.size(); i++) {
            finest = i > 0 ? Math.min(finest, falls.get(i - 1)[1] - falls.get(i)[1]) : finest;
            flowed += falls.get(i)[0] / falls.size();
            shown += falls.get(i)[1] / falls.size();
        }
        steps += finest;
        used += falls.get(0)[1] - falls.get(falls.size() - 1)[1];
        List<double[]> aside = new ArrayList<>();
        for (double[] each : falls) {
            aside.add(new double[] {each[0] - flowed, shown - each[1]});
        }
        pieces.add(aside);
    }

    private Fit told() {
        if (pieces.isEmpty()) {
            return refused("the shown charge falls too rarely by what flows out of the pack");
        }
        double products = 0.0;
        double squares = 0.0;
        for (List<double[]> falls : pieces) {
            for (double[] each : falls) {
                products += each[0] * each[1];
                squares += each[1] * each[1];
            }
        }
        double slope = products / squares;
        if (!(slope > 0.0)) {
            return refused("the charge does not fall by what flows out of the pack");
        }
        double sum = 0.0;
        int groups = 0;
        int falls = 0;
        for (List<double[]> piece : pieces) {
            int own = Math.min(GROUPS, piece.size());
            for (int group = 0; group < own; group++) {
                double off = off(piece, slope, group, own);
                sum += off * off;
            }
            groups += own;
            falls += piece.size();
        }
        int free = groups - pieces.size() - 1;
        double error = Math.sqrt(sum * groups / free) / squares / slope;
        double share = Student.factor(free) * error + steps / used + OWN_ERROR;
        if (!(share <= MOST_DOUBT)) {
            return refused("too little of the charge was used for the step in which it is shown");
        }
        double capacity = slope / HOUR;
        return new Fit.Found(Fitted.CAPACITY, capacity, capacity * share, falls);
    }

    private static double off(List<double[]> piece, double slope, int group, int groups) {
        double off = 0.0;
        int end = (group + 1) * piece.size() / groups;
        for (int i = group * piece.size() / groups; i < end; i++) {
            double[] each = piece.get(i);
            off += each[1] * (each[0] - slope * each[1]);
        }
        return off;
    }

    /** What had flowed by then and what was shown, wherever the shown charge falls. */
    private static List<double[]> falls(Piece piece, double longestStep) {
        List<double[]> found = new ArrayList<>();
        double flowed = 0.0;
        double shown = Double.NaN;
        int before = -1;
        for (int row = 0; row < piece.rows(); row++) {
            double current = piece.value(Quantity.PACK_CURRENT, row);
            double charge = piece.value(Quantity.CHARGE, row);
            if (!Double.isNaN(current)) {
                if (before >= 0) {
                    double step = piece.time(row) - piece.time(before);
                    if (step > longestStep) {
                        return List.of();
                    }
                    flowed += 0.5 * step * (current + piece.value(Quantity.PACK_CURRENT, before));
                }
                before = row;
            }
            boolean isNewLow = found.isEmpty() || charge < found.get(found.size() - 1)[1];
            if (charge < shown && isNewLow) {
                found.add(new double[] {flowed, charge});
            }
            shown = Double.isNaN(charge) ? shown : charge;
        }
        return found;
    }
}
