package brakewright.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.powertrain.AnyDriven;
import brakewright.powertrain.PackState;
import brakewright.spec.ArrheniusCurve;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.ChargingWindow;
import brakewright.spec.Curve;
import brakewright.spec.DischargingWindow;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Use;
import brakewright.spec.Wiring;
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
@Domain(AnyDriven.class)
@Domain(DomainContext.Global.class)
class PackHeatProperties {

    private static final double ROUNDING = 1e-9;
    private static final int STEPS = 20_000;

    /** The middle of a step stands for all of it; kinks of the curves lie inside steps. */
    private static final double COARSE = 1e-5;

    /** Steps of a kelvin and more against many small ones; kinks of the curves lie inside both. */
    private static final double STEPPED = 1e-3;

    private static final int SMALL_STEPS = 4000;

    /** Two rides that are stepped differently agree within this [K], and [s]. */
    private static final double SAME_K = 0.05;

    private static final double SAME_S = 5.0;

    /** No cell is so warm; for laws alone [°C]. */
    private static final double BEARS_ALL_C = 1e6;

    private static final OptionalDouble NO_WAY = OptionalDouble.empty();

    /** {@code ∫I²·r dt = I·∫r dq}, where the resistance does not change as the cells warm. */
    @Property(tries = 300)
    void theRiseIsProportionalToASteadyCurrent(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 100.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 4.0) double factor) {
        Build build = bearingAll(Builds.withCells(any, PackHeatProperties::evenlyResisting));
        PackHeat less = heated(PackHeat.atCurrent(build, current));
        PackHeat more = heated(PackHeat.atCurrent(build, factor * current));
        Assume.that(less.pack() == more.pack());
        assertThat(more.riseK()).isCloseTo(factor * less.riseK(), within(ROUNDING * more.riseK()));
        assertThat(more.time()).isCloseTo(less.time() / factor, within(ROUNDING * less.time()));
        assertThat(less.meanCurrent()).isCloseTo(current, within(ROUNDING * current));
    }

    /** Cells no colder than the air: in less time less heat leaves, too. */
    @Property(tries = 300)
    void morePowerNeverHeatsLess(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 5.0, max = 1000.0) double power,
            @ForAll @Scale(6) @DoubleRange(min = 1.01, max = 3.0) double factor) {
        Build build = noColderThanTheAir(any);
        Optional<PackHeat> less = PackHeat.atPower(build, power);
        Optional<PackHeat> more = PackHeat.atPower(build, factor * power);
        Assume.that(more.isPresent() && less.isPresent());
        Assume.that(less.get().pack() == more.get().pack());
        assertThat(more.get().endC()).isGreaterThanOrEqualTo(less.get().endC() - SAME_K);
        assertThat(more.get().meanCurrent()).isGreaterThan(less.get().meanCurrent());
    }

    /** A pack by itself: of several another one might be told. */
    @Property(tries = 300)
    void moreLossToTheAirNeverLeavesTheCellsWarmer(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 100.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 20.0) double toAir,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 10.0) double factor) {
        Build build = noColderThanTheAir(any);
        PackHeat without = heated(PackHeat.atCurrent(through(build, NO_WAY), current));
        PackHeat little =
                heated(
                        PackHeat.atCurrent(
                                through(build, OptionalDouble.of(factor * toAir)), current));
        PackHeat more =
                heated(PackHeat.atCurrent(through(build, OptionalDouble.of(toAir)), current));
        assertThat(little.endC()).isLessThanOrEqualTo(without.endC() + SAME_K);
        assertThat(more.endC()).isLessThanOrEqualTo(little.endC() + SAME_K);
        assertThat(more.stoppedAfter().orElse(Double.POSITIVE_INFINITY))
                .isGreaterThanOrEqualTo(
                        little.stoppedAfter().orElse(Double.POSITIVE_INFINITY) - SAME_S);
    }

    /** At a steady heat the cells go straight for where they settle. */
    @Property(tries = 300)
    void aLongerRideNeverLeavesTheCellsCooler(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 100.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.9) double part) {
        Build build =
                atTheTemperatureOfTheAir(
                        Builds.withCells(any, PackHeatProperties::evenlyResisting));
        Use use = build.use();
        double to = use.chargeFrom() - (1.0 - part) * (use.chargeFrom() - use.chargeTo());
        Assume.that(to < use.chargeFrom());
        PackHeat whole = heated(PackHeat.atCurrent(build, current));
        PackHeat shorter =
                heated(PackHeat.atCurrent(Builds.withUse(build, down(use, to)), current));
        Assume.that(whole.pack() == shorter.pack());
        assertThat(whole.endC()).isGreaterThanOrEqualTo(shorter.endC() - ROUNDING * 100.0);
    }

    /** Through a way to the air so short that they settle long before the charge is gone. */
    @Property(tries = 300)
    void aLongRideReachesTheSteadyState(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 30.0) double current) {
        Build even =
                atTheTemperatureOfTheAir(
                        Builds.withCells(any, PackHeatProperties::evenlyResisting));
        PackHeat free = heated(PackHeat.atCurrent(bearingAll(through(even, NO_WAY)), current));
        Pack pack = even.battery().packs().get(0);
        double capacity =
                pack.series() * pack.parallel() * pack.cell().heatCapacity().getAsDouble();
        double toAir = free.time() / capacity / 100.0;
        Build build = bearingAll(through(even, OptionalDouble.of(toAir)));
        double settled =
                build.use().climate().ambientC() + free.riseK() * capacity / free.time() * toAir;
        Assume.that(settled < BEARS_ALL_C);
        assertThat(heated(PackHeat.atCurrent(build, current)).endC())
                .isCloseTo(settled, within(1e-6 * (1.0 + free.riseK())));
    }

    /** What is warmer than the maker permits is never told, and from when is. */
    @Property(tries = 300)
    void theRideIsStoppedWhereTheCellsMayNotBeDischarged(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 100.0) double current) {
        PackHeat heat = heated(PackHeat.atCurrent(build, current));
        assertThat(heat.highestC())
                .isBetween(
                        Math.max(heat.startC(), heat.endC()),
                        Math.max(heat.startC(), heat.dischargeLimitC()));
        if (heat.stoppedAfter().isPresent()) {
            assertThat(heat.endC()).isEqualTo(Math.max(heat.startC(), heat.dischargeLimitC()));
            assertThat(heat.stoppedAfter().getAsDouble()).isBetween(0.0, heat.time());
        } else {
            assertThat(heat.endC()).isLessThanOrEqualTo(heat.dischargeLimitC());
        }
        assertThat(heat.warmAfter().isPresent()).isEqualTo(heat.highestC() > heat.chargeLimitC());
        if (heat.warmAfter().isPresent() && heat.stoppedAfter().isPresent()) {
            assertThat(heat.warmAfter().getAsDouble())
                    .isLessThanOrEqualTo(heat.stoppedAfter().getAsDouble());
        }
    }

    /** Ten cells in series, four side by side, on a gentle ride: some kelvin, not a hundred. */
    @Example
    void aGentleRideWarmsAnOrdinaryPackByAFewKelvin() {
        Build board =
                atTheTemperatureOfTheAir(through(Builds.trailBoard(), OptionalDouble.of(2.4)));
        PackHeat heat = PackHeat.atPower(board, 150.0).orElseThrow();
        assertThat(heat.endC() - heat.startC()).isBetween(1.0, 15.0);
        assertThat(heat.stoppedAfter()).isEmpty();
    }

    /**
     * In the middle of a piece of the charge it can be drawn, in the middle of a step it cannot.
     */
    @Example
    void nothingIsToldOfAPowerThatTheEmptierPackCannotGive() {
        Curve rising = Curve.of(new double[] {0.0, 1.0}, new double[] {10.0, 1.0});
        Build build =
                Builds.withCells(
                        Builds.trailBoard(), cell -> Builds.withResistanceByCharge(cell, rising));
        BatteryModel model = new BatteryModel(build.battery());
        double cellsC = build.battery().temperatureC();
        double full = greatestPower(model, build.use().chargeFrom(), cellsC);
        double empty = greatestPower(model, build.use().chargeTo(), cellsC);
        for (int i = 1; i < 500; i++) {
            double power = empty + (full - empty) * i / 500;
            assertThat(PackHeat.atPower(build, power).isPresent())
                    .as("%s W", power)
                    .isIn(power < 2.0 * empty, false);
        }
    }

    private static double greatestPower(BatteryModel model, double charge, double cellsC) {
        return PackState.of(model, charge, cellsC, Double.POSITIVE_INFINITY).greatestPower();
    }

    @Property(tries = 60)
    void agreesWithManySmallSteps(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 60.0) double current) {
        agreesWithManySmallSteps(build, heated(PackHeat.atCurrent(build, current)), current);
    }

    /** Of a pack whose heat capacity is not known nothing is told; the other is the warmest. */
    @Example
    void tellsOfThePackWhoseHeatCapacityIsKnown() {
        Pack known = Builds.pack(Builds.trailBoard());
        Pack unknown =
                Builds.pack(
                        Builds.withCells(
                                Builds.trailBoard(), PackHeatProperties::withoutHeatCapacity));
        for (int place = 1; place <= 2; place++) {
            List<Pack> packs = place == 1 ? List.of(known, unknown) : List.of(unknown, known);
            Build build =
                    Builds.trailBoard()
                            .withBattery(new Battery(packs, Joining.PARALLEL, Wiring.NONE, 0.0));
            PackHeat heat = PackHeat.atCurrent(build, 30.0).orElseThrow();
            assertThat(heat.pack()).isEqualTo(place);
            agreesWithManySmallSteps(build, heat, 30.0);
        }
    }

    /**
     * Cells that resist several times as much when nearly empty, so near to the air and so little
     * drawn from that they are as warm as the heat of the last minutes makes them.
     */
    @Example
    void cellsThatFollowTheirHeatAtOnceAreAsWarmAsItsEndMakesThem() {
        Build build = following(0.1);
        agreesWithManySmallSteps(build, PackHeat.atCurrent(build, 10.0).orElseThrow(), 10.0);
    }

    /** Where that hardly warms them, steps are not short for it. */
    @Example
    void cellsThatFollowTheirHeatAtOnceAreToldToAThousandthOfAKelvin() {
        for (double toAir : new double[] {0.01, 1e-3, 1e-4}) {
            Build build = following(toAir);
            assertThat(PackHeat.atCurrent(build, 10.0).orElseThrow().endC())
                    .isCloseTo(endC(build, 0, 10.0), within(1e-3));
        }
    }

    private static Build following(double toAir) {
        Curve steep = Curve.of(new double[] {0.1, 0.2, 1.0}, new double[] {8.0, 1.0, 1.0});
        Build board =
                Builds.withCells(
                        Builds.trailBoard(),
                        cell ->
                                cell.withResistanceByCharge(
                                                cell.resistanceByCharge().withDrawn(steep))
                                        .withHeatCapacity(OptionalDouble.of(20.0)));
        Pack airy = Builds.pack(board).withToAir(OptionalDouble.of(toAir));
        return board.withBattery(new Battery(List.of(airy), Joining.PARALLEL, Wiring.NONE, 0.0))
                .withUse(board.use().withChargeTo(0.1).withChargeFrom(0.5));
    }

    private static void agreesWithManySmallSteps(Build build, PackHeat heat, double current) {
        double warmest = Double.NEGATIVE_INFINITY;
        for (int place = 0; place < build.battery().packs().size(); place++) {
            if (build.battery().packs().get(place).cell().heatCapacity().isEmpty()) {
                assertThat(heat.pack()).isNotEqualTo(place + 1);
                continue;
            }
            double end = endC(build, place, current);
            warmest = Math.max(warmest, end);
            if (place == heat.pack() - 1) {
                double change = Math.abs(end - build.battery().temperatureC()) + heat.riseK();
                assertThat(heat.endC()).isCloseTo(end, within(STEPPED * change));
            }
        }
        double tie = STEPPED * (1.0 + heat.riseK());
        assertThat(heat.endC()).isGreaterThanOrEqualTo(warmest - tie);
    }

    /** Without a way to the air nothing is lost. */
    @Property(tries = 300)
    void withoutAWayToTheAirAllHeatStays(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 100.0) double current) {
        PackHeat heat = heated(PackHeat.atCurrent(through(build, NO_WAY), current));
        assertThat(heat.endC())
                .isCloseTo(heat.startC() + heat.riseK(), within(ROUNDING * (100.0 + heat.riseK())));
    }

    /** Cooling by many small steps of the heat balance, {@code C·dT/dt = (Ta − T)/Rth}. */
    @Property(tries = 300)
    void afterTheWaitTheCellsMayJustBeCharged(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 100.0) double current) {
        PackHeat heat = heated(PackHeat.atCurrent(build, current));
        var pack = build.battery().packs().get(heat.pack() - 1);
        assertThat(heat.chargeLimitC()).isEqualTo(pack.cell().charging().highestC());
        double air = build.use().climate().ambientC();
        if (heat.endC() <= heat.chargeLimitC()) {
            assertThat(heat.chargeAfter()).hasValue(0.0);
        } else if (pack.toAir().isEmpty() || air >= heat.chargeLimitC()) {
            assertThat(heat.chargeAfter()).isEmpty();
        } else {
            double constant =
                    pack.toAir().getAsDouble()
                            * pack.series()
                            * pack.parallel()
                            * pack.cell().heatCapacity().getAsDouble();
            double step = heat.chargeAfter().getAsDouble() / STEPS;
            double cells = heat.endC();
            for (int i = 0; i < STEPS; i++) {
                double half = cells + 0.5 * step * (air - cells) / constant;
                cells += step * (air - half) / constant;
            }
            assertThat(cells).isCloseTo(heat.chargeLimitC(), within(COARSE * (heat.endC() - air)));
        }
    }

    private static Cell withoutHeatCapacity(Cell cell) {
        return cell.withHeatCapacity(OptionalDouble.empty());
    }

    private static PackHeat heated(Optional<PackHeat> heat) {
        Assume.that(heat.isPresent());
        return heat.get();
    }

    /** One pack's heat balance in many small steps, the temperature at the middle of each. */
    private static double endC(Build build, int place, double current) {
        BatteryModel model = new BatteryModel(build.battery());
        PackModel pack = model.packs().get(place);
        double from = build.use().chargeFrom();
        double width = (from - build.use().chargeTo()) / SMALL_STEPS;
        double duration = width * 3600.0 * model.capacityAh() / current;
        double capacity =
                pack.pack().series()
                        * pack.pack().parallel()
                        * pack.pack().cell().heatCapacity().orElseThrow();
        double toAir = pack.pack().toAir().orElse(Double.POSITIVE_INFINITY);
        double air = build.use().climate().ambientC();
        double most = pack.pack().cell().discharging().highestC();
        double cells = build.battery().temperatureC();
        int parts = (int) Math.ceil(Math.max(1.0, 10.0 * duration / (toAir * capacity)));
        for (int step = 0; step < SMALL_STEPS && cells < most; step++) {
            double charge = from - (step + 0.5) * width;
            for (int part = 0; part < parts && cells < most; part++) {
                double dt = duration / parts;
                double first = heating(build, model, place, charge, cells, current);
                double half = cells + 0.5 * dt * (first + (air - cells) / toAir) / capacity;
                double middle = heating(build, model, place, charge, half, current);
                cells += dt * (middle + (air - half) / toAir) / capacity;
            }
        }
        return build.battery().temperatureC() > most ? cells : Math.min(most, cells);
    }

    private static double heating(
            Build build,
            BatteryModel model,
            int place,
            double charge,
            double cellsC,
            double current) {
        PackModel pack = model.packs().get(place);
        double own = model.chargeOf(place, charge);
        double branch = current;
        if (build.battery().joining() == Joining.PARALLEL) {
            branch =
                    current
                            * (PackState.of(model, charge, cellsC).resistance()
                                    - build.battery().trunkResistance())
                            / pack.resistance(own, cellsC);
        }
        double perCell = branch / pack.pack().parallel();
        return perCell
                * perCell
                * pack.cellResistance(own, cellsC, Double.POSITIVE_INFINITY)
                * pack.pack().series()
                * pack.pack().parallel();
    }

    private static Cell evenlyResisting(Cell cell) {
        return changed(
                Builds.evenResistance(cell),
                ArrheniusCurve.through(Curve.constant(1.0)),
                cell.charging(),
                cell.discharging());
    }

    /** Cells that may be discharged however warm they are. */
    private static Build bearingAll(Build build) {
        return Builds.withCells(
                build,
                cell ->
                        changed(
                                cell,
                                cell.resistanceByTemperature(),
                                cell.charging(),
                                new DischargingWindow(cell.discharging().lowestC(), BEARS_ALL_C)));
    }

    private static Cell changed(
            Cell cell,
            ArrheniusCurve byTemperature,
            ChargingWindow charging,
            DischargingWindow discharging) {
        return cell.withResistanceByTemperature(byTemperature)
                .withCharging(charging)
                .withDischarging(discharging);
    }

    /** The first pack by itself, with that way to the air. */
    private static Build through(Build build, OptionalDouble toAir) {
        Pack pack = build.battery().packs().get(0);
        return Builds.withPack(build, pack.withToAir(toAir));
    }

    private static Build noColderThanTheAir(Build build) {
        double air = build.use().climate().ambientC();
        return build.battery().temperatureC() >= air ? build : atTheTemperatureOfTheAir(build);
    }

    private static Build atTheTemperatureOfTheAir(Build build) {
        return build.withBattery(build.battery().at(build.use().climate().ambientC()));
    }

    private static Use down(Use use, double to) {
        return use.withChargeTo(to);
    }
}
