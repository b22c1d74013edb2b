package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks at protections that sit on the charge lead alone. They cannot cut the vehicle dead, and for
 * the same reason nothing keeps braking from overcharging the cells, or driving from emptying them,
 * but the settings.
 */
final class BypassReview {

    private final Build build;
    private final BatteryModel model;
    private final double[] charges;
    private final Operation trusted;
    private final List<Finding> findings = new ArrayList<>();

    BypassReview(Build build, Limits limits, Operation operation) {
        this.build = build;
        this.trusted = operation.trusted(limits);
        this.model = limits.battery();
        this.charges =
                build.battery().packs().stream().anyMatch(pack -> pack.protection().isBypassed())
                        ? trusted.bends(build, limits)
                        : new double[0];
    }

    List<Finding> findings() {
        for (int place = 0; place < model.packs().size(); place++) {
            if (model.packs().get(place).pack().protection().isBypassed()) {
                overcharge(place);
                discharge(place);
            }
        }
        return findings;
    }

    /** The highest voltage of the fullest group that the settings make, at any charge in use. */
    private void overcharge(int place) {
        double highest = Double.NEGATIVE_INFINITY;
        double worst = build.use().chargeFrom();
        double worstC = build.battery().temperatureC();
        boolean isCharged = false;
        for (double cellsC : build.cellTemperatures()) {
            for (double charge : charges) {
                PackState state = PackState.of(model, charge, cellsC);
                double returned = trusted.brake().greatestReturn(trusted.topSpeed(), state);
                double cell = cellVoltage(place, returned, charge, cellsC);
                isCharged |= returned > 0.0;
                if (returned > 0.0 && cell > highest) {
                    highest = cell;
                    worst = charge;
                    worstC = cellsC;
                }
            }
        }
        if (isCharged) {
            findings.add(
                    Finding.of(Topic.PROTECTION_BYPASSED, Signal.DANGER)
                            .about(LimitId.PACK_REGEN_CURRENT)
                            .ofPack(build.battery().which(place))
                            .valued(highest, pack(place).pack().cell().voltageMax(), Unit.VOLT)
                            .atCharge(worst)
                            .atTemperature(worstC)
                            .build());
        }
    }

    private void discharge(int place) {
        findings.add(
                Finding.of(Topic.PROTECTION_BYPASSED, Signal.WARNING)
                        .about(LimitId.PACK_DISCHARGE_CURRENT)
                        .ofPack(build.battery().which(place))
                        .held(pack(place).pack().cell().voltageMin(), Unit.VOLT)
                        .build());
    }

    private double cellVoltage(int place, double current, double charge, double cellsC) {
        double own = current * model.into().share(place, charge, cellsC);
        return pack(place)
                .highestCellVoltage(own, model.chargeOf(place, charge), cellsC, Cell.PULSE);
    }

    private PackModel pack(int place) {
        return model.packs().get(place);
    }
}
