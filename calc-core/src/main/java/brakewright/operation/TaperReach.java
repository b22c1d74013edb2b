package brakewright.operation;

import brakewright.battery.BatteryModel;
import brakewright.charge.ChargeSearch;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Taper;
import java.util.Optional;
import java.util.OptionalDouble;

/** Over which part of the charge in use a high-voltage taper weakens the brake. */
public final class TaperReach {

    private TaperReach() {}

    /**
     * Finds from which charge state on a taper lets less into the pack than is set, cells at the
     * pack's temperature.
     *
     * @param build the vehicle
     * @param set its electric brake, whatever taper it has
     * @param taper instead of that
     * @return the charge state, the lowest in use where it does so throughout; empty where it does
     *     so nowhere [1]
     */
    public static OptionalDouble from(Build build, ElectricBrake set, Taper taper) {
        ElectricBrake brake = set.withTaper(Optional.of(taper));
        BatteryModel model = new BatteryModel(build.battery());
        double cellsC = build.battery().temperatureC();
        return ChargeSearch.over(build.use(), model)
                .firstExcess(
                        charge ->
                                brake.packCurrent()
                                        - brake.settledPackLimit(
                                                PackState.of(model, charge, cellsC)),
                        true);
    }
}
