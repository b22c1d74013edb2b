package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.limit.LimitId;
import brakewright.powertrain.BusRise;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.List;

/** Looks at what the electric brake does over speed, and what happens without it. */
final class BrakeReview {

    private static final int SPEED_STEPS = 40;

    /** Assumption: our own choice; below a tenth of the top speed there is little left to stop. */
    private static final int FIRST_STEP = 4;

    private final Build build;
    private final Operation operation;
    private final ElectricBrake brake;
    private final Powertrain powertrain;
    private final RoadLoad load;
    private final PackState full;
    private final PackState empty;
    private final List<Finding> findings = new ArrayList<>();

    BrakeReview(Build build, Operation operation) {
        this.build = build;
        this.operation = operation;
        this.brake = operation.brake();
        this.powertrain = brake.powertrain();
        this.load = RoadLoad.of(build);
        BatteryModel model = new BatteryModel(build.battery());
        this.full = PackState.of(model, build.use().chargeFrom(), build.battery().temperatureC());
        this.empty = PackState.of(model, build.use().chargeTo(), build.battery().temperatureC());
    }

    List<Finding> findings() {
        fade();
        crossover();
        weakness();
        slope();
        if (build.vehicle().frictionBrake().isEmpty()) {
            findings.add(Finding.of(Topic.ONLY_BRAKE, Signal.CAUTION).build());
        }
        busRise();
        forcedReturn();
        return findings;
    }

    private void fade() {
        double speed =
                powertrain.fadeSpeed(
                        brake.motorCurrent(), full.powerReturnedBy(brake.settledPackLimit(full)));
        if (speed < operation.topSpeed()) {
            findings.add(
                    Finding.of(Topic.BRAKE_FADES, Signal.CAUTION)
                            .about(LimitId.MOTOR_BRAKE_CURRENT)
                            .valued(motorCurrent(operation.topSpeed()), brake.motorCurrent(), "A")
                            .atSpeed(speed)
                            .atCharge(full.charge())
                            .build());
        }
    }

    private void crossover() {
        double speed = powertrain.crossoverSpeed(brake.motorCurrent());
        if (speed > 0.0) {
            findings.add(Finding.of(Topic.BRAKE_DRAWS_POWER, Signal.NOTICE).atSpeed(speed).build());
        }
    }

    /** The least deceleration of all brakes on level road, at the fullest pack in use. */
    private void weakness() {
        double least = Double.POSITIVE_INFINITY;
        double where = 0.0;
        for (int step = FIRST_STEP; step <= SPEED_STEPS; step++) {
            double speed = operation.topSpeed() * step / SPEED_STEPS;
            double deceleration =
                    (brakeForce(speed) + frictionForce() + load.force(speed, 0.0, 0.0))
                            / build.inertia();
            if (deceleration < least) {
                least = deceleration;
                where = speed;
            }
        }
        if (least < build.criteria().decelerationMin()) {
            findings.add(
                    Finding.of(Topic.BRAKE_WEAK, Signal.WARNING)
                            .valued(least, build.criteria().decelerationMin(), "m/s2")
                            .atSpeed(where)
                            .atCharge(full.charge())
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
                            .valued(held, pull, "N")
                            .atSpeed(speed)
                            .atCharge(full.charge())
                            .build());
        }
    }

    private void busRise() {
        double speed = operation.topSpeed();
        double power = powertrain.returnedPower(motorCurrent(speed), speed);
        if (power <= 0.0) {
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
                        .valued(time, "s")
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
                brake.motorCurrent(), speed, full.powerReturnedBy(brake.settledPackLimit(full)));
    }

    private double brakeForce(double speed) {
        return powertrain.brakeForce(motorCurrent(speed), speed);
    }

    private double frictionForce() {
        return build.mass() * build.vehicle().frictionBrake().orElse(0.0);
    }
}
