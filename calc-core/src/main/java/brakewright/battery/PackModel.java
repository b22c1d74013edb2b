package brakewright.battery;

import brakewright.spec.Cell;
import brakewright.spec.Curve;
import brakewright.spec.Pack;
import brakewright.spec.Relaxation;
import brakewright.spec.ResistanceByCharge;
import java.util.Arrays;

/**
 * One pack as a voltage behind a resistance.
 *
 * <p>{@code U(s) = S·u(s)} and {@code R(s,T) = S/P·r(s,T) + Rj}, with S cells in series, P in
 * parallel, the cell's open-circuit voltage u and pulse resistance r, and the joints and leads Rj.
 * A cell resists more while it is charged.
 *
 * <p>Source: the pulse-power method, DOE/ID-11069 (2003) and INL/EXT-14-32849 rev. 3 (2014), which
 * take a cell as a voltage behind its pulse resistance.
 */
public final class PackModel {

    /** What of the pulse resistance is there at once in whatever cell, at the least [1]. */
    public static final double LEAST_OHMIC_SHARE = 0.6;

    private final Pack pack;
    private final Cell cell;
    private final Curve drawn;
    private final Curve charged;
    private final Curve ownWay;
    private final Curve inTheCold;
    private final boolean isWorseInTheCold;
    private final WorstGroup fullest;
    private final WorstGroup emptiest;

    private final Elapsed atOnce;
    private final Elapsed pulse;
    private final Elapsed forEver;

    /** The last found of others: one duration is asked about at many charge states. */
    private Elapsed elapsed = new Elapsed(Double.NaN, 1.0, 0.0);

    /** The last found, likewise. */
    private Warmth warmth = new Warmth(Double.NaN, Double.NaN, 0.0);

    /**
     * What share of the pulse resistance a current meets that has flowed for a time, and by what
     * share of that at mid charge more.
     */
    private record Elapsed(double seconds, double share, double rise) {

        static Elapsed of(Relaxation relaxation, double seconds) {
            double beyond = Math.max(0.0, seconds - Cell.PULSE);
            double passed = -Math.expm1(-beyond / relaxation.timeConstant());
            return new Elapsed(
                    seconds, relaxation.onset().after(seconds), relaxation.rise() * passed);
        }
    }

    /**
     * By how much the resistance of a cell changes with its temperature, and how cold it is for
     * what it resists more at some charges then.
     */
    private record Warmth(double temperatureC, double factor, double coldness) {}

    /**
     * Makes the model of a pack that is drawn from.
     *
     * @param pack the pack
     */
    public PackModel(Pack pack) {
        this(pack, Direction.OUT);
    }

    /**
     * Makes the model of a pack for a current that flows one way.
     *
     * @param pack the pack
     * @param direction of the current
     */
    PackModel(Pack pack, Direction direction) {
        this.pack = pack;
        this.cell = pack.cell();
        this.drawn = cell.resistanceByCharge().drawn();
        this.charged = cell.resistanceByCharge().charged();
        this.inTheCold = cell.resistanceByCharge().moreInTheCold();
        this.isWorseInTheCold = Arrays.stream(inTheCold.ordinates()).anyMatch(more -> more > 0.0);
        this.ownWay = direction == Direction.OUT ? drawn : charged;
        this.fullest = new WorstGroup(pack, WorstGroup.End.FULLEST);
        this.emptiest = new WorstGroup(pack, WorstGroup.End.EMPTIEST);
        this.atOnce = Elapsed.of(cell.relaxation(), 0.0);
        this.pulse = Elapsed.of(cell.relaxation(), Cell.PULSE);
        this.forEver = Elapsed.of(cell.relaxation(), Double.POSITIVE_INFINITY);
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
                * (ownWay.at(charge) + moreInTheCold(charge, temperatureC))
                * warmth(temperatureC).factor();
    }

    private Warmth warmth(double temperatureC) {
        Warmth found = warmth;
        if (found.temperatureC() != temperatureC) {
            found =
                    new Warmth(
                            temperatureC,
                            cell.resistanceByTemperature().at(temperatureC),
                            isWorseInTheCold ? ResistanceByCharge.coldness(temperatureC) : 0.0);
            warmth = found;
        }
        return found;
    }

    /**
     * Returns the factor that a charge state gives the pulse resistance of a cell in mild weather.
     *
     * @param charge the charge state [1]
     * @return f_s [1]
     */
    public double factorByCharge(double charge) {
        return ownWay.at(charge);
    }

    /**
     * Returns the factor that a charge state gives the pulse resistance of the cells of a group in
     * mild weather: the fullest is charged, the emptiest drawn from.
     *
     * @param end which group
     * @param groupCharge its own charge state [1]
     * @return f_s [1]
     */
    public double factorByCharge(WorstGroup.End end, double groupCharge) {
        return way(end).at(groupCharge);
    }

    /**
     * Returns what a charge state adds to that factor in the cold.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @return {@code c_s = c·e_s} [1]; 0 from 25 °C on
     * @see ResistanceByCharge
     */
    public double moreInTheCold(double charge, double temperatureC) {
        double coldness = warmth(temperatureC).coldness();
        return coldness > 0.0 ? coldness * inTheCold.at(charge) : 0.0;
    }

    private Curve way(WorstGroup.End end) {
        return end == WorstGroup.End.FULLEST ? charged : drawn;
    }

    /**
     * Returns by what share of the 10 s resistance an endless current exceeds it.
     *
     * @param charge the charge state [1]
     * @param factorByCharge of the 10 s resistance there [1]
     * @return {@code x_r = x·h_s/f}, with the rise x at mid charge, its factor h_s and that factor
     *     f [1]
     */
    public double rise(double charge, double factorByCharge) {
        Relaxation relaxation = cell.relaxation();
        return relaxation.rise() * relaxation.byCharge().at(charge) / factorByCharge;
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
        return resistance(cellResistance(charge, temperatureC));
    }

    /**
     * Returns the resistance of the pack at its terminals after a current has flowed for a time.
     *
     * <p>{@code S/P·r·(f_s + c_s + x·h_s·(1 − e^(−(t − 10 s)/τ)))·f_T + Rj} beyond 10 s, with what
     * it resists {@linkplain #moreInTheCold more in the cold}, and the share of the pulse
     * resistance that its {@link brakewright.spec.Onset} leaves up to then: an ohmic resistance
     * that is there at once, a fast part that is there after 10 s, and a slow one that diffusion
     * adds, most of it near empty.
     *
     * <p>Source: equivalent circuit of two resistances with capacitors, e.g. Plett, Battery
     * Management Systems, vol. 1 (2015), chapter 2.
     *
     * @param charge the charge state [1]
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long the current has flowed [s]; infinite for ever
     * @return R(s,T,t) [Ω]
     */
    public double resistance(double charge, double temperatureC, double seconds) {
        return resistance(cellResistance(charge, temperatureC, seconds));
    }

    /** The resistance of the pack whose cells have one. */
    double resistance(double ofCell) {
        return pack.series() * ofCell / pack.parallel() + pack.jointResistance();
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
        return cellResistance(ownWay, charge, temperatureC, seconds);
    }

    private double cellResistance(Curve way, double charge, double temperatureC, double seconds) {
        boolean isCold = warmth(temperatureC).coldness() > 0.0;
        boolean rises = elapsed(seconds).rise() > 0.0;
        return cellResistance(
                way.at(charge),
                isCold ? inTheCold.at(charge) : 0.0,
                rises ? cell.relaxation().byCharge().at(charge) : 0.0,
                temperatureC,
                seconds);
    }

    /** The same from what its charge makes of it. */
    double cellResistance(CellAt there, double temperatureC, double seconds) {
        return cellResistance(
                there.byCharge(), there.inTheCold(), there.relaxation(), temperatureC, seconds);
    }

    private double cellResistance(
            double byCharge,
            double inTheCold,
            double relaxation,
            double temperatureC,
            double seconds) {
        Warmth warmth = warmth(temperatureC);
        Elapsed time = elapsed(seconds);
        double factor =
                (byCharge + warmth.coldness() * inTheCold) * time.share()
                        + time.rise() * relaxation;
        return cell.resistance() * factor * warmth.factor();
    }

    private Elapsed elapsed(double seconds) {
        if (seconds == pulse.seconds()) {
            return pulse;
        }
        if (seconds == atOnce.seconds()) {
            return atOnce;
        }
        if (seconds == forEver.seconds()) {
            return forEver;
        }
        Elapsed found = elapsed;
        if (found.seconds() != seconds) {
            found = Elapsed.of(cell.relaxation(), seconds);
            elapsed = found;
        }
        return found;
    }

    /**
     * Returns the least resistance that the first instant of a current may meet: the ohmic share of
     * the pulse resistance, cells as warm as they may be and at the charge state where it is least,
     * and nothing for joints and leads.
     *
     * <p>{@code S/P·r·min f_s·min f_T·k} with the {@link #leastOhmicShare} k.
     *
     * @return [Ω]
     */
    public double leastResistance() {
        return pack.series()
                / (double) pack.parallel()
                * cell.resistance()
                * drawn.least()
                * leastFactorByTemperature()
                * leastOhmicShare();
    }

    /**
     * Returns what of the pulse resistance is there at once at the least: the cell's own ohmic
     * share, but no more than {@value #LEAST_OHMIC_SHARE}.
     *
     * <p>Source: Plett, Algorithms for Battery Management Systems, model cell E2: 0.69 at 25 °C and
     * 0.65 at 45 °C of the 10 s resistance; rounded down, as one cell is not all.
     *
     * @return k [1]
     */
    public double leastOhmicShare() {
        return Math.min(LEAST_OHMIC_SHARE, cell.relaxation().onset().ohmicShare());
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
     * <p>{@code r(sg,T,t)·(1 + x_g)/P}, at the charge state of the group; the fullest is charged,
     * the emptiest drawn from.
     *
     * @param group which
     * @param charge of the pack [1]
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long the current has flowed [s]; infinite for ever
     * @return [Ω]
     */
    public double groupResistance(
            WorstGroup group, double charge, double temperatureC, double seconds) {
        return groupResistance(
                group,
                cellResistance(way(group.end()), group.chargeAt(charge), temperatureC, seconds));
    }

    /** The resistance that the current of the pack meets in a group whose mean cells have one. */
    double groupResistance(WorstGroup group, double ofCell) {
        return group.resistanceFactor() * ofCell / pack.parallel();
    }

    /** A cell at a charge state of the pack, for its own way of the current. */
    CellAt cellAt(double charge) {
        return CellAt.of(cell, ownWay, charge);
    }

    /** A cell of a group at a charge state of the pack. */
    CellAt cellAt(WorstGroup group, double charge) {
        return CellAt.of(cell, way(group.end()), group.chargeAt(charge));
    }

    /**
     * Returns the voltage of the cells in the fullest group while the pack is charged, joints left
     * out.
     *
     * @param packCurrent into the pack [A], not negative
     * @param charge the charge state of the pack [1]
     * @param temperatureC the cell temperature [°C]
     * @param seconds how long [s]; 10 s for the pulse resistance, infinite for ever
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
     * @param seconds how long [s]; 10 s for the pulse resistance, infinite for ever
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
