package brakewright.battery;

import brakewright.spec.Cell;
import brakewright.spec.Pack;
import brakewright.spec.Relaxation;

/**
 * One pack as a voltage behind a resistance.
 *
 * <p>{@code U(s) = S·u(s)} and {@code R(s,T) = S/P·r(s,T) + Rj}, with S cells in series, P in
 * parallel, the cell's open-circuit voltage u and pulse resistance r, and the joints and leads Rj.
 *
 * <p>Source: the pulse-power method, DOE/ID-11069 (2003) and INL/EXT-14-32849 rev. 3 (2014), which
 * take a cell as a voltage behind its pulse resistance.
 */
public final class PackModel {

    /** What of the pulse resistance is there at once, at the least [1]. */
    public static final double OHMIC_SHARE = 0.6;

    private final Pack pack;
    private final Cell cell;
    private final WorstGroup fullest;
    private final WorstGroup emptiest;

    /** The last found: one duration is asked about at many charge states. */
    private Lasting lasting = new Lasting(0.0, 1.0);

    /** The last found, likewise. */
    private Warmth warmth = new Warmth(Double.NaN, Double.NaN);

    /** By how much a current that flows for a time meets more resistance than a pulse. */
    private record Lasting(double seconds, double factor) {}

    /** By how much the resistance of a cell changes with its temperature. */
    private record Warmth(double temperatureC, double factor) {}

    /**
     * Makes the model of a pack.
     *
     * @param pack the pack
     */
    public PackModel(Pack pack) {
        this.pack = pack;
        this.cell = pack.cell();
        this.fullest = new WorstGroup(pack, WorstGroup.End.FULLEST);
        this.emptiest = new WorstGroup(pack, WorstGroup.End.EMPTIEST);
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
        Warmth found = warmth;
        if (found.temperatureC() != temperatureC) {
            found = new Warmth(temperatureC, cell.resistanceByTemperature().at(temperatureC));
            warmth = found;
        }
        return cell.resistance() * cell.resistanceByCharge().at(charge) * found.factor();
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
     * Returns the resistance of the pack at its terminals after a current has flowed for a time.
     *
     * <p>{@code S/P·r(s,T)·(1 + x·(1 − e^(−(t − 10 s)/τ))) + Rj} beyond 10 s, and the pulse
     * resistance up to then: a resistance that is there at once and a second that diffusion adds.
     *
     * <p>Source: first-order equivalent circuit, e.g. Plett, Battery Management Systems, vol. 1
     * (2015), chapter 2.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long the current has flowed [s]; infinite for ever
     * @return R(s,T,t) [Ω]
     */
    public double resistance(double charge, double temperatureC, double seconds) {
        return pack.series() * cellResistance(charge, temperatureC, seconds) / pack.parallel()
                + pack.jointResistance();
    }

    /**
     * Returns the resistance of one cell after a current has flowed for a time.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long the current has flowed [s]; infinite for ever
     * @return r(s,T,t) [Ω]
     */
    public double cellResistance(double charge, double temperatureC, double seconds) {
        Lasting found = lasting;
        if (found.seconds() != seconds) {
            found = new Lasting(seconds, rise(seconds));
            lasting = found;
        }
        return cellResistance(charge, temperatureC) * found.factor();
    }

    private double rise(double seconds) {
        double beyond = Math.max(0.0, seconds - Cell.PULSE);
        Relaxation relaxation = cell.relaxation();
        return 1.0 - relaxation.rise() * Math.expm1(-beyond / relaxation.timeConstant());
    }

    /**
     * Returns the least resistance that the first instant of a current may meet: the ohmic share of
     * the pulse resistance, cells as warm as they may be and at the charge state where it is least,
     * and nothing for joints and leads.
     *
     * <p>{@code S/P·r·min f_s·min f_T·k} with the ohmic share k = {@value #OHMIC_SHARE}.
     *
     * <p>Source of the share: Plett, Algorithms for Battery Management Systems, model cell E2: 0.69
     * at 25 °C and 0.65 at 45 °C of the 10 s resistance; rounded down, as one cell is not all.
     *
     * @return [Ω]
     */
    public double leastResistance() {
        return pack.series()
                / (double) pack.parallel()
                * cell.resistance()
                * cell.resistanceByCharge().least()
                * leastFactorByTemperature()
                * OHMIC_SHARE;
    }

    /**
     * Returns the least factor that a temperature gives the resistance, where the cells may be
     * discharged.
     *
     * @return min f_T [1]
     */
    public double leastFactorByTemperature() {
        return cell.resistanceByTemperature()
                .least(cell.discharging().lowestC(), cell.discharging().highestC());
    }

    /**
     * Returns the group that meets a voltage first.
     *
     * @param end while the pack is charged or drawn from
     * @return the group
     */
    public WorstGroup worst(WorstGroup.End end) {
        return end == WorstGroup.End.FULLEST ? fullest : emptiest;
    }

    /**
     * Returns the resistance that the current of the pack meets in the cells of a group.
     *
     * <p>{@code r(sg,T,t)·(1 + x_g)/P}, at the charge state of the group.
     *
     * @param group which
     * @param charge of the pack [1]
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long the current has flowed [s]; infinite for ever
     * @return [Ω]
     */
    public double groupResistance(
            WorstGroup group, double charge, double temperatureC, double seconds) {
        return group.resistanceFactor()
                * cellResistance(group.chargeAt(charge), temperatureC, seconds)
                / pack.parallel();
    }

    /**
     * Returns the voltage of the cells in the fullest group while the pack is charged, joints left
     * out.
     *
     * @param packCurrent into the pack [A], not negative
     * @param charge the charge state of the pack [1]
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long [s]; up to 10 s the pulse resistance counts, infinite for ever
     * @return the voltage of the average cell of that group [V]
     */
    public double highestCellVoltage(
            double packCurrent, double charge, double temperatureC, double seconds) {
        return fullest.openCircuitVoltage(charge)
                + packCurrent * groupResistance(fullest, charge, temperatureC, seconds);
    }

    /**
     * Returns the voltage of the cells in the emptiest group while the pack is drawn from, joints
     * left out.
     *
     * @param packCurrent out of the pack [A], not negative
     * @param charge the charge state of the pack [1]
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long [s]; up to 10 s the pulse resistance counts, infinite for ever
     * @return the voltage of the average cell of that group [V]
     */
    public double lowestCellVoltage(
            double packCurrent, double charge, double temperatureC, double seconds) {
        return emptiest.openCircuitVoltage(charge)
                - packCurrent * groupResistance(emptiest, charge, temperatureC, seconds);
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
