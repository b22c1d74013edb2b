package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.machine.WindingHeat;
import brakewright.powertrain.Powertrain;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RiderBalance;
import brakewright.road.RoadLoad;
import brakewright.spec.AnyBuild;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Curve;
import brakewright.spec.GroupSpread;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
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
    void whatIsInEffectIsWhatIsSetOrElseTheLimitAtWhateverCharge(
            @ForAll Build any, @ForAll @DoubleRange(min = 0.0, max = 200.0) double set) {
        Limits unset = Limits.of(any.withSettings(Settings.NONE));
        double temperature = any.battery().temperatureC();
        assertThat(unset.packRegenInEffect())
                .isEqualTo(unset.packRegen().staticPart(temperature).value());
        assertThat(unset.packDischargeInEffect())
                .isEqualTo(unset.packDischarge().staticPart(temperature).value());
        Limits both =
                Limits.of(
                        any.withSettings(
                                Settings.NONE
                                        .withPackRegenCurrent(set)
                                        .withPackDischargeCurrent(set)));
        assertThat(both.packRegenInEffect()).isEqualTo(any.controllers().count() * set);
        assertThat(both.packDischargeInEffect()).isEqualTo(any.controllers().count() * set);
    }

    /** Cells that rest at one voltage at every charge, just below what must not be passed. */
    @Example
    void groupsThatDifferNeverEndATaperLowerWhereNoChargeHasTheVoltage() {
        Build board = Builds.trailBoard();
        double bound =
                Builds.pack(board).protection().cellUndervoltageTrip().orElseThrow()
                        + board.margins().overvoltage();
        Build level =
                Builds.withCells(
                        board, cell -> Builds.withVoltage(cell, Curve.constant(bound - 1e-3)));
        Build spread = spread(level, new GroupSpread(0.0, 1e-6, 0.0));
        assertThat(Limits.of(spread).lowVoltageTaper().binding().limit())
                .isGreaterThanOrEqualTo(Limits.of(level).lowVoltageTaper().binding().limit());
    }

    @Property
    void groupsThatDifferMoreNeverTakeOrGiveMore(
            @ForAll Build any,
            @ForAll GroupSpread spread,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double part,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Limits wide = Limits.of(spread(even(any), spread));
        Limits narrow =
                Limits.of(
                        spread(
                                even(any),
                                new GroupSpread(
                                        part * spread.charge(),
                                        part * spread.capacity(),
                                        part * spread.resistance())));
        double temperature = any.battery().temperatureC();
        assertThat(wide.packRegen().valueAt(charge, temperature))
                .isLessThanOrEqualTo(
                        narrow.packRegen().valueAt(charge, temperature) * (1.0 + 1e-9) + 1e-9);
        assertThat(wide.packDischarge().valueAt(charge, temperature))
                .isLessThanOrEqualTo(
                        narrow.packDischarge().valueAt(charge, temperature) * (1.0 + 1e-9) + 1e-9);
        assertThat(wide.highVoltageTaper().binding().limit())
                .isLessThanOrEqualTo(narrow.highVoltageTaper().binding().limit() + 1e-9);
        assertThat(wide.lowVoltageTaper().binding().limit())
                .isGreaterThanOrEqualTo(narrow.lowVoltageTaper().binding().limit() - 1e-9);
    }

    /** A cold pack takes and gives less, and one warmer than its window nothing at all. */
    @Property
    void noTemperatureIsBetterThanTheWarmestOfTheWindow(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(3) @DoubleRange(min = -40.0, max = 80.0) double cells,
            @ForAll @Scale(3) @DoubleRange(min = -40.0, max = 80.0) double other) {
        Assume.that(any.battery().isOnePack());
        Limits limits = Limits.of(any);
        Cell cell = Builds.pack(any).cell();
        double colder = Math.min(cells, other);
        double warmer = Math.max(cells, other);
        if (warmer <= cell.charging().highestC()) {
            assertThat(limits.packRegen().valueAt(charge, colder))
                    .isLessThanOrEqualTo(
                            limits.packRegen().valueAt(charge, warmer) * (1.0 + 1e-12));
        } else {
            assertThat(limits.packRegen().valueAt(charge, warmer)).isZero();
        }
        if (warmer <= cell.discharging().highestC()) {
            assertThat(limits.packDischarge().valueAt(charge, colder))
                    .isLessThanOrEqualTo(
                            limits.packDischarge().valueAt(charge, warmer) * (1.0 + 1e-12));
        } else {
            assertThat(limits.packDischarge().valueAt(charge, warmer)).isZero();
        }
    }

    private static Build spread(Build build, GroupSpread spread) {
        Battery battery = build.battery();
        return Builds.withBattery(
                build,
                battery.withPacks(
                        battery.packs().stream()
                                .map(pack -> pack.withGroupSpread(spread))
                                .toList()));
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
        Limits limits = Limits.of(build);
        reachesItsLimit(build, limits.motorDrive(), build.use().effort().hardPull());
        reachesItsLimit(build, limits.motorBrake(), build.use().effort().hardBrake());
    }

    /** The current just reaches the limit: a little less does not, and none need if drag does. */
    private static void reachesItsLimit(Build build, Limit limit, double time) {
        Optional<Constraint> constraint =
                limit.constraints().stream()
                        .filter(each -> each.id() == ConstraintId.WINDING_HEAT)
                        .findFirst();
        assertThat(constraint.isPresent()).isEqualTo(build.motor().heat().isPresent());
        if (constraint.isEmpty()) {
            return;
        }
        WindingHeat model = MotorHeatBalance.of(build).orElseThrow();
        double current = constraint.get().limit();
        double most = build.motor().windingLimitC();
        if (current == 0.0) {
            assertThat(model.after(model.cold(), 0.0, time).windingC())
                    .isGreaterThanOrEqualTo(most);
            return;
        }
        // The current is found to 1e-12 of itself or 1e-9 A, whichever is met first.
        assertThat(model.after(model.cold(), current, time).windingC())
                .isCloseTo(most, within(A_LITTLE));
        assertThat(model.after(model.cold(), 0.99 * current, time).windingC()).isLessThan(most);
        assertThat(model.after(model.cold(), 1.01 * current, time).windingC()).isGreaterThan(most);
    }

    @Property
    void atTheSpeedCapTheBackEmfIsWithinTheRatingAndThePack(@ForAll Build build) {
        Limit limit = Limits.of(build).speedCap();
        Powertrain train = Powertrain.of(build);
        double backEmf = train.motor().voltageConstant() * train.angularSpeed(limit.value());
        double margin = build.margins().controllerVoltage();
        double atController = (1.0 - margin) * build.controllers().voltageRating();
        BatteryModel model = new BatteryModel(build.battery());
        double empty = model.openCircuitVoltage(build.use().chargeTo());
        assertThat(backEmf).isLessThanOrEqualTo(atController * (1.0 + ROUNDING));
        assertThat(backEmf).isLessThanOrEqualTo(empty * (1.0 + ROUNDING));
        assertThat(backEmf)
                .isCloseTo(Math.min(atController, empty), within(ROUNDING * atController));
        assertThat(limit.binding().id())
                .isEqualTo(
                        atController <= empty
                                ? ConstraintId.CONTROLLER_BACK_EMF
                                : ConstraintId.PACK_BACK_EMF);
    }

    /** No charge state in use lets the motor charge the packs by force at the cap. */
    @Property
    void atTheSpeedCapNoPackInUseIsChargedByForce(
            @ForAll Build build, @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double part) {
        Powertrain train = Powertrain.of(build);
        double backEmf =
                train.motor().voltageConstant()
                        * train.angularSpeed(Limits.of(build).speedCap().value());
        double charge =
                build.use().chargeTo() + part * (build.use().chargeFrom() - build.use().chargeTo());
        assertThat(backEmf)
                .isLessThanOrEqualTo(
                        new BatteryModel(build.battery()).openCircuitVoltage(charge)
                                * (1.0 + ROUNDING));
    }

    /** A speed cap above the highest speed in use counts as that speed, for every limit alike. */
    @Property(tries = 100)
    void whatACapPermitsIsRidden(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 1.01, max = 2.0) double faster) {
        double cap = faster * any.use().speedMax();
        Build capped = any.withSettings(any.settings().withSpeedCap(OptionalDouble.of(cap)));
        Build ridden = capped.withUse(capped.use().withSpeedMax(cap));
        Limits limits = Limits.of(capped);
        Limits same = Limits.of(ridden);
        assertThat(limits.motorDrive().value()).isEqualTo(same.motorDrive().value());
        assertThat(limits.motorBrake().value()).isEqualTo(same.motorBrake().value());
        double charge = any.use().chargeFrom();
        double cellsC = any.battery().temperatureC();
        assertThat(limits.packRegen().valueAt(charge, cellsC))
                .isEqualTo(same.packRegen().valueAt(charge, cellsC));
        assertThat(limits.packDischarge().valueAt(charge, cellsC))
                .isEqualTo(same.packDischarge().valueAt(charge, cellsC));
        assertThat(limits.highVoltageTaper().value()).isEqualTo(same.highVoltageTaper().value());
        assertThat(MotorHeatBalance.of(capped).map(WindingHeat::continuousCurrent))
                .isEqualTo(MotorHeatBalance.of(ridden).map(WindingHeat::continuousCurrent));
    }

    /** Braking at the highest speed that is met with the limit, the whole is what is borne. */
    @Property
    void aBrakeCurrentAtItsLimitIsFeltAsTheBoundSays(@ForAll Build build) {
        double speed = build.highestSpeed();
        double road = RoadLoad.of(build).force(speed, 0.0, 0.0);
        Powertrain train = Powertrain.of(build);
        for (Constraint each : Limits.of(build).motorBrake().constraints()) {
            double borne =
                    switch (each.id()) {
                        case RIDER_TOLERANCE -> build.criteria().riderDecelerationMax();
                        case RIDER_BALANCE -> Gravity.STANDARD * RiderBalance.tip(build.rider());
                        case TIPPING ->
                                Gravity.STANDARD
                                        * new LoadTransfer(build.vehicle().axles()).brakingTip();
                        default -> Double.NaN;
                    };
            if (!Double.isNaN(borne) && each.limit() > 0.0) {
                double felt = (train.brakeForce(each.limit(), speed) + road) / build.inertia();
                assertThat(felt).isCloseTo(borne, within(1e-9 * borne));
            }
        }
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
            assertThat(id.unit().plain()).isNotBlank();
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
