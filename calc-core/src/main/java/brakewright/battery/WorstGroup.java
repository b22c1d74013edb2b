package brakewright.battery;

import brakewright.spec.Cell;
import brakewright.spec.Curve;
import brakewright.spec.GroupSpread;
import brakewright.spec.Pack;

/**
 * The group in series whose cells meet a voltage first: the fullest while the pack is charged, the
 * emptiest while it is drawn from. A protection watches every group, and a cell suffers by itself,
 * whatever the mean of the pack.
 *
 * <p>Fullest: {@code sg = s + d}. Emptiest: {@code sg = 1 − d − (1 − s)/(1 − κ)}, as it began d
 * lower and gives the same ampere-hours out of less. Either may be the one with the higher
 * resistance, {@code r·(1 + x_g)}.
 *
 * <p>Source: Kirchhoff's current law, one current through all groups in series; conservation of
 * charge.
 *
 * <p>Assumption: groups are balanced where they are full, as protection boards do it. A group that
 * is beyond full or empty follows the last straight line of its curve.
 */
public final class WorstGroup {

    /** Which end of the charge a group is nearest to. */
    public enum End {
        /** The fullest, while the pack is charged. */
        FULLEST,
        /** The emptiest, while the pack is drawn from. */
        EMPTIEST
    }

    private final Curve voltage;
    private final GroupSpread spread;
    private final End end;

    WorstGroup(Pack pack, End end) {
        Cell cell = pack.cell();
        this.voltage = cell.openCircuitVoltage();
        this.spread = pack.groupSpread();
        this.end = end;
    }

    /**
     * Returns which end of the charge it is nearest to.
     *
     * @return the end
     */
    public End end() {
        return end;
    }

    /**
     * Returns the charge state of the group.
     *
     * @param charge of the pack, the mean of its groups [1]
     * @return its own; beyond 0 or 1 where it is over-discharged or overcharged [1]
     */
    public double chargeAt(double charge) {
        return end == End.FULLEST
                ? charge + spread.charge()
                : 1.0 - spread.charge() - (1.0 - charge) / (1.0 - spread.capacity());
    }

    /**
     * Returns the charge state of the pack where the group has one.
     *
     * @param own charge state of the group [1]
     * @return that of the pack [1]
     */
    public double packChargeWhere(double own) {
        return end == End.FULLEST
                ? own - spread.charge()
                : 1.0 - (1.0 - spread.charge() - own) * (1.0 - spread.capacity());
    }

    /**
     * Returns the voltage of its cells at rest.
     *
     * @param charge of the pack [1]
     * @return [V]
     */
    public double openCircuitVoltage(double charge) {
        return voltage.extended(chargeAt(charge));
    }

    /**
     * Returns the charge state of the group at which its cells have a voltage at rest: on a level
     * stretch the end that the group meets first on its way.
     *
     * @param cellVoltage [V]
     * @return its own charge state [1]
     */
    public double chargeWhere(double cellVoltage) {
        return end == End.FULLEST
                ? voltage.extendedFirstReaches(cellVoltage)
                : voltage.extendedLastStays(cellVoltage);
    }

    /**
     * Returns the voltage of the mean cell of the pack, at rest, where the cells of this group have
     * another. The mean of a pack is never above its fullest group nor below its emptiest one, not
     * even where a curve does not lead to the voltage.
     *
     * @param cellVoltage of the group [V]
     * @return of the mean [V]
     */
    public double meanVoltageWhere(double cellVoltage) {
        if (isMean()) {
            return cellVoltage;
        }
        double mean = voltage.extended(packChargeWhere(chargeWhere(cellVoltage)));
        return end == End.FULLEST ? Math.min(cellVoltage, mean) : Math.max(cellVoltage, mean);
    }

    /**
     * Returns how much more resistance than the mean it has.
     *
     * @return {@code 1 + ρ}, at least 1 [1]
     */
    public double resistanceFactor() {
        return 1.0 + spread.resistance();
    }

    /**
     * Returns whether its charge state is that of the pack.
     *
     * @return false where it departs from it at some charge state
     */
    public boolean isMean() {
        return spread.charge() == 0.0 && (end == End.FULLEST || spread.capacity() == 0.0);
    }
}
