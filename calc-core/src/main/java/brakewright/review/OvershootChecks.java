package brakewright.review;

import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.PackConstraint;
import brakewright.limit.TripDelay;
import brakewright.operation.Operation;
import brakewright.spec.Build;
import java.util.List;
import java.util.Optional;

/**
 * Holds what a hard grab sends before the regen limiter acts against every over-voltage trip that
 * is known to wait less long than that, over the charge. What holds whatever the charge bounds the
 * motor brake current itself ({@link ConstraintId#REGEN_OVERSHOOT}).
 */
final class OvershootChecks {

    private final OverCharge vehicle;
    private final Build build;
    private final Limits limits;
    private final Operation operation;

    OvershootChecks(OverCharge vehicle) {
        this.vehicle = vehicle;
        this.build = vehicle.build();
        this.limits = vehicle.limits();
        this.operation = vehicle.operation();
    }

    static boolean hasQuickTrip(Build build, Limits limits) {
        return build.battery().packs().stream()
                        .anyMatch(pack -> pack.protection().overvoltageTripDelay().isPresent())
                && limits.packRegen().brief().constraints().stream()
                        .anyMatch(trip -> isQuick(build, trip));
    }

    private static boolean isQuick(Build build, PackConstraint trip) {
        return trip.id() == ConstraintId.PROTECTION_OVERVOLTAGE_TRIP
                && TripDelay.isQuicker(build, trip);
    }

    /** Adds them, and returns up to which charge state all of them are kept [1]. */
    double addTo(List<Check> checks) {
        double safe = build.use().chargeFrom();
        for (PackConstraint trip : limits.packRegen().brief().constraints()) {
            if (isQuick(build, trip)) {
                for (double cellsC : build.cellTemperatures()) {
                    ChargeCheck check = check(trip, cellsC);
                    checks.add(check);
                    if (check.isExceeded()) {
                        safe = Math.min(safe, check.isEverywhere() ? 0.0 : check.begins());
                    }
                }
            }
        }
        return safe;
    }

    private ChargeCheck check(PackConstraint trip, double cellsC) {
        double[] charges = vehicle.search().charges();
        double[] asked = new double[charges.length];
        double[] permitted = new double[charges.length];
        for (int i = 0; i < charges.length; i++) {
            asked[i] = asked(charges[i], cellsC);
            permitted[i] = trip.limitAt(charges[i], cellsC);
        }
        return new ChargeCheck(
                new Held(
                        Topic.REGEN_OVERSHOOT,
                        Optional.of(LimitId.MOTOR_BRAKE_CURRENT),
                        trip.id(),
                        trip.pack(),
                        cellsC),
                vehicle.search(),
                asked,
                permitted,
                new ChargeCheck.Course(
                        charge -> asked(charge, cellsC), charge -> trip.limitAt(charge, cellsC)),
                ChargeCheck.Harm.FULL,
                () -> false,
                check -> tell(check, cellsC));
    }

    private double asked(double charge, double cellsC) {
        return operation.brake().greatestAsked(operation.topSpeed(), vehicle.pack(charge, cellsC));
    }

    private Finding tell(ChargeCheck check, double cellsC) {
        double worst = check.mostAt();
        Finding.Builder finding =
                check.told()
                        .atSpeed(
                                operation
                                        .brake()
                                        .speedAsking(check.limit(), vehicle.pack(worst, cellsC)));
        return finding.unless(
                        check.isNever()
                                ? new Condition.Never()
                                : new Condition.ChargeBelow(
                                        check.begins(), worst, finding.build().speed(), cellsC))
                .build();
    }
}
