package brakewright.review;

import brakewright.battery.AlongCharge;
import brakewright.charge.ChargeSearch;
import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.operation.HardPull;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import brakewright.spec.Taper;
import brakewright.spec.Unit;

/**
 * Holds the loaded cell in a hard pull against the protection's under-voltage trip: where the
 * protection disconnects before the controller has faded the drive, the vehicle cuts dead, and the
 * electric brake goes with it.
 */
final class SagCheck {

    private final Build build;
    private final Limits limits;
    private final Operation operation;
    private final double cellsC;

    SagCheck(Build build, Limits limits, Operation trusted, double cellsC) {
        this.build = build;
        this.limits = limits;
        this.operation = trusted;
        this.cellsC = cellsC;
    }

    /**
     * Makes the check.
     *
     * @param givers the packs, drawn from, where they have been looked at
     */
    Check check(AlongCharge givers) {
        HardPull pull = new HardPull(build, limits, operation, cellsC);
        AlongCharge along = givers.along(pull.charges());
        double[] charges = along.charges();
        double[] trips = new double[charges.length];
        double[] cells = new double[charges.length];
        for (int i = 0; i < charges.length; i++) {
            HardPull.Loaded worst = pull.nearestToTrip(along.at(i));
            trips[i] = worst.trip();
            cells[i] = worst.cell();
        }
        return new ChargeCheck(
                Held.setting(
                                Topic.PROTECTION_BEFORE_TAPER,
                                LimitId.LOW_VOLTAGE_TAPER,
                                ConstraintId.PROTECTION_UNDERVOLTAGE_TRIP)
                        .withCells(cellsC),
                new ChargeSearch(charges),
                trips,
                cells,
                new ChargeCheck.Course(
                        charge -> pull.nearestToTrip(charge).trip(),
                        charge -> pull.nearestToTrip(charge).cell()),
                ChargeCheck.Harm.EMPTY,
                () -> false,
                this::tell);
    }

    private Finding tell(ChargeCheck check) {
        double charge = check.begins();
        double needed = limits.lowVoltageTaper().binding().limit();
        Finding.Builder finding =
                check.held()
                        .finding()
                        .atCharge(charge)
                        .worstAt(build.use().chargeTo())
                        .atTemperature(cellsC)
                        .unless(
                                check.isNever()
                                        ? new Condition.Never()
                                        : new Condition.ChargeAbove(
                                                charge, build.use().chargeTo(), cellsC));
        return operation
                .drive()
                .taper()
                .map(Taper::ends)
                .map(ends -> finding.valued(ends, needed, Unit.VOLT))
                .orElseGet(() -> finding.held(needed, Unit.VOLT))
                .build();
    }
}
