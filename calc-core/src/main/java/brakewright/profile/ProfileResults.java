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
import brakewright.review.BrakeVerdict;
import brakewright.review.Evaluation;
import brakewright.spec.Build;
import brakewright.spec.Require;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.spec.Unit;
import brakewright.worksheet.DriveSheet;
import brakewright.worksheet.HeldBy;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * What one profile comes to, measure by measure; what several need is worked out once, when it is
 * first asked for. Not for several threads at a time.
 */
public final class ProfileResults {

    /** The speeds of a comparison are told to whole km/h [m/s]. */
    private static final double ROUNDING = 0.51 / 3.6;

    private final Build build;
    private final Limits limits;
    private final Operation operation;
    private final BatteryModel model;
    private final PackState full;
    private final double stopCharge;
    private final Map<Measure, Reading> readings = new HashMap<>();
    private @Nullable DriveSheet drive;
    private @Nullable Evaluation evaluation;

    /**
     * Prepares the results of a vehicle, stops with the fullest pack in use, which holds the
     * electric brake back most.
     *
     * @param build the vehicle
     */
    public ProfileResults(Build build) {
        this(build, build.use().chargeFrom());
    }

    /**
     * Prepares the results of a vehicle.
     *
     * @param build the vehicle
     * @param stopCharge the charge state at which stops begin [1], 0 to 1
     * @throws IllegalArgumentException if the charge state is outside that range
     */
    public ProfileResults(Build build, double stopCharge) {
        this.build = build;
        this.stopCharge = Require.within("charge state of stops", stopCharge, 0.0, 1.0, Unit.RATIO);
        this.limits = Limits.of(build);
        this.operation = Operation.of(build, limits);
        this.model = limits.battery();
        this.full = PackState.of(model, build.use().chargeFrom(), build.battery().temperatureC());
    }

    Build build() {
        return build;
    }

    /**
     * Returns the verdict in numbers.
     *
     * @return the evaluation of the vehicle as it is
     */
    public Evaluation evaluation() {
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

    /**
     * Returns one result.
     *
     * @param measure which; one that belongs to a speed and has none is told at the vehicle's own
     * @return the result
     */
    public Reading read(Measure measure) {
        if (measure.isAtOwnSpeed()) {
            double own = ownSpeed(measure.quantity());
            return read(Measure.at(measure.quantity(), own)).atSpeed(own);
        }
        return readings.computeIfAbsent(measure, this::worked);
    }

    /** The top speed in use, or that at which the vehicle cruises. */
    double ownSpeed(Quantity quantity) {
        return switch (quantity) {
            case RANGE, TIME_TO_CRUISE -> build.use().riding().cruiseSpeed();
            default -> operation.topSpeed();
        };
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
            case BRAKE_WEAKEST -> Reading.of(BrakeVerdict.of(build, limits, operation));
            case BRAKE_WEAKEST_WET -> Reading.of(BrakeVerdict.of(build.onWetRoad()));
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
                    Reading.of(verdict.severity(), new HeldBy.AConstraint(verdict.worst()))
                            .atCharge(verdict.charge());
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

    private Reading stop(double speed, double grip) {
        if (!isReached(speed)) {
            return Reading.NONE;
        }
        StopOutcome outcome =
                new Stop(build, operation.brake(), Surroundings.of(build).withGrip(grip))
                        .from(speed, stopCharge);
        return outcome instanceof StopOutcome.Stopped stopped
                ? Reading.at(stopped.distance(), stopCharge)
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
