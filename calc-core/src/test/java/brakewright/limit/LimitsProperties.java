package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brakewright.machine.WindingHeat;
import brakewright.powertrain.Powertrain;
import brakewright.spec.AnyBuild;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Taper;
import java.util.List;
import java.util.Optional;
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
class LimitsProperties {

    private static final double ROUNDING = 1e-12;
    private static final double A_LITTLE = 1e-6;

    @Property
    void aFullerPackNeverTakesMore(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double other) {
        Build build = even(any);
        PackLimit regen = Limits.of(build).packRegen();
        double temperature = build.battery().temperatureC();
        assertThat(regen.valueAt(Math.max(one, other), temperature))
                .isLessThanOrEqualTo(
                        regen.valueAt(Math.min(one, other), temperature) * (1.0 + 1e-9));
    }

    @Property
    void aFullerPackNeverGivesLess(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double one,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double other) {
        Build build = even(any);
        PackLimit discharge = Limits.of(build).packDischarge();
        double temperature = build.battery().temperatureC();
        assertThat(discharge.valueAt(Math.max(one, other), temperature))
                .isGreaterThanOrEqualTo(
                        discharge.valueAt(Math.min(one, other), temperature) * (1.0 - 1e-9));
    }

    @Property
    void everyLimitIsTheLeastOfItsConstraints(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Limits limits = Limits.of(build);
        double temperature = build.battery().temperatureC();
        for (Limit limit :
                List.of(
                        limits.motorDrive(),
                        limits.motorBrake(),
                        limits.speedCap(),
                        limits.packRegen().at(charge, temperature),
                        limits.packDischarge().at(charge, temperature),
                        limits.packRegen().staticPart(temperature))) {
            assertThat(limit.constraints())
                    .extracting(Constraint::limit)
                    .allMatch(each -> each >= 0.0);
            assertThat(limit.value())
                    .isEqualTo(
                            limit.constraints().stream()
                                    .mapToDouble(Constraint::limit)
                                    .min()
                                    .orElseThrow());
            assertThat(limit.constraints()).contains(limit.binding());
        }
        assertThat(limits.packRegen().at(charge, temperature).value())
                .isEqualTo(limits.packRegen().valueAt(charge, temperature));
        assertThat(limits.packDischarge().at(charge, temperature).value())
                .isEqualTo(limits.packDischarge().valueAt(charge, temperature));
    }

    @Property
    void thePackNeverTakesMoreThanItsStaticLimit(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = -20.0, max = 60.0) double temperatureC) {
        PackLimit regen = Limits.of(build).packRegen();
        assertThat(regen.valueAt(charge, temperatureC))
                .isLessThanOrEqualTo(regen.staticPart(temperatureC).value());
    }

    @Property
    void outsideItsChargingTemperaturesThePackTakesNothing(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 14.0) double beyond) {
        PackLimit regen = Limits.of(build).packRegen();
        assertThat(regen.valueAt(charge, 45.0 + beyond)).isZero();
        assertThat(regen.valueAt(charge, -beyond)).isZero();
    }

    /** Held to even resistance, where what is permitted changes one way only. */
    @Property
    void theChargeBoundSeparatesWhatIsTakenFromWhatIsNot(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 40.0) double current) {
        Build build = even(any);
        double temperature = build.battery().temperatureC();
        PackLimit regen = Limits.of(build).packRegen();
        double bound = regen.chargeBound(current, temperature);
        assertThat(bound).isBetween(0.0, 1.0);
        if (bound > A_LITTLE) {
            assertThat(byVoltage(regen, bound - A_LITTLE, temperature))
                    .isGreaterThanOrEqualTo(current * (1.0 - 1e-9));
        }
        if (bound < 1.0 - A_LITTLE) {
            assertThat(byVoltage(regen, bound + A_LITTLE, temperature))
                    .isLessThanOrEqualTo(current * (1.0 + 1e-9));
        }
    }

    @Property
    void theChargeBoundSeparatesWhatIsGivenFromWhatIsNot(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 150.0) double current) {
        Build build = even(any);
        double temperature = build.battery().temperatureC();
        PackLimit discharge = Limits.of(build).packDischarge();
        double bound = discharge.chargeBound(current, temperature);
        assertThat(bound).isBetween(0.0, 1.0);
        if (bound < 1.0 - A_LITTLE) {
            assertThat(byVoltage(discharge, bound + A_LITTLE, temperature))
                    .isGreaterThanOrEqualTo(current * (1.0 - 1e-9));
        }
        if (bound > A_LITTLE) {
            assertThat(byVoltage(discharge, bound - A_LITTLE, temperature))
                    .isLessThanOrEqualTo(current * (1.0 + 1e-9));
        }
    }

    /**
     * At the bound itself the current is permitted, whatever the curves of one pack; several are
     * held to even resistance, and their bound is solved to 1e-12.
     */
    @Property
    void theChargeBoundItselfIsPermitted(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 40.0) double current) {
        Build build = any.battery().isOnePack() ? any : even(any);
        double temperature = build.battery().temperatureC();
        PackLimit regen = Limits.of(build).packRegen();
        double bound = regen.chargeBound(current, temperature);
        if (bound > 0.0) {
            double here = build.battery().isOnePack() ? bound : Math.max(0.0, bound - 1e-11);
            assertThat(byVoltage(regen, here, temperature))
                    .isGreaterThanOrEqualTo(current * (1.0 - 1e-6));
        }
    }

    @Property
    void theWindingReachesItsLimitAtTheHeatConstraint(@ForAll Build build) {
        Optional<WindingHeat> heat = MotorHeatBalance.of(build);
        Optional<Constraint> constraint =
                Limits.of(build).motorDrive().constraints().stream()
                        .filter(each -> each.id() == ConstraintId.WINDING_HEAT)
                        .findFirst();
        assertThat(constraint.isPresent()).isEqualTo(build.motor().heat().isPresent());
        if (constraint.isPresent() && constraint.get().limit() > 0.0) {
            WindingHeat model = heat.orElseThrow();
            double reached =
                    model.after(
                                    model.cold(),
                                    constraint.get().limit(),
                                    build.use().effort().hardPull())
                            .windingC();
            assertThat(reached).isLessThanOrEqualTo(build.motor().windingLimitC() + 1e-4);
        }
    }

    @Property
    void atTheSpeedCapTheBackEmfIsWithinTheRatingAndThePack(@ForAll Build build) {
        double cap = Limits.of(build).speedCap().value();
        Powertrain train = Powertrain.of(build);
        double backEmf = train.motor().voltageConstant() * train.angularSpeed(cap);
        assertThat(backEmf)
                .isLessThanOrEqualTo(build.controllers().voltageRating() * (1.0 + ROUNDING));
    }

    @Property
    void aRecommendedTaperEndsInTimeAndIsWideEnough(@ForAll Build build) {
        Limits limits = Limits.of(build);
        for (TaperLimit taper : List.of(limits.lowVoltageTaper(), limits.highVoltageTaper())) {
            double end = taper.binding().limit();
            double band = taper.band().limit();
            boolean low = taper.id() == LimitId.LOW_VOLTAGE_TAPER;
            if (band <= 0.0 || (!low && band >= end)) {
                continue;
            }
            Taper value = taper.value().orElseThrow();
            assertThat(taper.endsInTime(value)).isTrue();
            assertThat(value.band()).isCloseTo(band, within(ROUNDING * end));
            assertThat(taper.isWideEnough(new Taper(low ? end + 2 * band : end - band / 2, end)))
                    .isEqualTo(low);
        }
    }

    /** No current, in the cold for example, needs no taper; no band above zero volts is none. */
    @Property
    void aTaperIsRecommendedWhereThereIsOne(@ForAll Build build) {
        Limits limits = Limits.of(build);
        for (TaperLimit taper : List.of(limits.lowVoltageTaper(), limits.highVoltageTaper())) {
            double begin =
                    taper.id() == LimitId.LOW_VOLTAGE_TAPER
                            ? taper.binding().limit() + taper.band().limit()
                            : taper.binding().limit() - taper.band().limit();
            assertThat(taper.value().isPresent())
                    .isEqualTo(begin > 0.0 && begin != taper.binding().limit());
            taper.value().ifPresent(value -> assertThat(value.begins()).isPositive());
        }
    }

    @Property
    void everyStepOfADerivationIsNamed(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Limits limits = Limits.of(build);
        double temperature = build.battery().temperatureC();
        for (Limit limit :
                List.of(
                        limits.motorDrive(),
                        limits.motorBrake(),
                        limits.speedCap(),
                        limits.packRegen().at(charge, temperature),
                        limits.packDischarge().at(charge, temperature))) {
            for (Constraint constraint : limit.constraints()) {
                assertThat(constraint.derivation().source()).isNotBlank();
                assertThat(constraint.derivation().formula()).isNotBlank();
                assertThat(constraint.derivation().terms())
                        .isNotEmpty()
                        .allSatisfy(term -> assertThat(term.meaning()).isNotBlank())
                        .noneMatch(term -> Double.isNaN(term.value()));
            }
        }
    }

    @Example
    void aLimitNeedsAConstraint() {
        assertThatThrownBy(() -> new Limit(LimitId.SPEED_CAP, List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("speed-cap");
    }

    @Example
    void everyLimitIsFoundByItsName() {
        for (LimitId id : LimitId.values()) {
            assertThat(LimitId.ofKey(id.key())).contains(id);
            assertThat(id.unit()).isNotBlank();
        }
        assertThat(LimitId.ofKey("no-such-limit")).isEmpty();
        for (ConstraintId id : ConstraintId.values()) {
            assertThat(id.key()).matches("[a-z]+(-[a-z]+)*");
            assertThat(id.meaning()).isNotBlank().doesNotEndWith(".");
        }
    }

    private static double byVoltage(PackLimit limit, double charge, double temperatureC) {
        return limit.constraints().stream()
                .filter(PackConstraint::variesWithCharge)
                .mapToDouble(each -> each.limitAt(charge, temperatureC))
                .min()
                .orElseThrow();
    }

    private static Build even(Build build) {
        return Builds.withCells(build, Builds::evenResistance);
    }
}
