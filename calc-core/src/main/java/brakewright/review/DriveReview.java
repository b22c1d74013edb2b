package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.driving.Climb;
import brakewright.driving.Cruise;
import brakewright.driving.Road;
import brakewright.heat.PackHeat;
import brakewright.limit.LimitId;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Stance;
import brakewright.spec.Unit;
import java.util.ArrayList;
import java.util.List;

/** Looks at what the drive is asked to do: to climb, to go far, to run steadily at speed. */
final class DriveReview {

    private final Build build;
    private final Operation operation;
    private final List<Finding> findings = new ArrayList<>();

    DriveReview(Build build, Operation operation) {
        this.build = build;
        this.operation = operation;
    }

    List<Finding> findings() {
        climb();
        range();
        cells();
        if (build.rider().stance() != Stance.SEATED) {
            findings.add(
                    Finding.of(Topic.SPEED_STABILITY, Signal.CAUTION)
                            .atSpeed(operation.topSpeed())
                            .build());
        }
        return findings;
    }

    private void climb() {
        PackState full =
                PackState.of(
                        new BatteryModel(build.battery()),
                        build.use().chargeFrom(),
                        build.battery().temperatureC());
        Climb climb = Climb.of(build, operation.drive(), full);
        if (climb.steepest() < build.criteria().climbMin()) {
            findings.add(
                    Finding.of(Topic.CLIMB_SHORT, Signal.CAUTION)
                            .valued(climb.steepest(), build.criteria().climbMin(), Unit.RATIO)
                            .atCharge(full.charge())
                            .build());
        }
        if (climb.lastsUp().isPresent() && climb.lastsUp().getAsDouble() < climb.timeUp()) {
            findings.add(
                    Finding.of(Topic.CLIMB_OVERHEATS, Signal.WARNING)
                            .valued(climb.lastsUp().getAsDouble(), climb.timeUp(), Unit.SECOND)
                            .atSpeed(climb.speedUp())
                            .build());
        }
    }

    /** As is to be expected, heat leaving the cells as far as that is known. */
    private void cells() {
        double draw = operation.drive().packCurrent();
        if (draw <= 0.0) {
            return;
        }
        PackHeat.atCurrent(build, draw)
                .filter(heat -> heat.stoppedAfter().isPresent())
                .ifPresent(
                        heat ->
                                findings.add(
                                        Finding.of(Topic.CELLS_OVERHEAT, Signal.CAUTION)
                                                .about(LimitId.PACK_DISCHARGE_CURRENT)
                                                .valued(draw, Unit.AMPERE)
                                                .atTemperature(heat.dischargeLimitC())
                                                .build()));
    }

    private void range() {
        if (build.criteria().rangeMin().isEmpty()) {
            return;
        }
        double asked = build.criteria().rangeMin().getAsDouble();
        double speed = build.use().riding().cruiseSpeed();
        Road road = Road.ofUse(build);
        double reached = Cruise.of(build, operation.drive(), road, speed).distance();
        if (reached < asked) {
            findings.add(
                    Finding.of(Topic.RANGE_SHORT, Signal.CAUTION)
                            .valued(reached, asked, Unit.METRE)
                            .atSpeed(speed)
                            .build());
        }
    }
}
