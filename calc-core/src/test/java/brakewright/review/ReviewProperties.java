package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.battery.BatteryModel;
import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.powertrain.PackState;
import brakewright.spec.AnyBuild;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Climate;
import brakewright.spec.Settings;
import brakewright.spec.Use;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class ReviewProperties {

    /** The cap comes first, as it says how fast one brakes. */
    @Property(tries = 300)
    void settingsAtTheirLimitsAreNeverOutside(@ForAll Build any) {
        Build steady = inSteadyClimate(any);
        Build build =
                steady.withSettings(
                        Settings.NONE.withSpeedCap(
                                OptionalDouble.of(Limits.of(steady).speedCap().value())));
        Limits limits = Limits.of(build);
        double full =
                new BatteryModel(build.battery()).openCircuitVoltage(build.use().chargeFrom());
        Assume.that(full <= build.controllers().voltageRating());
        Review review = review(build.withSettings(atLimits(build, limits)));
        assertThat(review.verdict().outcome()).isNotEqualTo(Verdict.Outcome.OUTSIDE_LIMITS);
    }

    @Property(tries = 300)
    void twiceTheStaticRegenLimitIsAlwaysOutside(@ForAll Build build) {
        double limit =
                Limits.of(build).packRegen().staticPart(build.battery().temperatureC()).value();
        Assume.that(limit > 0.0);
        Settings twice =
                new Settings(
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(2.0 * limit / build.controllers().count()),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty());
        Review review = review(build.withSettings(twice));
        assertThat(review.verdict().outcome()).isEqualTo(Verdict.Outcome.OUTSIDE_LIMITS);
        assertThat(review.findings()).anyMatch(each -> each.topic() == Topic.PACK_RETURN_OVER);
    }

    @Property(tries = 300)
    void moreBrakeCurrentThanItsLimitIsOutside(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.001, max = 3.0) double multiple) {
        double limit = Limits.of(build).motorBrake().value();
        Assume.that(limit > 0.0);
        Settings harder =
                new Settings(
                        OptionalDouble.empty(),
                        OptionalDouble.of(multiple * limit),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        OptionalDouble.empty());
        assertThat(review(build.withSettings(harder)).verdict().outcome())
                .isEqualTo(Verdict.Outcome.OUTSIDE_LIMITS);
    }

    @Property(tries = 300)
    void everyBuildIsReviewedGravestFirst(@ForAll Build build) {
        Review review = review(build);
        assertThat(review.findings())
                .isNotEmpty()
                .isSortedAccordingTo(Comparator.comparing(Finding::signal))
                .allSatisfy(
                        each -> {
                            assertThat(each.value().orElse(0.0)).isNotNaN();
                            assertThat(each.limit().orElse(0.0)).isNotNaN();
                            assertThat(each.speed().orElse(0.0)).isNotNaN().isNotNegative();
                            assertThat(each.charge().orElse(0.0)).isBetween(0.0, 1.0);
                            assertThat(each.id()).startsWith(each.topic().key());
                        });
    }

    @Property(tries = 300)
    void aConditionalVerdictNamesItsConditions(@ForAll Build build) {
        Verdict verdict = review(build).verdict();
        switch (verdict.outcome()) {
            case WITHIN_LIMITS -> assertThat(verdict.conditions()).isEmpty();
            case CONDITIONAL -> assertThat(verdict.conditions()).isNotEmpty();
            case OUTSIDE_LIMITS ->
                    assertThat(verdict.conditions()).doesNotContain(new Condition.Never());
        }
    }

    /** Just below the charge state that is named, what flows is what the constraint permits. */
    @Property(tries = 300)
    void belowTheNamedChargeStateTheConstraintHolds(@ForAll Build build) {
        Limits limits = Limits.of(build);
        Operation operation = Operation.of(build, limits);
        BatteryModel model = new BatteryModel(build.battery());
        for (Finding finding : Review.of(build, limits, operation).findings()) {
            if (finding.topic() != Topic.PACK_RETURN_OVER
                    || !(finding.condition().orElse(null) instanceof Condition.ChargeBelow below)) {
                continue;
            }
            double charge = Math.max(build.use().chargeTo(), below.charge() - 1e-6);
            double temperature = below.temperatureC();
            double flows =
                    operation
                            .brake()
                            .greatestReturn(
                                    operation.topSpeed(), PackState.of(model, charge, temperature));
            double permitted =
                    limits.packRegen().constraints().stream()
                            .filter(
                                    each ->
                                            each.id() == finding.constraint().orElseThrow()
                                                    && each.pack().equals(finding.pack()))
                            .mapToDouble(each -> each.limitAt(charge, temperature))
                            .min()
                            .orElseThrow();
            assertThat(flows).isLessThanOrEqualTo(permitted + 1e-3);
        }
    }

    @Example
    void aBoardOnItsLimitsMayBrakeOnlyBelowACharge() {
        Build board = Builds.trailBoard();
        Review review = review(board);
        assertThat(review.verdict().outcome()).isEqualTo(Verdict.Outcome.CONDITIONAL);
        assertThat(review.findings())
                .anyMatch(each -> each.topic() == Topic.ONLY_BRAKE)
                .anyMatch(
                        each ->
                                each.topic() == Topic.PACK_RETURN_OVER
                                        && each.signal() == Signal.DANGER
                                        && each.constraint()
                                                .equals(
                                                        Optional.of(
                                                                ConstraintId
                                                                        .PROTECTION_OVERVOLTAGE_TRIP)));
    }

    @Example
    void whatIsNotKnownOfACartIsAReasonForCaution() {
        assertThat(review(Builds.dockCart()).findings())
                .extracting(Finding::topic)
                .contains(Topic.PROTECTION_UNKNOWN, Topic.WIRING_UNKNOWN);
        assertThat(review(Builds.parcelTrike()).findings())
                .extracting(Finding::topic)
                .contains(Topic.MOTOR_HEAT_UNKNOWN, Topic.WIRING_UNKNOWN)
                .doesNotContain(Topic.ONLY_BRAKE);
    }

    @Example
    void signalWordsAndTopicsHaveNames() {
        assertThat(List.of(Signal.values()))
                .extracting(Signal::key)
                .containsExactly("danger", "warning", "caution", "notice");
        assertThat(List.of(Verdict.Outcome.values()))
                .extracting(Verdict.Outcome::key)
                .containsExactly("within-limits", "conditional", "outside-limits");
        assertThat(List.of(Topic.values())).extracting(Topic::key).doesNotHaveDuplicates();
        assertThat(List.of(LimitId.values())).extracting(LimitId::key).doesNotHaveDuplicates();
    }

    private static Review review(Build build) {
        Limits limits = Limits.of(build);
        return Review.of(build, limits, Operation.of(build, limits));
    }

    /** What is permitted over all charge states in use, per controller where that is asked. */
    private static Settings atLimits(Build build, Limits limits) {
        double temperature = build.battery().temperatureC();
        int count = build.controllers().count();
        return new Settings(
                OptionalDouble.of(limits.motorDrive().value()),
                OptionalDouble.of(limits.motorBrake().value()),
                OptionalDouble.of(
                        limits.packDischarge().valueAt(build.use().chargeTo(), temperature)
                                / count),
                OptionalDouble.of(
                        limits.packRegen().valueAt(build.use().chargeFrom(), temperature) / count),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(limits.speedCap().value()));
    }

    private static Build inSteadyClimate(Build any) {
        Build build = Builds.withCells(any, Builds::evenResistance);
        Use use = build.use();
        double temperature = build.battery().temperatureC();
        return Builds.withUse(
                build,
                use.withClimate(
                        new Climate(
                                use.climate().ambientC(), temperature, temperature, 0.0, 30.0)));
    }
}
