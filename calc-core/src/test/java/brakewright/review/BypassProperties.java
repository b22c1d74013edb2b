package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.battery.BatteryModel;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.limit.PackConstraint;
import brakewright.limit.PackLimit;
import brakewright.limit.Signal;
import brakewright.operation.FirstStop;
import brakewright.operation.Operation;
import brakewright.operation.SetBuild;
import brakewright.powertrain.PackState;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** A protection on the charge lead alone, past which braking and driving go. */
@Tag("law")
@Domain(SetBuild.class)
@Domain(DomainContext.Global.class)
class BypassProperties {

    private static final double ROUNDING = 1e-9;

    private static final Set<ConstraintId> TRIPS =
            EnumSet.of(
                    ConstraintId.PROTECTION_CHARGE_TRIP,
                    ConstraintId.PROTECTION_OVERVOLTAGE_TRIP,
                    ConstraintId.PROTECTION_DISCHARGE_TRIP,
                    ConstraintId.PROTECTION_UNDERVOLTAGE_TRIP);

    @Property(tries = 200)
    void nothingOpensAndTheCellsOwnBoundsStand(@ForAll Build any) {
        Build bypassed = with(any, Protection.BYPASSED);
        Limits limits = Limits.of(bypassed);
        assertThat(ids(limits.packRegen())).doesNotContainAnyElementsOf(TRIPS);
        assertThat(ids(limits.packDischarge())).doesNotContainAnyElementsOf(TRIPS);
        assertThat(ids(limits.packRegen())).contains(ConstraintId.VOLTAGE_CEILING);
        assertThat(ids(limits.packDischarge())).contains(ConstraintId.VOLTAGE_FLOOR);
        List<Finding> findings = findings(bypassed);
        assertThat(findings.stream().flatMap(each -> each.constraint().stream()))
                .doesNotContainAnyElementsOf(TRIPS);
        assertThat(findings.stream().map(Finding::topic))
                .doesNotContain(
                        Topic.PROTECTION_UNKNOWN,
                        Topic.PACK_LOSS_CASCADES,
                        Topic.BUS_RISE,
                        Topic.BUS_CAPACITANCE_UNKNOWN);
        assertThat(first(bypassed).opening()).isEqualTo(FirstStop.Opening.NOTHING);
    }

    /** What a trip does not hold back may only be more; the cells bear the same. */
    @Property(tries = 200)
    void noLimitIsLowerThanWithTheProtectionInTheWay(@ForAll Build any) {
        Build guarded = with(any, new Protection(of(60.0), of(20.0), of(4.2), of(2.8)));
        Build bypassed = with(any, Protection.BYPASSED);
        double cellsC = any.battery().temperatureC();
        for (double charge : new double[] {any.use().chargeTo(), 0.5, any.use().chargeFrom()}) {
            assertThat(Limits.of(bypassed).packRegen().valueAt(charge, cellsC))
                    .isGreaterThanOrEqualTo(Limits.of(guarded).packRegen().valueAt(charge, cellsC));
            assertThat(Limits.of(bypassed).packDischarge().valueAt(charge, cellsC))
                    .isGreaterThanOrEqualTo(
                            Limits.of(guarded).packDischarge().valueAt(charge, cellsC));
        }
    }

    /** One finding for each pack, as soon as braking returns anything; its voltage is the worst. */
    @Property(tries = 200)
    void whateverBrakingReturnsIsADanger(@ForAll Build any) {
        Build bypassed = with(any, Protection.BYPASSED);
        Limits limits = Limits.of(bypassed);
        Operation trusted = Operation.of(bypassed, limits).trusted(limits);
        BatteryModel model = new BatteryModel(bypassed.battery());
        List<Finding> dangers =
                findings(bypassed).stream()
                        .filter(each -> each.topic() == Topic.PROTECTION_BYPASSED)
                        .filter(each -> each.signal() == Signal.DANGER)
                        .toList();
        double greatest = 0.0;
        for (double charge : new double[] {any.use().chargeTo(), any.use().chargeFrom()}) {
            PackState state = PackState.of(model, charge, any.battery().temperatureC());
            double returned = trusted.brake().greatestReturn(trusted.topSpeed(), state);
            greatest = Math.max(greatest, returned);
            double cell = model.cellVoltage(returned, charge, any.battery().temperatureC());
            if (returned > 0.0) {
                assertThat(dangers).isNotEmpty();
                assertThat(
                                dangers.stream()
                                        .mapToDouble(each -> each.value().orElseThrow())
                                        .max()
                                        .orElseThrow())
                        .isGreaterThanOrEqualTo(cell - ROUNDING);
            }
        }
        if (greatest > 0.0) {
            assertThat(dangers).hasSize(bypassed.battery().packs().size());
        }
    }

    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }

    private static List<Finding> findings(Build build) {
        Limits limits = Limits.of(build);
        return Review.of(build, limits, Operation.of(build, limits)).findings();
    }

    private static FirstStop first(Build build) {
        Limits limits = Limits.of(build);
        return FirstStop.of(
                build, limits, Operation.of(build, limits), build.battery().temperatureC());
    }

    private static List<ConstraintId> ids(PackLimit limit) {
        return limit.constraints().stream().map(PackConstraint::id).toList();
    }

    private static Build with(Build build, Protection protection) {
        Battery battery = build.battery();
        return build.withBattery(
                battery.withPacks(
                        battery.packs().stream().map(pack -> with(pack, protection)).toList()));
    }

    private static Pack with(Pack pack, Protection protection) {
        return pack.withProtection(protection);
    }
}
