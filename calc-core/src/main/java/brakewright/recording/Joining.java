package brakewright.recording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/** Puts the pieces of one ride together: in order, without overlaps, with the gaps between them. */
public final class Joining {

    /**
     * Assumption: our own choice; rows farther apart than ten times the usual spacing belong to two
     * pieces. At least 2 s, as one row may fail; at most 30 s, after which a vehicle may have gone
     * anywhere.
     */
    private static final double SPACINGS = 10.0;

    private static final double LEAST_STEP = 2.0;
    private static final double MOST_STEP = 30.0;

    /** Assumption: our own choice; slower than this a vehicle stands [m/s]. */
    static final double STANDING = 0.5;

    /** Assumption: our own choice; a pack whose current is less than this rests [A]. */
    private static final double RESTING = 1.0;

    private Joining() {}

    /**
     * Joins pieces. Those whose clocks run on are sorted by time, and rows that lie within an
     * earlier piece are left out; a piece whose clock began anew follows the one given before it.
     *
     * @param given as they were read, those of one file in its order
     * @param isOneClock whether all their times are of one clock, such as dates
     * @param repairs to which overlaps are added
     * @return the recording
     * @throws IllegalArgumentException if there is no piece
     */
    public static Recording join(List<Piece> given, boolean isOneClock, Repairs repairs) {
        List<Piece> sorted = new ArrayList<>(given);
        boolean isOne = isOneClock || runsOn(given);
        if (isOne) {
            sorted.sort(Comparator.comparingDouble(piece -> piece.time(0)));
        }
        double longest = longestStep(sorted, isOne);
        return isOne ? ofOneClock(sorted, longest, repairs) : ofClocks(sorted, longest);
    }

    /** Parts are sorted, not files: one file may lie within a gap of another. */
    private static Recording ofOneClock(List<Piece> sorted, double longest, Repairs repairs) {
        List<Piece> parts = new ArrayList<>();
        sorted.forEach(piece -> parts.addAll(parts(piece, longest)));
        parts.sort(Comparator.comparingDouble(piece -> piece.time(0)));
        Run run = new Run();
        for (Piece whole : parts) {
            Piece part = withoutOverlap(whole, run, repairs);
            if (part != null) {
                run.add(part, longest, false);
            }
        }
        return new Recording(run.pieces, run.gaps, longest);
    }

    private static Recording ofClocks(List<Piece> given, double longest) {
        Run run = new Run();
        for (Piece piece : given) {
            boolean isAnew = true;
            for (Piece part : parts(piece, longest)) {
                run.add(part, longest, isAnew);
                isAnew = false;
            }
        }
        return new Recording(run.pieces, run.gaps, longest);
    }

    private static final class Run {
        private final List<Piece> pieces = new ArrayList<>();
        private final List<Gap> gaps = new ArrayList<>();
        private @Nullable Piece last;

        /** Puts a part behind the last, into the same piece where nothing lies between. */
        private void add(Piece part, double longest, boolean isAnew) {
            Piece before = last;
            if (before == null) {
                pieces.add(part);
                last = part;
            } else if (isAnew || part.time(0) - before.time(before.rows() - 1) > longest) {
                gaps.add(gap(before, part, isAnew));
                pieces.add(part);
                last = part;
            } else {
                last = before.before(part);
                pieces.set(pieces.size() - 1, last);
            }
        }
    }

    /** Whether no piece begins before the one given before it has ended. */
    private static boolean runsOn(List<Piece> given) {
        for (int i = 1; i < given.size(); i++) {
            Piece before = given.get(i - 1);
            if (!(given.get(i).time(0) > before.time(before.rows() - 1))) {
                return false;
            }
        }
        return true;
    }

    private static @Nullable Piece withoutOverlap(Piece piece, Run run, Repairs repairs) {
        Piece last = run.last;
        if (last == null) {
            return piece;
        }
        double end = last.time(last.rows() - 1);
        int from = 0;
        while (from < piece.rows() && piece.time(from) <= end) {
            repairs.row(Repair.Rule.OVERLAP, piece.place(from));
            from++;
        }
        return from == piece.rows() ? null : piece.part(from, piece.rows());
    }

    /** The usual spacing of rows says what is a gap, however they are parted into files. */
    private static double longestStep(List<Piece> pieces, boolean isOneClock) {
        double[] steps = new double[pieces.stream().mapToInt(Piece::rows).sum()];
        int count = 0;
        double last = Double.NaN;
        for (Piece piece : pieces) {
            last = isOneClock ? last : Double.NaN;
            for (int row = 0; row < piece.rows(); row++) {
                double step = piece.time(row) - last;
                if (step > 0.0) {
                    steps[count++] = step;
                }
                last = piece.time(row);
            }
        }
        steps = Arrays.copyOf(steps, count);
        Arrays.sort(steps);
        double usual = count == 0 ? 0.0 : steps[count / 2];
        return Math.max(LEAST_STEP, Math.min(MOST_STEP, SPACINGS * usual));
    }

    private static List<Piece> parts(Piece piece, double longest) {
        List<Piece> parts = new ArrayList<>();
        int from = 0;
        for (int row = 1; row < piece.rows(); row++) {
            if (piece.time(row) - piece.time(row - 1) > longest) {
                parts.add(piece.part(from, row));
                from = row;
            }
        }
        parts.add(from == 0 ? piece : piece.part(from, piece.rows()));
        return parts;
    }

    private static Gap gap(Piece last, Piece next, boolean isAnew) {
        int end = last.rows() - 1;
        double distance = Earth.distance(last, end, next, 0);
        double step = next.value(Quantity.PACK_VOLTAGE, 0) - last.value(Quantity.PACK_VOLTAGE, end);
        boolean isAtRest = rests(last, end) && rests(next, 0);
        return new Gap(
                last.place(end),
                next.place(0),
                isAnew ? OptionalDouble.empty() : OptionalDouble.of(next.time(0) - last.time(end)),
                Moment.present(distance),
                isAtRest ? Moment.present(step) : OptionalDouble.empty());
    }

    /** Only where speed and current, as far as they were recorded, are next to nothing. */
    private static boolean rests(Piece piece, int row) {
        double current = piece.value(Quantity.PACK_CURRENT, row);
        double speed = piece.value(Quantity.WHEEL_SPEED, row);
        boolean isKnown = !Double.isNaN(current) || !Double.isNaN(speed);
        return isKnown && !(Math.abs(current) > RESTING) && !(Math.abs(speed) > STANDING);
    }
}
