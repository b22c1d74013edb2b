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
        this.byCharge = AlongCharge.each(charges, way::at);
        this.inTheCold = AlongCharge.each(charges, cell.resistanceByCharge().moreInTheCold()::at);
        this.relaxation = AlongCharge.each(charges, cell.relaxation().byCharge()::at);
    }

    /** The resistance of a cell at one of the charge states, after a current has flowed [Ω]. */
    double resistance(int place, double temperatureC, double seconds) {
        return pack.cellResistance(
                byCharge[place], inTheCold[place], relaxation[place], temperatureC, seconds);
    }
}
