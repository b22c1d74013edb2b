package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.limit.Constraint;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.TaperLimit;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Holds each setting against its own limit. */
final class SettingReview {

    /**
     * Share of a limit without a margin of its own above which a setting is said to leave a thin
     * one.
     *
     * <p>Assumption: our own choice; meters and controllers of this class read within about 5 %.
     */
    private static final double THIN = 0.95;

    private final Build build;
    private final Limits limits;
    private final List<Finding> findings = new ArrayList<>();

    SettingReview(Build build, Limits limits) {
        this.build = build;
        this.limits = limits;
    }

    List<Finding> findings() {
        Settings settings = build.settings();
        int count = build.controllers().count();
        double temperature = build.battery().temperatureC();
        review(limits.motorDrive(), settings.motorDriveCurrent(), Topic.DRIVE_CURRENT_OVER);
        review(limits.motorBrake(), settings.motorBrakeCurrent(), Topic.BRAKE_CURRENT_OVER);
        review(limits.speedCap(), settings.speedCap(), Topic.SPEED_CAP_OVER);
        thin(
                limits.packDischarge().staticPart(temperature),
                settings.packDischargeCurrent(),
                count);
        thin(limits.packRegen().staticPart(temperature), settings.packRegenCurrent(), count);
        review(limits.lowVoltageTaper(), settings.lowVoltageTaper());
        review(limits.highVoltageTaper(), settings.highVoltageTaper());
        reviewRestingVoltage();
        reviewRemainingBrake();
        return findings;
    }

    private void review(Limit limit, OptionalDouble setting, Topic topic) {
        if (setting.isEmpty()) {
            return;
        }
        double set = setting.getAsDouble();
        for (Constraint constraint : limit.constraints()) {
            if (Evaluation.excess(set, constraint.limit()) > 0.0) {
                findings.add(
                        Finding.of(topic, signalOf(constraint.id()))
                                .about(limit.id())
                                .against(constraint.id())
                                .valued(set, constraint.limit(), limit.id().unit())
                                .unless(new Condition.Never())
                                .build());
            }
        }
        thin(limit, setting, 1);
    }

    private void thin(Limit limit, OptionalDouble setting, int count) {
        if (setting.isEmpty()) {
            return;
        }
        double set = count * setting.getAsDouble();
        if (!limit.binding().id().keepsMargin()
                && set > THIN * limit.value()
                && set <= limit.value()) {
            findings.add(
                    Finding.of(Topic.THIN_MARGIN, Signal.CAUTION)
                            .about(limit.id())
                            .against(limit.binding().id())
                            .valued(set, limit.value(), limit.id().unit())
                            .build());
        }
    }

    private void review(TaperLimit limit, Optional<Taper> setting) {
        if (setting.isEmpty()) {
            return;
        }
        Taper taper = setting.get();
        if (!limit.endsInTime(taper)) {
            findings.add(
                    Finding.of(Topic.TAPER_ENDS_LATE, Signal.CAUTION)
                            .about(limit.id())
                            .against(limit.binding().id())
                            .valued(taper.ends(), limit.binding().limit(), "V")
                            .build());
        }
        if (!limit.isWideEnough(taper)) {
            findings.add(
                    Finding.of(Topic.TAPER_SURGES, Signal.WARNING)
                            .about(limit.id())
                            .valued(taper.band(), limit.band().limit(), "V")
                            .build());
        }
    }

    private void reviewRestingVoltage() {
        double full =
                new BatteryModel(build.battery()).openCircuitVoltage(build.use().chargeFrom());
        double rating = build.controllers().voltageRating();
        if (Evaluation.excess(full, rating) > 0.0) {
            findings.add(
                    Finding.of(Topic.CONTROLLER_VOLTAGE_AT_REST, Signal.DANGER)
                            .against(ConstraintId.CONTROLLER_VOLTAGE_RATING)
                            .valued(full, rating, "V")
                            .atCharge(build.use().chargeFrom())
                            .unless(new Condition.Never())
                            .build());
        }
    }

    /** A taper that ends below the resting voltage of a fuller pack takes the whole brake away. */
    private void reviewRemainingBrake() {
        Optional<Taper> taper = build.settings().highVoltageTaper();
        if (taper.isEmpty() || build.vehicle().frictionBrake().isPresent()) {
            return;
        }
        BatteryModel model = new BatteryModel(build.battery());
        double ends = taper.get().ends();
        double full = model.openCircuitVoltage(build.use().chargeFrom());
        OptionalDouble from =
                new ChargeSearch(build, model)
                        .firstExcess(
                                charge -> Evaluation.excess(model.openCircuitVoltage(charge), ends),
                                true);
        if (from.isPresent()) {
            findings.add(
                    Finding.of(Topic.BRAKE_TAKEN_AWAY, Signal.DANGER)
                            .about(LimitId.HIGH_VOLTAGE_TAPER)
                            .against(ConstraintId.REMAINING_BRAKE)
                            .valued(full, ends, "V")
                            .atCharge(from.getAsDouble())
                            .worstAt(build.use().chargeFrom())
                            .unless(
                                    from.getAsDouble() > build.use().chargeTo()
                                            ? new Condition.BrakeBelow(from.getAsDouble())
                                            : new Condition.Never())
                            .build());
        }
    }

    private static Signal signalOf(ConstraintId id) {
        return switch (id) {
            case GRIP,
                    TIPPING,
                    RIDER_BALANCE,
                    PROTECTION_UNDERVOLTAGE_TRIP,
                    PROTECTION_OVERVOLTAGE_TRIP,
                    CONTROLLER_VOLTAGE_RATING,
                    CONTROLLER_BACK_EMF ->
                    Signal.DANGER;
            default -> Signal.WARNING;
        };
    }
}
