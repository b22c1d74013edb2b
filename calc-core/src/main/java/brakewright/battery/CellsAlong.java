package brakewright.battery;

import brakewright.spec.Cell;
import brakewright.spec.Curve;

/**
 * The cells of a pack at several charge states: what the charge makes of their resistance is read
 * once, whatever the temperatures and times that are asked about.
 */
final class CellsAlong {

    private final PackModel pack;
    private final double[] byCharge;
    private final double[] inTheCold;
    private final double[] relaxation;

    /**
     * Reads the curves.
     *
     * @param pack which makes resistances of them
     * @param cell whose curves they are
     * @param way the factor by charge for the way in which the current flows
     * @param charges of the cells [1]
     */
    CellsAlong(PackModel pack, Cell cell, Curve way, double[] charges) {
        this.pack = pack;
        this.byCharge = read(way, charges);
        this.inTheCold = read(cell.resistanceByCharge().moreInTheCold(), charges);
        this.relaxation = read(cell.relaxation().byCharge(), charges);
    }

    private static double[] read(Curve curve, double[] charges) {
        double[] found = new double[charges.length];
        for (int i = 0; i < found.length; i++) {
            found[i] = curve.at(charges[i]);
        }
        return found;
    }

    /** The resistance of a cell at one of the charge states, after a current has flowed [Ω]. */
    double resistance(int place, double temperatureC, double seconds) {
        return pack.cellResistance(
                byCharge[place], inTheCold[place], relaxation[place], temperatureC, seconds);
    }
}
