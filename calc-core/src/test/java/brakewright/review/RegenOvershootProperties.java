package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.battery.BatteryModel;
import brakewright.limit.Constraint;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.limit.PackConstraint;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.operation.RegenOvershoot;
import brakewright.operation.SetBuild;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.WhichPack;
import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** A hard grab before the limiter of the pack regen current acts. */
@Tag("law")
@Domain(SetBuild.class)
@Domain(DomainContext.Global.class)
class RegenOvershootProperties {

    private static final double ROUNDING = 1e-9;
    private static final double QUICK = 0.01;
    private static final double LATE = 0.1;

    /**
     * Set at the bound, all that the motors can return opens no quick charge trip; above it does.
     */
    @Property(tries = 200)
    void theBoundIsTheCurrentThatJustOpensNothing(@ForAll Build any) {
        Build build = withoutOvervoltage(Builds.withLateLimiter(any, LATE, QUICK));
        Limits limits = Limits.of(build);
        for (Constraint bound : bounds(limits)) {
            PackConstraint trip = chargeTrip(limits, bound.pack());
            double set = Double.isInfinite(bound.limit()) ? 1e6 : bound.limit();
            assertThat(greatest(build, set, trip)).isLessThanOrEqualTo(1.0 + ROUNDING);
            if (bound.limit() > 0.0 && Double.isFinite(bound.limit())) {
                assertThat(greatest(build, 1.01 * set, trip)).isGreaterThan(1.0);
            }
        }
    }

    /** There is one for each known charge trip that does not wait, whatever else is set. */
    @Property(tries = 200)
    void onlyATripThatIsQuickerBounds(
            @ForAll Build any, @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.2) double delay) {
        Build build = Builds.withLateLimiter(any, LATE, delay);
        long trips =
                build.battery().packs().stream()
                        .map(Pack::protection)
                        .filter(
                                each ->
                                        each.chargeTrip().isPresent()
                                                || each.cellOvervoltageTrip().isPresent())
                        .count();
        assertThat(bounds(Limits.of(build))).hasSize(delay < LATE ? (int) trips : 0);
    }

    /**
     * It outlasts a delay that is known: a danger in the verdict. It does not: a caution, in none.
     */
    @Property(tries = 200)
    void itIsADangerOnlyWhereItOutlastsTheDelay(
            @ForAll Build any, @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.2) double delay) {
        Build build = Builds.withLateLimiter(any, LATE, delay);
        Limits limits = Limits.of(build);
        Operation operation = Operation.of(build, limits);
        List<RegenOvershoot> surges = RegenOvershoot.of(build, limits, operation);
        List<Finding> findings = Review.of(build, limits, operation).findings();
        for (RegenOvershoot surge : surges) {
            assertThat(surge.current()).isGreaterThan(surge.permitted());
            assertThat(surge.let()).isLessThanOrEqualTo(surge.permitted() * (1.0 + ROUNDING));
            assertThat(surge.speed()).isLessThanOrEqualTo(operation.topSpeed() * (1.0 + ROUNDING));
            assertThat(surge.opens()).isEqualTo(delay < LATE);
        }
        List<Finding> told =
                findings.stream()
                        .filter(each -> each.topic() == Topic.REGEN_OVERSHOOT)
                        .filter(each -> each.condition().isEmpty())
                        .toList();
        assertThat(told).allSatisfy(each -> assertThat(each.signal()).isEqualTo(Signal.CAUTION));
        assertThat(told).hasSize(delay < LATE ? 0 : surges.size());
        if (delay < LATE && !surges.isEmpty() && build.settings().motorBrakeCurrent().isPresent()) {
            assertThat(Evaluation.of(build).outcome()).isNotEqualTo(Verdict.Outcome.WITHIN_LIMITS);
            assertThat(findings)
                    .anySatisfy(
                            each -> {
                                assertThat(each.signal()).isEqualTo(Signal.DANGER);
                                assertThat(each.condition()).isPresent();
                            });
        }
    }

    /** A limiter that acts at once sends no more than it lets through. */
    @Property(tries = 100)
    void aLimiterThatActsAtOnceIsNeverLate(@ForAll Build any) {
        Build build = Builds.withLateLimiter(any, 0.0, 0.0);
        Limits limits = Limits.of(build);
        assertThat(bounds(limits)).isEmpty();
        assertThat(RegenOvershoot.of(build, limits, Operation.of(build, limits))).isEmpty();
    }

    /** A later limiter never makes a verdict milder, nor a braking safe up to a fuller pack. */
    @Property(tries = 200)
    void aLaterLimiterIsNeverMilder(@ForAll Build any) {
        Assume.that(any.settings().motorBrakeCurrent().isPresent());
        Evaluation soon = Evaluation.of(Builds.withLateLimiter(any, 0.0, QUICK));
        Evaluation late = Evaluation.of(Builds.withLateLimiter(any, LATE, QUICK));
        assertThat(late.severity()).isGreaterThanOrEqualTo(soon.severity());
        assertThat(late.outcome()).isGreaterThanOrEqualTo(soon.outcome());
        assertThat(late.safeCharge()).isLessThanOrEqualTo(soon.safeCharge());
    }

    /** At the lowest charge in use, set at the bound, a quick over-voltage trip stays closed. */
    @Property(tries = 200)
    void anOvervoltageTripIsKeptAtTheLowestCharge(@ForAll Build any) {
        Build build = Builds.withLateLimiter(any, LATE, QUICK);
        Limits limits = Limits.of(build);
        BatteryModel model = new BatteryModel(build.battery());
        Powertrain train = Powertrain.of(build);
        double top = Math.max(build.use().speedMax(), build.settings().speedCap().orElse(0.0));
        double low = build.use().chargeTo();
        for (Constraint bound : bounds(limits)) {
            double set = Math.min(1e6, bound.limit());
            for (PackConstraint trip : limits.packRegen().brief().constraints()) {
                for (double cellsC : build.cellTemperatures()) {
                    if (trip.id() == ConstraintId.PROTECTION_OVERVOLTAGE_TRIP
                            && trip.pack().equals(bound.pack())) {
                        PackState state = PackState.of(model, low, cellsC);
                        double most = train.mostReturningCurrent(set, top);
                        assertThat(state.currentInto(train.returnedPower(most, top)))
                                .isLessThanOrEqualTo(
                                        trip.limitAt(low, cellsC) * (1.0 + ROUNDING) + ROUNDING);
                    }
                }
            }
        }
    }

    private static Build withoutOvervoltage(Build build) {
        Battery battery = build.battery();
        return build.withBattery(
                battery.withPacks(
                        battery.packs().stream()
                                .map(RegenOvershootProperties::withoutOvervoltage)
                                .toList()));
    }

    private static Pack withoutOvervoltage(Pack pack) {
        Protection old = pack.protection();
        return pack.withProtection(
                old.withCellOvervoltageTrip(OptionalDouble.empty())
                        .withOvervoltageTripDelay(OptionalDouble.empty()));
    }

    private static List<Constraint> bounds(Limits limits) {
        return limits.motorBrake().constraints().stream()
                .filter(each -> each.id() == ConstraintId.REGEN_OVERSHOOT)
                .toList();
    }

    private static PackConstraint chargeTrip(Limits limits, WhichPack pack) {
        return limits.packRegen().constraints().stream()
                .filter(each -> each.id() == ConstraintId.PROTECTION_CHARGE_TRIP)
                .filter(each -> each.pack().equals(pack))
                .findFirst()
                .orElseThrow();
    }

    /** The most that braking in full or in part returns, over what the trip permits. */
    private static double greatest(Build build, double set, PackConstraint trip) {
        BatteryModel model = new BatteryModel(build.battery());
        Powertrain train = Powertrain.of(build);
        double top = Math.max(build.use().speedMax(), build.settings().speedCap().orElse(0.0));
        double greatest = 0.0;
        for (double cellsC : build.cellTemperatures()) {
            for (int step = 0; step <= 20; step++) {
                double low = build.use().chargeTo();
                double charge = low + (build.use().chargeFrom() - low) * step / 20.0;
                PackState state = PackState.of(model, charge, cellsC);
                double most = train.mostReturningCurrent(set, top);
                double sent = state.currentInto(train.returnedPower(most, top));
                greatest = Math.max(greatest, sent / trip.limitAt(charge, cellsC));
            }
            for (double point : model.points()) {
                if (point >= build.use().chargeTo() && point <= build.use().chargeFrom()) {
                    PackState state = PackState.of(model, point, cellsC);
                    double most = train.mostReturningCurrent(set, top);
                    double sent = state.currentInto(train.returnedPower(most, top));
                    greatest = Math.max(greatest, sent / trip.limitAt(point, cellsC));
                }
            }
        }
        return greatest;
    }
}
