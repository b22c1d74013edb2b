package brakewright.battery;

import brakewright.spec.Cell;
import brakewright.spec.Curve;

/**
 * A cell at one charge state of its own: what the charge makes of its resistance, whatever the
 * temperatures and times that are asked about.
 *
 * @param byCharge f_s, the factor of the pulse resistance in mild weather [1]
 * @param inTheCold e_s, by which it grows in the cold [1]
 * @param relaxation h_s, the factor of what an endless current adds [1]
 */
record CellAt(double byCharge, double inTheCold, double relaxation) {

    /**
     * Reads the curves of a cell.
     *
     * @param cell whose curves they are
     * @param way the factor by charge for the way in which the current flows
     * @param charge of the cell [1]
     */
    static CellAt of(Cell cell, Curve way, double charge) {
        return new CellAt(
                way.at(charge),
                cell.resistanceByCharge().moreInTheCold().at(charge),
                cell.relaxation().byCharge().at(charge));
    }
}
