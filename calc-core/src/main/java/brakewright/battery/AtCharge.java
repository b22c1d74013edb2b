package brakewright.battery;

import brakewright.spec.Cell;
import brakewright.spec.Curve;
import org.jspecify.annotations.Nullable;

/**
 * All packs at one charge state of them together: what is the same at every cell temperature and
 * after any time is read once, when it is first asked for. It tells what {@link BatteryModel} tells
 * there, to the last digit.
 *
 * <p>For one thread; made anew for each judgement.
 */
public final class AtCharge {

    private final BatteryModel model;
    private final double charge;
    private final double[] own;
    private final double voltage;
    private final @Nullable CellAt[] cells;
    private final @Nullable GroupAt[] fullest;
    private final @Nullable GroupAt[] emptiest;

    /** The worst group of a pack: its cells at rest [V], and what their charge makes of them. */
    private record GroupAt(double voltage, CellAt cell) {}

    AtCharge(BatteryModel model, double charge) {
        this.model = model;
        this.charge = charge;
        this.own = model.chargesOf(charge);
        this.voltage = model.openCircuitVoltage(charge);
        this.cells = new @Nullable CellAt[own.length];
        this.fullest = new @Nullable GroupAt[own.length];
        this.emptiest = new @Nullable GroupAt[own.length];
    }

    /**
     * Returns the packs.
     *
     * @return their model, for the way in which the current flows
     */
    public BatteryModel model() {
        return model;
    }

    /**
     * Returns the charge state of all packs together.
     *
     * @return [1]
     */
    public double charge() {
        return charge;
    }

    /**
     * Returns the open-circuit voltage of all packs together.
     *
     * @return U(s) [V]
     */
    public double voltage() {
        return voltage;
    }

    /**
     * Returns the resistance of all packs together after a current has flowed for a time.
     *
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long [s]; 10 s for the pulse resistance, infinite for ever
     * @return R(s,T,t) [Ω]
     */
    public double resistance(double temperatureC, double seconds) {
        return model.atTerminals(resistances(temperatureC, seconds));
    }

    private double[] resistances(double temperatureC, double seconds) {
        double[] each = new double[own.length];
        for (int k = 0; k < each.length; k++) {
            PackModel pack = model.packs().get(k);
            each[k] = pack.resistance(pack.cellResistance(cell(k), temperatureC, seconds));
        }
        return each;
    }

    /**
     * Returns the share of the whole current that one pack carries.
     *
     * @param place of the pack in the battery, from 0
     * @param temperatureC the cell temperature [°C]
     * @return w, above 0 to 1 [1]
     */
    public double share(int place, double temperatureC) {
        return model.isUndivided() ? 1.0 : shares(temperatureC)[place];
    }

    /** The shares of all packs. */
    double[] shares(double temperatureC) {
        return model.shares(resistances(temperatureC, Cell.PULSE));
    }

    /**
     * Returns the resistance of one cell of a pack after a current has flowed for a time.
     *
     * @param place of the pack in the battery, from 0
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long [s]; infinite for ever
     * @return r(s,T,t) [Ω]
     */
    public double cellResistance(int place, double temperatureC, double seconds) {
        return model.packs().get(place).cellResistance(cell(place), temperatureC, seconds);
    }

    private CellAt cell(int place) {
        CellAt found = cells[place];
        if (found == null) {
            found = model.packs().get(place).cellAt(own[place]);
            cells[place] = found;
        }
        return found;
    }

    /**
     * Returns the voltage of the cells in the emptiest group of a pack while it is drawn from,
     * joints left out.
     *
     * @param place of the pack in the battery, from 0
     * @param packCurrent out of that pack [A], not negative
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long [s]; 10 s for the pulse resistance, infinite for ever
     * @return the voltage of the average cell of that group [V]
     */
    public double lowestCellVoltage(
            int place, double packCurrent, double temperatureC, double seconds) {
        return groupVoltage(WorstGroup.End.EMPTIEST, place)
                - packCurrent
                        * groupResistance(WorstGroup.End.EMPTIEST, place, temperatureC, seconds);
    }

    /** The cells of a worst group at rest [V]. */
    double groupVoltage(WorstGroup.End end, int place) {
        return group(end, place).voltage();
    }

    /** The resistance that the current of a pack meets in the cells of a worst group [Ω]. */
    double groupResistance(WorstGroup.End end, int place, double temperatureC, double seconds) {
        PackModel pack = model.packs().get(place);
        return pack.groupResistance(
                pack.worst(end),
                pack.cellResistance(group(end, place).cell(), temperatureC, seconds));
    }

    private GroupAt group(WorstGroup.End end, int place) {
        @Nullable GroupAt[] known = end == WorstGroup.End.FULLEST ? fullest : emptiest;
        GroupAt found = known[place];
        if (found == null) {
            PackModel pack = model.packs().get(place);
            WorstGroup group = pack.worst(end);
            found =
                    new GroupAt(
                            group.openCircuitVoltage(own[place]), pack.cellAt(group, own[place]));
            known[place] = found;
        }
        return found;
    }

    /** What a curve over the charge state of a pack has there. */
    double read(int place, Curve curve) {
        return curve.at(own[place]);
    }
}
