package brakewright.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.powertrain.AnyDriven;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.powertrain.Spending;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Rider;
import brakewright.spec.Riding;
import brakewright.spec.Use;
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
class CruiseProperties {

    /** A sum of some hundred terms, relative to the sum of their magnitudes. */
    private static final double ROUNDING = 1e-9;

    /** Steps of the brute force; its error falls with their square. */
    private static final int STEPS = 4000;

    /** One step more or less at the speed asked for, and the kinks of the curves inside steps. */
    private static final double COARSE = 2.0 / STEPS;

    /** Five points a piece run across the kinks of the slower part of a ride. */
    private static final double KINKS = 0.01;

    /** Where the charge begins at which a speed is too much is solved for to 1e-10. */
    private static final double CHARGE_ACCURACY = 1e-8;

    /**
     * Whatever the ride, the cells give ∫U·dq; U is a straight line between the knots, which the
     * rule sums without error. What a descent gives and rolling takes may each be many times what
     * the cells give, and no difference is rounded finer than its terms.
     */
    @Property(tries = 300)
    void atTheSpeedAskedForAllThatTheCellsGaveIsSpent(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 12.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = -0.02, max = 0.06) double slope) {
        allThatTheCellsGaveIsSpent(build, speed, slope);
    }

    /** With next to nothing drawn the descent drives the vehicle on and on. */
    @Example
    void allIsSpentOnARideThatHardlyDrawsAnything() {
        Build board = Builds.trailBoard();
        Build still = idling(board, 1e-6 - board.use().riding().idlePower());
        Cruise cruise = allThatTheCellsGaveIsSpent(still, 0.5, -0.1);
        assertThat(-cruise.spentHeld().climbing()).isGreaterThan(1e5 * cruise.spentHeld().sum());
    }

    private static Cruise allThatTheCellsGaveIsSpent(Build build, double speed, double slope) {
        Cruise cruise = cruise(build, new Road(slope, 0.0), speed);
        Assume.that(cruise.distanceHeld() > 0.0 && cruise.distance() < Double.POSITIVE_INFINITY);
        double given = given(build, build.use().chargeFrom(), cruise.heldDownTo());
        assertThat(cruise.spentHeld().sum())
                .isCloseTo(given, within(ROUNDING * magnitude(cruise.spentHeld())));
        double force = Math.max(0.0, RoadLoad.of(build).force(speed, slope, 0.0));
        double work =
                cruise.spentHeld().air()
                        + cruise.spentHeld().rolling()
                        + cruise.spentHeld().climbing()
                        + cruise.spentHeld().moving();
        assertThat(work)
                .isCloseTo(
                        force * cruise.distanceHeld(),
                        within(ROUNDING * magnitude(cruise.spentHeld())));
        return cruise;
    }

    /** What moves in all: on a descent terms of either sign may nearly cancel [J]. */
    private static double magnitude(Spending spent) {
        return spent.sum() + 2.0 * (Math.max(0.0, -spent.climbing()) + Math.max(0.0, -spent.air()));
    }

    /** Wheels on ice that slip before they overcome what the tyres hold back. */
    @Example
    void whatTheGroundDoesNotBearIsNotHeld() {
        Build board = Builds.trailBoard();
        Build onIce =
                board.withVehicle(
                        board.vehicle()
                                .withGripWet(0.02)
                                .withGrip(0.02)
                                .withRollingResistance(0.04));
        assertThat(RoadLoad.of(onIce).force(2.0, 0.0, 0.0)).isGreaterThan(SlowTop.ground(onIce));
        assertThat(cruise(onIce, Road.LEVEL, 2.0).isHeld()).isFalse();
        assertThat(cruise(board, Road.LEVEL, 2.0).isHeld()).isTrue();
    }

    @Property(tries = 300)
    void theSlowerPartTooSpendsAllThatTheCellsGave(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 12.0) double speed) {
        Cruise cruise = cruise(build, Road.LEVEL, speed);
        Assume.that(Double.isFinite(cruise.spent().pack()));
        Assume.that(possible(build, Road.LEVEL, build.use().chargeTo()) > 0.06);
        Assume.that(possible(build, Road.LEVEL, build.use().chargeFrom()) > 0.06);
        Assume.that(feedsACrawl(build, build.use().chargeTo()));
        Assume.that(feedsACrawl(build, build.use().chargeFrom()));
        double given = given(build, build.use().chargeFrom(), build.use().chargeTo());
        assertThat(cruise.spent().sum()).isCloseTo(given, within(ROUNDING * given));
    }

    /** Whether the pack gives what electronics and a crawl draw together. */
    private static boolean feedsACrawl(Build build, double charge) {
        Powertrain powertrain = AnyDriven.drive(build).powertrain();
        double current = powertrain.thrustCurrent(RoadLoad.of(build).force(0.06, 0.0, 0.0), 0.06);
        return endless(build, charge).greatestPower()
                > powertrain.drawnPower(current, 0.06) + build.use().riding().idlePower();
    }

    @Example
    void aRideEndsWhereThePackNoLongerFeedsTheElectronics() {
        Build board = Builds.trailBoard();
        double last = 0.3;
        Build lit =
                idling(
                        board,
                        endless(board, last).greatestPower() - board.use().riding().idlePower());
        double spent = cruise(lit, Road.LEVEL, 6.0).spent().sum();
        double full = board.use().chargeFrom();
        assertThat(spent).isBetween(given(board, full, last + 0.01), given(board, full, last));
        assertThat(feedsACrawl(lit, last + 0.01)).isTrue();
        assertThat(feedsACrawl(lit, last)).isFalse();
    }

    @Property(tries = 300)
    void theConsumptionIsThePowerOverTheSpeed(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 12.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.06) double slope) {
        ElectricDrive drive = AnyDriven.drive(build);
        Cruise cruise = Cruise.of(build, drive, new Road(slope, 0.0), speed);
        Assume.that(cruise.distanceHeld() > 0.0);
        double current =
                drive.powertrain()
                        .thrustCurrent(RoadLoad.of(build).force(speed, slope, 0.0), speed);
        double power =
                drive.powertrain().drawnPower(current, speed) + build.use().riding().idlePower();
        assertThat(cruise.consumption()).isCloseTo(power / speed, within(ROUNDING * power / speed));
    }

    @Property(tries = 300)
    void theSpeedIsHeldDownToWhereItIsTheTopSpeed(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 12.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.06) double slope) {
        Build build = Builds.withCells(any, Builds::evenResistance);
        Road road = new Road(slope, 0.0);
        Use use = build.use();
        double held = cruise(build, road, speed).heldDownTo();
        double above = Math.min(use.chargeFrom(), held + CHARGE_ACCURACY);
        double below = Math.max(use.chargeTo(), held - CHARGE_ACCURACY);
        if (held < use.chargeFrom()) {
            assertThat(possible(build, road, above)).isGreaterThanOrEqualTo(speed - 1e-6);
        }
        if (held > use.chargeTo()) {
            assertThat(possible(build, road, below)).isLessThanOrEqualTo(speed + 1e-6);
        }
    }

    @Property(tries = 40)
    void agreesWithManySmallSteps(
            @ForAll Build any,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 12.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 0.05) double slope,
            @ForAll @Scale(6) @DoubleRange(min = 0.0, max = 5.0) double headwind) {
        Build build = Builds.withCells(any, Builds::evenResistance);
        Road road = new Road(slope, headwind);
        ElectricDrive drive = AnyDriven.drive(build);
        Cruise cruise = Cruise.of(build, drive, road, speed);
        Assume.that(cruise.distance() > 0.0 && Double.isFinite(cruise.spent().pack()));
        SlowCruise slow = SlowCruise.of(build, drive, road, speed, STEPS);
        assertThat(cruise.distanceHeld())
                .isCloseTo(slow.distanceHeld(), within(COARSE * wholeHeld(cruise, build)));
        double slower = slow.distance() - slow.distanceHeld();
        assertThat(cruise.distance())
                .isCloseTo(
                        slow.distance(),
                        within(COARSE * wholeHeld(cruise, build) + KINKS * slower));
        assertThat(cruise.spentHeld().sum())
                .isCloseTo(
                        slow.fromCellsHeld(),
                        within(COARSE * given(build, build.use().chargeFrom(), 0.0)));
    }

    /** Equal parts of the charge; the loaded voltage at the power of the ride, in many steps. */
    @Property(tries = 40)
    void theQuartersTellTheMeanLoadedVoltage(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 12.0) double speed) {
        Cruise cruise = cruise(build, Road.LEVEL, speed);
        Assume.that(cruise.isHeld());
        double full = build.use().chargeFrom();
        double quarter = (full - cruise.heldDownTo()) / 4.0;
        assertThat(cruise.quarters()).hasSize(4);
        for (int part = 0; part < 4; part++) {
            Cruise.Quarter told = cruise.quarters().get(part);
            assertThat(told.from()).isCloseTo(full - part * quarter, within(ROUNDING));
            assertThat(told.to()).isCloseTo(full - (part + 1) * quarter, within(ROUNDING));
            double mean = meanVoltage(build, cruise, told.from(), told.to());
            assertThat(told.meanVoltage()).isCloseTo(mean, within(COARSE * mean));
        }
        assertThat(cruise.meanVoltageHeld() * 3600.0 * capacityAh(build) * 4.0 * quarter)
                .isCloseTo(
                        cruise.spentHeld().atTerminals(),
                        within(ROUNDING * magnitude(cruise.spentHeld())));
    }

    @Example
    void whatIsNeverHeldHasNoQuarters() {
        assertThat(cruise(Builds.trailBoard(), new Road(0.6, 0.0), 12.0).quarters()).isEmpty();
    }

    private static double meanVoltage(Build build, Cruise cruise, double from, double to) {
        double power = cruise.consumption() * cruise.speed();
        double sum = 0.0;
        for (int step = 0; step < STEPS; step++) {
            double charge = from - (from - to) * (step + 0.5) / STEPS;
            sum += endless(build, charge).loadedVoltage(power);
        }
        return sum / STEPS;
    }

    /** Of a slower ride the distance may grow with the load, as the air is spared. */
    @Property(tries = 300)
    void allThatHindersShortensTheRide(
            @ForAll Build build,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 10.0) double speed,
            @ForAll @Scale(6) @DoubleRange(min = 5.0, max = 60.0) double heavier,
            @ForAll @Scale(6) @DoubleRange(min = 0.005, max = 0.05) double steeper,
            @ForAll @Scale(6) @DoubleRange(min = 0.5, max = 5.0) double stronger,
            @ForAll @Scale(6) @DoubleRange(min = 1.0, max = 30.0) double idle) {
        ElectricDrive drive = AnyDriven.drive(build);
        Cruise plain = Cruise.of(build, drive, Road.LEVEL, speed);
        Assume.that(plain.distanceHeld() > 0.0);
        shorter(Cruise.of(laden(build, heavier), drive, Road.LEVEL, speed), plain, build);
        shorter(Cruise.of(build, drive, new Road(steeper, 0.0), speed), plain, build);
        shorter(Cruise.of(build, drive, new Road(0.0, stronger), speed), plain, build);
        shorter(Cruise.of(idling(build, idle), drive, Road.LEVEL, speed), plain, build);
    }

    private static void shorter(Cruise hindered, Cruise plain, Build build) {
        assertThat(hindered.heldDownTo())
                .isGreaterThanOrEqualTo(plain.heldDownTo() - CHARGE_ACCURACY);
        assertThat(hindered.distanceHeld()).isLessThan(plain.distanceHeld());
        if (hindered.heldDownTo() == build.use().chargeTo()) {
            assertThat(hindered.distance()).isLessThan(plain.distance());
        }
    }

    @Example
    void rollsWithoutEndDownASlopeThatDrivesIt() {
        Build board = idling(Builds.trailBoard(), -Builds.trailBoard().use().riding().idlePower());
        Road down = new Road(-0.1, 0.0);
        assertThat(cruise(board, down, 5.0).distance()).isInfinite();
        assertThat(cruise(idling(board, 1.0), down, 5.0).distance()).isFinite();
        assertThat(cruise(board, Road.LEVEL, 5.0).distance()).isFinite();
    }

    /** The ride at the speed asked for, were it held to the end [m]. */
    private static double wholeHeld(Cruise cruise, Build build) {
        double ridden = build.use().chargeFrom() - cruise.heldDownTo();
        return ridden > 0.0
                ? Math.max(cruise.distance(), cruise.distanceHeld() / ridden)
                : cruise.distance();
    }

    private static double given(Build build, double from, double to) {
        BatteryModel model = new BatteryModel(build.battery());
        double integral = 0.0;
        double above = from;
        double[] knots = model.knots();
        for (int i = knots.length - 1; i >= 0; i--) {
            double knot = Math.max(to, Math.min(from, knots[i]));
            integral +=
                    0.5
                            * (model.openCircuitVoltage(above) + model.openCircuitVoltage(knot))
                            * (above - knot);
            above = knot;
        }
        return 3600.0 * model.capacityAh() * integral;
    }

    private static double capacityAh(Build build) {
        return new BatteryModel(build.battery()).capacityAh();
    }

    private static PackState endless(Build build, double charge) {
        return PackState.of(
                new BatteryModel(build.battery()),
                charge,
                build.battery().temperatureC(),
                Double.POSITIVE_INFINITY);
    }

    private static double possible(Build build, Road road, double charge) {
        return SlowTop.speed(build, AnyDriven.drive(build), road, endless(build, charge));
    }

    private static Cruise cruise(Build build, Road road, double speed) {
        return Cruise.of(build, AnyDriven.drive(build), road, speed);
    }

    private static Build laden(Build build, double mass) {
        Rider rider = build.rider();
        return build.withRider(rider.withMass(rider.mass() + mass));
    }

    private static Build idling(Build build, double more) {
        Use use = build.use();
        Riding riding = use.riding();
        return build.withUse(use.withRiding(riding.withIdlePower(riding.idlePower() + more)));
    }
}
