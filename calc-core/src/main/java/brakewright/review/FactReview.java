package brakewright.review;

import brakewright.limit.LimitId;
import brakewright.limit.MotorHeatBalance;
import brakewright.limit.Signal;
import brakewright.machine.WindingHeat;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.Climate;
import brakewright.spec.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Looks at the winding's heat, and at facts that are missing. */
final class FactReview {

    private final Build build;
    private final Operation operation;
    private final List<Finding> findings = new ArrayList<>();

    FactReview(Build build, Operation operation) {
        this.build = build;
        this.operation = operation;
    }

    List<Finding> findings() {
        if (!build.battery().isProtectionKnown()) {
            findings.add(Finding.of(Topic.PROTECTION_UNKNOWN, Signal.CAUTION).build());
        }
        if (!build.battery().isWiringKnown()) {
            findings.add(Finding.of(Topic.WIRING_UNKNOWN, Signal.CAUTION).build());
        }
        double own = build.battery().temperatureC();
        Climate climate = build.use().climate();
        double nearest = Math.max(climate.coldestPackC(), Math.min(climate.warmestPackC(), own));
        if (own != nearest) {
            findings.add(
                    Finding.of(Topic.CELLS_BEYOND_USE, Signal.NOTICE)
                            .valued(own, nearest, Unit.CELSIUS)
                            .build());
        }
        Optional<WindingHeat> heat = MotorHeatBalance.of(build);
        if (heat.isEmpty()) {
            findings.add(Finding.of(Topic.MOTOR_HEAT_UNKNOWN, Signal.CAUTION).build());
        } else {
            review(heat.get(), operation.drive().motorCurrent(), LimitId.MOTOR_DRIVE_CURRENT);
            review(heat.get(), operation.brake().motorCurrent(), LimitId.MOTOR_BRAKE_CURRENT);
        }
        return findings;
    }

    private void review(WindingHeat heat, double current, LimitId subject) {
        OptionalDouble time = heat.timeToLimit(heat.cold(), current);
        if (heat.runsAway(current)) {
            findings.add(
                    Finding.of(Topic.WINDING_RUNS_AWAY, Signal.CAUTION)
                            .about(subject)
                            .valued(current, heat.continuousCurrent(), Unit.AMPERE)
                            .build());
        }
        if (time.isPresent()) {
            findings.add(
                    Finding.of(Topic.WINDING_TIME, Signal.NOTICE)
                            .about(subject)
                            .valued(time.getAsDouble(), Unit.SECOND)
                            .build());
        }
    }
}
