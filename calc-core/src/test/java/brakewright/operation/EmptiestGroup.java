package brakewright.operation;

import brakewright.spec.Cell;
import brakewright.spec.GroupSpread;
import brakewright.spec.Pack;

/** The loaded cells of the emptiest group in series, from the inputs alone. */
public final class EmptiestGroup {

    private EmptiestGroup() {}

    public static double cellVoltage(
            Pack pack, double charge, double current, double cellsC, double seconds) {
        Cell cell = pack.cell();
        GroupSpread spread = pack.groupSpread();
        double given = (1.0 - charge) / (1.0 - spread.capacity());
        double left = 1.0 - spread.charge() - given;
        double[] charges = cell.openCircuitVoltage().abscissas();
        double[] voltages = cell.openCircuitVoltage().ordinates();
        double rest =
                left >= 0.0
                        ? cell.openCircuitVoltage().at(left)
                        : voltages[0] + left * (voltages[1] - voltages[0]) / charges[1];
        double longer =
                cell.relaxation().rise()
                        * (1.0
                                - Math.exp(
                                        -Math.max(0.0, seconds - 10.0)
                                                / cell.relaxation().timeConstant()));
        double resistance =
                cell.resistance()
                        * (come(cell, seconds) * factor(cell, left, cellsC)
                                + longer * cell.relaxation().byCharge().at(left))
                        * cell.resistanceByTemperature().at(cellsC)
                        * (1.0 + spread.resistance());
        return rest - current / pack.parallel() * resistance;
    }

    /** Straight over the reciprocal temperature from 25 °C to what is told for 10 °C, and on. */
    private static double factor(Cell cell, double charge, double cellsC) {
        double more = cell.resistanceByCharge().moreInTheCold().at(charge);
        double cold = (1.0 / (cellsC + 273.15) - 1.0 / 298.15) / (1.0 / 283.15 - 1.0 / 298.15);
        return cell.resistanceByCharge().drawn().at(charge) + Math.max(0.0, cold) * more;
    }

    /** What of the pulse resistance is there. */
    private static double come(Cell cell, double seconds) {
        double ohmic = cell.relaxation().onset().ohmicShare();
        double constant = cell.relaxation().onset().timeConstant();
        double passed = (1.0 - Math.exp(-seconds / constant)) / (1.0 - Math.exp(-10.0 / constant));
        return seconds < 10.0 ? ohmic + (1.0 - ohmic) * passed : 1.0;
    }
}
