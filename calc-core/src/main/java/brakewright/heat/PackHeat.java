package brakewright.heat;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * How much the cells warm while a power or a current is drawn from the fullest to the emptiest
 * charge in use.
 *
 * <p>The heat is {@code I²·r} over all cells of a pack, with the resistance of an endless pull at
 * the temperature that they have by then; it leaves through the thermal resistance to the air,
 * where one is known (see {@link WarmingCourse}). Heat of reaction is left out. At the temperature
 * above which the cells may not be discharged the ride is stopped: nobody goes on, so nothing
 * warmer is told.
 *
 * <p>This is what is to be expected, not the worst.
 *
 * @param meanCurrent out of all packs together [A]
 * @param pack the one that warms most, from 1
 * @param time until the charge in use is gone, a stop on the way left aside [s]
 * @param capacity heat capacity of its cells [J/K]
 * @param riseK if no heat left the cells, until the end or the stop [K]
 * @param startC cell temperature at the beginning [°C]
 * @param highestC on the way, the beginning included [°C]
 * @param endC at the end or at the stop [°C]; with heat leaving where the way to the air is known
 * @param chargeLimitC above which the cells may not be charged [°C]
 * @param dischargeLimitC above which the cells may not be discharged [°C]
 * @param warmAfter when they become too warm to be charged [s]; empty where they do not
 * @param stoppedAfter when they become too warm to be discharged [s]; empty where they do not
 * @param chargeAfter until they may be charged afterwards [s]; 0 where they may at once; empty
 *     where they must wait and the way to the air is not known
 */
public record PackHeat(
        double meanCurrent,
        int pack,
        double time,
        double capacity,
        double riseK,
        double startC,
        double highestC,
        double endC,
        double chargeLimitC,
        double dischargeLimitC,
        OptionalDouble warmAfter,
        OptionalDouble stoppedAfter,
        OptionalDouble chargeAfter) {

    private static final double[] AS_KNOWN = {1.0, 1.0};

    /**
     * Returns how much warmer the cells are at the end than at the beginning, what has left to the
     * air taken off.
     *
     * @return the difference [K]; negative where they are cooler
     */
    public double warmerByK() {
        return endC - startC;
    }

    /**
     * Returns the heat that arises in its cells, until the end or the stop.
     *
     * @return the heat [J]
     */
    public double heat() {
        return riseK * capacity;
    }

    /**
     * Returns the heat that leaves them meanwhile.
     *
     * @return the heat [J]
     */
    public double shed() {
        return heat() - (endC - startC) * capacity;
    }

    /**
     * Works out the warming at a steady power of the pack that warms most, from the pack's own
     * temperature.
     *
     * @param build the vehicle
     * @param power drawn at the terminals [W], positive
     * @return the warming; empty where the heat capacity of no pack is known, or the power cannot
     *     be drawn throughout
     */
    public static Optional<PackHeat> atPower(Build build, double power) {
        return of(build, build.battery().temperatureC(), pack -> -pack.currentInto(-power));
    }

    /**
     * Works out the warming at a steady current of the pack that warms most, from the pack's own
     * temperature.
     *
     * @param build the vehicle
     * @param current out of all packs together [A], positive
     * @return the warming; empty where the heat capacity of no pack is known, or the current pulls
     *     the voltage below half of that at rest, beyond which drawing more gives less
     */
    public static Optional<PackHeat> atCurrent(Build build, double current) {
        return of(
                build,
                build.battery().temperatureC(),
                pack ->
                        2.0 * current * pack.resistance() > pack.voltage()
                                ? Double.POSITIVE_INFINITY
                                : current);
    }

    /** The same for one pack, whichever warms most. */
    static Optional<PackHeat> atPower(
            Build build, BatteryModel model, double power, double startC, int place) {
        return of(build, model, startC, pack -> -pack.currentInto(-power), place, AS_KNOWN);
    }

    /**
     * The same for one pack at a steady current out of all [A] that heats so many times as much as
     * if it were even.
     */
    static Optional<PackHeat> atUnevenCurrent(
            Build build, BatteryModel model, double mean, double times, double startC, int place) {
        return of(
                build,
                model,
                startC,
                pack ->
                        2.0 * mean * pack.resistance() > pack.voltage()
                                ? Double.POSITIVE_INFINITY
                                : mean,
                place,
                new double[] {times, 1.0});
    }

    /** The same ride of one pack with more or less heat, and a longer or shorter way to the air. */
    static Optional<PackHeat> doubted(
            Build build, BatteryModel model, double power, PackHeat ride, double[] factors) {
        return of(
                build,
                model,
                ride.startC(),
                pack -> -pack.currentInto(-power),
                ride.pack() - 1,
                factors);
    }

    /**
     * Whether another pack comes further above the temperature to which it may be charged; where
     * both only cool, whether it ends so.
     */
    boolean isBetterToCharge(PackHeat other) {
        double own = highestC - chargeLimitC;
        double its = other.highestC - other.chargeLimitC;
        return own == its ? endC - chargeLimitC < other.endC - other.chargeLimitC : own < its;
    }

    private static Optional<PackHeat> of(
            Build build, double startC, ToDoubleFunction<PackState> current) {
        BatteryModel model = new BatteryModel(build.battery());
        Optional<PackHeat> warmest = Optional.empty();
        for (int place = 0; place < build.battery().packs().size(); place++) {
            Optional<PackHeat> own = of(build, model, startC, current, place, AS_KNOWN);
            if (warmest.isEmpty() || (own.isPresent() && own.get().isHotterThan(warmest.get()))) {
                warmest = own.isPresent() ? own : warmest;
            }
        }
        return warmest;
    }

    /** Of packs that are stopped, the one that is stopped first. */
    private boolean isHotterThan(PackHeat other) {
        double own = stoppedAfter.orElse(Double.POSITIVE_INFINITY);
        double its = other.stoppedAfter.orElse(Double.POSITIVE_INFINITY);
        return own == its ? endC > other.endC : own < its;
    }

    private static Optional<PackHeat> of(
            Build build,
            BatteryModel model,
            double startC,
            ToDoubleFunction<PackState> current,
            int place,
            double[] factors) {
        Cell cell = model.packs().get(place).pack().cell();
        if (cell.heatCapacity().isEmpty()) {
            return Optional.empty();
        }
        double air = build.use().climate().ambientC();
        double from = build.use().chargeFrom();
        double to = build.use().chargeTo();
        WarmingCourse course =
                new WarmingCourse(model, place, current, startC, air)
                        .doubting(factors[0], factors[1]);
        if (!course.ride(from, to) || course.time() <= 0.0) {
            return Optional.empty();
        }
        double limit = cell.charging().highestC();
        OneBody cells = course.body();
        OptionalDouble chargeAfter = OptionalDouble.of(0.0);
        if (course.cellsC() > limit) {
            chargeAfter =
                    cells.toAir().isPresent() && limit > air
                            ? OptionalDouble.of(cells.until(limit, course.cellsC(), 0.0))
                            : OptionalDouble.empty();
        }
        return Optional.of(
                new PackHeat(
                        (from - to) * 3600.0 * model.capacityAh() / course.time(),
                        place + 1,
                        course.time(),
                        cells.capacity(),
                        course.heat() / cells.capacity(),
                        startC,
                        course.highestC(),
                        course.cellsC(),
                        limit,
                        cell.discharging().highestC(),
                        course.warmAfter(),
                        course.stoppedAfter(),
                        chargeAfter));
    }
}
