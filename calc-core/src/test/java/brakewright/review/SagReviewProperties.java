package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.driving.Climb;
import brakewright.driving.Cruise;
import brakewright.driving.Road;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.EmptiestGroup;
import brakewright.operation.Operation;
import brakewright.powertrain.AnyDriven;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Criteria;
import brakewright.spec.Stance;
import brakewright.spec.Taper;
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

@Tag("law")
@Domain(AnyDriven.class)
@Domain(DomainContext.Global.class)
class SagReviewProperties {

    private static final int STEPS = 400;

    /**
     * How far the cells of the worst pack come beyond the trip, and by how much that changes from
     * one step to the next at most: so close to the trip the steps cannot tell [V].
     */
    private record Deepest(double beyond, double change) {

        Deepest and(Deepest other) {
            return new Deepest(Math.max(beyond, other.beyond), Math.max(change, other.change));
        }
    }

    /** Looked for in many small steps of the charge, at the pack's own temperature and coldest. */
    @Property(tries = 300)
    void warnsExactlyWhereAHardPullMeetsTheTrip(@ForAll Build build) {
        Limits limits = Limits.of(build);
        Operation operation = Operation.of(build, limits);
        Operation trusted = operation.trusted(limits);
        double own = build.battery().temperatureC();
        double coldest = Math.min(own, build.use().climate().coldestPackC());
        Deepest worst = deepest(build, trusted, own).and(deepest(build, trusted, coldest));
        Assume.that(Math.abs(worst.beyond()) > worst.change());
        double emptiest =
                new BatteryModel(build.battery()).openCircuitVoltage(build.use().chargeTo());
        // Where the taper leaves nothing near the end, a trip may hide between the points searched.
        Assume.that(trusted.drive().taper().map(Taper::ends).orElse(0.0) < emptiest);
        List<Finding> findings =
                Review.of(build, limits, operation).findings().stream()
                        .filter(each -> each.topic() == Topic.PROTECTION_BEFORE_TAPER)
                        .toList();
        assertThat(findings.isEmpty()).isEqualTo(worst.beyond() <= 0.0);
        for (Finding finding : findings) {
            assertThat(finding.topic()).isEqualTo(Topic.PROTECTION_BEFORE_TAPER);
            assertThat(finding.signal()).isEqualTo(Signal.DANGER);
            assertThat(finding.temperatureC().getAsDouble()).isIn(own, coldest);
            double at = finding.temperatureC().getAsDouble();
            Deepest there = deepest(build, trusted, at);
            assertThat(there.beyond()).isGreaterThan(-there.change());
        }
    }

    @Property(tries = 300)
    void warnsOfTheClimbAndTheRangeExactlyWhereTheyFallShort(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.6) double slope,
            @ForAll @Scale(0) @DoubleRange(min = 1000.0, max = 80_000.0) double range) {
        Build build = asked(any, new Criteria(2.0, 4.0, slope, OptionalDouble.of(range)));
        Operation operation = Operation.of(build, Limits.of(build));
        PackState full =
                PackState.of(
                        new BatteryModel(build.battery()),
                        build.use().chargeFrom(),
                        build.battery().temperatureC());
        Climb climb = Climb.of(build, operation.drive(), full);
        double reached =
                Cruise.of(
                                build,
                                operation.drive(),
                                new Road(0.0, build.use().riding().headwind()),
                                build.use().riding().cruiseSpeed())
                        .distance();
        List<Topic> topics =
                new DriveReview(build, operation).findings().stream().map(Finding::topic).toList();
        assertThat(topics.contains(Topic.CLIMB_SHORT)).isEqualTo(climb.steepest() < slope);
        assertThat(topics.contains(Topic.RANGE_SHORT)).isEqualTo(reached < range);
        assertThat(topics.contains(Topic.SPEED_STABILITY))
                .isEqualTo(build.rider().stance() != Stance.SEATED);
        assertThat(topics.contains(Topic.CLIMB_OVERHEATS))
                .isEqualTo(climb.lastsUp().orElse(Double.POSITIVE_INFINITY) < climb.timeUp());
    }

    /** How far the lowest cell lies beyond its trip in the hard pull, at its worst [V]. */
    private static Deepest deepest(Build build, Operation operation, double cellsC) {
        BatteryModel model = new BatteryModel(build.battery());
        ElectricDrive drive = operation.drive();
        double from = build.use().chargeFrom();
        double to = build.use().chargeTo();
        double deepest = Double.NEGATIVE_INFINITY;
        double change = 0.0;
        double before = Double.NEGATIVE_INFINITY;
        for (int step = 0; step <= STEPS; step++) {
            double charge = to + (from - to) * step / STEPS;
            double here = Double.NEGATIVE_INFINITY;
            for (int place = 0; place < model.packs().size(); place++) {
                PackModel each = model.packs().get(place);
                double until =
                        build.use().effort().hardPull()
                                - each.pack().protection().undervoltageTripDelay().orElse(0.0);
                double flowing =
                        until < 0.0
                                ? 0.0
                                : drive.greatestDraw(
                                        operation.topSpeed(),
                                        PackState.of(model, charge, cellsC, until));
                if (flowing == 0.0) {
                    continue;
                }
                double own = model.chargeOf(place, charge);
                double cell =
                        EmptiestGroup.cellVoltage(
                                each.pack(),
                                own,
                                flowing * model.share(place, charge, cellsC),
                                cellsC,
                                until);
                double trip =
                        each.pack()
                                .protection()
                                .cellUndervoltageTrip()
                                .orElse(Double.NEGATIVE_INFINITY);
                here = Math.max(here, trip - cell);
            }
            if (Double.isFinite(here) && Double.isFinite(before)) {
                change = Math.max(change, Math.abs(here - before));
            }
            deepest = Math.max(deepest, here);
            before = here;
        }
        return new Deepest(deepest, change);
    }

    private static Build asked(Build build, Criteria criteria) {
        return build.withCriteria(criteria);
    }
}
