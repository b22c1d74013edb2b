package brakewright.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Finds fields that no ride can have produced, and leaves them out. */
final class Faults {

    /**
     * Assumption: our own choice; no vehicle of this class changes its speed faster, and tyres on
     * dry asphalt hardly hold more [m/s²].
     */
    private static final double FASTEST_CHANGE = 15.0;

    /** Assumption: our own choice; less may be a coarse speed of quick rows [m/s]. */
    private static final double LEAST_SPIKE = 2.0;

    /** Assumption: our own choice; nobody rides a vehicle of this class faster [m/s]. */
    private static final double FASTEST = 70.0;

    /** Assumption: our own choice; positions of satellites are off by so much [m]. */
    private static final double SCATTER = 30.0;

    /** Assumption: our own choice; so much charge is not used in so short a time. */
    private static final double CHARGE_LEAP = 0.1;

    private static final double CHARGE_TIME = 600.0;

    /** Assumption: our own choice; shorter, values may well repeat [s]. */
    private static final double FREEZE = 5.0;

    private static final int FROZEN_ROWS = 5;

    /** Assumption: our own choice; a recorder that freezes more often was not fit to record. */
    private static final int MOST_FREEZES = 3;

    /** Assumption: our own choice; two coarse columns repeat on a steady ride, too. */
    private static final int COLUMNS_TO_FREEZE = 3;

    /** Assumption: our own choice; slower, wheels may turn while the vehicle is pushed [m/s]. */
    private static final double MOVING = 1.0;

    private final Repairs repairs;
    private Piece piece;

    private Faults(Piece piece, Repairs repairs) {
        this.piece = piece;
        this.repairs = repairs;
    }

    static Piece leftOut(Piece piece, Repairs repairs) {
        Faults faults = new Faults(piece, repairs);
        faults.impossible();
        faults.spikes(Quantity.WHEEL_SPEED);
        faults.spikes(Quantity.SATELLITE_SPEED);
        faults.leapsOfCharge();
        faults.frozen();
        faults.leapsOfPosition();
        faults.stuckPositions();
        return faults.piece;
    }

    private void impossible() {
        for (Quantity quantity : piece.quantities()) {
            double[] values = piece.column(quantity);
            boolean isChanged = false;
            for (int row = 0; row < values.length; row++) {
                if (!Double.isNaN(values[row]) && !quantity.isPossible(values[row])) {
                    repairs.field(Repair.Rule.IMPOSSIBLE, quantity, piece.place(row));
                    values[row] = Double.NaN;
                    isChanged = true;
                }
            }
            if (isChanged) {
                piece = piece.with(quantity, values);
            }
        }
        pairs();
        noFix();
    }

    /** Half a position is none; the field that is missing was told already, or never there. */
    private void pairs() {
        if (!piece.has(Quantity.LATITUDE) && !piece.has(Quantity.LONGITUDE)) {
            return;
        }
        double[] north = piece.column(Quantity.LATITUDE);
        double[] east = piece.column(Quantity.LONGITUDE);
        boolean isChanged = false;
        for (int row = 0; row < north.length; row++) {
            if (Double.isNaN(north[row]) != Double.isNaN(east[row])) {
                north[row] = Double.NaN;
                east[row] = Double.NaN;
                isChanged = true;
            }
        }
        if (isChanged) {
            piece = piece.with(Quantity.LATITUDE, north).with(Quantity.LONGITUDE, east);
        }
    }

    /** Both exactly 0 is what receivers write that have no position yet. */
    private void noFix() {
        leavePositionsOut(
                Repair.Rule.IMPOSSIBLE,
                row ->
                        piece.value(Quantity.LATITUDE, row) == 0.0
                                && piece.value(Quantity.LONGITUDE, row) == 0.0);
    }

    private void spikes(Quantity speed) {
        if (!piece.has(speed)) {
            return;
        }
        double[] values = piece.column(speed);
        boolean isChanged = false;
        for (int row = 1; row + 1 < values.length; row++) {
            double before = values[row] - values[row - 1];
            double behind = values[row] - values[row + 1];
            if (before * behind > 0.0
                    && isTooFast(before, row - 1, row)
                    && isTooFast(behind, row, row + 1)) {
                repairs.field(Repair.Rule.SPIKE, speed, piece.place(row));
                values[row] = Double.NaN;
                isChanged = true;
            }
        }
        if (isChanged) {
            piece = piece.with(speed, values);
        }
    }

    private boolean isTooFast(double change, int from, int to) {
        double seconds = piece.time(to) - piece.time(from);
        return Math.abs(change) > Math.max(LEAST_SPIKE, FASTEST_CHANGE * seconds);
    }

    /** What leaps away counts as broken only where it comes back. */
    private void leapsOfCharge() {
        if (!piece.has(Quantity.CHARGE)) {
            return;
        }
        double[] charge = piece.column(Quantity.CHARGE);
        boolean isChanged = false;
        int good = -1;
        for (int row = 0; row < charge.length; row++) {
            if (Double.isNaN(charge[row])) {
                continue;
            }
            int back =
                    good >= 0 && isLeap(charge[row], charge[good]) ? back(charge, good, row) : row;
            for (int broken = row; broken < back; broken++) {
                if (!Double.isNaN(charge[broken])) {
                    repairs.field(Repair.Rule.CHARGE_LEAP, Quantity.CHARGE, piece.place(broken));
                    charge[broken] = Double.NaN;
                    isChanged = true;
                }
            }
            good = back;
            row = back;
        }
        if (isChanged) {
            piece = piece.with(Quantity.CHARGE, charge);
        }
    }

    private static boolean isLeap(double one, double other) {
        return Math.abs(one - other) > CHARGE_LEAP;
    }

    /** The row at which the charge is near a good one again; the row itself where it never is. */
    private int back(double[] charge, int good, int row) {
        for (int next = row + 1; next < charge.length; next++) {
            if (piece.time(next) - piece.time(good) > CHARGE_TIME) {
                return row;
            }
            if (!Double.isNaN(charge[next]) && !isLeap(charge[next], charge[good])) {
                return next;
            }
        }
        return row;
    }

    /**
     * The first of the rows that repeat stands; what follows is taken out. Where nothing is
     * recorded that must change on the way, and rows repeat again and again, steady riding looks
     * alike: they are kept, and told.
     */
    private void frozen() {
        Set<Quantity> quantities = piece.quantities();
        quantities.remove(Quantity.TIME);
        quantities.remove(Quantity.WIND_SPEED);
        if (quantities.size() < COLUMNS_TO_FREEZE || !quantities.contains(Quantity.WHEEL_SPEED)) {
            return;
        }
        List<int[]> repeats = repeats(quantities);
        boolean changesOnTheWay = hasPositions() || piece.has(Quantity.DISTANCE);
        boolean isCoarse = !changesOnTheWay && repeats.size() > MOST_FREEZES;
        boolean[] isLeftOut = new boolean[piece.rows()];
        for (int[] repeat : repeats) {
            for (int row = repeat[0] + 1; row < repeat[1]; row++) {
                repairs.row(
                        isCoarse ? Repair.Rule.REPEATING : Repair.Rule.FROZEN, piece.place(row));
                isLeftOut[row] = !isCoarse;
            }
        }
        if (!repeats.isEmpty() && !isCoarse) {
            piece =
                    piece.rows(
                            IntStream.range(0, piece.rows())
                                    .filter(row -> !isLeftOut[row])
                                    .toArray());
        }
    }

    /**
     * Where rows are the same for a while and not at rest: the first row and that behind the last.
     */
    private List<int[]> repeats(Set<Quantity> quantities) {
        List<int[]> repeats = new ArrayList<>();
        int row = 0;
        while (row < piece.rows()) {
            int end = row + 1;
            while (end < piece.rows() && isSame(quantities, row, end)) {
                end++;
            }
            if (end - row >= FROZEN_ROWS
                    && piece.time(end - 1) - piece.time(row) >= FREEZE
                    && Math.abs(piece.value(Quantity.WHEEL_SPEED, row)) > MOVING) {
                repeats.add(new int[] {row, end});
            }
            row = end;
        }
        return repeats;
    }

    private boolean isSame(Set<Quantity> quantities, int one, int other) {
        for (Quantity quantity : quantities) {
            if (Double.compare(piece.value(quantity, one), piece.value(quantity, other)) != 0) {
                return false;
            }
        }
        return true;
    }

    private void leapsOfPosition() {
        if (!hasPositions()) {
            return;
        }
        boolean[] isLeap = new boolean[piece.rows()];
        int last = -1;
        int left = 0;
        for (int row = 0; row < piece.rows(); row++) {
            if (Double.isNaN(piece.value(Quantity.LATITUDE, row))) {
                continue;
            }
            boolean isFar = last >= 0 && isTooFar(last, row);
            isLeap[row] = isFar && left < FROZEN_ROWS;
            left = isLeap[row] ? left + 1 : 0;
            last = isLeap[row] ? last : row;
        }
        leavePositionsOut(Repair.Rule.POSITION_LEAP, row -> isLeap[row]);
    }

    private boolean isTooFar(int from, int to) {
        double seconds = piece.time(to) - piece.time(from);
        return Earth.distance(piece, from, piece, to) > SCATTER + FASTEST * seconds;
    }

    /** A receiver that lost its satellites goes on telling where it last was. */
    private void stuckPositions() {
        if (!hasPositions() || !piece.has(Quantity.WHEEL_SPEED)) {
            return;
        }
        boolean[] isStuck = new boolean[piece.rows()];
        int first = 0;
        double ridden = 0.0;
        for (int row = 1; row < piece.rows(); row++) {
            boolean isThere = isSame(Set.of(Quantity.LATITUDE, Quantity.LONGITUDE), first, row);
            if (!isThere) {
                first = row;
                ridden = 0.0;
                continue;
            }
            double speed = Math.abs(piece.value(Quantity.WHEEL_SPEED, row));
            ridden += speed > MOVING ? speed * (piece.time(row) - piece.time(row - 1)) : 0.0;
            isStuck[row] = ridden > SCATTER;
        }
        leavePositionsOut(Repair.Rule.POSITION_STUCK, row -> isStuck[row]);
    }

    private boolean hasPositions() {
        return piece.has(Quantity.LATITUDE) && piece.has(Quantity.LONGITUDE);
    }

    private void leavePositionsOut(Repair.Rule rule, IntPredicate isBroken) {
        if (!hasPositions()) {
            return;
        }
        double[] north = piece.column(Quantity.LATITUDE);
        double[] east = piece.column(Quantity.LONGITUDE);
        boolean isChanged = false;
        for (int row = 0; row < north.length; row++) {
            if (!Double.isNaN(north[row]) && isBroken.test(row)) {
                repairs.field(rule, Quantity.LATITUDE, piece.place(row));
                north[row] = Double.NaN;
                east[row] = Double.NaN;
                isChanged = true;
            }
        }
        if (isChanged) {
            piece = piece.with(Quantity.LATITUDE, north).with(Quantity.LONGITUDE, east);
        }
    }
}
