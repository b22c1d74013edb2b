package brakewright.battery;

import brakewright.numeric.Accuracy;
import brakewright.numeric.Ascending;
import brakewright.numeric.Greatest;
import brakewright.spec.Battery;
import brakewright.spec.Cell;
import brakewright.spec.Curve;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Require;
import brakewright.spec.ResistanceByCharge;
import brakewright.spec.Unit;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All packs together as one voltage behind one resistance. A single pack is the simple case.
 *
 * <p>In parallel, at the voltage they share at rest, {@code 1/R = Σ 1/Rk} and each carries {@code
 * wk = R/Rk} of the current; in series {@code U = Σ Uk}, {@code R = Σ Rk} and each carries all of
 * it. What carries the current of all together adds its resistance.
 *
 * <p>Source: Kirchhoff's laws.
 */
public final class BatteryModel {

    /**
     * Assumption: our own choice. Between knots the shares of unlike packs bend, the more the more
     * a resistance changes: in a piece over which none changes by more than this they lie within
     * its square of a straight line. A law holds what was measured.
     */
    private static final double CHANGE = 0.05;

    private static final int MOST_PIECES = 8;

    /** Where resistances change most over the charge that were measured [°C]. */
    private static final double COLD_C = 10.0;

    private final Battery battery;
    private final Direction direction;
    private final List<PackModel> packs;
    private final ChargeMap map;
    private final boolean isEven;

    // What was found last is kept, as whoever asks goes on asking at the same place. Records whose
    // fields are final may be handed from thread to thread without more: each sees a whole one.

    private Branching branching = new Branching(Double.NaN, Double.NaN, 0.0, new double[0]);
    private GreatestShares greatest = new GreatestShares(Double.NaN, new double[0]);

    private volatile @Nullable BatteryModel into;

    /** Found when they are first asked for, as each limit and each search asks. */
    private volatile double @Nullable [] knots;

    private volatile double @Nullable [] points;
    private volatile double @Nullable [] pointsOfFullest;
    private volatile double @Nullable [] pointsOfEmptiest;

    /** How packs in parallel divide the current, and what pulse resistance they have together. */
    private record Branching(
            double charge, double temperatureC, double resistance, double[] shares) {}

    /** The greatest share of each pack at a temperature. */
    private record GreatestShares(double temperatureC, double[] shares) {}

    /**
     * Makes the model of a battery that is drawn from.
     *
     * @param battery its packs
     */
    public BatteryModel(Battery battery) {
        this(battery, Direction.OUT, ChargeMap.of(battery));
    }

    private BatteryModel(Battery battery, Direction direction, ChargeMap map) {
        this.battery = battery;
        this.direction = direction;
        this.packs = battery.packs().stream().map(pack -> new PackModel(pack, direction)).toList();
        this.map = map;
        this.isEven = isEven(battery);
    }

    /**
     * Returns the same packs as a current into them finds them: with more resistance, which they
     * share otherwise.
     *
     * @return the model for a current into the packs, always the same one
     */
    public BatteryModel into() {
        if (direction == Direction.INTO) {
            return this;
        }
        BatteryModel found = into;
        if (found == null) {
            found = new BatteryModel(battery, Direction.INTO, map);
            into = found;
        }
        return found;
    }

    /**
     * Returns a model of other packs for a current that flows the same way.
     *
     * @param other the packs
     * @return their model
     */
    public BatteryModel sameWay(Battery other) {
        BatteryModel model = new BatteryModel(other);
        return direction == Direction.INTO ? model.into() : model;
    }

    /**
     * Returns the models of the packs.
     *
     * @return in the order of the battery
     */
    public List<PackModel> packs() {
        return packs;
    }

    /**
     * Returns what all packs together give from full to empty.
     *
     * @return the capacity [Ah]
     */
    public double capacityAh() {
        return map.capacityAh();
    }

    /**
     * Returns the charge state that one pack has, at rest.
     *
     * @param pack its place in the battery, from 0
     * @param charge the charge state of all together [1]
     * @return its own charge state [1]
     * @throws IllegalArgumentException if the charge state is NaN
     */
    public double chargeOf(int pack, double charge) {
        Require.number("charge state", charge, Unit.RATIO);
        return packs.size() == 1 ? charge : map.at(charge)[pack];
    }

    /** The charge state of each pack, at rest; not to be written to [1]. */
    double[] chargesOf(double charge) {
        Require.number("charge state", charge, Unit.RATIO);
        return packs.size() == 1 ? new double[] {charge} : map.at(charge);
    }

    /** Whether each pack carries all of the current. */
    boolean isUndivided() {
        return packs.size() == 1 || battery.joining() == Joining.SERIES;
    }

    /**
     * Returns the share of the whole current that one pack carries.
     *
     * @param pack its place in the battery, from 0
     * @param charge the charge state of all together [1]
     * @param temperatureC the cell temperature [°C]
     * @return w, above 0 to 1 [1]
     */
    public double share(int pack, double charge, double temperatureC) {
        if (isUndivided()) {
            return 1.0;
        }
        return branching(charge, temperatureC).shares()[pack];
    }

    private Branching branching(double charge, double temperatureC) {
        Branching there = branching;
        if (there.charge() != charge || there.temperatureC() != temperatureC) {
            there = branchingAt(charge, temperatureC);
            branching = there;
        }
        return there;
    }

    private Branching branchingAt(double charge, double temperatureC) {
        double[] charges = map.at(charge);
        double[] each = new double[charges.length];
        for (int k = 0; k < each.length; k++) {
            each[k] = packs.get(k).resistance(charges[k], temperatureC);
        }
        double together = joined(each);
        return new Branching(charge, temperatureC, together, shares(together, each));
    }

    /**
     * Returns the greatest share that one pack carries at any charge state.
     *
     * @param pack its place in the battery, from 0
     * @param temperatureC the cell temperature [°C]
     * @return w where it is greatest [1]
     */
    public double greatestShare(int pack, double temperatureC) {
        if (isEven) {
            return share(pack, 1.0, temperatureC);
        }
        GreatestShares found = greatest;
        if (found.temperatureC() != temperatureC) {
            found = new GreatestShares(temperatureC, greatestShares(temperatureC));
            greatest = found;
        }
        return found.shares()[pack];
    }

    private double[] greatestShares(double temperatureC) {
        double[] points = points();
        int[] places = new int[packs.size()];
        double[] greatest = branchingAt(points[0], temperatureC).shares();
        for (int i = 1; i < points.length; i++) {
            double[] shares = branchingAt(points[i], temperatureC).shares();
            for (int k = 0; k < shares.length; k++) {
                if (shares[k] > greatest[k]) {
                    places[k] = i;
                    greatest[k] = shares[k];
                }
            }
        }
        for (int k = 0; k < greatest.length; k++) {
            int pack = k;
            double refined =
                    Greatest.between(
                            charge -> share(pack, charge, temperatureC),
                            points[Math.max(0, places[k] - 1)],
                            points[Math.min(points.length - 1, places[k] + 1)],
                            Accuracy.CHARGE);
            greatest[k] = Math.max(greatest[k], share(k, refined, temperatureC));
        }
        return greatest;
    }

    /**
     * Returns the open-circuit voltage.
     *
     * @param charge the charge state [1]
     * @return U(s) [V]
     */
    public double openCircuitVoltage(double charge) {
        if (battery.joining() == Joining.PARALLEL) {
            return packs.get(0).openCircuitVoltage(chargeOf(0, charge));
        }
        double sum = 0.0;
        for (int k = 0; k < packs.size(); k++) {
            sum += packs.get(k).openCircuitVoltage(chargeOf(k, charge));
        }
        return sum;
    }

    /**
     * Returns the pulse resistance.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return R(s,T) [Ω]
     */
    public double resistance(double charge, double temperatureC) {
        return resistance(charge, temperatureC, Cell.PULSE);
    }

    /**
     * Returns the resistance after a current has flowed for a time.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long [s]; 10 s for the pulse resistance, infinite for ever
     * @return R(s,T,t) [Ω]
     */
    public double resistance(double charge, double temperatureC, double seconds) {
        return ofPacks(charge, temperatureC, seconds) + battery.trunkResistance();
    }

    private double ofPacks(double charge, double temperatureC, double seconds) {
        if (packs.size() == 1) {
            return packs.get(0).resistance(charge, temperatureC, seconds);
        }
        if (seconds == Cell.PULSE && battery.joining() == Joining.PARALLEL) {
            return branching(charge, temperatureC).resistance();
        }
        double[] each = new double[packs.size()];
        for (int k = 0; k < each.length; k++) {
            each[k] = packs.get(k).resistance(chargeOf(k, charge), temperatureC, seconds);
        }
        return joined(each);
    }

    /** The resistance together of packs that have some. */
    private double joined(double[] each) {
        if (each.length == 1) {
            return each[0];
        }
        double resistances = 0.0;
        double conductances = 0.0;
        for (double own : each) {
            resistances += own;
            conductances += 1.0 / own;
        }
        return battery.joining() == Joining.SERIES ? resistances : 1.0 / conductances;
    }

    /** The resistance of all at their terminals where the packs have some. */
    double atTerminals(double[] each) {
        return joined(each) + battery.trunkResistance();
    }

    /** The share of the whole current that each of packs in parallel carries. */
    private static double[] shares(double together, double[] each) {
        double[] shares = new double[each.length];
        for (int k = 0; k < shares.length; k++) {
            shares[k] = together / each[k];
        }
        return shares;
    }

    /**
     * The shares of packs whose pulse resistances are these; all of it where they are in series.
     */
    double[] shares(double[] each) {
        if (isUndivided()) {
            double[] all = new double[each.length];
            Arrays.fill(all, 1.0);
            return all;
        }
        return shares(joined(each), each);
    }

    /**
     * Looks at one charge state.
     *
     * @param charge of all packs together [1]
     * @return the packs there
     * @throws IllegalArgumentException if the charge state is NaN
     */
    public AtCharge at(double charge) {
        return new AtCharge(this, charge);
    }

    /**
     * Looks at several charge states at once.
     *
     * @param charges of all packs together [1]
     * @return the packs there
     */
    public AlongCharge along(double[] charges) {
        return AlongCharge.of(this, charges);
    }

    /**
     * Returns the voltage of the cells that are highest while the packs are charged, or lowest
     * while they are drawn from, joints left out: those of the worst group of the worst pack.
     *
     * @param current into all packs together; negative when drawn [A]
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return the voltage of the average cell of that group [V]
     */
    public double cellVoltage(double current, double charge, double temperatureC) {
        if (current >= 0.0 && direction == Direction.OUT) {
            return into().cellVoltage(current, charge, temperatureC);
        }
        double extreme = Double.NaN;
        for (int k = 0; k < packs.size(); k++) {
            double own = cellVoltage(k, current, charge, temperatureC);
            if (!(current >= 0.0 ? own <= extreme : own >= extreme)) {
                extreme = own;
            }
        }
        return extreme;
    }

    /**
     * Returns the current of the average cell in the pack whose cells carry most.
     *
     * @param current of all packs together [A]
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return {@code w·I/P} [A]
     */
    public double cellCurrent(double current, double charge, double temperatureC) {
        double most = 0.0;
        for (int k = 0; k < packs.size(); k++) {
            double own = current * share(k, charge, temperatureC);
            most = Math.max(most, own / packs.get(k).pack().parallel());
        }
        return most;
    }

    private double cellVoltage(int pack, double current, double charge, double temperatureC) {
        double own = current * share(pack, charge, temperatureC);
        double ownCharge = chargeOf(pack, charge);
        PackModel model = packs.get(pack);
        return current >= 0.0
                ? model.highestCellVoltage(own, ownCharge, temperatureC, Cell.PULSE)
                : model.lowestCellVoltage(-own, ownCharge, temperatureC, Cell.PULSE);
    }

    /**
     * Returns the open-circuit voltage of all packs where the cells in the worst group of one have
     * a voltage. Where that lies beyond the end of its curve, the others in series are taken at
     * rest at that end, which errs on the side of less.
     *
     * @param pack its place in the battery, from 0
     * @param end which of its groups
     * @param cellVoltage of that group's cells [V]
     * @return {@code S·u}, and in series the voltages that the others have there [V]
     */
    public double voltageWhere(int pack, WorstGroup.End end, double cellVoltage) {
        PackModel own = packs.get(pack);
        double mean = own.worst(end).meanVoltageWhere(cellVoltage);
        double voltage = own.pack().series() * mean;
        if (battery.joining() == Joining.PARALLEL) {
            return voltage;
        }
        double charge = own.pack().cell().openCircuitVoltage().firstReaches(mean);
        double together = map.charges().get(pack).firstReaches(charge);
        for (int k = 0; k < packs.size(); k++) {
            if (k != pack) {
                voltage += packs.get(k).openCircuitVoltage(chargeOf(k, together));
            }
        }
        return voltage;
    }

    /**
     * Returns the charge states between which voltage and every pack's resistance and charge rating
     * are straight lines.
     *
     * @return ascending from 0 to 1; a copy
     */
    public double[] knots() {
        double[] found = knots;
        if (found == null) {
            found = foundKnots();
            knots = found;
        }
        return found.clone();
    }

    private double[] foundKnots() {
        double[] all = {0.0, 1.0};
        for (int k = 0; k < packs.size(); k++) {
            Curve own = map.charges().get(k);
            var cell = packs.get(k).pack().cell();
            all = withInside(all, own.abscissas());
            all = withInside(all, mapped(own, cell.openCircuitVoltage().abscissas()));
            for (Curve curve : resistances(cell)) {
                all = withInside(all, mapped(own, curve.abscissas()));
            }
            all = withInside(all, mapped(own, cell.charging().shareByCharge().abscissas()));
        }
        return all;
    }

    /**
     * Returns charge states between which everything is straight or nearly so: the knots, and where
     * packs in parallel differ and divide the current anew at every charge, points between them.
     *
     * @return ascending from 0 to 1; a copy
     */
    public double[] points() {
        double[] found = points;
        if (found == null) {
            found = foundPoints();
            points = found;
        }
        return found.clone();
    }

    private double[] foundPoints() {
        double[] knots = knots();
        if (isEven) {
            return knots;
        }
        double[] points = new double[(knots.length - 1) * MOST_PIECES + 1];
        int count = 0;
        for (int i = 0; i + 1 < knots.length; i++) {
            int pieces = pieces(knots[i], knots[i + 1]);
            for (int piece = 0; piece < pieces; piece++) {
                points[count++] = knots[i] + (knots[i + 1] - knots[i]) * piece / pieces;
            }
        }
        points[count++] = 1.0;
        return Arrays.copyOf(points, count);
    }

    private int pieces(double low, double high) {
        double change = 0.0;
        for (int k = 0; k < packs.size(); k++) {
            PackModel pack = packs.get(k);
            double one = factorInTheCold(pack, chargeOf(k, low));
            double other = factorInTheCold(pack, chargeOf(k, high));
            change = Math.max(change, Math.abs(other - one) / Math.min(one, other));
        }
        return (int) Math.max(1.0, Math.min(MOST_PIECES, Math.ceil(change / CHANGE)));
    }

    private static double factorInTheCold(PackModel pack, double charge) {
        return pack.factorByCharge(charge) + pack.moreInTheCold(charge, COLD_C);
    }

    /**
     * Returns the points between which voltage and resistance of every pack's worst group run
     * straight, too.
     *
     * @param end which group
     * @return ascending from 0 to 1; a copy
     */
    public double[] points(WorstGroup.End end) {
        boolean isFullest = end == WorstGroup.End.FULLEST;
        double[] found = isFullest ? pointsOfFullest : pointsOfEmptiest;
        if (found == null) {
            found = foundPoints(end);
            if (isFullest) {
                pointsOfFullest = found;
            } else {
                pointsOfEmptiest = found;
            }
        }
        return found.clone();
    }

    private double[] foundPoints(WorstGroup.End end) {
        double[] points = points();
        if (packs.stream().allMatch(pack -> pack.worst(end).isMean())) {
            return points;
        }
        double[] all = points;
        for (int k = 0; k < packs.size(); k++) {
            WorstGroup group = packs.get(k).worst(end);
            Cell cell = packs.get(k).pack().cell();
            all = withGroup(all, k, group, cell.openCircuitVoltage());
            for (Curve curve : resistances(cell)) {
                all = withGroup(all, k, group, curve);
            }
        }
        return all;
    }

    private double[] withGroup(double[] all, int pack, WorstGroup group, Curve curve) {
        double[] own = curve.abscissas();
        for (int i = 0; i < own.length; i++) {
            own[i] = group.packChargeWhere(own[i]);
        }
        return withInside(all, mapped(map.charges().get(pack), own));
    }

    /** Whatever makes the resistance of a cell bend over its charge. */
    private static List<Curve> resistances(Cell cell) {
        ResistanceByCharge pulse = cell.resistanceByCharge();
        return List.of(
                pulse.drawn(),
                pulse.moreCharged(),
                pulse.moreInTheCold(),
                cell.relaxation().byCharge());
    }

    /**
     * Returns whether each pack carries the same share of the current at every charge state.
     *
     * @return true for one pack, for packs in series, and for packs in parallel that are alike
     */
    public boolean isEven() {
        return isEven;
    }

    private static boolean isEven(Battery battery) {
        return battery.isOnePack()
                || battery.joining() == Joining.SERIES
                || battery.packs().stream().allMatch(pack -> isLike(battery.packs().get(0), pack));
    }

    private static boolean isLike(Pack one, Pack other) {
        return one.series() == other.series()
                && one.parallel() == other.parallel()
                && one.jointResistance() == other.jointResistance()
                && one.cell().equals(other.cell());
    }

    /** Charge states of all together where a pack has others. */
    private double[] mapped(Curve own, double[] charges) {
        if (packs.size() > 1) {
            for (int i = 0; i < charges.length; i++) {
                charges[i] = own.firstReaches(charges[i]);
            }
        }
        return charges;
    }

    private static double[] withInside(double[] all, double[] charges) {
        return Ascending.both(all, Ascending.between(charges, 0.0, 1.0));
    }
}
