package brakewright.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.braking.Stop;
import brakewright.braking.StopOutcome;
import brakewright.braking.Surroundings;
import brakewright.limit.Limits;
import brakewright.numeric.Pieces;
import brakewright.operation.Operation;
import brakewright.powertrain.AnyDriven;
import brakewright.powertrain.PackState;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Riding;
import brakewright.spec.Settings;
import brakewright.spec.Use;
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
class StopAndGoProperties {

    private static final double ROUNDING = 1e-9;

    /** Four points on each of five pieces of the charge, across the kinks of the curves. */
    private static final double PIECES = 0.01;

    /** The cells' voltage rises a little while a stop charges them. */
    private static final double IN_A_STOP = 1e-6;

    private static final int STEPS = 200;

    @Property(tries = 150)
    void whatComesBackIsAShareOfWhatWentOut(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 9.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0005, max = 0.01) double stops) {
        Optional<StopAndGo> ride = ride(build, speed, stops);
        Assume.that(ride.isPresent());
        assertThat(ride.get().returnedShare()).isBetween(0.0, 1.0);
        assertThat(ride.get().reached()).isLessThanOrEqualTo(speed);
        assertThat(ride.get().meanSpeed()).isBetween(0.0, speed);
        assertThat(ride.get().consumption()).isPositive();
    }

    /**
     * At the terminals no more is taken than the cells give, ∫U·dq, and no less than the tyres
     * take, a wind from behind pushing at most as hard as at a standstill.
     */
    @Property(tries = 150)
    void theNetEnergyIsNoMoreThanTheCellsGive(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 9.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0005, max = 0.01) double stops) {
        Optional<StopAndGo> ride = ride(build, speed, stops);
        Assume.that(ride.isPresent());
        double net = ride.get().consumption() * ride.get().distance();
        assertThat(net).isLessThan(given(build) * (1.0 + IN_A_STOP));
        double rolling = build.mass() * 9.80665 * build.vehicle().rollingResistance();
        double wind = RoadLoad.of(build).airForce(build.use().riding().headwind());
        assertThat(net).isGreaterThan((rolling + Math.min(0.0, wind)) * ride.get().distance());
    }

    /** A wind of 9 m/s from behind pushes a board of 2 m/s harder than it rolls. */
    @Example
    void theNetEnergyWithAWindFromBehindIsNoMoreThanTheCellsGive() {
        Build board = Builds.trailBoard();
        Riding riding = new Riding(6.0, -9.0, 3.0, 0.0005, Optional.empty());
        theNetEnergyIsNoMoreThanTheCellsGive(
                board.withUse(board.use().withRiding(riding)), 2.0, 0.002);
    }

    /** Each leg from its pull, its steady part and its stop, at many equal steps of the charge. */
    @Property(tries = 25)
    void theNetEnergyIsThatOfAllLegs(
            @ForAll @Scale(6) @DoubleRange(min = 2.0, max = 7.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0005, max = 0.003) double stops,
            @ForAll @Scale(6) @DoubleRange(min = 10.0, max = 60.0) double brakeCurrent,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 20.0) double regenCurrent) {
        Build build = board(40.0, 30.0, brakeCurrent, regenCurrent);
        StopAndGo ride = ride(build, speed, stops).orElseThrow();
        Operation operation = Operation.of(build, Limits.of(build));
        BatteryModel model = new BatteryModel(build.battery());
        double cells = build.battery().temperatureC();
        Propulsion propulsion = new Propulsion(build, operation.drive(), Road.ofUse(build));
        StandingStart start = new StandingStart(build, operation.drive(), Road.ofUse(build));
        Stop stop =
                new Stop(
                        build,
                        operation.brake(),
                        new Surroundings(
                                0.0,
                                build.vehicle().grip(),
                                cells,
                                false,
                                build.use().riding().headwind()));
        double idle = build.use().riding().idlePower();
        double from = build.use().chargeFrom();
        double width = (from - build.use().chargeTo()) / STEPS;
        double length = 1.0 / stops;
        double distance = 0.0;
        double energy = 0.0;
        double time = 0.0;
        for (int step = 0; step < STEPS; step++) {
            double charge = from - (step + 0.5) * width;
            PackState pack = PackState.of(model, charge, cells);
            StandingStart.Reached pull = start.to(speed, pack).orElseThrow();
            StopOutcome.Stopped stopped = (StopOutcome.Stopped) stop.from(speed, charge);
            double steady = (length - pull.distance() - stopped.distance()) / speed;
            Assume.that(steady > 0.0);
            double power = propulsion.terminalPower(propulsion.holdingCurrent(speed), speed);
            double net =
                    pull.spent().atTerminals()
                            + power * steady
                            + idle * stopped.time()
                            - stopped.returned();
            double charged =
                    pull.spent().sum() / pack.voltage()
                            - pack.currentInto(-power) * steady
                            + idle * stopped.time() / pack.voltage()
                            - (stopped.endCharge() - charge) * 3600.0 * model.capacityAh();
            double legs = width * 3600.0 * model.capacityAh() / charged;
            distance += legs * length;
            energy += legs * net;
            time += legs * (pull.time() + steady + stopped.time());
        }
        assertThat(ride.reached()).isEqualTo(speed);
        assertThat(ride.distance()).isCloseTo(distance, within(PIECES * distance));
        assertThat(ride.consumption() * ride.distance()).isCloseTo(energy, within(PIECES * energy));
        assertThat(ride.meanSpeed()).isCloseTo(distance / time, within(PIECES * distance / time));
    }

    /**
     * On the trail board with a brake that stops it: one that rolls out pays nothing for a stop.
     */
    @Property(tries = 100)
    void moreStopsNeverLengthenTheRide(
            @ForAll @Scale(6) @DoubleRange(min = 2.0, max = 7.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0005, max = 0.003) double stops,
            @ForAll @Scale(6) @DoubleRange(min = 1.05, max = 2.0) double factor,
            @ForAll @Scale(6) @DoubleRange(min = 30.0, max = 60.0) double brakeCurrent,
            @ForAll @Scale(6) @DoubleRange(min = 5.0, max = 20.0) double regenCurrent) {
        Build build = board(40.0, 30.0, brakeCurrent, regenCurrent);
        StopAndGo fewer = ride(build, speed, stops).orElseThrow();
        StopAndGo more = ride(build, speed, factor * stops).orElseThrow();
        Assume.that(more.reached() == speed);
        assertThat(more.distance()).isLessThan(fewer.distance());
        assertThat(more.meanSpeed()).isLessThan(fewer.meanSpeed());
        assertThat(more.consumption()).isGreaterThan(fewer.consumption());
    }

    /** As long as the speed is reached against it; a slower ride spares the air. */
    @Property(tries = 100)
    void moreHeadwindNeverLengthensTheRide(
            @ForAll @Scale(6) @DoubleRange(min = 2.0, max = 7.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0005, max = 0.003) double stops,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 4.0) double wind,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 4.0) double stronger,
            @ForAll @Scale(6) @DoubleRange(min = 5.0, max = 20.0) double regenCurrent) {
        Build build = board(40.0, 30.0, 40.0, regenCurrent);
        Optional<StopAndGo> mild = ride(against(build, wind), speed, stops);
        Optional<StopAndGo> windy = ride(against(build, wind + stronger), speed, stops);
        Assume.that(windy.isPresent() && windy.get().reached() == speed);
        assertThat(windy.get().distance()).isLessThan(mild.orElseThrow().distance());
        assertThat(windy.get().consumption()).isGreaterThan(mild.get().consumption());
        assertThat(windy.get().returnedShare()).isLessThan(mild.get().returnedShare() + ROUNDING);
    }

    private static Build against(Build build, double headwind) {
        Use use = build.use();
        Riding riding = use.riding();
        return Builds.withUse(build, use.withRiding(riding.withHeadwind(headwind)));
    }

    /** Rolling out costs nothing that a brake could save, so only the share that returns grows. */
    @Property(tries = 50)
    void aPackThatTakesMoreGetsMoreBack(
            @ForAll @Scale(6) @DoubleRange(min = 5.0, max = 7.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 2.0) double regen) {
        StopAndGo less = ride(board(40.0, 30.0, 40.0, regen), speed, 0.001).orElseThrow();
        StopAndGo much = ride(board(40.0, 30.0, 40.0, regen + 3.0), speed, 0.001).orElseThrow();
        assertThat(much.returnedShare()).isGreaterThan(less.returnedShare());
    }

    private static Build board(double drive, double discharge, double brake, double regen) {
        return Builds.trailBoard()
                .withSettings(
                        new Settings(
                                OptionalDouble.of(drive),
                                OptionalDouble.of(brake),
                                OptionalDouble.of(discharge),
                                OptionalDouble.of(regen),
                                Optional.empty(),
                                Optional.empty(),
                                OptionalDouble.empty()));
    }

    private static Optional<StopAndGo> ride(Build build, double speed, double stops) {
        Operation operation = Operation.of(build, Limits.of(build));
        return StopAndGo.of(build, operation.drive(), operation.brake(), speed, stops);
    }

    /** ∫U·dq by the rule that adds up the legs, so that only the legs themselves are judged. */
    private static double given(Build build) {
        BatteryModel model = new BatteryModel(build.battery());
        double[] ends =
                Pieces.of(StopAndGo.PIECES, build.use().chargeTo(), build.use().chargeFrom());
        double integral = 0.0;
        for (int piece = 1; piece < ends.length; piece++) {
            for (int node = 0; node < StopAndGo.RULE.nodes(); node++) {
                double charge = StopAndGo.RULE.point(node, ends[piece - 1], ends[piece]);
                integral +=
                        StopAndGo.RULE.weight(node, ends[piece - 1], ends[piece])
                                * model.openCircuitVoltage(charge);
            }
        }
        return 3600.0 * model.capacityAh() * integral;
    }
}
