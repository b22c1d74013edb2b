package brakewright.review;

import brakewright.charge.ChargeSearch;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;

/**
 * A vehicle over the charge in use: what the checks that change with the charge look at.
 *
 * @param build the vehicle
 * @param limits its limits
 * @param operation the settings in effect that are counted on
 * @param search the charge states where something may turn
 */
record OverCharge(Build build, Limits limits, Operation operation, ChargeSearch search) {

    static OverCharge of(Build build, Limits limits, Operation trusted) {
        return new OverCharge(
                build, limits, trusted, new ChargeSearch(trusted.bends(build, limits)));
    }

    PackState pack(double charge, double cellsC) {
        return PackState.of(limits.battery(), charge, cellsC);
    }
}
