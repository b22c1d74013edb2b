package brakewright.review;

import brakewright.charge.ChargeSearch;
import brakewright.limit.Limits;
import brakewright.operation.Flows;
import brakewright.operation.Operation;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;

/**
 * A vehicle over the charge in use: what the checks that change with the charge look at.
 *
 * @param build the vehicle
 * @param limits its limits
 * @param operation the settings in effect that are counted on
 * @param flows what flows at the charge states where something may turn
 * @param search those charge states
 */
record OverCharge(
        Build build, Limits limits, Operation operation, Flows flows, ChargeSearch search) {

    static OverCharge of(Build build, Limits limits, Operation trusted) {
        Flows flows = trusted.flows(build, limits);
        return new OverCharge(build, limits, trusted, flows, new ChargeSearch(flows.charges()));
    }

    PackState pack(double charge, double cellsC) {
        return PackState.of(limits.battery(), charge, cellsC);
    }
}
