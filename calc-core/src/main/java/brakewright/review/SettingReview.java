package brakewright.review;

import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.limit.TaperLimit;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.spec.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Looks how settings are chosen: what is left out, what leaves a thin margin, unsteady tapers. */
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
    private final Operation operation;
    private final List<Finding> findings = new ArrayList<>();

    SettingReview(Build build, Limits limits, Operation operation) {
        this.build = build;
        this.limits = limits;
        this.operation = operation;
    }

    List<Finding> findings() {
        Settings settings = build.settings();
        int count = build.controllers().count();
        double temperature = build.battery().temperatureC();
        thin(limits.motorDrive(), settings.motorDriveCurrent(), 1);
        thin(limits.motorBrake(), settings.motorBrakeCurrent(), 1);
        thin(limits.speedCap(), settings.speedCap(), 1);
        thin(
                limits.packDischarge().staticPart(temperature),
                settings.packDischargeCurrent(),
                count);
        thin(limits.packRegen().staticPart(temperature), settings.packRegenCurrent(), count);
        review(limits.lowVoltageTaper(), settings.lowVoltageTaper());
        review(limits.highVoltageTaper(), settings.highVoltageTaper());
        notGiven(settings);
        return findings;
    }

    /** A controller left at its default may do anything; the brake's are the ones that hurt. */
    private void notGiven(Settings settings) {
        notGiven(settings.packRegenCurrent(), LimitId.PACK_REGEN_CURRENT, Signal.WARNING);
        notGiven(settings.motorBrakeCurrent(), LimitId.MOTOR_BRAKE_CURRENT, Signal.WARNING);
        notGiven(settings.packDischargeCurrent(), LimitId.PACK_DISCHARGE_CURRENT, Signal.CAUTION);
        notGiven(settings.motorDriveCurrent(), LimitId.MOTOR_DRIVE_CURRENT, Signal.CAUTION);
    }

    private void notGiven(OptionalDouble set, LimitId id, Signal signal) {
        if (set.isEmpty()) {
            double assumed =
                    switch (id) {
                        case PACK_REGEN_CURRENT ->
                                operation.brake().packCurrent() / build.controllers().count();
                        case MOTOR_BRAKE_CURRENT -> operation.brake().motorCurrent();
                        case PACK_DISCHARGE_CURRENT ->
                                operation.drive().packCurrent() / build.controllers().count();
                        default -> operation.drive().motorCurrent();
                    };
            findings.add(
                    Finding.of(Topic.SETTING_NOT_GIVEN, signal)
                            .about(id)
                            .valued(assumed, Unit.AMPERE)
                            .build());
        }
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
                            .valued(taper.ends(), limit.binding().limit(), Unit.VOLT)
                            .build());
        }
        if (!limit.isWideEnough(taper)) {
            findings.add(
                    Finding.of(Topic.TAPER_SURGES, Signal.WARNING)
                            .about(limit.id())
                            .valued(taper.band(), limit.band().limit(), Unit.VOLT)
                            .build());
        }
    }
}
