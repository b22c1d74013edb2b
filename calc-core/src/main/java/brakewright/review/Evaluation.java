package brakewright.review;

import brakewright.battery.BatteryModel;
import brakewright.limit.Constraint;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limit;
import brakewright.limit.Limits;
import brakewright.limit.PackConstraint;
import brakewright.limit.PackLimit;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Taper;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The verdict on a vehicle in numbers, without the words: for comparing, searching and sweeping,
 * where thousands are asked for.
 *
 * <p>Every check that bears on the verdict compares a value with its limit. Its severity is {@code
 * (value − limit)/max(value, limit)}: from −1, nothing asked of it, over 0, on the limit, to 1,
 * where nothing is permitted. The severity of a vehicle is that of its worst check, over the charge
 * states in use and at the pack's own, the coldest and the warmest temperature. It is a continuous
 * function of the inputs, positive exactly where the verdict is not {@code within-limits}.
 *
 * @param outcome the verdict in a word, the same as that of {@link Review}
 * @param severity of the worst check [1], from −1 to 1
 * @param worst which check that is
 * @param pack which of several packs it is about, from 1; 0 where it is about the whole
 * @param charge the charge state where it is worst; empty where it does not depend on it [1]
 * @param safeCharge up to which braking in full or in part is safe for the packs; 0 where it is at
 *     no charge in use [1]
 */
public record Evaluation(
        Verdict.Outcome outcome,
        double severity,
        ConstraintId worst,
        int pack,
        OptionalDouble charge,
        double safeCharge) {

    /** Some thousand times the rounding of one number [1]. */
    private static final double ROUNDING = 1e-12;

    /**
     * Evaluates a vehicle.
     *
     * @param build the vehicle with its settings
     * @return the evaluation
     */
    public static Evaluation of(Build build) {
        Limits limits = Limits.of(build);
        return of(build, limits, Operation.of(build, limits));
    }

    /**
     * Evaluates a vehicle whose limits are known.
     *
     * @param build the vehicle
     * @param limits its limits
     * @param operation its settings in effect
     * @return the evaluation
     */
    public static Evaluation of(Build build, Limits limits, Operation operation) {
        return new Work(build, limits, operation).evaluate();
    }

    /**
     * Compares a value with its limit.
     *
     * @param value what is asked, not negative
     * @param limit what is permitted, not negative; may be infinite
     * @return the severity [1]
     */
    static double severity(double value, double limit) {
        if (Double.isInfinite(limit)) {
            return -1.0;
        }
        double greater = Math.max(value, limit);
        return greater == 0.0 ? 0.0 : excess(value, limit) / greater;
    }

    /**
     * Returns how far a value exceeds its limit; what differs by rounding alone is equal.
     *
     * @param value what is asked, not negative
     * @param limit what is permitted, not negative; may be infinite
     * @return value less limit
     */
    static double excess(double value, double limit) {
        double excess = value - limit;
        return Math.abs(excess) <= ROUNDING * value ? 0.0 : excess;
    }

    private static final class Work {

        private final Build build;
        private final Limits limits;
        private final Operation operation;
        private final BatteryModel model;
        private final ChargeSearch search;
        private final double[] charges;
        private final double nominal;

        private double severity = -1.0;
        private ConstraintId worst = ConstraintId.CELL_CHARGE_RATING;
        private int pack;
        private double charge = Double.NaN;
        private boolean outside;
        private double safeCharge;

        Work(Build build, Limits limits, Operation operation) {
            this.build = build;
            this.limits = limits;
            this.operation = operation.trusted(limits);
            this.model = new BatteryModel(build.battery());
            this.search = ChargeSearch.of(build, model, limits, this.operation);
            this.charges = search.charges();
            this.nominal = build.battery().temperatureC();
            this.safeCharge = build.use().chargeFrom();
        }

        Evaluation evaluate() {
            for (double each : build.cellTemperatures()) {
                pack(limits.packRegen(), true, operation.brake().packCurrent(), each);
                pack(limits.packDischarge(), false, operation.drive().packCurrent(), each);
            }
            var settings = build.settings();
            setting(limits.motorDrive(), settings.motorDriveCurrent());
            setting(limits.motorBrake(), settings.motorBrakeCurrent());
            setting(limits.speedCap(), settings.speedCap());
            restingVoltage();
            remainingBrake();
            for (double each : build.cellTemperatures()) {
                if (each <= nominal) {
                    sag(each);
                }
            }
            return new Evaluation(
                    outside
                            ? Verdict.Outcome.OUTSIDE_LIMITS
                            : severity > 0.0
                                    ? Verdict.Outcome.CONDITIONAL
                                    : Verdict.Outcome.WITHIN_LIMITS,
                    severity,
                    worst,
                    pack,
                    Double.isNaN(charge) ? OptionalDouble.empty() : OptionalDouble.of(charge),
                    safeCharge);
        }

        private void note(double found, ConstraintId id, int ofPack, double at) {
            if (found > severity) {
                severity = found;
                worst = id;
                pack = ofPack;
                charge = at;
            }
        }

        private void pack(PackLimit limit, boolean returning, double set, double cellsC) {
            double[] flows = new double[charges.length];
            for (int i = 0; i < charges.length; i++) {
                flows[i] = flowing(returning, charges[i], cellsC);
            }
            double[] least = new double[charges.length];
            Arrays.fill(least, Double.POSITIVE_INFINITY);
            for (PackConstraint constraint : limit.constraints()) {
                if (constraint.variesWithCharge()) {
                    overCharge(constraint, returning, cellsC, flows, least);
                } else {
                    rating(constraint, set, cellsC);
                    double permitted = constraint.limitAt(0.5, cellsC);
                    for (int i = 0; i < least.length; i++) {
                        least[i] = Math.min(least[i], permitted);
                    }
                }
            }
            if (returning) {
                safeCharge = Math.min(safeCharge, safeCharge(limit, cellsC, flows, least));
            }
        }

        private void rating(PackConstraint constraint, double set, double cellsC) {
            boolean window = constraint.id() == ConstraintId.TEMPERATURE_WINDOW;
            if (cellsC != nominal && !window) {
                return;
            }
            double found = severity(set, constraint.limitAt(0.5, cellsC));
            note(found, constraint.id(), constraint.pack(), Double.NaN);
            outside |= found > 0.0 && cellsC == nominal;
        }

        private void overCharge(
                PackConstraint constraint,
                boolean returning,
                double cellsC,
                double[] flows,
                double[] least) {
            int best = returning ? 0 : charges.length - 1;
            for (int i = 0; i < charges.length; i++) {
                double permitted = constraint.limitAt(charges[i], cellsC);
                least[i] = Math.min(least[i], permitted);
                double found = severity(flows[i], permitted);
                note(found, constraint.id(), constraint.pack(), charges[i]);
                if (i == best && found > 0.0) {
                    outside |= cellsC >= nominal || exceedsAtNominal(constraint, returning);
                }
            }
        }

        private boolean exceedsAtNominal(PackConstraint constraint, boolean returning) {
            double best = returning ? build.use().chargeTo() : build.use().chargeFrom();
            return excess(flowing(returning, best, nominal), constraint.limitAt(best, nominal))
                    > 0.0;
        }

        private double safeCharge(PackLimit limit, double cellsC, double[] flows, double[] least) {
            for (int i = 0; i < charges.length; i++) {
                if (excess(flows[i], least[i]) > 0.0) {
                    return i == 0
                            ? 0.0
                            : search.crossing(
                                    at ->
                                            excess(
                                                    flowing(true, at, cellsC),
                                                    limit.valueAt(at, cellsC)),
                                    charges[i - 1],
                                    charges[i]);
                }
            }
            return build.use().chargeFrom();
        }

        private double flowing(boolean returning, double at, double cellsC) {
            PackState state = PackState.of(model, at, cellsC);
            return returning
                    ? operation.brake().greatestReturn(operation.topSpeed(), state)
                    : operation.drive().greatestDraw(operation.topSpeed(), state);
        }

        private void setting(Limit limit, OptionalDouble set) {
            if (set.isEmpty()) {
                return;
            }
            List<Constraint> constraints = limit.constraints();
            for (Constraint constraint : constraints) {
                double found = severity(set.getAsDouble(), constraint.limit());
                note(found, constraint.id(), constraint.pack(), Double.NaN);
                outside |= found > 0.0;
            }
        }

        private void restingVoltage() {
            double full = model.openCircuitVoltage(build.use().chargeFrom());
            double found = severity(full, build.controllers().voltageRating());
            note(found, ConstraintId.CONTROLLER_VOLTAGE_RATING, 0, build.use().chargeFrom());
            outside |= found > 0.0;
        }

        /** With the only brake electric, the taper must leave some of it to the fullest pack. */
        private void remainingBrake() {
            Optional<Taper> taper = build.settings().highVoltageTaper();
            if (taper.isPresent() && build.vehicle().frictionBrake().isEmpty()) {
                double from = build.use().chargeFrom();
                double to = build.use().chargeTo();
                double ends = taper.get().ends();
                note(
                        severity(model.openCircuitVoltage(from), ends),
                        ConstraintId.REMAINING_BRAKE,
                        0,
                        from);
                outside |= excess(model.openCircuitVoltage(to), ends) > 0.0;
            }
        }

        private void sag(double cellsC) {
            Sag.Meetings pull =
                    new Sag.Meetings(build, operation, Sag.hardPull(build, operation, cellsC));
            for (double at : pull.charges()) {
                double found = pull.tripSeverity(at);
                note(found, ConstraintId.PROTECTION_UNDERVOLTAGE_TRIP, 0, at);
                outside |= found > 0.0 && at == build.use().chargeFrom();
            }
        }
    }
}
