package brakewright.review;

import brakewright.battery.AlongCharge;
import brakewright.battery.BatteryModel;
import brakewright.limit.Constraint;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Everything that bears on the verdict for pack and parts, in one list: whoever judges, searches or
 * tells folds this list, so that none of them can disagree.
 */
final class Checks {

    private final Build build;
    private final Limits limits;
    private final Operation operation;
    private final BatteryModel model;
    private final Set<LimitId> asked;
    private final List<Check> all = new ArrayList<>();
    private double safeCharge;

    private Checks(Build build, Limits limits, Operation set, Set<LimitId> asked) {
        this.build = build;
        this.limits = limits;
        this.operation = set.trusted(limits);
        this.model = limits.battery();
        this.asked = asked;
    }

    /**
     * Makes all checks of a vehicle that bear on its verdict.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param set its settings in effect; a taper that is too narrow protects nothing here
     */
    static Checks all(Build build, Limits limits, Operation set) {
        Checks checks = new Checks(build, limits, set, EnumSet.allOf(LimitId.class));
        OverCharge vehicle = OverCharge.of(build, limits, checks.operation);
        checks.packs(vehicle);
        checks.all.addAll(WarmthCheck.of(build, limits.battery(), checks.operation));
        checks.settings(id -> id.signal() != Signal.CAUTION);
        checks.restingVoltage();
        checks.all.addAll(new FuseReview(build).checks());
        checks.sag(vehicle.flows().givers());
        return checks;
    }

    /**
     * Makes the checks that a change of some settings can move, cautions included: who looks for
     * one keeps within those, too. What a cap or a motor current makes flow is held against the
     * ratings of the packs in place of the pack current, which is another setting.
     */
    static Checks about(Build build, Limits limits, Operation set, Set<LimitId> settings) {
        Checks checks = new Checks(build, limits, set, settings);
        OverCharge vehicle = OverCharge.of(build, limits, checks.operation);
        checks.packs(vehicle);
        checks.settings(id -> true);
        checks.sag(vehicle.flows().givers());
        return checks;
    }

    /** Makes the checks of a hard grab alone; none where no trip is quicker than the limiter. */
    static Checks ofHardGrab(Build build, Limits limits, Operation set) {
        Checks checks = new Checks(build, limits, set, EnumSet.of(LimitId.MOTOR_BRAKE_CURRENT));
        checks.safeCharge = build.use().chargeFrom();
        if (OvershootChecks.hasQuickTrip(build, limits)) {
            checks.overshoot(OverCharge.of(build, limits, checks.operation));
        }
        return checks;
    }

    private boolean isAsked(LimitId... settings) {
        return Arrays.stream(settings).anyMatch(asked::contains);
    }

    List<Check> list() {
        return all;
    }

    /**
     * Returns up to which charge state braking in full or in part is safe for the packs.
     *
     * @return the charge state; the highest in use where nothing is exceeded or nothing was asked
     *     about what is returned, 0 where something is at every charge in use [1]
     */
    double safeCharge() {
        return safeCharge;
    }

    private void packs(OverCharge vehicle) {
        PackChecks packs = new PackChecks(vehicle);
        if (isAsked(
                LimitId.PACK_REGEN_CURRENT,
                LimitId.HIGH_VOLTAGE_TAPER,
                LimitId.MOTOR_BRAKE_CURRENT,
                LimitId.SPEED_CAP)) {
            packs.addReturning(all, isAsked(LimitId.PACK_REGEN_CURRENT));
        }
        if (isAsked(
                LimitId.PACK_DISCHARGE_CURRENT,
                LimitId.LOW_VOLTAGE_TAPER,
                LimitId.MOTOR_DRIVE_CURRENT,
                LimitId.SPEED_CAP)) {
            packs.addDrawing(all, isAsked(LimitId.PACK_DISCHARGE_CURRENT));
        }
        safeCharge = packs.safeCharge();
        if (isAsked(LimitId.MOTOR_BRAKE_CURRENT, LimitId.SPEED_CAP)) {
            overshoot(vehicle);
        }
    }

    private void overshoot(OverCharge vehicle) {
        safeCharge = Math.min(safeCharge, new OvershootChecks(vehicle).addTo(all));
    }

    private void settings(Predicate<ConstraintId> counts) {
        Settings settings = build.settings();
        OptionalDouble drive = settings.motorDriveCurrent();
        if (drive.isPresent() && isAsked(LimitId.MOTOR_DRIVE_CURRENT)) {
            setting(limits.motorDrive(), drive.getAsDouble(), Topic.DRIVE_CURRENT_OVER, counts);
        }
        OptionalDouble brake = settings.motorBrakeCurrent();
        if (brake.isPresent() && isAsked(LimitId.MOTOR_BRAKE_CURRENT)) {
            setting(limits.motorBrake(), brake.getAsDouble(), Topic.BRAKE_CURRENT_OVER, counts);
        }
        OptionalDouble cap = settings.speedCap();
        if (cap.isPresent() && isAsked(LimitId.SPEED_CAP)) {
            setting(limits.speedCap(), cap.getAsDouble(), Topic.SPEED_CAP_OVER, counts);
        }
    }

    private void sag(AlongCharge givers) {
        if (!isAsked(
                LimitId.LOW_VOLTAGE_TAPER,
                LimitId.PACK_DISCHARGE_CURRENT,
                LimitId.MOTOR_DRIVE_CURRENT,
                LimitId.SPEED_CAP)) {
            return;
        }
        for (double cellsC : build.cellTemperatures()) {
            if (cellsC <= build.battery().temperatureC()) {
                all.add(new SagCheck(build, limits, operation, cellsC).check(givers));
            }
        }
    }

    private void setting(Limit limit, double set, Topic topic, Predicate<ConstraintId> counts) {
        for (Constraint constraint : limit.constraints()) {
            if (counts.test(constraint.id())) {
                all.add(
                        PlainCheck.always(
                                Held.setting(topic, limit.id(), constraint.id())
                                        .ofPack(constraint.pack()),
                                set,
                                constraint.limit(),
                                limit.id().unit()));
            }
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
                                WhichPack.WHOLE,
                                Double.NaN),
                        model.openCircuitVoltage(charge),
                        build.controllers().voltageRating(),
                        Unit.VOLT));
    }
}
