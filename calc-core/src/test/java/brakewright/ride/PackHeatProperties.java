package brakewright.ride;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.powertrain.AnyDriven;
import brakewright.powertrain.PackState;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Cell;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
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

    /** {@code ∫I²·r dt = I·∫r dq}. */
    @Property(tries = 300)
    void theRiseIsProportionalToASteadyCurrent(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 100.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 4.0) double factor) {
        PackHeat less = heated(PackHeat.atCurrent(build, current));
        PackHeat more = heated(PackHeat.atCurrent(build, factor * current));
        Assume.that(less.pack() == more.pack());
        assertThat(more.riseK()).isCloseTo(factor * less.riseK(), within(ROUNDING * more.riseK()));
        assertThat(more.time()).isCloseTo(less.time() / factor, within(ROUNDING * less.time()));
        assertThat(less.meanCurrent()).isCloseTo(current, within(ROUNDING * current));
    }

    @Property(tries = 300)
    void morePowerNeverHeatsLess(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 5.0, max = 1000.0) double power,
            @ForAll @Scale(6) @DoubleRange(min = 1.01, max = 3.0) double factor) {
        Optional<PackHeat> less = PackHeat.atPower(build, power);
        Optional<PackHeat> more = PackHeat.atPower(build, factor * power);
        Assume.that(more.isPresent());
        assertThat(less).isPresent();
        Assume.that(less.get().pack() == more.get().pack());
        assertThat(more.get().riseK()).isGreaterThan(less.get().riseK());
        assertThat(more.get().meanCurrent()).isGreaterThan(less.get().meanCurrent());
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
                assertThat(heat.endC()).isCloseTo(end, within(COARSE * change));
            }
        }
        double tie = COARSE * (1.0 + heat.riseK());
        assertThat(heat.endC()).isGreaterThanOrEqualTo(warmest - tie);
    }

    /** Without a way to the air nothing is lost; with one, cells no colder than it only lose. */
    @Property(tries = 500)
    void theEndLiesBetweenNoLossAndTheSteadyState(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 100.0) double current) {
        PackHeat heat = heated(PackHeat.atCurrent(build, current));
        var pack = build.battery().packs().get(heat.pack() - 1);
        double start = build.battery().temperatureC();
        double air = build.use().climate().ambientC();
        double without = start + heat.riseK();
        if (pack.toAir().isEmpty()) {
            assertThat(heat.endC()).isEqualTo(without);
            return;
        }
        double capacity =
                pack.series() * pack.parallel() * pack.cell().heatCapacity().getAsDouble();
        double settled = air + heat.riseK() * capacity / heat.time() * pack.toAir().getAsDouble();
        double rounding = ROUNDING * (100.0 + heat.riseK() + Math.abs(settled));
        assertThat(heat.endC())
                .isBetween(
                        Math.min(start, settled) - rounding, Math.max(start, settled) + rounding);
        if (air <= start) {
            assertThat(heat.endC()).isLessThanOrEqualTo(without + rounding);
        }
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
        return new Cell(
                cell.capacityAh(),
                cell.dischargeCurrent(),
                cell.chargeCurrent(),
                cell.voltageMax(),
                cell.voltageMin(),
                cell.resistance(),
                cell.openCircuitVoltage(),
                cell.resistanceByCharge(),
                cell.resistanceByTemperature(),
                cell.relaxation(),
                OptionalDouble.empty(),
                cell.charging(),
                cell.discharging(),
                cell.pulse());
    }

    private static PackHeat heated(Optional<PackHeat> heat) {
        Assume.that(heat.isPresent());
        return heat.get();
    }

    /** One pack's heat balance at the mean heat, as its heat capacity allows no other. */
    private static double endC(Build build, int place, double current) {
        BatteryModel model = new BatteryModel(build.battery());
        PackModel pack = model.packs().get(place);
        double cellsC = build.battery().temperatureC();
        double from = build.use().chargeFrom();
        double width = (from - build.use().chargeTo()) / STEPS;
        double heat = 0.0;
        double seconds = 0.0;
        for (int step = 0; step < STEPS; step++) {
            double charge = from - (step + 0.5) * width;
            PackState all = PackState.of(model, charge, cellsC);
            double duration = width * 3600.0 * model.capacityAh() / current;
            double own = model.chargeOf(place, charge);
            double branch = current;
            if (build.battery().joining() == Joining.PARALLEL) {
                branch =
                        current
                                * (all.resistance() - build.battery().trunkResistance())
                                / pack.resistance(own, cellsC);
            }
            double perCell = branch / pack.pack().parallel();
            double resistance = pack.cellResistance(own, cellsC, Double.POSITIVE_INFINITY);
            heat +=
                    perCell
                            * perCell
                            * resistance
                            * pack.pack().series()
                            * pack.pack().parallel()
                            * duration;
            seconds += duration;
        }
        double capacity =
                pack.pack().series()
                        * pack.pack().parallel()
                        * pack.pack().cell().heatCapacity().orElseThrow();
        if (pack.pack().toAir().isEmpty()) {
            return cellsC + heat / capacity;
        }
        double toAir = pack.pack().toAir().getAsDouble();
        double air = build.use().climate().ambientC();
        double step = Math.min(seconds, 60.0 * toAir * capacity) / STEPS;
        double cells = cellsC;
        for (int i = 0; i < STEPS; i++) {
            double half = cells + 0.5 * step * (heat / seconds + (air - cells) / toAir) / capacity;
            cells += step * (heat / seconds + (air - half) / toAir) / capacity;
        }
        return cells;
    }
}
