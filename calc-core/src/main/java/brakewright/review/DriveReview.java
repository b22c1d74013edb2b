package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.driving.Climb;
import brakewright.driving.Cruise;
import brakewright.driving.Road;
import brakewright.heat.PackHeat;
import brakewright.heat.TownRide;
import brakewright.heat.WarmRide;
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
        town();
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

    /** What a steady ride passes already is told by its check. */
    private void town() {
        if (operation.brake().motorCurrent() <= 0.0 || operation.brake().packCurrent() <= 0.0) {
            return;
        }
        TownRide.of(build, operation.drive(), operation.brake())
                .filter(town -> isTooWarm(town.heat()))
                .filter(
                        town ->
                                WarmRide.of(build, operation.drive())
                                        .filter(even -> isTooWarm(even.heat()))
                                        .isEmpty())
                .ifPresent(
                        town ->
                                findings.add(
                                        Finding.of(Topic.TOWN_WARMS_CELLS, Signal.CAUTION)
                                                .about(LimitId.PACK_REGEN_CURRENT)
                                                .valued(
                                                        town.heat().highestC(),
                                                        town.heat().chargeLimitC(),
                                                        Unit.CELSIUS)
                                                .atSpeed(town.speed())
                                                .atTemperature(town.heat().startC())
                                                .build()));
    }

    /** Not where it is stated to be so from the beginning, which is told by itself. */
    private static boolean isTooWarm(PackHeat heat) {
        return heat.startC() <= heat.chargeLimitC() && heat.highestC() > heat.chargeLimitC();
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
