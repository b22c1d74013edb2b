package brakewright.review;

import brakewright.battery.AlongCharge;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.limit.PackConstraint;
import brakewright.limit.PackLimit;
import brakewright.limit.RatingConstraint;
import brakewright.limit.Severity;
import brakewright.numeric.Accuracy;
import brakewright.numeric.Root;
import brakewright.operation.Operation;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Cell;
import brakewright.spec.ChargingWindow;
import brakewright.spec.Unit;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Holds what the settings send into and draw from the packs against every constraint, at their own,
 * the coldest and the warmest cell temperature.
 *
 * <p>A plain rating is held against the setting itself. A bound that depends on the charge state is
 * held against what really flows: at most the setting, and at most what the motors send or draw at
 * the highest speed.
 */
final class PackChecks {

    private final OverCharge vehicle;
    private final Build build;
    private final Limits limits;
    private final Operation operation;
    private final double nominal;
    private final AlongCharge takers;
    private final AlongCharge givers;
    private double safeCharge;

    PackChecks(OverCharge vehicle) {
        this.vehicle = vehicle;
        this.build = vehicle.build();
        this.limits = vehicle.limits();
        this.operation = vehicle.operation();
        this.nominal = build.battery().temperatureC();
        this.takers = vehicle.flows().takers();
        this.givers = vehicle.flows().givers();
        this.safeCharge = build.use().chargeFrom();
    }

    /** Adds what is returned; ratings bound the pack current that is set, or else what flows. */
    void addReturning(List<Check> checks, boolean holdsSetting) {
        for (int place = 0; place < build.cellTemperatures().length; place++) {
            new Side(true, holdsSetting, place).addTo(checks);
        }
    }

    /** Adds what is drawn, likewise. */
    void addDrawing(List<Check> checks, boolean holdsSetting) {
        for (int place = 0; place < build.cellTemperatures().length; place++) {
            new Side(false, holdsSetting, place).addTo(checks);
        }
    }

    /** Up to which braking in full or in part is safe; known once the checks are made [1]. */
    double safeCharge() {
        return safeCharge;
    }

    /** One direction of the current at one cell temperature. */
    private final class Side {

        private final boolean returning;
        private final boolean holdsSetting;
        private final double cellsC;
        private final PackLimit limit;
        private final Topic topic;
        private final double[] charges = vehicle.search().charges();
        private final double[] flows;
        private final double[] least = new double[charges.length];
        private final double[][] permitted;

        Side(boolean returning, boolean holdsSetting, int temperature) {
            this.returning = returning;
            this.holdsSetting = holdsSetting;
            this.cellsC = build.cellTemperatures()[temperature];
            this.flows =
                    returning
                            ? vehicle.flows().returned(temperature)
                            : vehicle.flows().drawn(temperature);
            this.limit = returning ? limits.packRegen() : limits.packDischarge();
            this.topic = returning ? Topic.PACK_RETURN_OVER : Topic.PACK_DRAW_OVER;
            List<PackConstraint> constraints = limit.constraints();
            this.permitted = new double[constraints.size()][];
            Arrays.fill(least, Double.POSITIVE_INFINITY);
            for (int k = 0; k < permitted.length; k++) {
                double[] own = constraints.get(k).limitsAt(returning ? takers : givers, cellsC);
                for (int i = 0; i < own.length; i++) {
                    least[i] = Math.min(least[i], own[i]);
                }
                permitted[k] = own;
            }
        }

        void addTo(List<Check> checks) {
            for (int k = 0; k < permitted.length; k++) {
                PackConstraint constraint = limit.constraints().get(k);
                if (constraint instanceof RatingConstraint rating) {
                    rating(rating, permitted[k][0]).ifPresent(checks::add);
                } else {
                    checks.add(overCharge(constraint, permitted[k]));
                }
            }
            if (returning) {
                safeCharge = Math.min(safeCharge, safe());
            }
        }

        private Held held(PackConstraint constraint) {
            return new Held(
                    topic, Optional.of(limit.id()), constraint.id(), constraint.pack(), cellsC);
        }

        /** Of the plain ratings only the temperature window changes with the temperature. */
        private Optional<Check> rating(RatingConstraint constraint, double rated) {
            double set = holdsSetting ? setting() : Arrays.stream(flows).max().orElseThrow();
            if (cellsC == nominal) {
                return Optional.of(PlainCheck.always(held(constraint), set, rated, Unit.AMPERE));
            }
            return constraint.id() == ConstraintId.TEMPERATURE_WINDOW
                    ? Optional.of(
                            PlainCheck.unless(
                                    () -> window(constraint, set, rated),
                                    held(constraint),
                                    set,
                                    rated,
                                    Unit.AMPERE))
                    : Optional.empty();
        }

        private double setting() {
            return returning ? operation.brake().packCurrent() : operation.drive().packCurrent();
        }

        private Condition window(RatingConstraint constraint, double set, double rated) {
            Cell cell = build.battery().pack(constraint.pack()).cell();
            Condition.Excess excess = new Condition.Excess(returning, set, rated, cellsC);
            if (!returning) {
                return cellsC < cell.discharging().lowestC()
                        ? new Condition.CellsFrom(cell.discharging().lowestC(), excess)
                        : new Condition.CellsUpTo(cell.discharging().highestC(), excess);
            }
            ChargingWindow window = cell.charging();
            if (cellsC > window.highestC()) {
                return new Condition.CellsUpTo(window.highestC(), excess);
            }
            boolean isBorneInTheBand = set <= constraint.limitAt(window.lowestC());
            return new Condition.CellsFrom(
                    isBorneInTheBand ? window.lowestC() : window.lowestC() + window.coldBandK(),
                    excess);
        }

        private Check overCharge(PackConstraint constraint, double[] permitted) {
            return new ChargeCheck(
                    held(constraint),
                    vehicle.search(),
                    flows,
                    permitted,
                    new ChargeCheck.Course(
                            charge -> flowing(charge, cellsC),
                            charge -> constraint.limitAt(charge, cellsC)),
                    returning ? ChargeCheck.Harm.FULL : ChargeCheck.Harm.EMPTY,
                    () -> isMendedByWarmth(constraint),
                    check -> tell(check, constraint));
        }

        private Finding tell(ChargeCheck check, PackConstraint constraint) {
            double worst = check.mostAt();
            Finding.Builder finding = check.told();
            if (returning) {
                finding.atSpeed(
                        operation
                                .brake()
                                .speedReturning(check.limit(), vehicle.pack(worst, cellsC)));
            }
            return finding.unless(condition(check, constraint, finding.build())).build();
        }

        private Condition condition(ChargeCheck check, PackConstraint constraint, Finding finding) {
            if (check.isNever()) {
                return new Condition.Never();
            }
            if (check.isEverywhere()) {
                return warmer(constraint);
            }
            return returning
                    ? new Condition.ChargeBelow(
                            check.begins(), check.mostAt(), finding.speed(), cellsC)
                    : new Condition.ChargeAbove(check.begins(), check.mostAt(), cellsC);
        }

        /** What cold cells exceed at every charge state may hold at the pack's own temperature. */
        private boolean isMendedByWarmth(PackConstraint constraint) {
            return cellsC < nominal && excessAtBest(constraint, nominal) <= 0.0;
        }

        private Condition warmer(PackConstraint constraint) {
            return new Condition.CellsFrom(
                    Root.between(
                            cells -> excessAtBest(constraint, cells),
                            cellsC,
                            nominal,
                            Accuracy.TOLD),
                    new Condition.Excess(
                            returning,
                            flowing(best(), cellsC),
                            constraint.limitAt(best(), cellsC),
                            cellsC));
        }

        private double excessAtBest(PackConstraint constraint, double cells) {
            return Severity.excess(flowing(best(), cells), constraint.limitAt(best(), cells));
        }

        /** The harmless end of the charge in use. */
        private double best() {
            return returning ? build.use().chargeTo() : build.use().chargeFrom();
        }

        private double safe() {
            return vehicle
                    .search()
                    .firstExcess(
                            flows,
                            least,
                            charge ->
                                    Severity.excess(
                                            flowing(charge, cellsC), limit.valueAt(charge, cellsC)),
                            true)
                    .stream()
                    .map(bound -> bound > charges[0] ? bound : 0.0)
                    .findFirst()
                    .orElse(build.use().chargeFrom());
        }

        private double flowing(double charge, double cells) {
            PackState state = vehicle.pack(charge, cells);
            return returning
                    ? operation.brake().greatestReturn(operation.topSpeed(), state)
                    : operation.drive().greatestDraw(operation.topSpeed(), state);
        }
    }
}
