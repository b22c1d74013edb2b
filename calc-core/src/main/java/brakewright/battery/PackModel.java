package brakewright.battery;

import brakewright.spec.Cell;
import brakewright.spec.Pack;

/**
 * The pack as a voltage behind a resistance.
 *
 * <p>{@code U(s) = S·u(s)} and {@code R(s,T) = S/P·r(s,T) + Rj}, with S cells in series, P in
 * parallel, the cell's open-circuit voltage u and pulse resistance r, and the joints and leads Rj.
 *
 * <p>Source: the pulse-power method, DOE/ID-11069 (2003) and INL/EXT-14-32849 rev. 3 (2014), which
 * take a cell as a voltage behind its pulse resistance.
 */
public final class PackModel {

    private final Pack pack;
    private final Cell cell;

    /**
     * Makes the model of a pack.
     *
     * @param pack the pack
     */
    public PackModel(Pack pack) {
        this.pack = pack;
        this.cell = pack.cell();
    }

    /**
     * Returns the pack that is modelled.
     *
     * @return the pack
     */
    public Pack pack() {
        return pack;
    }

    /**
     * Returns the open-circuit voltage of one cell.
     *
     * @param charge the charge state [1]
     * @return u(s) [V]
     */
    public double cellOpenCircuitVoltage(double charge) {
        return cell.openCircuitVoltage().at(charge);
    }

    /**
     * Returns the pulse resistance of one cell.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return r(s,T) [Ω]
     */
    public double cellResistance(double charge, double temperatureC) {
        return cell.resistance()
                * cell.resistanceByCharge().at(charge)
                * cell.resistanceByTemperature().at(temperatureC);
    }

    /**
     * Returns the open-circuit voltage of the pack.
     *
     * @param charge the charge state [1]
     * @return U(s) [V]
     */
    public double openCircuitVoltage(double charge) {
        return pack.series() * cellOpenCircuitVoltage(charge);
    }

    /**
     * Returns the resistance of the pack at its terminals.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return R(s,T) [Ω]
     */
    public double resistance(double charge, double temperatureC) {
        return pack.series() * cellResistance(charge, temperatureC) / pack.parallel()
                + pack.jointResistance();
    }

    /**
     * Returns the voltage of a cell while the pack is charged, joints left out.
     *
     * @param packCurrent into the pack; negative when drawn [A]
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return the voltage of the average cell [V]
     */
    public double cellVoltage(double packCurrent, double charge, double temperatureC) {
        return cellOpenCircuitVoltage(charge)
                + packCurrent / pack.parallel() * cellResistance(charge, temperatureC);
    }

    /**
     * Returns how much more than its even share the strongest cell of a group carries.
     *
     * @return the factor k, at least 1
     */
    public double strongestShare() {
        return UnequalCells.strongestShare(pack.parallel(), pack.resistanceSpread());
    }
}
