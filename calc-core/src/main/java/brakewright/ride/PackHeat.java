package brakewright.ride;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
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
 * <p>The heat is {@code ∫ I²·r dt} over all cells, with the resistance of an endless pull at the
 * temperature of the beginning (it falls as the cells warm, so this errs on the warm side); heat of
 * reaction is left out. Without a way to the air all of it stays: {@code ΔT = Q/C}. With the
 * thermal resistance to the air, at the mean power: {@code T = Ta + P·Rth + (T0 − Ta −
 * P·Rth)·e^(−t/τ)}, {@code τ = Rth·C}.
 *
 * <p>Source: Joule heating; heat balance of one body.
 *
 * @param meanCurrent out of all packs together [A]
 * @param pack the one that warms most, from 1
 * @param time until the charge in use is gone [s]
 * @param riseK if no heat leaves the cells [K]
 * @param endC cell temperature at the end [°C]; with heat leaving where the way to the air is known
 * @param chargeLimitC above which the cells may not be charged [°C]
 * @param dischargeLimitC above which the cells may not be discharged [°C]
 * @param chargeAfter until they may be [s]; 0 where they may at once; empty where they must wait
 *     and the way to the air is not known
 */
public record PackHeat(
        double meanCurrent,
        int pack,
        double time,
        double riseK,
        double endC,
        double chargeLimitC,
        double dischargeLimitC,
        OptionalDouble chargeAfter) {

    /**
     * Works out the warming at a steady power of the pack that warms most.
     *
     * @param build the vehicle
     * @param power drawn at the terminals [W], positive
     * @return the warming; empty where the heat capacity of no pack is known, or the power cannot
     *     be drawn throughout
     */
    public static Optional<PackHeat> atPower(Build build, double power) {
        return of(build, pack -> -pack.currentInto(-power));
    }

    /**
     * Works out the warming at a steady current of the pack that warms most.
     *
     * @param build the vehicle
     * @param current out of all packs together [A], positive
     * @return the warming; empty where the heat capacity of no pack is known, or the current pulls
     *     the voltage below half of that at rest, beyond which drawing more gives less
     */
    public static Optional<PackHeat> atCurrent(Build build, double current) {
        return of(
                build,
                pack ->
                        2.0 * current * pack.resistance() > pack.voltage()
                                ? Double.POSITIVE_INFINITY
                                : current);
    }

    private static Optional<PackHeat> of(Build build, ToDoubleFunction<PackState> current) {
        Optional<PackHeat> warmest = Optional.empty();
        for (int place = 0; place < build.battery().packs().size(); place++) {
            Optional<PackHeat> own = of(build, current, place);
            if (warmest.isEmpty() || (own.isPresent() && own.get().endC() > warmest.get().endC())) {
                warmest = own.isPresent() ? own : warmest;
            }
        }
        return warmest;
    }

    private static Optional<PackHeat> of(
            Build build, ToDoubleFunction<PackState> current, int place) {
        BatteryModel model = new BatteryModel(build.battery());
        PackModel pack = model.packs().get(place);
        Cell cell = pack.pack().cell();
        if (cell.heatCapacity().isEmpty()) {
            return Optional.empty();
        }
        double start = build.battery().temperatureC();
        ChargeIntegral.Sum sum =
                new ChargeIntegral(model)
                        .over(
                                build.use().chargeFrom(),
                                build.use().chargeTo(),
                                charge -> heating(model, place, charge, start, current));
        if (!(sum.spent().pack() < Double.POSITIVE_INFINITY) || sum.time() <= 0.0) {
            return Optional.empty();
        }
        double heat = sum.spent().pack();
        double capacity =
                pack.pack().series() * pack.pack().parallel() * cell.heatCapacity().getAsDouble();
        double rise = heat / capacity;
        double air = build.use().climate().ambientC();
        double end = start + rise;
        OptionalDouble toAir = pack.pack().toAir();
        double constant = toAir.orElse(Double.NaN) * capacity;
        if (toAir.isPresent()) {
            double settled = air + heat / sum.time() * toAir.getAsDouble();
            end = settled + (start - settled) * Math.exp(-sum.time() / constant);
        }
        double limit = cell.charging().highestC();
        double most = cell.discharging().highestC();
        OptionalDouble chargeAfter = OptionalDouble.of(0.0);
        if (end > limit) {
            chargeAfter =
                    toAir.isPresent() && limit > air
                            ? OptionalDouble.of(constant * Math.log((end - air) / (limit - air)))
                            : OptionalDouble.empty();
        }
        return Optional.of(
                new PackHeat(
                        charged(build, model) / sum.time(),
                        place + 1,
                        sum.time(),
                        rise,
                        end,
                        limit,
                        most,
                        chargeAfter));
    }

    private static ChargeIntegral.Moment heating(
            BatteryModel model,
            int place,
            double charge,
            double cellsC,
            ToDoubleFunction<PackState> current) {
        PackState state = PackState.of(model, charge, cellsC, Double.POSITIVE_INFINITY);
        double whole = current.applyAsDouble(state);
        PackModel pack = model.packs().get(place);
        double own = whole * model.share(place, charge, cellsC);
        double cells =
                pack.pack().series()
                        * pack.cellResistance(
                                model.chargeOf(place, charge), cellsC, Double.POSITIVE_INFINITY)
                        / pack.pack().parallel();
        return new ChargeIntegral.Moment(
                whole, 0.0, new Spending(0, 0, 0, 0, 0, 0, 0, 0, 0, own * own * cells));
    }

    private static double charged(Build build, BatteryModel model) {
        return (build.use().chargeFrom() - build.use().chargeTo()) * 3600.0 * model.capacityAh();
    }
}
