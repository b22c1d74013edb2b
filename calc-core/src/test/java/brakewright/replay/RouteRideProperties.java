package brakewright.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.battery.BatteryModel;
import brakewright.driving.Cruise;
import brakewright.driving.Road;
import brakewright.driving.SteadyPower;
import brakewright.powertrain.AnyDriven;
import brakewright.powertrain.PackState;
import brakewright.road.Gravity;
import brakewright.road.Slope;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Rider;
import brakewright.spec.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.domains.Domain;
import net.jqwik.api.domains.DomainContext;

@Tag("law")
@Domain(AnyDriven.class)
@Domain(AnyRoute.class)
@Domain(DomainContext.Global.class)
class RouteRideProperties {

    /** A sum of some hundred terms, relative to the sum of their magnitudes. */
    private static final double ROUNDING = 1e-9;

    private static final double STATED = RouteRide.ACCURACY;

    private static final List<Build> VEHICLES =
            List.of(Builds.trailBoard(), Builds.parcelTrike(), Builds.dockCart());

    /** The thrust of a full pull is then no more than nothing. */
    @Example
    void whatDoesNotOvercomeTheDragDrawsNothing() {
        Build board = Builds.trailBoard();
        Build weak = board.withSettings(board.settings().withMotorDriveCurrent(0.1));
        RouteRide ride = RouteRide.of(weak, new Route(List.of(new Leg(50.0, -3.0, 5.0, 0.0))));
        assertThat(ride.totals().spent().motorDrag()).isNotNegative();
        assertThat(ride.totals().net())
                .isCloseTo(
                        ride.totals().spent().atTerminals(),
                        within(ROUNDING * magnitude(ride.totals())));
    }

    /**
     * Work against tyres and height, and what moves at the end, are known without a single step;
     * what the cells gave is the integral of their voltage over the charge.
     */
    @Property(tries = 25)
    void whatTheCellsGiveIsSpent(@ForAll Build build, @ForAll Route route) {
        RouteRide ride = RouteRide.of(build, route);
        Underway last = ride.last();
        RideTotals totals = ride.totals();
        double weight = build.mass() * Gravity.STANDARD;
        double magnitude = magnitude(totals) + weight;
        double rolling = 0.0;
        double left = ride.distance();
        for (Leg leg : route.legs()) {
            double ridden = Math.min(left, leg.length());
            left -= ridden;
            rolling +=
                    weight
                            * build.vehicle().rollingResistance()
                            * Slope.cosine(leg.slope())
                            * ridden;
        }
        double height = ride.course().get(ride.course().size() - 1).height();
        assertThat(totals.spent().rolling()).isCloseTo(rolling, within(ROUNDING * magnitude));
        assertThat(totals.spent().climbing())
                .isCloseTo(weight * height, within(ROUNDING * magnitude));
        assertThat(totals.spent().moving())
                .isCloseTo(
                        0.5 * build.inertia() * last.speed() * last.speed(),
                        within(ROUNDING * magnitude));
        assertThat(totals.spent().sum())
                .isCloseTo(
                        given(build, build.use().chargeFrom(), last.charge()),
                        within(RouteRide.ACCURACY * magnitude));
        assertThat(totals.net())
                .isCloseTo(totals.spent().atTerminals(), within(ROUNDING * magnitude));
    }

    private static double magnitude(RideTotals totals) {
        return totals.drawn()
                + totals.returned()
                + Math.abs(totals.spent().climbing())
                + Math.abs(totals.spent().air())
                + totals.spent().rolling()
                + totals.spent().friction();
    }

    /** What the cells give between two charge states: the voltage is straight between knots. */
    private static double given(Build build, double from, double to) {
        BatteryModel model = new BatteryModel(build.battery());
        double integral = 0.0;
        double[] knots = model.knots();
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        double below = low;
        for (double knot : knots) {
            double above = Math.max(low, Math.min(high, knot));
            integral +=
                    0.5
                            * (model.openCircuitVoltage(below) + model.openCircuitVoltage(above))
                            * (above - below);
            below = above;
        }
        integral += model.openCircuitVoltage(high) * (high - below);
        return Math.copySign(3600.0 * model.capacityAh() * integral, from - to);
    }

    @Property(tries = 25)
    void shorterStepsChangeNoMoreThanIsStated(
            @ForAll @IntRange(min = 0, max = 2) int which, @ForAll Route route) {
        shorterStepsChangeNoMore(VEHICLES.get(which), route);
    }

    /** Within one step of the way down from 43 km/h the pack's limit lets go of the brake. */
    @Example
    void aLimitThatLetsGoWithinAStepIsNotMissed() {
        shorterStepsChangeNoMore(
                Builds.parcelTrike(),
                new Route(List.of(new Leg(182.11, -1.8211000000000002, 15.0, 0.0))));
    }

    /** By rounding the last step ends less than the shortest step before the end. */
    @Example
    void aStopAHairBeforeTheEndIsAnArrival() {
        Build board = Builds.trailBoard();
        Route route =
                new Route(
                        List.of(
                                new Leg(
                                        122.67152654564464,
                                        -8.587006858195124,
                                        10.585323576102336,
                                        0.0)));
        assertThat(RouteRide.of(board, route, start(board), RouteRide.ACCURACY / 64.0).end())
                .isEqualTo(RouteEnd.ARRIVES);
    }

    private static void shorterStepsChangeNoMore(Build build, Route route) {
        RouteRide ride = RouteRide.of(build, route);
        RouteRide finer = RouteRide.of(build, route, start(build), RouteRide.ACCURACY / 8.0);
        Assume.that(ride.end() == RouteEnd.ARRIVES && finer.end() == RouteEnd.ARRIVES);
        assertThat(ride.time()).isCloseTo(finer.time(), within(STATED * finer.time()));
        double flow = finer.totals().chargeOut() + finer.totals().chargeBack();
        assertThat(ride.totals().chargeOut())
                .isCloseTo(finer.totals().chargeOut(), within(STATED * flow));
        assertThat(ride.totals().chargeBack())
                .isCloseTo(finer.totals().chargeBack(), within(STATED * flow));
        assertThat(ride.totals().net())
                .isCloseTo(finer.totals().net(), within(STATED * magnitude(finer.totals())));
    }

    @Property(tries = 25)
    void aRouteInTwoPartsIsRiddenAsInOne(
            @ForAll Build build, @ForAll Route route, @ForAll @IntRange(min = 1, max = 4) int cut) {
        Assume.that(cut < route.legs().size());
        RouteRide whole = RouteRide.of(build, route);
        double at = route.legs().subList(0, cut).stream().mapToDouble(Leg::length).sum();
        Assume.that(whole.distance() > at);
        double passing =
                whole.course().stream()
                        .filter(point -> Math.abs(point.state().distance() - at) < 1e-9)
                        .findFirst()
                        .orElseThrow()
                        .allowed();
        RouteRide first = RouteRide.of(build, new Route(route.legs().subList(0, cut), passing));
        Assume.that(first.end() == RouteEnd.ARRIVES);
        RouteRide second =
                RouteRide.of(
                        build,
                        new Route(route.legs().subList(cut, route.legs().size())),
                        first.last());
        assertThat(second.end()).isEqualTo(whole.end());
        double accuracy = areStepsOf(whole, first, second) ? ROUNDING : STATED;
        assertThat(first.time() + second.time())
                .isCloseTo(whole.time(), within(accuracy * whole.time()));
        assertThat(second.last().charge()).isCloseTo(whole.last().charge(), within(accuracy));
        assertThat(second.last().cellsC()).isCloseTo(whole.last().cellsC(), within(1e3 * accuracy));
        assertThat(first.totals().net() + second.totals().net())
                .isCloseTo(whole.totals().net(), within(accuracy * magnitude(whole.totals())));
    }

    /**
     * A step that is a hair from being too long may be taken in the one ride and shortened in the
     * other, as their distances are rounded apart; from there on both are only as near as stated.
     */
    private static boolean areStepsOf(RouteRide whole, RouteRide first, RouteRide second) {
        List<RidePoint> parts = new ArrayList<>(first.course());
        parts.addAll(second.course().subList(1, second.course().size()));
        return parts.size() == whole.course().size()
                && IntStream.range(0, parts.size())
                        .allMatch(
                                point ->
                                        Math.abs(
                                                        parts.get(point).state().distance()
                                                                - whole.course()
                                                                        .get(point)
                                                                        .state()
                                                                        .distance())
                                                < 1e-6);
    }

    /** The speed is reached by both, so that neither is spared the air. */
    @Property(tries = 25)
    void aHeavierRiderNeverCostsLessOnTheFlat(
            @ForAll @IntRange(min = 0, max = 2) int which,
            @ForAll @DoubleRange(min = 2.0, max = 5.0) double speed,
            @ForAll @DoubleRange(min = 1.0, max = 40.0) double more) {
        Build capped = VEHICLES.get(which);
        Build build = capped.withSettings(capped.settings().withSpeedCap(OptionalDouble.empty()));
        Rider rider = build.rider();
        Build laden =
                build.withRider(
                        new Rider(
                                rider.mass() + more,
                                rider.stance(),
                                rider.massHeight(),
                                rider.supportHalfLength()));
        Route flat = new Route(List.of(new Leg(600.0, 0.0, speed, 0.0)));
        RouteRide light = RouteRide.of(build, flat);
        RouteRide heavy = RouteRide.of(laden, flat);
        assertThat(heavy.end()).isEqualTo(RouteEnd.ARRIVES);
        assertThat(heavy.heldBack()).isEmpty();
        assertThat(heavy.totals().net()).isGreaterThan(light.totals().net());
    }

    /** Windings stay as cold and cells as warm as the sheet has them; no cap, no stop. */
    @Property(tries = 25)
    void aSteadyRideGoesAsFarAsTheSheetSays(
            @ForAll Build any, @ForAll @DoubleRange(min = 2.0, max = 8.0) double speed) {
        Build build = Heatless.of(any);
        Cruise cruise = Cruise.of(build, AnyDriven.drive(build), Road.ofUse(build), speed);
        Assume.that(cruise.isHeld() && cruise.distanceHeld() > 5000.0);
        Assume.that(cruise.heldDownTo() == build.use().chargeTo());
        Route flat = new Route(List.of(new Leg(2.0 * cruise.distance(), 0.0, speed, 0.0)), speed);
        RouteRide ride = RouteRide.of(build, flat, underway(build, speed));
        assertThat(ride.end()).isEqualTo(RouteEnd.CHARGE_USED);
        assertThat(ride.distance())
                .isCloseTo(cruise.distance(), within(STATED * cruise.distance()));
        assertThat(ride.consumption())
                .isCloseTo(cruise.consumption(), within(STATED * cruise.consumption()));
    }

    @Property(tries = 25)
    void nothingIsEverNoNumber(@ForAll Build build, @ForAll Route route) {
        Settings settings = build.settings().withSpeedCap(OptionalDouble.of(9.0));
        RouteRide ride = RouteRide.of(build.withSettings(settings), route);
        assertThat(ride.distance()).isBetween(0.0, route.length() * (1.0 + ROUNDING));
        assertThat(ride.course())
                .allSatisfy(
                        point -> {
                            assertThat(point.packVoltage()).isFinite();
                            assertThat(point.packCurrent()).isFinite();
                            assertThat(point.state().time()).isFinite();
                            assertThat(point.state().cellsC()).isFinite();
                            assertThat(point.state().charge())
                                    .isGreaterThan(build.use().chargeTo() - 1e-3);
                        });
    }

    /** As if the speed had been held for long. */
    private static Underway underway(Build build, double speed) {
        BatteryModel model = new BatteryModel(build.battery());
        double charge = build.use().chargeFrom();
        double cells = build.battery().temperatureC();
        PackState pack = PackState.of(model, charge, cells, Double.POSITIVE_INFINITY);
        double power =
                SteadyPower.of(build, AnyDriven.drive(build), Road.ofUse(build), speed, pack)
                        .terminals();
        double current = -pack.currentInto(-power);
        double pulse = model.resistance(charge, cells);
        double air = build.use().climate().ambientC();
        return new Underway(
                0.0,
                0.0,
                speed,
                charge,
                current * (pulse - model.resistance(charge, cells, 0.0)),
                current * (pack.resistance() - pulse),
                cells,
                air,
                air);
    }

    private static Underway start(Build build) {
        return Underway.rested(
                build.use().chargeFrom(),
                build.battery().temperatureC(),
                build.use().climate().ambientC());
    }
}
