package brakewright.operation;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.limit.Limits;
import brakewright.powertrain.AnyDriven;
import brakewright.spec.Battery;
import brakewright.spec.Build;
import brakewright.spec.GroupSpread;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
class SagProperties {

    /** What a voltage may miss its mark by [V]. */
    private static final double MET = 1e-6;

    /** The search over the charge stops at 1e-9. */
    private static final double CHARGE_ACCURACY = 1e-8;

    /** Just above the charge that is found, the event has not come; just below, it has. */
    @Property(tries = 300)
    void atTheChargeThatIsFoundTheEventIsMet(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 200.0) double draw,
            @ForAll @Scale(1) @DoubleRange(min = -10.0, max = 45.0) double cellsC,
            @ForAll @Scale(3) @DoubleRange(min = 1.0, max = 900.0) double seconds) {
        Build build = withoutBranches(any);
        Sag.Draw drawn = new Sag.Draw(draw, true, cellsC, seconds);
        for (Sag.Event event : Sag.Event.values()) {
            if (event == Sag.Event.PROTECTION_TRIP && fadesOut(build)) {
                continue;
            }
            OptionalDouble met = meetings(build, drawn).charge(event);
            double from = build.use().chargeFrom();
            double to = build.use().chargeTo();
            if (met.isEmpty()) {
                for (int step = 0; step <= 20; step++) {
                    double charge = to + (from - to) * step / 20.0;
                    assertThat(beyond(event, build, drawn, charge)).isLessThanOrEqualTo(MET);
                }
                continue;
            }
            double charge = met.getAsDouble();
            assertThat(charge).isBetween(to, from);
            double below = Math.max(to, charge - CHARGE_ACCURACY);
            assertThat(beyond(event, build, drawn, below)).isGreaterThanOrEqualTo(-MET);
            for (int step = 1; step <= 20 && charge < from; step++) {
                double above = charge + CHARGE_ACCURACY + (from - charge) * step / 20.0;
                assertThat(beyond(event, build, drawn, Math.min(from, above)))
                        .isLessThanOrEqualTo(MET);
            }
        }
    }

    @Property(tries = 300)
    void aLongerPullMeetsEverythingNoLater(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 200.0) double draw,
            @ForAll @Scale(1) @DoubleRange(min = -10.0, max = 45.0) double cellsC,
            @ForAll @Scale(3) @DoubleRange(min = 1.0, max = 900.0) double seconds) {
        noLater(
                build,
                new Sag.Draw(draw, true, cellsC, Double.POSITIVE_INFINITY),
                new Sag.Draw(draw, true, cellsC, seconds));
    }

    @Property(tries = 300)
    void aColderPackMeetsEverythingNoLater(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 200.0) double draw,
            @ForAll @Scale(1) @DoubleRange(min = -10.0, max = 45.0) double one,
            @ForAll @Scale(1) @DoubleRange(min = -10.0, max = 45.0) double other,
            @ForAll @Scale(3) @DoubleRange(min = 1.0, max = 900.0) double seconds) {
        noLater(
                build,
                new Sag.Draw(draw, true, Math.min(one, other), seconds),
                new Sag.Draw(draw, true, Math.max(one, other), seconds));
    }

    /** Taken at every charge state: floor and trip with what the taper leaves of the draw. */
    @Property(tries = 300)
    void aLargerDrawMeetsEverythingNoLater(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 100.0) double draw,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 2.0) double factor,
            @ForAll @Scale(3) @DoubleRange(min = 1.0, max = 900.0) double seconds) {
        noLater(
                build,
                new Sag.Draw(factor * draw, true, 25.0, seconds),
                new Sag.Draw(draw, true, 25.0, seconds));
    }

    /**
     * The taper lets the loaded voltage no lower than its end, and the cells lie above that, where
     * all groups are alike.
     */
    @Property(tries = 300)
    void aTaperThatEndsAboveTheTripKeepsThePackFromIt(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.3) double higher,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.3) double band,
            @ForAll @Scale(6) @DoubleRange(min = 0.6, max = 0.999) double share,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 300.0) double draw,
            @ForAll @Scale(1) @DoubleRange(min = -10.0, max = 45.0) double cellsC) {
        Pack alike = any.battery().packs().get(0).withGroupSpread(GroupSpread.NONE);
        Build bare = any.withBattery(Battery.of(alike));
        PackModel pack = new BatteryModel(bare.battery()).packs().get(0);
        double trip = share * pack.cellOpenCircuitVoltage(bare.use().chargeTo());
        Build build = tripping(bare, trip);
        double series = pack.pack().series();
        double ends = series * (trip + higher);
        Build tapered = tapered(build, new Taper(ends + band * series, ends));
        Sag.Draw endless = new Sag.Draw(draw, true, cellsC, Double.POSITIVE_INFINITY);
        assertThat(meetings(tapered, endless).charge(Sag.Event.PROTECTION_TRIP)).isEmpty();
    }

    @Property(tries = 200)
    void looksAtTheSetDrawAndTheRecommendedOneShortAndLongWarmAndCold(@ForAll Build build) {
        Limits limits = Limits.of(build);
        Operation operation = Operation.of(build, limits);
        Sag sag = Sag.of(build, limits, operation);
        double own = build.battery().temperatureC();
        double coldest = Math.min(own, build.use().climate().coldestPackC());
        for (Sag.Case each : sag.cases()) {
            Sag.Draw drawn = each.draw();
            assertThat(drawn.cellsC()).isIn(own, coldest);
            assertThat(drawn.seconds()).isIn(10.0, Double.POSITIVE_INFINITY);
            if (drawn.isSet()) {
                assertThat(drawn.current()).isEqualTo(operation.drive().packCurrent());
            }
            assertThat(each.charges()).containsOnlyKeys(Sag.Event.values());
            Optional<Sag.Meeting> first = each.first();
            for (OptionalDouble charge : each.charges().values()) {
                if (charge.isPresent()) {
                    assertThat(first).isPresent();
                    assertThat(first.get().charge()).isGreaterThanOrEqualTo(charge.getAsDouble());
                }
            }
        }
        long set = sag.cases().stream().filter(each -> each.draw().isSet()).count();
        assertThat(set).isEqualTo(own == coldest ? 2 : 4);
    }

    private static void noLater(Build build, Sag.Draw worse, Sag.Draw better) {
        for (Sag.Event event : Sag.Event.values()) {
            OptionalDouble late = meetings(build, better).charge(event);
            OptionalDouble early = meetings(build, worse).charge(event);
            if (late.isPresent()) {
                assertThat(early).isPresent();
                assertThat(early.getAsDouble())
                        .isGreaterThanOrEqualTo(late.getAsDouble() - CHARGE_ACCURACY);
            }
        }
    }

    private static SagCourse meetings(Build build, Sag.Draw drawn) {
        Limits limits = Limits.of(build);
        return new SagCourse(build, limits.battery(), Operation.of(build, limits), drawn);
    }

    /** How far a voltage lies beyond its mark, from Ohm's law and the line of the taper [V]. */
    private static double beyond(Sag.Event event, Build build, Sag.Draw drawn, double charge) {
        BatteryModel model = new BatteryModel(build.battery());
        double open = model.openCircuitVoltage(charge);
        double resistance = model.resistance(charge, drawn.cellsC(), drawn.seconds());
        Optional<Taper> taper = build.settings().lowVoltageTaper();
        return switch (event) {
            case TAPER_BEGINS ->
                    taper.map(band -> band.begins() - (open - drawn.current() * resistance))
                            .orElse(Double.NEGATIVE_INFINITY);
            case TAPER_ENDS ->
                    taper.map(band -> band.ends() - open).orElse(Double.NEGATIVE_INFINITY);
            case CELL_FLOOR, PROTECTION_TRIP -> {
                double worst = Double.NEGATIVE_INFINITY;
                for (int place = 0; place < model.packs().size(); place++) {
                    PackModel pack = model.packs().get(place);
                    double until = drawn.seconds() - waits(event, pack);
                    if (until < 0.0) {
                        continue;
                    }
                    double then = model.resistance(charge, drawn.cellsC(), until);
                    double flowing =
                            Math.min(
                                    asked(build, open, then),
                                    settled(drawn.current(), open, then, taper));
                    if (flowing == 0.0 && event == Sag.Event.PROTECTION_TRIP) {
                        continue;
                    }
                    double own = model.chargeOf(place, charge);
                    double cell =
                            EmptiestGroup.cellVoltage(
                                    pack.pack(), own, flowing, drawn.cellsC(), until);
                    OptionalDouble mark =
                            event == Sag.Event.CELL_FLOOR
                                    ? OptionalDouble.of(pack.pack().cell().voltageMin())
                                    : pack.pack().protection().cellUndervoltageTrip();
                    if (mark.isPresent()) {
                        worst = Math.max(worst, mark.getAsDouble() - cell);
                    }
                }
                yield worst;
            }
        };
    }

    /** A trip opens after what it waits for; the floor is there at once [s]. */
    private static double waits(Sag.Event event, PackModel pack) {
        return event == Sag.Event.CELL_FLOOR
                ? 0.0
                : pack.pack().protection().undervoltageTripDelay().orElse(0.0);
    }

    /**
     * Where the taper leaves nothing near the end, nothing trips there: the trip may begin and end
     * between two points of the search.
     */
    private static boolean fadesOut(Build build) {
        double emptiest =
                new BatteryModel(build.battery()).openCircuitVoltage(build.use().chargeTo());
        return build.settings().lowVoltageTaper().filter(t -> t.ends() >= emptiest).isPresent();
    }

    /** What the motors ask for at most; more than the pack can give, and it gives all it can. */
    private static double asked(Build build, double open, double resistance) {
        Operation operation = Operation.of(build, Limits.of(build));
        double power =
                operation
                        .drive()
                        .powertrain()
                        .drawnPower(operation.drive().motorCurrent(), operation.topSpeed());
        double square = open * open - 4.0 * resistance * power;
        return square < 0.0 ? Double.POSITIVE_INFINITY : 2.0 * power / (open + Math.sqrt(square));
    }

    /** The current at which the line of the taper meets that of the sagging voltage. */
    private static double settled(
            double draw, double open, double resistance, Optional<Taper> taper) {
        if (taper.isEmpty() || open - draw * resistance >= taper.get().begins()) {
            return draw;
        }
        if (open <= taper.get().ends()) {
            return 0.0;
        }
        double perVolt = draw / (taper.get().begins() - taper.get().ends());
        return perVolt * (open - taper.get().ends()) / (1.0 + perVolt * resistance);
    }

    /** Packs beside each other share a current; here one pack, or one behind the other. */
    private static Build withoutBranches(Build build) {
        return build.battery().joining() == Joining.SERIES
                ? build
                : build.withBattery(Battery.of(build.battery().packs().get(0)));
    }

    private static Build tripping(Build build, double trip) {
        List<Pack> packs =
                build.battery().packs().stream()
                        .map(
                                pack ->
                                        pack.withProtection(
                                                Protection.UNKNOWN.withCellUndervoltageTrip(
                                                        OptionalDouble.of(trip))))
                        .toList();
        return build.withBattery(build.battery().withPacks(packs));
    }

    private static Build tapered(Build build, Taper taper) {
        Settings old = build.settings();
        return build.withSettings(
                old.withLowVoltageTaper(Optional.of(taper))
                        .withHighVoltageTaper(Optional.empty())
                        .withSpeedCap(OptionalDouble.empty()));
    }
}
