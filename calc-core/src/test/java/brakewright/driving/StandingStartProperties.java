package brakewright.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.AnyDriven;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Spending;
import brakewright.powertrain.TopSpeed;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Riding;
import brakewright.spec.Use;
import java.util.Optional;
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
class StandingStartProperties {

    private static final double ROUNDING = 1e-9;

    /** Twice what the quadrature accepts as agreement of a panel with its halves. */
    private static final double QUADRATURE = 2e-8;

    /** The thrust bends inside a step of either way of adding up. */
    private static final double KINKS = 1e-5;

    @Property(tries = 300)
    void theKineticEnergyIsWhatMovingTook(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.98) double share) {
        PackState pack = pack(build, charge);
        double speed = share * top(build, pack);
        Assume.that(speed > 0.0);
        Optional<StandingStart.Reached> reached = pullAway(build).to(speed, pack);
        Assume.that(reached.isPresent());
        double kinetic = 0.5 * build.inertia() * speed * speed;
        Spending spent = reached.get().spent();
        Assume.that(Double.isFinite(spent.pack()));
        assertThat(spent.moving()).isCloseTo(kinetic, within(ROUNDING * spent.sum()));
        assertThat(spent.climbing()).isZero();
        assertThat(spent.idle())
                .isCloseTo(
                        build.use().riding().idlePower() * reached.get().time(),
                        within(ROUNDING * spent.sum()));
        double weight = build.mass() * 9.80665;
        assertThat(spent.rolling())
                .isCloseTo(
                        weight * build.vehicle().rollingResistance() * reached.get().distance(),
                        within(ROUNDING * spent.sum()));
    }

    /** The brute force leaves an error of its own, which halving its steps shows. */
    @Property(tries = 60)
    void agreesWithManySmallSteps(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.97) double share) {
        ElectricDrive drive = AnyDriven.drive(build);
        PackState pack = pack(build, charge);
        double speed = share * top(build, pack);
        Assume.that(speed > 0.0);
        Optional<StandingStart.Reached> reached = pullAway(build).to(speed, pack);
        Assume.that(reached.isPresent());
        SlowStandingStart slow = SlowStandingStart.to(speed, build, drive, pack);
        double accuracy = KINKS + 4.0 * slow.coarse();
        assertThat(reached.get().time()).isCloseTo(slow.time(), within(accuracy * slow.time()));
        assertThat(reached.get().distance())
                .isCloseTo(slow.distance(), within(accuracy * slow.distance()));
        Assume.that(Double.isFinite(slow.fromCells()));
        assertThat(reached.get().spent().sum())
                .isCloseTo(slow.fromCells(), within(accuracy * slow.fromCells()));
    }

    /** 12S4P of 5 Ω give 30 W at the most, of which electronics take 20 W. */
    @Example
    void agreesWithManySmallStepsWhereElectronicsTakeWhatThePackLacks() {
        Build board =
                Builds.withCells(
                        Builds.trailBoard(),
                        cell -> Builds.evenResistance(cell.withResistance(5.0)));
        Use use = board.use();
        Riding riding = new Riding(6.0, 0.0, 20.0, 0.0005, Optional.empty());
        agreesWithManySmallSteps(board.withUse(use.withRiding(riding)), 0.5, 0.2);
    }

    @Property(tries = 300)
    void aSpeedIsReachedWhereAllBelowAreExceededWithFullThrust(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 30.0) double speed) {
        ElectricDrive drive = AnyDriven.drive(build);
        PackState pack = pack(build, charge);
        RoadLoad load = RoadLoad.of(build);
        double least = Double.POSITIVE_INFINITY;
        for (int step = 0; step <= 100; step++) {
            double here = speed * step / 100.0;
            double thrust = SlowStandingStart.thrust(here, build, drive, pack);
            least = Math.min(least, thrust / load.force(here, 0.0, 0.0));
        }
        Assume.that(Math.abs(least - 1.0) > 1e-6);
        assertThat(pullAway(build).to(speed, pack).isPresent()).isEqualTo(least > 1.0);
    }

    @Property(tries = 200)
    void moreMotorCurrentNeverTakesLonger(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 1.0) double charge,
            @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.95) double share,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 3.0) double factor) {
        ElectricDrive less = AnyDriven.drive(build);
        ElectricDrive more =
                new ElectricDrive(
                        less.powertrain(),
                        factor * less.motorCurrent(),
                        less.packCurrent(),
                        less.taper());
        PackState pack = pack(build, charge);
        double speed = share * top(build, pack);
        Assume.that(speed > 0.0);
        Optional<StandingStart.Reached> slower =
                new StandingStart(build, less, Road.LEVEL).to(speed, pack);
        Assume.that(slower.isPresent());
        Optional<StandingStart.Reached> faster =
                new StandingStart(build, more, Road.LEVEL).to(speed, pack);
        assertThat(faster).isPresent();
        assertThat(faster.get().time())
                .isLessThanOrEqualTo(slower.get().time() * (1.0 + QUADRATURE));
        assertThat(faster.get().distance())
                .isLessThanOrEqualTo(slower.get().distance() * (1.0 + QUADRATURE));
    }

    private static double top(Build build, PackState pack) {
        return TopSpeed.find(AnyDriven.drive(build), RoadLoad.of(build), 0.0, 0.0, pack).speed();
    }

    private static StandingStart pullAway(Build build) {
        return new StandingStart(build, AnyDriven.drive(build), Road.LEVEL);
    }

    private static PackState pack(Build build, double charge) {
        return PackState.of(
                new BatteryModel(build.battery()), charge, build.battery().temperatureC());
    }
}
