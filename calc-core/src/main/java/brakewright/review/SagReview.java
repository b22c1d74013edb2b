package brakewright.review;

import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.spec.Build;
import brakewright.spec.Taper;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Looks whether the protection would disconnect in a hard pull before the controller has faded the
 * drive: the vehicle then cuts dead, and the electric brake goes with it.
 */
final class SagReview {

    private final Build build;
    private final Limits limits;
    private final Operation operation;
    private final List<Finding> findings = new ArrayList<>();

    SagReview(Build build, Limits limits, Operation operation) {
        this.build = build;
        this.limits = limits;
        this.operation = operation;
    }

    List<Finding> findings() {
        double own = build.battery().temperatureC();
        double coldest = Arrays.stream(build.cellTemperatures()).min().orElseThrow();
        OptionalDouble atOwn = trips(own);
        OptionalDouble atColdest = trips(coldest);
        if (atColdest.orElse(-1.0) > atOwn.orElse(-1.0)) {
            report(atColdest.getAsDouble(), coldest);
        } else if (atOwn.isPresent()) {
            report(atOwn.getAsDouble(), own);
        }
        return findings;
    }

    private OptionalDouble trips(double cellsC) {
        return new Sag.Meetings(build, operation, Sag.hardPull(build, operation, cellsC))
                .charge(Sag.Event.PROTECTION_TRIP);
    }

    private void report(double charge, double cellsC) {
        double needed = limits.lowVoltageTaper().binding().limit();
        Finding.Builder finding =
                Finding.of(Topic.PROTECTION_BEFORE_TAPER, Signal.DANGER)
                        .about(LimitId.LOW_VOLTAGE_TAPER)
                        .against(ConstraintId.PROTECTION_UNDERVOLTAGE_TRIP)
                        .atCharge(charge)
                        .worstAt(build.use().chargeTo())
                        .atTemperature(cellsC)
                        .unless(
                                charge >= build.use().chargeFrom()
                                        ? new Condition.Never()
                                        : new Condition.ChargeAbove(
                                                charge, build.use().chargeTo(), cellsC));
        double set = operation.drive().taper().map(Taper::ends).orElse(Double.NaN);
        findings.add(
                Double.isNaN(set)
                        ? finding.held(needed, "V").build()
                        : finding.valued(set, needed, "V").build());
    }
}
