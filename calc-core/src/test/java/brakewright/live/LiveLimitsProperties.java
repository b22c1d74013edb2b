package brakewright.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.spec.AnyBattery;
import brakewright.spec.AnyBuild;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.ChargingWindow;
import brakewright.spec.Curve;
import brakewright.spec.Joined;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

/** What is told live against the full model, for one pack and for several. */
@Tag("law")
@Domain(AnyBuild.class)
@Domain(AnyBattery.class)
@Domain(DomainContext.Global.class)
class LiveLimitsProperties {

    /** Where a limit is used up both are next to nothing [A]. */
    private static final double NOTHING = 1e-6;

    @Property(tries = 10)
    void atThePlacesOfItsTablesItIsTheModelToTheLastDigit(
            @ForAll Build any,
            @ForAll Joined joined,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 30.0) double speed) {
        for (Build build : new Build[] {any, Builds.withBattery(any, joined.battery())}) {
            LiveLimits live = LiveLimits.of(build);
            Limits limits = Limits.of(build);
            BatteryModel model = limits.battery();
            Powertrain train = Powertrain.of(build);
            for (double cellsC : every(13, live.temperatures())) {
                for (double charge : every(5, live.charges())) {
                    double regen = limits.packRegen().valueAt(charge, cellsC);
                    assertThat(live.permittedRegenA(charge, cellsC)).isEqualTo(regen);
                    assertThat(live.permittedDrawA(charge, cellsC))
                            .isEqualTo(limits.packDischarge().valueAt(charge, cellsC));
                    double power = PackState.of(model, charge, cellsC).powerReturnedBy(regen);
                    assertThat(live.permittedBrakeA(speed, charge, cellsC))
                            .isEqualTo(
                                    train.limitedBrakeCurrent(
                                            limits.motorBrake().value(), speed, power));
                }
            }
        }
    }

    @Property(tries = 10)
    void betweenThemItDepartsFromTheModelByNoMoreThanItSays(
            @ForAll Build any,
            @ForAll Joined joined,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double part,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double other) {
        for (Build build : new Build[] {any, Builds.withBattery(any, joined.battery())}) {
            LiveLimits live = LiveLimits.of(build);
            Limits limits = Limits.of(build);
            double[] temperatures = live.temperatures();
            double[] charges = live.charges();
            for (int t = 0; t + 1 < temperatures.length; t += 7) {
                double cellsC = temperatures[t] + other * (temperatures[t + 1] - temperatures[t]);
                for (int s = 0; s + 1 < charges.length; s += 3) {
                    double charge = charges[s] + part * (charges[s + 1] - charges[s]);
                    assertNear(
                            live.permittedRegenA(charge, cellsC),
                            limits.packRegen().valueAt(charge, cellsC));
                    assertNear(
                            live.permittedDrawA(charge, cellsC),
                            limits.packDischarge().valueAt(charge, cellsC));
                }
            }
        }
    }

    private static void assertNear(double told, double modelled) {
        assertThat(told).isCloseTo(modelled, within(LiveLimits.DEPARTURE * modelled + NOTHING));
    }

    private static double[] every(int step, double[] places) {
        return IntStream.range(0, places.length)
                .filter(place -> place % step == 0 || place == places.length - 1)
                .mapToDouble(place -> places[place])
                .toArray();
    }

    /** As of a fast charge to 60 %: the rating falls, and no voltage tells it. */
    @Example
    void aRatingThatFallsWithTheChargeBindsAVoltageAloneToo() {
        Curve share =
                Curve.of(new double[] {0.0, 0.6, 0.65, 1.0}, new double[] {1.0, 1.0, 0.4, 0.3});
        Build board =
                Builds.withCells(
                        Builds.trailBoard(),
                        cell -> cell.withCharging(restricted(cell.charging(), share)));
        Pack pack = Builds.pack(board);
        Build onTwo =
                Builds.withBattery(board, Builds.joined(Joining.PARALLEL, List.of(pack, pack)));
        for (double charge : new double[] {0.3, 0.62, 0.7, 0.8}) {
            whatAVoltageAloneLeavesIsNoMoreThanTheModelPermits(board, charge, 20.0);
            whatAVoltageAloneLeavesIsNoMoreThanTheModelPermits(onTwo, charge, 20.0);
        }
    }

    private static ChargingWindow restricted(ChargingWindow window, Curve share) {
        return new ChargingWindow(
                window.lowestC(), window.highestC(), window.coldBandK(), window.coldShare(), share);
    }

    /** At rest what may be sent besides nothing is no more than the limit of a pulse. */
    @Property(tries = 25)
    void whatAVoltageAloneLeavesIsNoMoreThanTheModelPermits(
            @ForAll Build build,
            @ForAll @Scale(9) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 5.0, max = 40.0) double cellsC) {
        LiveLimits live = LiveLimits.of(build);
        Limits limits = Limits.of(build);
        double rest = limits.battery().openCircuitVoltage(charge);
        assertThat(live.furtherRegenA(rest, cellsC, Horizon.TEN_SECONDS))
                .isLessThanOrEqualTo(
                        limits.packRegen().brief().valueAt(charge, cellsC)
                                        * (1.0 + LiveLimits.DEPARTURE)
                                + NOTHING);
        assertThat(live.furtherDrawA(rest, cellsC, Horizon.TEN_SECONDS))
                .isLessThanOrEqualTo(
                        limits.packDischarge().valueAt(charge, cellsC)
                                        * (1.0 + LiveLimits.DEPARTURE)
                                + NOTHING);
        double longer = Double.POSITIVE_INFINITY;
        for (Horizon horizon : Horizon.values()) {
            double regen = live.furtherRegenA(rest, cellsC, horizon);
            assertThat(regen).isNotNegative().isLessThanOrEqualTo(longer);
            longer = regen;
        }
    }

    @Property(tries = 25)
    void theChargeIsFoundAgainFromVoltageAndCurrent(
            @ForAll Build build,
            @ForAll @Scale(9) @DoubleRange(min = 0.05, max = 0.95) double charge,
            @ForAll @Scale(6) @DoubleRange(min = -20.0, max = 20.0) double current,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.2) double doubt) {
        LiveLimits live = LiveLimits.of(build);
        BatteryModel model = Limits.of(build).battery();
        double cellsC = 20.0;
        Assume.that(rises(model, live.charges(), current, cellsC));
        double voltage = PackState.of(model, charge, cellsC).terminalVoltage(current);
        double found = live.charge(voltage, current, cellsC);
        PackState there = PackState.of(model, found, cellsC);
        double shift = Math.abs(there.terminalVoltage(current) - there.voltage());
        assertThat(there.terminalVoltage(current))
                .as("level where the charge is not")
                .isCloseTo(voltage, within(LiveLimits.DEPARTURE * shift + 1e-9 * voltage));
        MeasuringDoubt off = new MeasuringDoubt(doubt, doubt, doubt);
        assertThat(live.leastCharge(voltage, current, cellsC, off)).isLessThanOrEqualTo(found);
        assertThat(live.greatestCharge(voltage, current, cellsC, off))
                .isGreaterThanOrEqualTo(found);
    }

    /** Whether the voltage under a current tells the charge at all. */
    private static boolean rises(
            BatteryModel model, double[] charges, double current, double cellsC) {
        double[] voltages =
                Arrays.stream(charges)
                        .map(s -> PackState.of(model, s, cellsC).terminalVoltage(current))
                        .toArray();
        return IntStream.range(1, voltages.length).allMatch(i -> voltages[i] > voltages[i - 1]);
    }

    @Example
    void whatIsNoNumberIsRefusedOrPermitsNothing() {
        LiveLimits live = LiveLimits.of(Builds.trailBoard());
        for (double wrong : new double[] {Double.NaN, -0.01, 1.01, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> live.permittedRegenA(wrong, 20.0))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("charge state");
            assertThat(live.permittedRegenOrZeroA(wrong, 20.0)).isZero();
            assertThat(live.permittedDrawOrZeroA(wrong, 20.0)).isZero();
            assertThat(live.permittedBrakeOrZeroA(5.0, wrong, 20.0)).isZero();
        }
        for (double wrong : new double[] {Double.NaN, -273.0, 200.0}) {
            assertThatThrownBy(() -> live.permittedDrawA(0.5, wrong))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("cell temperature");
            assertThat(live.permittedDrawOrZeroA(0.5, wrong)).isZero();
        }
        for (double wrong : new double[] {Double.NaN, -1.0, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> live.permittedBrakeA(wrong, 0.5, 20.0))
                    .hasMessageContaining("speed");
            assertThat(live.permittedBrakeOrZeroA(wrong, 0.5, 20.0)).isZero();
            assertThat(live.furtherRegenOrZeroA(wrong, 20.0, Horizon.SECOND)).isZero();
            assertThat(live.furtherDrawOrZeroA(wrong, 20.0, Horizon.SECOND)).isZero();
            assertThatThrownBy(() -> live.furtherRegenA(wrong, 20.0, Horizon.SECOND))
                    .hasMessageContaining("voltage");
        }
        assertThatThrownBy(() -> live.charge(40.0, Double.NaN, 20.0))
                .hasMessageContaining("current");
    }

    private static final double[] ABSURD = {
        Double.NaN,
        Double.NEGATIVE_INFINITY,
        -Double.MAX_VALUE,
        -274.0,
        -Double.MIN_VALUE,
        -0.0,
        0.0,
        Double.MIN_VALUE,
        1.0,
        1e6,
        1e200,
        Double.MAX_VALUE,
        Double.POSITIVE_INFINITY
    };

    /** What a call is asked with, and which values it takes. */
    private enum Argument {
        CHARGE("charge state", 0.0, 1.0),
        CELLS("cell temperature", LiveLimits.COLDEST_C, LiveLimits.WARMEST_C),
        SPEED("speed", 0.0, Double.MAX_VALUE),
        VOLTAGE("voltage at the terminals", 0.0, Double.MAX_VALUE),
        MEASURED("voltage at the terminals", -Double.MAX_VALUE, Double.MAX_VALUE),
        CURRENT("current of the packs", -Double.MAX_VALUE, Double.MAX_VALUE);

        private final String name;
        private final double low;
        private final double high;

        Argument(String name, double low, double high) {
            this.name = name;
            this.low = low;
            this.high = high;
        }

        boolean takes(double value) {
            return value >= low && value <= high;
        }
    }

    private interface Call {
        double of(double... arguments);
    }

    /** Each value is refused by name where it is none of the argument's, and else answered. */
    @Example
    void whateverIsAskedIsAnsweredOrRefusedByName() {
        MeasuringDoubt doubt = new MeasuringDoubt(0.1, 0.5, 0.2);
        for (Build build : new Build[] {Builds.trailBoard(), Builds.parcelTrike()}) {
            LiveLimits live = LiveLimits.of(build);
            Argument[] ofCells = {Argument.CHARGE, Argument.CELLS};
            check(a -> live.permittedRegenA(a[0], a[1]), ofCells);
            checkOrZero(a -> live.permittedRegenOrZeroA(a[0], a[1]), ofCells);
            check(a -> live.permittedDrawA(a[0], a[1]), ofCells);
            checkOrZero(a -> live.permittedDrawOrZeroA(a[0], a[1]), ofCells);
            Argument[] ofSpeed = {Argument.SPEED, Argument.CHARGE, Argument.CELLS};
            check(a -> live.permittedBrakeA(a[0], a[1], a[2]), ofSpeed);
            checkOrZero(a -> live.permittedBrakeOrZeroA(a[0], a[1], a[2]), ofSpeed);
            for (Horizon each : Horizon.values()) {
                Argument[] ofVoltage = {Argument.VOLTAGE, Argument.CELLS};
                check(a -> live.furtherRegenA(a[0], a[1], each), ofVoltage);
                checkOrZero(a -> live.furtherRegenOrZeroA(a[0], a[1], each), ofVoltage);
                check(a -> live.furtherDrawA(a[0], a[1], each), ofVoltage);
                checkOrZero(a -> live.furtherDrawOrZeroA(a[0], a[1], each), ofVoltage);
            }
            Argument[] measured = {Argument.MEASURED, Argument.CURRENT, Argument.CELLS};
            check(a -> live.charge(a[0], a[1], a[2]), measured);
            check(a -> live.leastCharge(a[0], a[1], a[2], doubt), measured);
            check(a -> live.greatestCharge(a[0], a[1], a[2], doubt), measured);
        }
    }

    private static void check(Call call, Argument... arguments) {
        each(
                arguments,
                (values, wrong) -> {
                    if (wrong.isEmpty()) {
                        assertAnswered(call, values);
                        return;
                    }
                    assertThatThrownBy(() -> call.of(values))
                            .as(Arrays.toString(values))
                            .isExactlyInstanceOf(IllegalArgumentException.class)
                            .satisfies(
                                    refused ->
                                            assertThat(wrong)
                                                    .anyMatch(refused.getMessage()::startsWith));
                });
    }

    private static void checkOrZero(Call call, Argument... arguments) {
        each(
                arguments,
                (values, wrong) -> {
                    if (wrong.isEmpty()) {
                        assertAnswered(call, values);
                    } else {
                        assertThat(call.of(values)).as(Arrays.toString(values)).isEqualTo(0.0);
                    }
                });
    }

    private static void assertAnswered(Call call, double... values) {
        assertThat(call.of(values)).as(Arrays.toString(values)).isFinite().isNotNegative();
    }

    /** Every combination of the values, with the names of those arguments that cannot be so. */
    private static void each(Argument[] arguments, BiConsumer<double[], List<String>> examination) {
        int combinations = (int) Math.pow(ABSURD.length, arguments.length);
        for (int number = 0; number < combinations; number++) {
            double[] values = new double[arguments.length];
            List<String> wrong = new ArrayList<>();
            int left = number;
            for (int i = 0; i < values.length; i++) {
                values[i] = ABSURD[left % ABSURD.length];
                left /= ABSURD.length;
                if (!arguments[i].takes(values[i])) {
                    wrong.add(arguments[i].name);
                }
            }
            examination.accept(values, wrong);
        }
    }
}
