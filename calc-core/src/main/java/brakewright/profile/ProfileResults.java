package brakewright.profile;

import brakewright.battery.BatteryModel;
import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.driving.Cruise;
import brakewright.driving.Road;
import brakewright.driving.StandingStart;
import brakewright.heat.HardRiding;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.powertrain.PackState;
import brakewright.powertrain.TopSpeed;
import brakewright.review.Evaluation;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.worksheet.DriveSheet;
import brakewright.worksheet.HeldBy;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/** What one profile comes to, measure by measure; what several need is worked out once. */
final class ProfileResults {

    /** The speeds of a comparison are told to whole km/h [m/s]. */
    private static final double ROUNDING = 0.51 / 3.6;

    private final Build build;
    private final Limits limits;
    private final Operation operation;
    private final BatteryModel model;
    private final PackState full;
    private final Map<Measure, Reading> readings = new HashMap<>();
    private @Nullable DriveSheet drive;
    private @Nullable Evaluation evaluation;

    ProfileResults(Build build) {
        this.build = build;
        this.limits = Limits.of(build);
        this.operation = Operation.of(build, limits);
        this.model = limits.battery();
        this.full = PackState.of(model, build.use().chargeFrom(), build.battery().temperatureC());
    }

    Build build() {
        return build;
    }

    Evaluation evaluation() {
        if (evaluation == null) {
            evaluation = Evaluation.of(build, limits, operation);
        }
        return evaluation;
    }

    private DriveSheet drive() {
        if (drive == null) {
            drive = DriveSheet.of(build, operation, build.use().chargeFrom());
        }
        return drive;
    }

    Operation operation() {
        return operation;
    }

    Reading read(Measure measure) {
        return readings.computeIfAbsent(measure, this::worked);
    }

    private Reading worked(Measure measure) {
        double speed = measure.speed().orElse(0.0);
        Settings settings = build.settings();
        return switch (measure.quantity()) {
            case MOTOR_DRIVE_CURRENT -> Reading.of(settings.motorDriveCurrent());
            case MOTOR_BRAKE_CURRENT -> Reading.of(settings.motorBrakeCurrent());
            case PACK_DISCHARGE_CURRENT -> Reading.of(settings.packDischargeCurrent());
            case PACK_REGEN_CURRENT -> Reading.of(settings.packRegenCurrent());
            case LOW_TAPER_BEGINS -> begins(settings.lowVoltageTaper());
            case LOW_TAPER_ENDS -> ends(settings.lowVoltageTaper());
            case HIGH_TAPER_BEGINS -> begins(settings.highVoltageTaper());
            case HIGH_TAPER_ENDS -> ends(settings.highVoltageTaper());
            case SPEED_CAP -> Reading.of(settings.speedCap());
            case VERDICT, SEVERITY, SAFE_CHARGE -> verdict(measure.quantity());
            case GREATEST_RETURN ->
                    greatest(pack -> operation.brake().greatestReturn(operation.topSpeed(), pack));
            case GREATEST_DRAW ->
                    greatest(pack -> operation.drive().greatestDraw(operation.topSpeed(), pack));
            case STOP_DRY -> stop(speed, build.vehicle().grip());
            case STOP_WET -> stop(speed, build.vehicle().gripWet());
            case TOP_SPEED -> topSpeed(drive().topSpeedFlat());
            case TOP_SPEED_LASTING -> topSpeed(drive().lastingFlat());
            case LAUNCH -> Reading.of(drive().launch(), drive().launchBoundBy());
            case TIME_TO_CRUISE ->
                    new StandingStart(build, operation.drive(), Road.LEVEL)
                            .to(speed, full)
                            .map(reached -> Reading.of(reached.time()))
                            .orElse(Reading.NONE);
            case CLIMB -> Reading.of(drive().climb().steepest());
            case HOTTEST_WINDING ->
                    Reading.of(
                            HardRiding.hottest(
                                    build,
                                    operation.brake(),
                                    operation.drive(),
                                    isReached(speed) ? speed : operation.topSpeed()));
            case RANGE -> range(speed);
        };
    }

    private static Reading topSpeed(TopSpeed.Result result) {
        return Reading.of(result.speed(), new HeldBy.TheDrive(result.holder()));
    }

    private static Reading begins(Optional<Taper> taper) {
        return taper.map(each -> Reading.of(each.begins())).orElse(Reading.NONE);
    }

    private static Reading ends(Optional<Taper> taper) {
        return taper.map(each -> Reading.of(each.ends())).orElse(Reading.NONE);
    }

    private Reading verdict(Quantity quantity) {
        Evaluation verdict = evaluation();
        return switch (quantity) {
            case VERDICT -> Reading.of(verdict.outcome().ordinal());
            case SEVERITY ->
                    new Reading(
                            OptionalDouble.of(verdict.severity()),
                            Optional.of(new HeldBy.AConstraint(verdict.worst())),
                            verdict.charge());
            default -> Reading.of(verdict.safeCharge());
        };
    }

    private Reading greatest(ToDoubleFunction<PackState> current) {
        double greatest = Double.NEGATIVE_INFINITY;
        double where = build.use().chargeFrom();
        for (double charge : operation.bends(build, limits)) {
            double flows =
                    current.applyAsDouble(
                            PackState.of(model, charge, build.battery().temperatureC()));
            if (flows > greatest) {
                greatest = flows;
                where = charge;
            }
        }
        return Reading.at(greatest, where);
    }

    /**
     * Whether the vehicle ever goes so fast: what its speed cap and its use permit or, where no cap
     * is set, what it reaches on level road.
     */
    private boolean isReached(double speed) {
        double reached =
                build.settings().speedCap().isPresent()
                        ? operation.topSpeed()
                        : Math.max(operation.topSpeed(), drive().topSpeedFlat().speed());
        return speed <= reached + ROUNDING;
    }

    /** With the fullest pack in use, which holds the electric brake back most. */
    private Reading stop(double speed, double grip) {
        if (!isReached(speed)) {
            return Reading.NONE;
        }
        double charge = build.use().chargeFrom();
        StopOutcome outcome =
                new Stop(build, operation.brake(), Surroundings.of(build).withGrip(grip))
                        .from(speed, charge);
        return outcome instanceof StopOutcome.Stopped stopped
                ? Reading.at(stopped.distance(), charge)
                : Reading.NONE;
    }

    private Reading range(double speed) {
        if (!isReached(speed)) {
            return Reading.NONE;
        }
        Cruise cruise = Cruise.of(build, operation.drive(), Road.ofUse(build), speed);
        return Double.isFinite(cruise.distance()) && cruise.distanceHeld() > 0.0
                ? Reading.of(cruise.distance())
                : Reading.NONE;
    }
}
