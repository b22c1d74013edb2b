package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import java.util.Arrays;
import java.util.OptionalDouble;

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
     * @return the charge state [1]; the highest in use where nothing is exceeded, 0 where something
     *     always is
     */
    public static double of(Build build, Limits limits, Operation operation) {
        double to = build.use().chargeTo();
        double from = build.use().chargeFrom();
        return Arrays.stream(build.cellTemperatures())
                .map(cells -> firstExcess(build, limits, operation, cells).orElse(from))
                .map(charge -> charge > to || to == from ? charge : 0.0)
                .min()
                .orElseThrow();
    }

    /** Where the pack begins to be sent more than it may take; empty if nowhere in use. */
    static OptionalDouble firstExcess(
            Build build, Limits limits, Operation operation, double cellsC) {
        BatteryModel pack = new BatteryModel(build.battery());
        Operation trusted = operation.trusted(limits);
        ElectricBrake brake = trusted.brake();
        return ChargeSearch.of(build, pack, limits, trusted)
                .firstExcess(
                        charge ->
                                Evaluation.excess(
                                        brake.greatestReturn(
                                                trusted.topSpeed(),
                                                PackState.of(pack, charge, cellsC)),
                                        limits.packRegen().valueAt(charge, cellsC)),
                        true);
    }
}
