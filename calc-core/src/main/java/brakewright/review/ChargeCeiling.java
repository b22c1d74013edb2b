package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Climate;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** Up to which charge state braking is safe for the pack. */
public final class ChargeCeiling {

    private ChargeCeiling() {}

    /**
     * Returns the charge state up to which the pack may take what braking sends at any speed in
     * use, with the cells at their own, the coldest and the warmest temperature.
     *
     * @param build the vehicle
     * @param limits what the pack may take
     * @param operation its settings in effect
     * @return the charge state [1]; the highest in use where nothing is exceeded, the lowest where
     *     something always is
     */
    public static double of(Build build, Limits limits, Operation operation) {
        Climate climate = build.use().climate();
        double own = build.battery().temperatureC();
        return DoubleStream.of(
                        own,
                        Math.min(own, climate.coldestPackC()),
                        Math.max(own, climate.warmestPackC()))
                .map(
                        cells ->
                                firstExcess(build, limits, operation, cells)
                                        .orElse(build.use().chargeFrom()))
                .min()
                .orElseThrow();
    }

    /** Where the pack begins to be sent more than it may take; empty if nowhere in use. */
    static OptionalDouble firstExcess(
            Build build, Limits limits, Operation operation, double cellsC) {
        BatteryModel pack = new BatteryModel(build.battery());
        ElectricBrake brake = operation.brake();
        return ChargeSearch.of(build, pack, limits, operation)
                .firstExcess(
                        charge ->
                                Evaluation.excess(
                                        brake.greatestReturn(
                                                operation.topSpeed(),
                                                PackState.of(pack, charge, cellsC)),
                                        limits.packRegen().valueAt(charge, cellsC)),
                        true);
    }
}
