package brakewright.recording;

import java.util.Arrays;
import java.util.OptionalDouble;

/** The least squares behind {@link StepResistance}, in one pass over the rows. */
final class StepFit {

    /**
     * Assumption: our own choice; fewer events say nothing of how far they differ from each other.
     */
    private static final int LEAST_EVENTS = 5;

    /** Assumption: our own choice; two rows may be off the step by so much of it. */
    private static final double TOLERANCE = 0.1;

    /** An event lasts so many steps, so that hardly a row counts in two. */
    private static final double STEPS_IN_AN_EVENT = 2.0;

    private final double seconds;
    private final double leastChange;

    private boolean hasBoth;
    private boolean hasPairs;
    private double squares;
    private double products;
    private double warmth;
    private int warm;
    private int events;

    /** Of each event the squares and products, so that its residuals follow once R is known. */
    private double[] eventSquares = new double[16];

    private double[] eventProducts = new double[16];

    StepFit(double seconds, double leastChange) {
        this.seconds = seconds;
        this.leastChange = leastChange;
    }

    StepResistance over(Recording recording) {
        recording.pieces().forEach(this::add);
        if (!hasBoth) {
            return refused(StepResistance.Reason.NOT_RECORDED);
        }
        if (!hasPairs) {
            return refused(StepResistance.Reason.NO_ROWS_A_STEP_APART);
        }
        if (events < LEAST_EVENTS) {
            return refused(StepResistance.Reason.STEADY_CURRENT);
        }
        double resistance = products / squares;
        if (!(resistance > 0.0)) {
            return refused(StepResistance.Reason.NO_SAG);
        }
        return new StepResistance.Measured(
                seconds,
                resistance,
                2.0 * standardError(resistance),
                events,
                leastChange,
                warm == 0 ? OptionalDouble.empty() : OptionalDouble.of(warmth / warm));
    }

    private StepResistance refused(StepResistance.Reason reason) {
        return new StepResistance.Refused(seconds, reason);
    }

    /** Nothing is looked at across the end of a piece. */
    private void add(Piece piece) {
        double slack = TOLERANCE * seconds;
        double until = Double.NEGATIVE_INFINITY;
        int later = 0;
        for (int row = 0; row < piece.rows(); row++) {
            if (!isWhole(piece, row)) {
                continue;
            }
            hasBoth = true;
            double wanted = piece.time(row) + seconds;
            while (later < piece.rows()
                    && (piece.time(later) < wanted - slack || !isWhole(piece, later))) {
                later++;
            }
            int nearest = nearest(piece, later, wanted);
            if (nearest == piece.rows() || piece.time(nearest) > wanted + slack) {
                continue;
            }
            hasPairs = true;
            double rise = change(piece, Quantity.PACK_CURRENT, row, nearest);
            if (Math.abs(rise) > leastChange) {
                if (piece.time(row) >= until) {
                    until = piece.time(row) + STEPS_IN_AN_EVENT * seconds;
                    beginEvent();
                }
                add(rise, -change(piece, Quantity.PACK_VOLTAGE, row, nearest));
                addWarmth(piece.value(Quantity.PACK_TEMPERATURE, row));
            }
        }
    }

    private static boolean isWhole(Piece piece, int row) {
        return !Double.isNaN(
                piece.value(Quantity.PACK_VOLTAGE, row) + piece.value(Quantity.PACK_CURRENT, row));
    }

    private static double change(Piece piece, Quantity quantity, int from, int to) {
        return piece.value(quantity, to) - piece.value(quantity, from);
    }

    /** Of the whole rows from one on, that which is nearest to a time. */
    private static int nearest(Piece piece, int from, double time) {
        int nearest = from;
        for (int row = from; row < piece.rows(); row++) {
            if (!isWhole(piece, row)) {
                continue;
            }
            if (Math.abs(piece.time(row) - time) <= Math.abs(piece.time(nearest) - time)) {
                nearest = row;
            }
            if (piece.time(row) >= time) {
                break;
            }
        }
        return nearest;
    }

    private void beginEvent() {
        if (events == eventSquares.length) {
            eventSquares = Arrays.copyOf(eventSquares, 2 * events);
            eventProducts = Arrays.copyOf(eventProducts, 2 * events);
        }
        events++;
    }

    private void add(double rise, double fall) {
        squares += rise * rise;
        products += rise * fall;
        eventSquares[events - 1] += rise * rise;
        eventProducts[events - 1] += rise * fall;
    }

    private void addWarmth(double temperatureC) {
        if (!Double.isNaN(temperatureC)) {
            warmth += temperatureC;
            warm++;
        }
    }

    /** Each event's sum of rise times residual is its products less R times its squares. */
    private double standardError(double resistance) {
        double sum = 0.0;
        for (int event = 0; event < events; event++) {
            double own = eventProducts[event] - resistance * eventSquares[event];
            sum += own * own;
        }
        return Math.sqrt(sum * events / (events - 1.0)) / squares;
    }
}
