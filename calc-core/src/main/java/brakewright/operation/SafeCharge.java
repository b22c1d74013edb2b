package brakewright.operation;

import brakewright.battery.BatteryModel;
import brakewright.charge.ChargeSearch;
import brakewright.limit.Limits;
import brakewright.limit.Severity;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import java.util.OptionalDouble;

/** Up to which charge state braking is safe for the pack, at one cell temperature. */
final class SafeCharge {

    private SafeCharge() {}

    /** Where the pack begins to be sent more than it may take; empty if nowhere in use. */
    static OptionalDouble firstExcess(
            Build build, Limits limits, Operation operation, double cellsC) {
        BatteryModel pack = limits.battery();
        Operation trusted = operation.trusted(limits);
        ElectricBrake brake = trusted.brake();
        return new ChargeSearch(trusted.bends(build, limits))
                .firstExcess(
                        charge ->
                                Severity.excess(
                                        brake.greatestReturn(
                                                trusted.topSpeed(),
                                                PackState.of(pack, charge, cellsC)),
                                        limits.packRegen().valueAt(charge, cellsC)),
                        true);
    }
}
