package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.limit.Constraint;
import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.Severity;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.operation.RegenOvershoot;
import brakewright.powertrain.BusRise;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.road.FrictionBrake;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.DrivenAxle;
import brakewright.spec.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Looks at what the electric brake does over speed, and what happens without it. */
final class BrakeReview {

    /**
     * Assumption: our own choice, far below what a controller draws for itself; so little raises no
     * voltage [W].
     */
    private static final double LEAST_RETURN = 1e-3;

    /** The bounds on what rider and vehicle bear of the whole deceleration. */
    private static final Set<ConstraintId> FELT =
            EnumSet.of(
                    ConstraintId.TIPPING, ConstraintId.RIDER_BALANCE, ConstraintId.RIDER_TOLERANCE);

    private final Build build;
    private final Limits limits;
    private final Operation operation;
    private final BrakeVerdict verdict;
    private final ElectricBrake brake;
    private final Powertrain powertrain;
    private final RoadLoad load;
    private final List<RegenOvershoot> surges;
    private final PackState full;
    private final PackState empty;
    private final List<Finding> findings = new ArrayList<>();

    BrakeReview(
            Build build,
            Limits limits,
            Operation operation,
            BrakeVerdict verdict,
            List<RegenOvershoot> surges) {
        this.surges = surges;
        this.verdict = verdict;
        this.build = build;
        this.limits = limits;
        this.operation = operation;
        this.brake = operation.brake();
        this.powertrain = brake.powertrain();
        this.load = RoadLoad.of(build);
        BatteryModel model = limits.battery();
        this.full = PackState.of(model, build.use().chargeFrom(), build.battery().temperatureC());
        this.empty = PackState.of(model, build.use().chargeTo(), build.battery().temperatureC());
    }

    List<Finding> findings() {
        fade();
        crossover();
        end();
        overshoot();
        weakness();
        bothBrakes();
        lighterAxle();
        wetGrip();
        slope();
        if (build.vehicle().frictionBrake().isEmpty()) {
            findings.add(Finding.of(Topic.ONLY_BRAKE, Signal.CAUTION).build());
        }
        if (build.battery().isGuarded()) {
            busRise();
        }
        forcedReturn();
        return findings;
    }

    private void fade() {
        double speed = brake.settled(full).fadeSpeed(full);
        if (speed < operation.topSpeed()) {
            findings.add(
                    Finding.of(Topic.BRAKE_FADES, Signal.CAUTION)
                            .about(LimitId.MOTOR_BRAKE_CURRENT)
                            .valued(
                                    motorCurrent(operation.topSpeed()),
                                    brake.motorCurrent(),
                                    Unit.AMPERE)
                            .atSpeed(speed)
                            .atCharge(full.charge())
                            .telling(
                                    brake.isHeldByTaper(full)
                                            ? FindingDetail.HeldBack.HIGH_VOLTAGE_TAPER
                                            : FindingDetail.HeldBack.PACK_LIMIT)
                            .build());
        }
    }

    private void crossover() {
        double speed = powertrain.crossoverSpeed(brake.motorCurrent());
        if (speed > brake.endsBelow()) {
            findings.add(Finding.of(Topic.BRAKE_DRAWS_POWER, Signal.NOTICE).atSpeed(speed).build());
        }
    }

    /** What outlasts a delay that is known bears on the verdict, and is told by its check. */
    private void overshoot() {
        for (RegenOvershoot each : surges) {
            if (!each.opens()) {
                findings.add(
                        Finding.of(Topic.REGEN_OVERSHOOT, Signal.CAUTION)
                                .about(LimitId.MOTOR_BRAKE_CURRENT)
                                .against(each.trip())
                                .ofPack(each.pack())
                                .valued(each.current(), each.permitted(), Unit.AMPERE)
                                .atCharge(each.charge())
                                .atSpeed(each.speed())
                                .atTemperature(each.cellsC())
                                .telling(new FindingDetail.Surge(each))
                                .build());
            }
        }
    }

    /** Below it the vehicle coasts: how steep a descent then still ends in a standstill. */
    private void end() {
        double speed = brake.endsBelow();
        if (!(speed > 0.0)) {
            return;
        }
        boolean hasFriction = build.vehicle().frictionBrake().isPresent();
        findings.add(
                Finding.of(Topic.BRAKE_ENDS, hasFriction ? Signal.CAUTION : Signal.WARNING)
                        .valued(
                                (powertrain.brakeForce(0.0, speed)
                                                + load.force(speed, 0.0, 0.0)
                                                + frictionForce())
                                        / build.inertia(),
                                Unit.METRE_PER_SECOND_SQUARED)
                        .atSpeed(speed)
                        .build());
    }

    private void weakness() {
        if (verdict.word() == BrakeVerdict.Word.NONE) {
            findings.add(
                    Finding.of(Topic.BRAKE_TAKEN_AWAY, ConstraintId.REMAINING_BRAKE.signal())
                            .against(ConstraintId.REMAINING_BRAKE)
                            .valued(verdict.left(), verdict.least(), Unit.METRE_PER_SECOND_SQUARED)
                            .atSpeed(verdict.speed())
                            .atCharge(verdict.charge())
                            .atTemperature(verdict.cellsC())
                            .build());
        }
        if (verdict.deceleration() < verdict.wanted()) {
            findings.add(
                    Finding.of(Topic.BRAKE_WEAK, ConstraintId.WANTED_DECELERATION.signal())
                            .valued(
                                    verdict.deceleration(),
                                    verdict.wanted(),
                                    Unit.METRE_PER_SECOND_SQUARED)
                            .atSpeed(verdict.speed())
                            .atCharge(verdict.charge())
                            .build());
        }
    }

    /**
     * What both brakes reach together at the highest speed, held against what forms the limit of
     * the electric brake alone. The friction brake is the rider's to dose, so this is no verdict.
     */
    private void bothBrakes() {
        if (build.vehicle().frictionBrake().isEmpty()) {
            return;
        }
        double speed = operation.topSpeed();
        double road = load.force(speed, 0.0, 0.0);
        double asked = powertrain.brakeForce(brake.motorCurrentAt(speed), speed) + frictionForce();
        limits.motorBrake().constraints().stream()
                .filter(each -> FELT.contains(each.id()))
                .min(Comparator.comparingDouble(Constraint::limit))
                .ifPresent(
                        each -> {
                            double borne = powertrain.brakeForce(each.limit(), speed);
                            if (asked > borne) {
                                findings.add(
                                        Finding.of(Topic.BOTH_BRAKES_HARD, Signal.CAUTION)
                                                .against(each.id())
                                                .valued(
                                                        (asked + road) / build.inertia(),
                                                        (borne + road) / build.inertia(),
                                                        Unit.METRE_PER_SECOND_SQUARED)
                                                .build());
                            }
                        });
    }

    /** The verdict is about a dry road; what a wet one bears is told beside it. */
    private void wetGrip() {
        Limits wet = Limits.of(build.onWetRoad());
        double dry = gripBound(limits);
        double bound = gripBound(wet);
        if (bound < dry && Severity.isExceeded(brake.motorCurrent(), bound)) {
            findings.add(
                    Finding.of(Topic.WET_GRIP, Signal.CAUTION)
                            .about(LimitId.MOTOR_BRAKE_CURRENT)
                            .valued(brake.motorCurrent(), bound, Unit.AMPERE)
                            .build());
        }
    }

    private static double gripBound(Limits limits) {
        return limits.motorBrake().constraints().stream()
                .filter(each -> each.id() == ConstraintId.GRIP)
                .mapToDouble(Constraint::limit)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Motors on both axles that all brake alike make the lighter axle slide first. */
    private void lighterAxle() {
        if (build.vehicle().axles().driven() != DrivenAxle.BOTH) {
            return;
        }
        double slides =
                Gravity.STANDARD
                        * new LoadTransfer(build.vehicle().axles())
                                .evenBrakingGrip(build.vehicle().grip());
        double speed = operation.topSpeed();
        double asked = powertrain.brakeForce(brake.motorCurrentAt(speed), speed) / build.mass();
        if (asked > slides) {
            findings.add(
                    Finding.of(Topic.LIGHTER_AXLE_SLIDES, Signal.CAUTION)
                            .about(LimitId.MOTOR_BRAKE_CURRENT)
                            .valued(asked, slides, Unit.METRE_PER_SECOND_SQUARED)
                            .build());
        }
    }

    private void slope() {
        double speed = build.use().speedMax();
        double pull = -load.force(speed, -build.use().slope(), 0.0);
        double held = brakeForce(speed);
        if (pull > held) {
            findings.add(
                    Finding.of(
                                    Topic.SLOPE_NOT_HELD,
                                    build.vehicle().frictionBrake().isPresent()
                                            ? Signal.CAUTION
                                            : Signal.WARNING)
                            .valued(held, pull, Unit.NEWTON)
                            .atSpeed(speed)
                            .atCharge(full.charge())
                            .build());
        }
    }

    private void busRise() {
        double speed = operation.topSpeed();
        double power = powertrain.returnedPower(motorCurrent(speed), speed);
        if (!(power > LEAST_RETURN)) {
            return;
        }
        if (build.controllers().busCapacitance().isEmpty()) {
            findings.add(Finding.of(Topic.BUS_CAPACITANCE_UNKNOWN, Signal.NOTICE).build());
            return;
        }
        double capacitance =
                build.controllers().count() * build.controllers().busCapacitance().getAsDouble();
        double time =
                BusRise.time(
                        capacitance,
                        full.terminalVoltage(full.currentInto(power)),
                        build.controllers().voltageRating(),
                        power);
        findings.add(
                Finding.of(Topic.BUS_RISE, Signal.CAUTION)
                        .valued(time, Unit.SECOND)
                        .atSpeed(speed)
                        .atCharge(full.charge())
                        .build());
    }

    private void forcedReturn() {
        double speed = powertrain.speed(empty.voltage() / powertrain.motor().voltageConstant());
        if (speed < operation.topSpeed()) {
            findings.add(
                    Finding.of(Topic.FORCED_RETURN, Signal.CAUTION)
                            .about(LimitId.SPEED_CAP)
                            .atSpeed(speed)
                            .atCharge(empty.charge())
                            .build());
        }
    }

    private double motorCurrent(double speed) {
        return powertrain.limitedBrakeCurrent(
                brake.motorCurrentAt(speed),
                speed,
                full.powerReturnedBy(brake.settledPackLimit(full)));
    }

    private double brakeForce(double speed) {
        return powertrain.brakeForce(motorCurrent(speed), speed);
    }

    private double frictionForce() {
        return FrictionBrake.force(build, build.vehicle().grip(), 0.0);
    }
}
