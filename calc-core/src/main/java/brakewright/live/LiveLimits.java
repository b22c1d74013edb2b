package brakewright.live;

import brakewright.battery.BatteryModel;
import brakewright.battery.TerminalPower;
import brakewright.battery.WorstGroup;
import brakewright.limit.Limits;
import brakewright.limit.PackConstraint;
import brakewright.limit.PackLimit;
import brakewright.numeric.Ascending;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.Require;
import brakewright.spec.Unit;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * The limits of one vehicle as tables, to be asked many times a second.
 *
 * <p>At the places of its tables, {@link #charges} and {@link #temperatures}, every answer is that
 * of {@link Limits} to the last digit; between them voltages and resistances are read along
 * straight lines, which departs from it by at most {@link #DEPARTURE}. Whoever doubts the charge or
 * the temperature asks for both ends of what it may be.
 *
 * <p>No method allocates unless it throws; an instance never changes and may be shared by threads.
 *
 * <p>Source: the pulse-power method, DOE/ID-11069 (2003) and INL/EXT-14-32849 rev. 3 (2014).
 */
public final class LiveLimits {

    /**
     * How far an answer between the places departs from the full model's at most, as a share of it
     * [1]. Resistances bend with the temperature by the rule of Arrhenius, over one kelvin by less
     * than a thousandth. Packs of several kinds share a current along curves; there the same holds
     * for a hundredth of the charge and more.
     */
    public static final double DEPARTURE = 2e-3;

    /** The lowest cell temperature that can be asked about [°C]. */
    public static final double COLDEST_C = -40.0;

    /** The highest cell temperature that can be asked about [°C]. */
    public static final double WARMEST_C = 90.0;

    private static final double EMPTY = 0.0;
    private static final double FULL = 1.0;

    private final Axis charges;
    private final Axis temperatures;
    private final Bounds taking;
    private final Bounds giving;
    private final double[] restVoltages;
    private final Table resistanceInto;
    private final Table resistanceOut;
    private final double[][] greatestInto;
    private final double[][] greatestOut;
    private final double highestRest;
    private final double lowestRest;
    private final Powertrain powertrain;
    private final double motorBrake;

    private LiveLimits(Build build) {
        Limits limits = Limits.of(build);
        BatteryModel out = limits.battery();
        BatteryModel into = out.into();
        this.charges =
                new Axis(
                        Ascending.both(
                                out.points(WorstGroup.End.FULLEST),
                                out.points(WorstGroup.End.EMPTIEST)));
        this.temperatures = new Axis(temperatures(build));
        this.taking = new Bounds(limits.packRegen(), charges, temperatures);
        this.giving = new Bounds(limits.packDischarge(), charges, temperatures);
        this.restVoltages = charges.read(out::openCircuitVoltage);
        this.resistanceInto = new Table(charges, temperatures, into::resistance);
        this.resistanceOut = new Table(charges, temperatures, out::resistance);
        this.greatestInto = greatest(into, WorstGroup.End.FULLEST);
        this.greatestOut = greatest(out, WorstGroup.End.EMPTIEST);
        this.highestRest = Lines.at(restVoltages, usedUp(limits.packRegen(), 0));
        this.lowestRest =
                Lines.at(restVoltages, usedUp(limits.packDischarge(), charges.size() - 1));
        this.powertrain = Powertrain.of(build);
        this.motorBrake = limits.motorBrake().value();
    }

    /**
     * Makes the tables of a vehicle; some tens of milliseconds.
     *
     * @param build the vehicle
     * @return its limits
     */
    public static LiveLimits of(Build build) {
        return new LiveLimits(build);
    }

    /** Each whole degree, and either side of wherever a window or its cold band ends. */
    private static double[] temperatures(Build build) {
        double[] whole =
                IntStream.rangeClosed((int) COLDEST_C, (int) WARMEST_C).asDoubleStream().toArray();
        double[] ends =
                build.battery().packs().stream()
                        .flatMapToDouble(
                                pack -> {
                                    Cell cell = pack.cell();
                                    double cold = cell.charging().lowestC();
                                    return DoubleStream.of(
                                            cold,
                                            cold + cell.charging().coldBandK(),
                                            cell.charging().highestC(),
                                            cell.discharging().lowestC(),
                                            cell.discharging().highestC());
                                })
                        .flatMap(end -> DoubleStream.of(Math.nextDown(end), end, Math.nextUp(end)))
                        .toArray();
        return Ascending.both(whole, Ascending.between(ends, COLDEST_C, WARMEST_C));
    }

    /**
     * Of each horizon over the temperature, at the charge and in the group where it is greatest.
     */
    private double[][] greatest(BatteryModel model, WorstGroup.End end) {
        double group =
                model.packs().stream()
                        .map(pack -> pack.worst(end))
                        .mapToDouble(WorstGroup::resistanceFactor)
                        .max()
                        .orElseThrow();
        double[][] greatest = new double[Horizon.values().length][temperatures.size()];
        for (Horizon horizon : Horizon.values()) {
            for (int column = 0; column < temperatures.size(); column++) {
                double cellsC = temperatures.place(column);
                for (int row = 0; row < charges.size(); row++) {
                    double here = model.resistance(charges.place(row), cellsC, horizon.seconds());
                    greatest[horizon.ordinal()][column] =
                            Math.max(greatest[horizon.ordinal()][column], group * here);
                }
            }
        }
        return greatest;
    }

    /**
     * Where a voltage is used up without any current, the nearest to the harmless end of the
     * charge; the other end where none is.
     */
    private double usedUp(PackLimit limit, int harmless) {
        int harmful = charges.size() - 1 - harmless;
        double nearest = harmful;
        for (PackConstraint constraint : limit.constraints()) {
            double[] headroom = charges.read(constraint::headroomAt);
            double found = headroom[harmless] < 0.0 ? harmless : crossing(headroom, harmful);
            if (Math.abs(found - harmless) < Math.abs(nearest - harmless)) {
                nearest = found;
            }
        }
        return nearest;
    }

    /** From the harmless end on the first place where nothing is left; the harmful one if none. */
    private static double crossing(double[] headroom, int harmful) {
        int step = harmful == 0 ? -1 : 1;
        for (int row = headroom.length - 1 - harmful; row != harmful; row += step) {
            if (headroom[row + step] < 0.0) {
                return row + step * headroom[row] / (headroom[row] - headroom[row + step]);
            }
        }
        return harmful;
    }

    /**
     * Returns the current that all controllers together may send into the packs.
     *
     * @param charge the charge state, 0 to 1 [1]
     * @param cellsC the cell temperature, {@value #COLDEST_C} to {@value #WARMEST_C} [°C]
     * @return the current, not negative [A]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double permittedRegenA(double charge, double cellsC) {
        require(charge, cellsC);
        return taking.permitted(charges.rank(charge), temperatures.rank(cellsC));
    }

    /**
     * Returns the current that all controllers together may send into the packs.
     *
     * @param charge the charge state [1]
     * @param cellsC the cell temperature [°C]
     * @return the current [A]; 0 where an argument is NaN or outside its range
     */
    public double permittedRegenOrZeroA(double charge, double cellsC) {
        return isKnown(charge, cellsC) ? permittedRegenA(charge, cellsC) : 0.0;
    }

    /**
     * Returns the current that all controllers together may draw from the packs.
     *
     * @param charge the charge state, 0 to 1 [1]
     * @param cellsC the cell temperature, {@value #COLDEST_C} to {@value #WARMEST_C} [°C]
     * @return the current, not negative [A]
     * @throws IllegalArgumentException if an argument is NaN or outside its range
     */
    public double permittedDrawA(double charge, double cellsC) {
        require(charge, cellsC);
        return giving.permitted(charges.rank(charge), temperatures.rank(cellsC));
    }

    /**
     * Returns the current that all controllers together may draw from the packs.
     *
     * @param charge the charge state [1]
     * @param cellsC the cell temperature [°C]
     * @return the current [A]; 0 where an argument is NaN or outside its range
     */
    public double permittedDrawOrZeroA(double charge, double cellsC) {
        return isKnown(charge, cellsC) ? permittedDrawA(charge, cellsC) : 0.0;
    }

    /**
     * Returns the current with which each motor may brake at a speed, so that the packs stay within
     * their limit and motor, rider and tyres within theirs.
     *
     * @param speed of the vehicle, not negative [m/s]
     * @param charge the charge state, 0 to 1 [1]
     * @param cellsC the cell temperature, {@value #COLDEST_C} to {@value #WARMEST_C} [°C]
     * @return the current per motor, not negative [A]
     * @throws IllegalArgumentException if an argument is NaN, negative or outside its range
     */
    public double permittedBrakeA(double speed, double charge, double cellsC) {
        Require.notNegative("speed", speed, Unit.METRE_PER_SECOND);
        require(charge, cellsC);
        double row = charges.rank(charge);
        double column = temperatures.rank(cellsC);
        double power =
                TerminalPower.returnedPower(
                        Lines.at(restVoltages, row),
                        resistanceInto.at(row, column),
                        taking.permitted(row, column));
        return powertrain.limitedBrakeCurrent(motorBrake, speed, power);
    }

    /**
     * Returns the current with which each motor may brake at a speed, likewise.
     *
     * @param speed of the vehicle [m/s]
     * @param charge the charge state [1]
     * @param cellsC the cell temperature [°C]
     * @return the current per motor [A]; 0 where an argument is NaN or outside its range
     */
    public double permittedBrakeOrZeroA(double speed, double charge, double cellsC) {
        return speed >= 0.0 && speed < Double.POSITIVE_INFINITY && isKnown(charge, cellsC)
                ? permittedBrakeA(speed, charge, cellsC)
                : 0.0;
    }

    /**
     * Returns the current that may be sent into the packs besides what flows already, from the
     * voltage at their terminals alone: {@code (U_max − V)/R(t)}, with the greatest resistance over
     * the charge and in the stiffest group. Where nothing flows, that is all that is permitted, and
     * where a rating falls with the charge mostly less: all that the packs may give might flow
     * unseen and hide how full they are.
     *
     * @param voltage at the terminals now, not negative [V]
     * @param cellsC the cell temperature, {@value #COLDEST_C} to {@value #WARMEST_C} [°C]
     * @param horizon how long it is to flow
     * @return the current, at most what the packs are rated for, not negative [A]
     * @throws IllegalArgumentException if an argument is NaN, negative or outside its range
     */
    public double furtherRegenA(double voltage, double cellsC, Horizon horizon) {
        Require.notNegative("voltage at the terminals", voltage, Unit.VOLT);
        require(FULL, cellsC);
        double unseen = giving.rated(charges.rank(EMPTY), temperatures.rank(cellsC));
        double fullest = charge(voltage, -unseen, cellsC);
        return further(taking, greatestInto, highestRest - voltage, fullest, cellsC, horizon);
    }

    /**
     * Returns the current that may be sent into the packs besides what flows already, likewise.
     *
     * @param voltage at the terminals now [V]
     * @param cellsC the cell temperature [°C]
     * @param horizon how long it is to flow
     * @return the current [A]; 0 where an argument is NaN or outside its range
     */
    public double furtherRegenOrZeroA(double voltage, double cellsC, Horizon horizon) {
        return isVoltage(voltage) && isKnown(FULL, cellsC)
                ? furtherRegenA(voltage, cellsC, horizon)
                : 0.0;
    }

    /**
     * Returns the current that may be drawn from the packs besides what flows already, from the
     * voltage at their terminals alone: {@code (V − U_min)/R(t)}, likewise.
     *
     * @param voltage at the terminals now, not negative [V]
     * @param cellsC the cell temperature, {@value #COLDEST_C} to {@value #WARMEST_C} [°C]
     * @param horizon how long it is to flow
     * @return the current, at most what the packs are rated for, not negative [A]
     * @throws IllegalArgumentException if an argument is NaN, negative or outside its range
     */
    public double furtherDrawA(double voltage, double cellsC, Horizon horizon) {
        Require.notNegative("voltage at the terminals", voltage, Unit.VOLT);
        double resting = charge(voltage, 0.0, cellsC);
        return further(giving, greatestOut, voltage - lowestRest, resting, cellsC, horizon);
    }

    /**
     * Returns the current that may be drawn from the packs besides what flows already, likewise.
     *
     * @param voltage at the terminals now [V]
     * @param cellsC the cell temperature [°C]
     * @param horizon how long it is to flow
     * @return the current [A]; 0 where an argument is NaN or outside its range
     */
    public double furtherDrawOrZeroA(double voltage, double cellsC, Horizon horizon) {
        return isVoltage(voltage) && isKnown(FULL, cellsC)
                ? furtherDrawA(voltage, cellsC, horizon)
                : 0.0;
    }

    private static boolean isVoltage(double voltage) {
        return voltage >= 0.0 && voltage < Double.POSITIVE_INFINITY;
    }

    private double further(
            Bounds bounds,
            double[][] greatest,
            double headroom,
            double charge,
            double cellsC,
            Horizon horizon) {
        double column = temperatures.rank(cellsC);
        double resistance = Lines.at(greatest[horizon.ordinal()], column);
        double rated = bounds.rated(charges.rank(charge), column);
        return Math.max(0.0, Math.min(rated, headroom / resistance));
    }

    /**
     * Returns the charge state at which a current makes a voltage: {@code U(s) + I·R(s,T) = V},
     * with the resistance of a current that has flowed for ten seconds. Where that voltage does not
     * rise with the charge, as on the level part of a curve, it tells little: ask for both ends.
     *
     * @param voltage at the terminals [V]
     * @param current into all packs together; negative when drawn [A]
     * @param cellsC the cell temperature, {@value #COLDEST_C} to {@value #WARMEST_C} [°C]
     * @return the charge state; 0 or 1 where the voltage lies beyond [1]
     * @throws IllegalArgumentException if an argument is not finite or outside its range
     */
    public double charge(double voltage, double current, double cellsC) {
        return charge(voltage, current, cellsC, 1.0);
    }

    /**
     * Returns the lowest charge state that measurements and their doubt leave.
     *
     * @param voltage at the terminals [V]
     * @param current into all packs together; negative when drawn [A]
     * @param cellsC the cell temperature [°C]
     * @param doubt how far all of it may be off
     * @return the charge state, at most that of {@link #charge} [1]
     * @throws IllegalArgumentException likewise
     */
    public double leastCharge(double voltage, double current, double cellsC, MeasuringDoubt doubt) {
        double most = current + doubt.current();
        return charge(
                voltage - doubt.voltage(),
                most,
                cellsC,
                1.0 + (most >= 0.0 ? doubt.resistance() : -doubt.resistance()));
    }

    /**
     * Returns the highest charge state that measurements and their doubt leave.
     *
     * @param voltage at the terminals [V]
     * @param current into all packs together; negative when drawn [A]
     * @param cellsC the cell temperature [°C]
     * @param doubt how far all of it may be off
     * @return the charge state, at least that of {@link #charge} [1]
     * @throws IllegalArgumentException likewise
     */
    public double greatestCharge(
            double voltage, double current, double cellsC, MeasuringDoubt doubt) {
        double least = current - doubt.current();
        return charge(
                voltage + doubt.voltage(),
                least,
                cellsC,
                1.0 + (least >= 0.0 ? -doubt.resistance() : doubt.resistance()));
    }

    private double charge(double voltage, double current, double cellsC, double share) {
        Require.within(
                "voltage at the terminals",
                voltage,
                -Double.MAX_VALUE,
                Double.MAX_VALUE,
                Unit.VOLT);
        Require.within(
                "current of the packs", current, -Double.MAX_VALUE, Double.MAX_VALUE, Unit.AMPERE);
        require(FULL, cellsC);
        double column = temperatures.rank(cellsC);
        Table resistance = current > 0.0 ? resistanceInto : resistanceOut;
        int low = 0;
        int high = charges.size() - 1;
        double over = voltage - restVoltages[low] - share * current * resistance.at(low, column);
        double under = voltage - restVoltages[high] - share * current * resistance.at(high, column);
        if (over <= 0.0) {
            return EMPTY;
        }
        if (under >= 0.0) {
            return FULL;
        }
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            double here =
                    voltage
                            - restVoltages[middle]
                            - share * current * resistance.at(middle, column);
            if (here > 0.0) {
                low = middle;
                over = here;
            } else {
                high = middle;
                under = here;
            }
        }
        double from = charges.place(low);
        return from + (charges.place(high) - from) * over / (over - under);
    }

    /**
     * Returns the charge states at which the tables hold what the full model says.
     *
     * @return ascending from 0 to 1 [1]; a copy
     */
    public double[] charges() {
        return charges.places();
    }

    /**
     * Returns the cell temperatures at which the tables hold what the full model says.
     *
     * @return ascending [°C]; a copy
     */
    public double[] temperatures() {
        return temperatures.places();
    }

    private static void require(double charge, double cellsC) {
        Require.within("charge state", charge, EMPTY, FULL, Unit.RATIO);
        Require.within("cell temperature", cellsC, COLDEST_C, WARMEST_C, Unit.CELSIUS);
    }

    private static boolean isKnown(double charge, double cellsC) {
        return charge >= EMPTY && charge <= FULL && cellsC >= COLDEST_C && cellsC <= WARMEST_C;
    }
}
