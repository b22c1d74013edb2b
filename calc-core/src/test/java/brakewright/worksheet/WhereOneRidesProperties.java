package brakewright.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.operation.SetBuild;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.review.Finding;
import brakewright.review.Review;
import brakewright.review.Topic;
import brakewright.spec.Build;
import brakewright.spec.Use;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** At which charges a page tells stops, what holds the brake back there, what it tells once. */
@Tag("law")
@Domain(SetBuild.class)
@Domain(DomainContext.Global.class)
class WhereOneRidesProperties {

    @Property(tries = 200)
    void theChargesRiddenFallFromTheFullestAndStayInUse(
            @ForAll Build build, @ForAll @DoubleRange(min = 0.0, max = 1.0) double safe) {
        Use use = build.use();
        RiddenCharges ridden = RiddenCharges.of(use, safe);
        List<Double> charges = ridden.charges();
        assertThat(charges).isSortedAccordingTo(Comparator.reverseOrder()).doesNotHaveDuplicates();
        assertThat(charges.get(0)).isEqualTo(use.chargeFrom());
        assertThat(charges).allMatch(each -> each >= use.chargeTo());
        assertThat(Arrays.stream(ridden.mapped()).min()).hasValue(use.chargeTo());
    }

    /** Braking that is safe anywhere above the lowest charge is told at a charge where it is. */
    @Property(tries = 200)
    void whatStandsForTheRideIsTheFullestThatIsSafe(
            @ForAll Build build, @ForAll @DoubleRange(min = 0.0, max = 1.0) double safe) {
        RiddenCharges ridden = RiddenCharges.of(build.use(), safe);
        if (safe > build.use().chargeTo()) {
            assertThat(ridden.highestSafe()).isPresent();
        }
        ridden.highestSafe()
                .ifPresent(
                        highest ->
                                assertThat(ridden.charges())
                                        .allMatch(
                                                each ->
                                                        each <= highest
                                                                ? ridden.isSafe(each)
                                                                : !ridden.isSafe(each)));
    }

    /** Above the speed told a higher motor brake current brakes alike; where none is, never. */
    @Property(tries = 200)
    void aHigherBrakeCurrentBuysNothingAboveTheSpeedTold(
            @ForAll Build build,
            @ForAll @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double part) {
        Operation operation = Operation.of(build, Limits.of(build));
        PackState pack =
                PackState.of(
                        new BatteryModel(build.battery()), charge, build.battery().temperatureC());
        Optional<Fading> fading = Fading.at(charge, pack, operation);
        ElectricBrake set = operation.brake().settled(pack);
        double top = operation.topSpeed();
        double fades = fading.map(Fading::speed).orElse(top);
        double below = part * fades;
        double above = fades + part * (top - fades);
        assertThat(set.motorCurrent(below, pack)).isEqualTo(set.motorCurrentAt(below));
        if (fading.isPresent()) {
            assertThat(stronger(set).motorCurrent(above, pack))
                    .isCloseTo(
                            set.motorCurrent(above, pack),
                            within(1e-9 * (1.0 + set.motorCurrent(above, pack))));
        }
    }

    /** Every finding is told once, with those that differ in cells or pack alone. */
    @Property(tries = 200)
    void alikeFindingsArePartsOfTheWhole(@ForAll Build build) {
        Limits limits = Limits.of(build);
        Review review = Review.of(build, limits, Operation.of(build, limits));
        List<AlikeFindings> all = AlikeFindings.of(review);
        assertThat(all.stream().flatMap(each -> each.findings().stream()))
                .containsExactlyInAnyOrderElementsOf(review.findings());
        for (AlikeFindings alike : all) {
            assertThat(alike.findings()).allMatch(alike::isAbout);
            assertThat(alike.findings()).extracting(Finding::topic).containsOnly(topic(alike));
            assertThat(alike.findings().stream().map(Finding::subject).distinct()).hasSize(1);
            assertThat(alike.findings().stream().map(Finding::constraint).distinct()).hasSize(1);
            assertThat(all)
                    .filteredOn(other -> other != alike)
                    .noneMatch(other -> alike.isAbout(other.first()));
            assertThat(alike.findings()).extracting(Finding::signal).containsOnly(signal(alike));
        }
    }

    private static Topic topic(AlikeFindings alike) {
        return alike.first().topic();
    }

    private static Signal signal(AlikeFindings alike) {
        return alike.first().signal();
    }

    /** The same brake with a third more motor current. */
    private static ElectricBrake stronger(ElectricBrake brake) {
        return new ElectricBrake(
                brake.powertrain(),
                4.0 / 3.0 * brake.motorCurrent(),
                brake.packCurrent(),
                brake.taper(),
                brake.endsBelow());
    }
}
