package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.limit.PackConstraint;
import brakewright.limit.PackLimit;
import brakewright.numeric.Root;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.ChargingWindow;
import brakewright.spec.Use;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * Holds the current that the settings really send into and draw from the pack against every
 * constraint, over the charge states in use, at the pack's temperature and at the coldest and
 * warmest it will meet.
 */
final class PackReview {

    private static final double TEMPERATURE_ACCURACY = 1e-6;

    private final Build build;
    private final Limits limits;
    private final Operation operation;
    private final BatteryModel model;
    private final ChargeSearch search;
    private final Map<Double, Map<Double, Double>> returned = new HashMap<>();
    private final Map<Double, Map<Double, Double>> drawn = new HashMap<>();
    private final List<Finding> findings = new ArrayList<>();

    PackReview(Build build, Limits limits, Operation operation) {
        this.build = build;
        this.limits = limits;
        this.operation = operation;
        this.model = new BatteryModel(build.battery());
        this.search = ChargeSearch.of(build, model, limits, operation);
    }

    List<Finding> findings() {
        for (double cellsC : build.cellTemperatures()) {
            reviewAt(cellsC);
        }
        return findings;
    }

    private void reviewAt(double temperatureC) {
        review(
                limits.packRegen(),
                Topic.PACK_RETURN_OVER,
                operation.brake().packCurrent(),
                temperatureC);
        review(
                limits.packDischarge(),
                Topic.PACK_DRAW_OVER,
                operation.drive().packCurrent(),
                temperatureC);
    }

    private void review(PackLimit limit, Topic topic, double set, double temperatureC) {
        for (PackConstraint constraint : limit.constraints()) {
            if (constraint.variesWithCharge()) {
                reviewOverCharge(constraint, topic, temperatureC);
            } else {
                reviewStatic(constraint, limit, topic, set, temperatureC);
            }
        }
    }

    /** A plain rating is held against the setting itself; only the temperature window can vary. */
    private void reviewStatic(
            PackConstraint constraint,
            PackLimit limit,
            Topic topic,
            double set,
            double temperatureC) {
        boolean nominal = temperatureC == build.battery().temperatureC();
        if (!nominal && constraint.id() != ConstraintId.TEMPERATURE_WINDOW) {
            return;
        }
        double permitted = constraint.limitAt(0.5, temperatureC);
        if (Evaluation.excess(set, permitted) <= 0.0
                || !nominal && isNoWorseThanNominal(constraint, set, permitted)) {
            return;
        }
        Finding.Builder finding =
                Finding.of(topic, signalOf(constraint.id()))
                        .about(limit.id())
                        .against(constraint.id())
                        .ofPack(constraint.pack())
                        .valued(set, permitted, "A");
        if (nominal) {
            findings.add(finding.unless(new Condition.Never()).build());
        } else {
            findings.add(
                    finding.atTemperature(temperatureC)
                            .unless(temperatureCondition(constraint, topic, set, temperatureC))
                            .build());
        }
    }

    /** What is exceeded as much at the pack's own temperature is told there. */
    private boolean isNoWorseThanNominal(PackConstraint constraint, double set, double permitted) {
        double there = constraint.limitAt(0.5, build.battery().temperatureC());
        return Evaluation.excess(set, there) > 0.0 && permitted >= there;
    }

    private Condition temperatureCondition(
            PackConstraint constraint, Topic topic, double set, double temperatureC) {
        Cell cell = build.battery().packs().get(Math.max(0, constraint.pack() - 1)).cell();
        boolean returned = topic == Topic.PACK_RETURN_OVER;
        Condition.Excess excess =
                new Condition.Excess(
                        returned, set, constraint.limitAt(0.5, temperatureC), temperatureC);
        if (!returned) {
            return temperatureC < cell.discharging().lowestC()
                    ? new Condition.CellsFrom(cell.discharging().lowestC(), excess)
                    : new Condition.CellsUpTo(cell.discharging().highestC(), excess);
        }
        ChargingWindow window = cell.charging();
        if (temperatureC > window.highestC()) {
            return new Condition.CellsUpTo(window.highestC(), excess);
        }
        boolean isBorneInTheBand = set <= constraint.limitAt(0.5, window.lowestC());
        return new Condition.CellsFrom(
                isBorneInTheBand ? window.lowestC() : window.lowestC() + window.coldBandK(),
                excess);
    }

    /**
     * A bound that depends on the charge state is held against what really flows: at most the
     * setting, and at most what the motors send or draw at the highest speed.
     */
    private void reviewOverCharge(PackConstraint constraint, Topic topic, double temperatureC) {
        boolean returning = topic == Topic.PACK_RETURN_OVER;
        Use use = build.use();
        double best = returning ? use.chargeTo() : use.chargeFrom();
        DoubleUnaryOperator excess = excess(constraint, returning, temperatureC);
        OptionalDouble bound = search.firstExcess(excess, returning);
        if (bound.isEmpty()
                || isMilderThanNominal(constraint, bound.getAsDouble(), returning, temperatureC)) {
            return;
        }
        double worst = search.worst(excess);
        double flows = flowing(returning, worst, temperatureC);
        double permitted = constraint.limitAt(worst, temperatureC);
        Finding.Builder finding =
                Finding.of(topic, signalOf(constraint.id()))
                        .about(returning ? limits.packRegen().id() : limits.packDischarge().id())
                        .against(constraint.id())
                        .ofPack(constraint.pack())
                        .valued(flows, permitted, "A")
                        .atCharge(bound.getAsDouble())
                        .worstAt(worst)
                        .atTemperature(temperatureC);
        if (returning) {
            finding.atSpeed(
                    operation
                            .brake()
                            .speedReturning(permitted, PackState.of(model, worst, temperatureC)));
        }
        Condition condition =
                bound.getAsDouble() == best
                        ? everywhereCondition(constraint, returning, temperatureC)
                        : returning
                                ? new Condition.ChargeBelow(
                                        bound.getAsDouble(),
                                        worst,
                                        finding.build().speed(),
                                        temperatureC)
                                : new Condition.ChargeAbove(
                                        bound.getAsDouble(), worst, temperatureC);
        findings.add(finding.unless(condition).build());
    }

    /** What flows beyond what a constraint permits, over the charge state. */
    private DoubleUnaryOperator excess(
            PackConstraint constraint, boolean returning, double temperatureC) {
        return charge ->
                Evaluation.excess(
                        flowing(returning, charge, temperatureC),
                        constraint.limitAt(charge, temperatureC));
    }

    /** Colder and warmer packs are worth a finding of their own only where they are worse. */
    private boolean isMilderThanNominal(
            PackConstraint constraint, double bound, boolean returning, double temperatureC) {
        double nominal = build.battery().temperatureC();
        if (temperatureC == nominal) {
            return false;
        }
        OptionalDouble there =
                search.firstExcess(excess(constraint, returning, nominal), returning);
        return there.isPresent()
                && (returning ? there.getAsDouble() <= bound : there.getAsDouble() >= bound);
    }

    /** What is exceeded at every charge state may still hold at the pack's own temperature. */
    private Condition everywhereCondition(
            PackConstraint constraint, boolean returning, double temperatureC) {
        double nominal = build.battery().temperatureC();
        double best = returning ? build.use().chargeTo() : build.use().chargeFrom();
        DoubleUnaryOperator excess =
                temperature ->
                        Evaluation.excess(
                                flowing(returning, best, temperature),
                                constraint.limitAt(best, temperature));
        if (temperatureC >= nominal || excess.applyAsDouble(nominal) > 0.0) {
            return new Condition.Never();
        }
        Condition.Excess there =
                new Condition.Excess(
                        returning,
                        flowing(returning, best, temperatureC),
                        constraint.limitAt(best, temperatureC),
                        temperatureC);
        return new Condition.CellsFrom(
                excess.applyAsDouble(temperatureC) <= 0.0
                        ? nominal
                        : Root.between(excess, temperatureC, nominal, TEMPERATURE_ACCURACY),
                there);
    }

    /** Every constraint asks for the same flows, so they are kept by temperature and charge. */
    private double flowing(boolean returning, double charge, double temperatureC) {
        return (returning ? returned : drawn)
                .computeIfAbsent(temperatureC, cells -> new HashMap<>())
                .computeIfAbsent(charge, state -> worked(returning, state, temperatureC));
    }

    private double worked(boolean returning, double charge, double temperatureC) {
        PackState state = PackState.of(model, charge, temperatureC);
        return returning
                ? operation.brake().greatestReturn(operation.topSpeed(), state)
                : operation.drive().greatestDraw(operation.topSpeed(), state);
    }

    /** Where protection opens or a controller fails, braking vanishes. */
    private static Signal signalOf(ConstraintId id) {
        return switch (id) {
            case PROTECTION_CHARGE_TRIP,
                    PROTECTION_OVERVOLTAGE_TRIP,
                    PROTECTION_DISCHARGE_TRIP,
                    PROTECTION_UNDERVOLTAGE_TRIP,
                    CONTROLLER_VOLTAGE_RATING ->
                    Signal.DANGER;
            default -> Signal.WARNING;
        };
    }
}
