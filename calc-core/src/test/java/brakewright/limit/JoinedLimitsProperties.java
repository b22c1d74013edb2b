package brakewright.limit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.spec.AnyBuild;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Curve;
import brakewright.spec.FuseBreaking;
import brakewright.spec.Joined;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.Taper;
import brakewright.spec.WhichPack;
import brakewright.spec.Wiring;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** What several packs together may give and take is what each of them may. */
@Tag("law")
@Domain(AnyBuild.class)
@Domain(DomainContext.Global.class)
class JoinedLimitsProperties {

    private static final double ROUNDING = 1e-9;
    private static final double A_LITTLE = 1e-6;

    /** The charge bound of several packs is solved to 1e-12. */
    private static final double NEAR = 1e-9;

    /** What is told of the whole, and not of a pack. */
    private static final Set<ConstraintId> OF_THE_WHOLE =
            Set.of(
                    ConstraintId.CONTROLLER_PACK_RATING,
                    ConstraintId.CONTROLLER_VOLTAGE_RATING,
                    ConstraintId.MAIN_FUSE,
                    ConstraintId.MAIN_WIRE,
                    ConstraintId.MAIN_PLUG);

    @Property
    void atTheLimitNoPackTakesMoreThanItMay(
            @ForAll Build any,
            @ForAll Joined joined,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Build build = Builds.withBattery(any, joined.battery());
        eachWithinItsOwn(joined.battery().packs().size() > 2 ? even(build) : build, charge, true);
    }

    @Property
    void atTheLimitNoPackGivesMoreThanItMay(
            @ForAll Build any,
            @ForAll Joined joined,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Build build = Builds.withBattery(any, joined.battery());
        eachWithinItsOwn(joined.battery().packs().size() > 2 ? even(build) : build, charge, false);
    }

    /** The pack that binds by a voltage has nothing left of it. */
    @Property
    void thePackThatBindsByItsVoltageStandsOnIt(
            @ForAll Build any,
            @ForAll Joined joined,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Build build = Builds.withBattery(any, joined.battery());
        double temperature = build.battery().temperatureC();
        for (PackLimit limit : new PackLimit[] {packRegen(build), packDischarge(build)}) {
            Constraint binding = limit.at(charge, temperature).binding();
            BatteryModel drawn = new BatteryModel(build.battery());
            BatteryModel model = limit.id() == LimitId.PACK_REGEN_CURRENT ? drawn.into() : drawn;
            if (binding.pack().isWhole()
                    || binding.limit() == 0.0
                    || binding.id() == ConstraintId.CELL_CHARGE_RATING_AT_CHARGE
                    || !(bindingOf(limit, binding) instanceof VoltageConstraint)) {
                continue;
            }
            int place = binding.pack().number().orElseThrow() - 1;
            PackModel pack = model.packs().get(place);
            double own = binding.limit() * model.share(place, charge, temperature);
            double there = model.chargeOf(place, charge);
            double lasts = Math.max(Cell.PULSE, Limits.of(build).brakingTime().seconds());
            double cell =
                    limit.id() == LimitId.PACK_REGEN_CURRENT
                            ? pack.highestCellVoltage(own, there, temperature, lasts)
                            : pack.lowestCellVoltage(own, there, temperature, Cell.PULSE);
            assertThat(cell).isCloseTo(cellBound(build, place, binding.id()), within(ROUNDING));
        }
    }

    /** Held to even resistance, where what is left of a voltage does not bend. */
    @Property
    void theChargeBoundUsesUpTheSlackOfThePackThatSetsIt(
            @ForAll Build any,
            @ForAll Joined joined,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 100.0) double current) {
        Build build = even(Builds.withBattery(any, joined.battery()));
        double temperature = build.battery().temperatureC();
        for (PackLimit limit : new PackLimit[] {packRegen(build), packDischarge(build)}) {
            double bound = limit.chargeBound(current, temperature);
            if (bound <= 0.0 || bound >= 1.0) {
                continue;
            }
            double inner = limit.id() == LimitId.PACK_REGEN_CURRENT ? -NEAR : NEAR;
            assertThat(leastSlack(limit, current, bound + inner, temperature))
                    .isGreaterThanOrEqualTo(-ROUNDING);
            assertThat(leastSlack(limit, current, bound - inner, temperature))
                    .isLessThanOrEqualTo(ROUNDING);
        }
    }

    private static double leastSlack(
            PackLimit limit, double current, double charge, double temperatureC) {
        return limit.constraints().stream()
                .filter(VoltageConstraint.class::isInstance)
                .mapToDouble(
                        each -> ((VoltageConstraint) each).slack(current, charge, temperatureC))
                .min()
                .orElseThrow();
    }

    /** Held to even resistance, as above. */
    @Property
    void belowTheChargeBoundACurrentIsAlwaysTaken(
            @ForAll Build any,
            @ForAll Joined joined,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 100.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double share) {
        Build build = even(Builds.withBattery(any, joined.battery()));
        double temperature = build.battery().temperatureC();
        PackLimit regen = packRegen(build);
        double bound = regen.chargeBound(current, temperature);
        if (share * bound > bound - A_LITTLE) {
            return;
        }
        for (PackConstraint each : regen.constraints()) {
            if (each.variesWithCharge()) {
                assertThat(each.limitAt(share * bound, temperature))
                        .isGreaterThanOrEqualTo(current * (1.0 - ROUNDING));
            }
        }
    }

    @Property
    void equalPacksInParallelMayWhatOneOfMoreCellsMay(
            @ForAll Build any,
            @ForAll Pack pack,
            @ForAll @IntRange(min = 2, max = 4) int count,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Assume.that(
                pack.cell().openCircuitVoltage().at(0.0)
                        < pack.cell().openCircuitVoltage().at(1.0));
        Pack each = changed(pack, pack.series(), pack.parallel(), pack.jointResistance(), 1);
        Pack one =
                changed(
                        pack,
                        pack.series(),
                        count * pack.parallel(),
                        pack.jointResistance() / count,
                        count);
        alike(any, each, count, Joining.PARALLEL, one, charge);
    }

    @Property
    void equalPacksInSeriesMayWhatOneOfMoreGroupsMay(
            @ForAll Build any,
            @ForAll Pack pack,
            @ForAll @IntRange(min = 2, max = 4) int count,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Pack each = changed(pack, pack.series(), pack.parallel(), pack.jointResistance(), 1);
        Pack one =
                changed(
                        pack,
                        count * pack.series(),
                        pack.parallel(),
                        count * pack.jointResistance(),
                        1);
        alike(any, each, count, Joining.SERIES, one, charge);
    }

    @Property
    void theTrunkIsLoadedByAllPacksTogether(@ForAll Build any, @ForAll Joined joined) {
        Battery old = joined.battery();
        Wiring weak =
                new Wiring(
                        OptionalDouble.empty(),
                        FuseBreaking.UNKNOWN,
                        OptionalDouble.empty(),
                        OptionalDouble.of(1e-3),
                        false);
        Build build =
                Builds.withMargins(
                        Builds.withBattery(
                                any,
                                new Battery(
                                        old.packs(), old.joining(), weak, old.trunkResistance())),
                        Builds.NO_MARGINS);
        Limit discharge = packDischarge(build).staticPart(25.0);
        assertThat(discharge.value()).isEqualTo(1e-3);
        assertThat(discharge.binding().id()).isEqualTo(ConstraintId.MAIN_PLUG);
        assertThat(discharge.binding().pack()).isEqualTo(WhichPack.WHOLE);
    }

    @Property
    void everyConstraintIsAboutAPackThatIsThere(
            @ForAll Build any,
            @ForAll Joined joined,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge) {
        Build build = Builds.withBattery(any, joined.battery());
        double temperature = build.battery().temperatureC();
        int count = build.battery().packs().size();
        for (PackLimit limit : new PackLimit[] {packRegen(build), packDischarge(build)}) {
            for (PackConstraint each : limit.constraints()) {
                Constraint told = each.at(charge, temperature);
                assertThat(told.pack()).isEqualTo(each.pack());
                assertThat(told.pack().number().orElse(1)).isLessThanOrEqualTo(count);
                assertThat(told.limit()).isEqualTo(each.limitAt(charge, temperature));
                if (each.pack().isWhole()) {
                    assertThat(OF_THE_WHOLE).contains(each.id());
                }
            }
        }
    }

    /** The cells of neither pack rest as high as they may be charged. */
    /** The share of the first is greatest between the points of the others' curves. */
    @Example
    void oneOfThreePacksIsNotOverloadedBetweenThePointsOfTheCurves() {
        Battery battery =
                Builds.joined(
                        Joining.PARALLEL,
                        List.of(stiffening(1.0, 1.0), stiffening(1.0, 2.0), stiffening(2.0, 1.0)));
        eachWithinItsOwn(
                Builds.withMargins(
                        Builds.withBattery(Builds.trailBoard(), battery), Builds.NO_MARGINS),
                0.5,
                false);
    }

    /** Both packs in parallel are stiffest half full, where neither curve has a point. */
    @Example
    void theChargeBoundOfPacksThatStiffenBetweenTheirPointsIsKept() {
        Battery battery =
                Builds.joined(
                        Joining.PARALLEL, List.of(stiffening(1.0, 3.0), stiffening(3.0, 1.0)));
        PackLimit discharge =
                packDischarge(
                        Builds.withMargins(
                                Builds.withBattery(Builds.trailBoard(), battery),
                                Builds.NO_MARGINS));
        double bound = discharge.chargeBound(180.0, 25.0);
        for (int step = 0; step <= 1000; step++) {
            double charge = bound + step / 1000.0 * (1.0 - bound);
            assertThat(leastSlack(discharge, 180.0, charge, 25.0))
                    .as("at %s", charge)
                    .isGreaterThanOrEqualTo(-ROUNDING);
        }
    }

    /** The resistance of packs in parallel is no straight line between the points. */
    @Example
    void theChargeBoundByTheControllersVoltageUsesItUp() {
        Battery battery =
                Builds.joined(
                        Joining.PARALLEL, List.of(stiffening(1.0, 3.0), stiffening(3.0, 1.0)));
        BatteryModel model = new BatteryModel(battery);
        ControllerVoltage rating =
                new ControllerVoltage(
                        battery, model, 38.5, 0.0, Lasting.pulse(Builds.trailBoard(), model));
        PackLimit regen = PackLimit.taking(List.of(rating), model.knots());
        double bound = regen.chargeBound(35.0, 25.0);
        assertThat(bound).isBetween(0.01, 0.99);
        assertThat(rating.slack(35.0, bound, 25.0)).isCloseTo(0.0, within(ROUNDING));
    }

    /** Of two packs alike but for what one resists more while it is charged, that carries less. */
    @Example
    void thePackThatBindsByItsVoltageStandsOnItWhereOneResistsMoreWhileCharged() {
        Cell cell =
                Builds.withVoltage(
                        Builds.rated(Builds.flatCell(3.5, 0.1, 2.0, 4.2), 10.0, 10.0),
                        Curve.of(new double[] {0.0, 1.0}, new double[] {3.4, 3.6}));
        Cell stiffer = Builds.resistingMoreWhileCharged(cell, 0.5);
        Joined joined =
                new Joined(
                        Builds.joined(
                                Joining.PARALLEL,
                                List.of(
                                        Builds.barePack(cell, 10, 1, 0.0),
                                        Builds.barePack(stiffer, 10, 1, 0.0))));
        thePackThatBindsByItsVoltageStandsOnIt(Builds.trailBoard(), joined, 0.9);
    }

    private static Build even(Build build) {
        return Builds.withCells(build, Builds::evenResistance);
    }

    private static Pack stiffening(double empty, double full) {
        Cell cell =
                Builds.withVoltage(
                        Builds.rated(Builds.flatCell(3.5, 0.01, 2.0, 4.2), 10.0, 10.0),
                        Curve.of(new double[] {0.0, 1.0}, new double[] {3.4, 3.6}));
        return Builds.barePack(
                Builds.withResistanceByCharge(
                        cell, Curve.of(new double[] {0.0, 1.0}, new double[] {empty, full})),
                10,
                1,
                0.0);
    }

    private static List<PackConstraint> taking(
            PackConstraints own, Build build, BatteryModel model, int place) {
        double share = model.greatestShare(place, build.battery().temperatureC());
        return own.taking(
                new Lasting(build, model, Double.NaN, Limits.of(build).brakingTime()),
                current -> BrakingTime.of(build, model, current / share).seconds());
    }

    private static void eachWithinItsOwn(Build build, double charge, boolean taking) {
        double temperature = build.battery().temperatureC();
        double whole =
                (taking ? packRegen(build) : packDischarge(build)).valueAt(charge, temperature);
        BatteryModel drawn = new BatteryModel(build.battery());
        BatteryModel model = taking ? drawn.into() : drawn;
        for (int k = 0; k < model.packs().size(); k++) {
            PackModel pack = model.packs().get(k);
            PackConstraints own = new PackConstraints(pack, build.use(), build.margins());
            double current = whole * model.share(k, charge, temperature);
            for (PackConstraint each : taking ? taking(own, build, model, k) : own.giving()) {
                double permitted = each.limitAt(model.chargeOf(k, charge), temperature);
                assertThat(current)
                        .as("pack %s, %s", k + 1, each.id())
                        .isLessThanOrEqualTo(permitted * (1.0 + ROUNDING));
            }
        }
    }

    private static void alike(
            Build any, Pack each, int count, Joining joining, Pack one, double charge) {
        Build joined =
                Builds.withBattery(any, Builds.joined(joining, Collections.nCopies(count, each)));
        Build single = Builds.withPack(any, one);
        double temperature = each.temperatureC();
        same(packRegen(joined), packRegen(single), charge, temperature);
        same(packDischarge(joined), packDischarge(single), charge, temperature);
        Limits limits = Limits.of(joined);
        Limits expected = Limits.of(single);
        if (joining == Joining.PARALLEL || restsAtItsLimits(joined)) {
            same(limits.highVoltageTaper(), expected.highVoltageTaper());
            same(limits.lowVoltageTaper(), expected.lowVoltageTaper());
        }
        assertThat(limits.speedCap().value())
                .isCloseTo(
                        expected.speedCap().value(),
                        within(ROUNDING * expected.speedCap().value()));
    }

    /** Whether the cells reach every voltage that bounds a taper without a current. */
    private static boolean restsAtItsLimits(Build build) {
        Pack pack = build.battery().packs().get(0);
        Curve rest = pack.cell().openCircuitVoltage();
        double margin = build.margins().overvoltage();
        Protection trips = pack.protection();
        return rest.at(0.0) <= pack.cell().voltageMin()
                && rest.at(1.0) >= pack.cell().voltageMax()
                && rest.at(0.0) <= trips.cellUndervoltageTrip().orElse(9.0) + margin
                && rest.at(1.0) >= trips.cellOvervoltageTrip().orElse(0.0) - margin;
    }

    private static void same(TaperLimit got, TaperLimit expected) {
        assertThat(got.value().isPresent()).isEqualTo(expected.value().isPresent());
        if (expected.value().isPresent()) {
            Taper taper = expected.value().get();
            assertThat(got.value().get().ends())
                    .isCloseTo(taper.ends(), within(ROUNDING * taper.ends()));
            assertThat(got.value().get().begins())
                    .isCloseTo(taper.begins(), within(ROUNDING * taper.ends()));
        }
    }

    private static void same(
            PackLimit got, PackLimit expected, double charge, double temperatureC) {
        double value = expected.valueAt(charge, temperatureC);
        assertThat(got.valueAt(charge, temperatureC))
                .isCloseTo(value, within(ROUNDING * (1.0 + value)));
        double part = expected.staticPart(temperatureC).value();
        assertThat(got.staticPart(temperatureC).value()).isCloseTo(part, within(ROUNDING * part));
    }

    /** Without spread: the best cell of several groups is one of each, not one of all. */
    private static Pack changed(Pack pack, int series, int parallel, double joints, int times) {
        Protection trips = pack.protection();
        Wiring wiring = pack.wiring();
        return pack.withSeries(series)
                .withParallel(parallel)
                .withJointResistance(joints)
                .withResistanceSpread(0.0)
                .withProtection(
                        trips.withDischargeTrip(times(trips.dischargeTrip(), times))
                                .withChargeTrip(times(trips.chargeTrip(), times)))
                .withWiring(
                        wiring.withFuseRating(times(wiring.fuseRating(), times))
                                .withWireAmpacity(times(wiring.wireAmpacity(), times))
                                .withPlugRating(times(wiring.plugRating(), times)));
    }

    private static OptionalDouble times(OptionalDouble value, int times) {
        return value.isPresent() ? OptionalDouble.of(times * value.getAsDouble()) : value;
    }

    private static PackConstraint bindingOf(PackLimit limit, Constraint binding) {
        return limit.constraints().stream()
                .filter(each -> each.id() == binding.id() && each.pack().equals(binding.pack()))
                .findFirst()
                .orElseThrow();
    }

    private static double cellBound(Build build, int place, ConstraintId id) {
        Pack pack = build.battery().packs().get(place);
        double margin = build.margins().overvoltage();
        return switch (id) {
            case VOLTAGE_CEILING -> pack.cell().voltageMax();
            case VOLTAGE_FLOOR -> pack.cell().voltageMin();
            case PROTECTION_OVERVOLTAGE_TRIP ->
                    pack.protection().cellOvervoltageTrip().orElseThrow() - margin;
            case PROTECTION_UNDERVOLTAGE_TRIP ->
                    pack.protection().cellUndervoltageTrip().orElseThrow() + margin;
            default -> throw new IllegalArgumentException(id.key());
        };
    }

    private static PackLimit packRegen(Build build) {
        return Limits.of(build).packRegen();
    }

    private static PackLimit packDischarge(Build build) {
        return Limits.of(build).packDischarge();
    }
}
