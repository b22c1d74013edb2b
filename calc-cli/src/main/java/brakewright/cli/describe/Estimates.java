package brakewright.cli.describe;

import brakewright.tables.CellEntry;
import brakewright.tables.ReferenceTables;
import java.util.List;

/**
 * What labels say is enough to begin: first values for what nobody has measured yet, with wide
 * spreads.
 */
final class Estimates {

    /**
     * Efficiency of a motor at the power on its label [1].
     *
     * <p>Assumption: our own choice, that of a small brushless motor near its rated load; from it
     * follows the resistance to within a factor of two, and the spread says so.
     */
    private static final double EFFICIENCY = 0.85;

    /** What of the loss is in the copper; the rest is drag. Assumption: our own choice. */
    private static final double COPPER_SHARE = 0.5;

    /** Assumption: our own choice; a cell of unknown make is rated with care [1/h]. */
    private static final double DISCHARGE_RATE = 2.0;

    private static final double CHARGE_RATE = 0.5;

    private Estimates() {}

    /**
     * Returns a motor's resistance between two leads from the power on its label.
     *
     * <p>{@code R = c·(1 − η)·η·U²/P}: at that power the current is {@code P/(η·U)}, and a share c
     * of what is lost warms the copper.
     *
     * @param power on the label [W]
     * @param voltage of the full pack [V]
     * @return [Ω]
     */
    static double resistance(double power, double voltage) {
        return COPPER_SHARE * (1.0 - EFFICIENCY) * EFFICIENCY * voltage * voltage / power;
    }

    /**
     * Returns the pulse resistance of a cell that none of the tables of its kind resists more than,
     * size for size.
     *
     * @param tables where cells stand
     * @param capacity of the cell [Ah]
     * @return [Ω]
     */
    static double cellResistance(ReferenceTables tables, double capacity) {
        List<CellEntry> cells =
                tables.cells().stream().filter(each -> !each.chemistry().equals("lfp")).toList();
        double worst = 0.0;
        for (CellEntry cell : cells) {
            worst =
                    Math.max(
                            worst,
                            cell.figure("resistance").value() * cell.figure("capacity").value());
        }
        return worst / capacity;
    }

    /** What a cell of unknown make is taken to give for minutes [A]. */
    static double discharge(double capacity) {
        return DISCHARGE_RATE * capacity;
    }

    /** What it is taken to take for minutes [A]. */
    static double charge(double capacity) {
        return CHARGE_RATE * capacity;
    }
}
