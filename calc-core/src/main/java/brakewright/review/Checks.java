package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.limit.Constraint;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Everything that bears on the verdict for pack and parts, in one list: whoever judges, searches or
 * tells folds this list, so that none of them can disagree.
 */
final class Checks {

    private final Build build;
    private final Limits limits;
    private final Operation operation;
    private final BatteryModel model;
    private final List<Check> all = new ArrayList<>();
    private final List<Check> cautions = new ArrayList<>();
    private final double safeCharge;

    /**
     * Makes the checks of a vehicle.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param set its settings in effect; a taper that is too narrow protects nothing here
     */
    Checks(Build build, Limits limits, Operation set) {
        this.build = build;
        this.limits = limits;
        this.operation = set.trusted(limits);
        this.model = new BatteryModel(build.battery());
        ChargeSearch search = ChargeSearch.of(build, model, limits, operation);
        PackChecks packs = new PackChecks(build, limits, operation, model, search);
        packs.addTo(all);
        this.safeCharge = packs.safeCharge();
        Settings settings = build.settings();
        setting(limits.motorDrive(), settings.motorDriveCurrent(), Topic.DRIVE_CURRENT_OVER);
        setting(limits.motorBrake(), settings.motorBrakeCurrent(), Topic.BRAKE_CURRENT_OVER);
        setting(limits.speedCap(), settings.speedCap(), Topic.SPEED_CAP_OVER);
        restingVoltage();
        for (double cellsC : build.cellTemperatures()) {
            if (cellsC <= build.battery().temperatureC()) {
                all.add(new SagCheck(build, limits, operation, cellsC).check());
            }
        }
    }

    List<Check> all() {
        return all;
    }

    /**
     * What bears on some settings, cautions included: who looks for one keeps within those, too.
     */
    List<Check> about(Set<LimitId> settings) {
        return Stream.concat(all.stream(), cautions.stream())
                .filter(each -> each.held().setting().filter(settings::contains).isPresent())
                .toList();
    }

    /**
     * Returns up to which charge state braking in full or in part is safe for the packs.
     *
     * @return the charge state; the highest in use where nothing is exceeded, 0 where something is
     *     at every charge in use [1]
     */
    double safeCharge() {
        return safeCharge;
    }

    private void setting(Limit limit, OptionalDouble set, Topic topic) {
        if (set.isEmpty()) {
            return;
        }
        for (Constraint constraint : limit.constraints()) {
            Check check =
                    PlainCheck.always(
                            Held.setting(topic, limit.id(), constraint.id())
                                    .ofPack(constraint.pack()),
                            set.getAsDouble(),
                            constraint.limit(),
                            limit.id().unit());
            (constraint.id().signal() == Signal.CAUTION ? cautions : all).add(check);
        }
    }

    private void restingVoltage() {
        double charge = build.use().chargeFrom();
        all.add(
                PlainCheck.at(
                        charge,
                        new Held(
                                Topic.CONTROLLER_VOLTAGE_AT_REST,
                                Optional.empty(),
                                ConstraintId.CONTROLLER_VOLTAGE_RATING,
                                0,
                                Double.NaN),
                        model.openCircuitVoltage(charge),
                        build.controllers().voltageRating(),
                        "V"));
    }
}
