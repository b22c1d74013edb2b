package brakewright.fitting;

import brakewright.recording.Piece;
import brakewright.recording.Quantity;
import brakewright.recording.Recording;
import java.util.ArrayList;
import java.util.List;

/**
 * What a whole charge holds: the charge that flowed over the share of it that was used. In each
 * piece it is taken from one fall of the shown charge to the last, so that the shown charge is off
 * by less than its own step; how far the two drift apart on the way is added to the doubt.
 *
 * <p>What the vehicle shows as charge may itself be counted with a capacity that somebody entered;
 * then that one is found again.
 */
final class CapacityFit {

    /** Assumption: our own choice; a capacity that may be off by more is worth nothing [1]. */
    private static final double MOST_DOUBT = 0.1;

    /**
     * Assumption: our own choice; where charge and current drift apart and back by so much, they
     * may be apart by twice as much at the end.
     */
    private static final double BENDS = 2.0;

    private static final double HOUR = 3600.0;

    private double coulombs;
    private double used;
    private double doubt;
    private int falls;

    private CapacityFit() {}

    static Fit of(Recording recording) {
        if (!recording.has(Quantity.CHARGE) || !recording.has(Quantity.PACK_CURRENT)) {
            return refused("charge and current were not recorded together");
        }
        CapacityFit fit = new CapacityFit();
        recording.pieces().forEach(piece -> fit.add(piece, recording.longestStep()));
        if (!(fit.used > 0.0) || !(fit.coulombs > 0.0)) {
            return refused("the charge does not fall by what flows out of the pack");
        }
        double share = fit.doubt / fit.used;
        if (share > MOST_DOUBT) {
            return refused("too little of the charge was used for the step in which it is shown");
        }
        double capacity = fit.coulombs / HOUR / fit.used;
        return new Fit.Found(Fitted.CAPACITY, capacity, capacity * share, fit.falls);
    }

    private static Fit refused(String reason) {
        return new Fit.Refused(Fitted.CAPACITY, reason);
    }

    private void add(Piece piece, double longestStep) {
        List<double[]> shownFalls = falls(piece, longestStep);
        if (shownFalls.size() < 2) {
            return;
        }
        double[] first = shownFalls.get(0);
        double[] last = shownFalls.get(shownFalls.size() - 1);
        double slope = (last[0] - first[0]) / (first[1] - last[1]);
        double finest = Double.POSITIVE_INFINITY;
        double bend = 0.0;
        for (int i = 1; i < shownFalls.size(); i++) {
            double[] here = shownFalls.get(i);
            finest = Math.min(finest, shownFalls.get(i - 1)[1] - here[1]);
            double straight = (here[0] - first[0]) / slope;
            bend = Math.max(bend, Math.abs(first[1] - here[1] - straight));
        }
        coulombs += last[0] - first[0];
        used += first[1] - last[1];
        doubt += finest + BENDS * bend;
        falls += shownFalls.size();
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
