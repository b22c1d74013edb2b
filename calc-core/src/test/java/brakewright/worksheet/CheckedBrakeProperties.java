package brakewright.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.braking.Deceleration;
import brakewright.braking.StopOutcome;
import brakewright.limit.Limits;
import brakewright.operation.Operation;
import brakewright.operation.SetBuild;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(SetBuild.class)
@Domain(DomainContext.Global.class)
class CheckedBrakeProperties {

    @Property(tries = 200)
    void aSettledBrakeSendsNoMoreThanTheTaperLetsIn(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double share,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 1.0) double part) {
        Operation operation = Operation.of(build, Limits.of(build));
        double charge =
                build.use().chargeTo()
                        + share * (build.use().chargeFrom() - build.use().chargeTo());
        PackState pack =
                PackState.of(
                        new BatteryModel(build.battery()), charge, build.battery().temperatureC());
        ElectricBrake set = operation.brake();
        ElectricBrake settled = set.settled(pack);
        double speed = part * operation.topSpeed();
        assertThat(settled.packCurrent(speed, pack))
                .isLessThanOrEqualTo(set.settledPackLimit(pack) * (1.0 + 1e-9) + 1e-9);
        assertThat(settled.greatestReturn(speed, pack))
                .isCloseTo(set.greatestReturn(speed, pack), within(1e-12));
        if (!set.isHeldByTaper(pack)) {
            assertThat(settled.motorCurrent(speed, pack)).isEqualTo(set.motorCurrent(speed, pack));
        }
    }

    /** A fine grid of speeds never finds more, and comes near. */
    @Property(tries = 50)
    void theHardestBrakingIsNotBeatenByAGrid(@ForAll Build build) {
        Limits limits = Limits.of(build);
        Operation operation = Operation.of(build, limits);
        HardestBraking hardest = HardestBraking.of(build, limits, operation);
        BatteryModel model = new BatteryModel(build.battery());
        Operation trusted = operation.trusted(limits);
        double[] speeds = speeds(operation.topSpeed(), build.controllers().brakeEndsBelow());
        double most = 0.0;
        for (double charge : trusted.bends(build, limits)) {
            PackState pack = PackState.of(model, charge, build.battery().temperatureC());
            ElectricBrake brake = trusted.brake().settled(pack);
            for (double speed : speeds) {
                most = Math.max(most, Deceleration.electric(build, brake, speed, pack));
            }
        }
        assertThat(hardest.deceleration())
                .isGreaterThanOrEqualTo(most * (1.0 - 1e-9))
                .isLessThanOrEqualTo(most * 1.05);
    }

    /**
     * Even steps, and from the speed at which the brake begins steps of a hundredth: where the pack
     * bounds its power, its force falls as the speed grows.
     */
    private static double[] speeds(double top, double begins) {
        DoubleStream even = IntStream.rangeClosed(0, 400).mapToDouble(step -> top * step / 400.0);
        DoubleStream growing =
                begins > 0.0
                        ? DoubleStream.iterate(begins, speed -> speed < top, speed -> 1.01 * speed)
                        : DoubleStream.empty();
        return DoubleStream.concat(even, growing).toArray();
    }

    /** A pack that takes little, and a brake that begins between two even steps of speed. */
    @Example
    void theHardestBrakingIsWhereABrakeBeginsThatThePackBounds() {
        Build board = Builds.trailBoard();
        Build held =
                board.withMotor(
                                board.motor()
                                        .withKvRpmPerVolt(8.0)
                                        .withResistanceAt20C(0.01)
                                        .withNoLoadCurrent(0.0)
                                        .withViscousDrag(0.0))
                        .withSettings(board.settings().withPackRegenCurrent(0.2));
        for (int step = 0; step < 10; step++) {
            theHardestBrakingIsNotBeatenByAGrid(
                    held.withControllers(
                            board.controllers().withBrakeEndsBelow(0.14 + 0.003 * step)));
        }
    }

    @Property(tries = 50)
    void withoutTheElectricBrakeNoStopIsShorter(@ForAll Build build) {
        Limits limits = Limits.of(build);
        List<LeftBraking> all = LeftBraking.all(build, limits, Operation.of(build, limits));
        boolean isGuarded = build.battery().isGuarded();
        assertThat(all)
                .extracting(LeftBraking::refusal)
                .containsExactly(Arrays.copyOf(LeftBraking.Refusal.values(), isGuarded ? 3 : 2));
        if (isGuarded && all.get(2).outcome() instanceof StopOutcome.Stopped tripped) {
            for (LeftBraking held : all.subList(0, 2)) {
                assertThat(((StopOutcome.Stopped) held.outcome()).distance())
                        .isLessThanOrEqualTo(tripped.distance() * (1.0 + 1e-9));
            }
        }
    }

    /** Once cells have the temperature told, no window forbids the stop any more. */
    @Property(tries = 100)
    void theTemperatureToldIsEnoughForTheWindow(@ForAll Build build) {
        Worksheet sheet = Worksheet.of(build);
        FirstStopHelp help = FirstStopHelp.of(sheet);
        boolean safe = sheet.firstStops().stream().allMatch(stop -> stop.isSafe());
        if (safe) {
            assertThat(help.stop()).isEmpty();
            assertThat(help.warmToC()).isEmpty();
            assertThat(help.coolToC()).isEmpty();
        } else {
            assertThat(
                            help.stop().isPresent()
                                    || help.warmToC().isPresent()
                                    || help.coolToC().isPresent())
                    .isTrue();
        }
    }
}
