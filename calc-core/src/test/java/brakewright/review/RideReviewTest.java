package brakewright.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.limit.Signal;
import brakewright.operation.Operation;
import brakewright.powertrain.Powertrain;
import brakewright.road.RoadLoad;
import brakewright.spec.BrakedBuilds;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Climate;
import brakewright.spec.Controllers;
import brakewright.spec.Criteria;
import brakewright.spec.Riding;
import brakewright.spec.Settings;
import brakewright.spec.Use;
import brakewright.spec.Vehicle;
import java.util.List;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** What a review tells of braking and riding beside the verdict, each with its opposite. */
class RideReviewTest {

    private static final Offset<Double> ROUNDING = within(1e-9);

    private static final double GRAVITY = 9.80665;

    private static final Build BOARD = Builds.trailBoard();
    private static final Build TRIKE = Builds.parcelTrike();
    private static final Build CART = Builds.dockCart();

    @Test
    void aBrakeThatThePackHoldsBackAtSpeedFades() {
        Finding board = one(BOARD, Topic.BRAKE_FADES);
        assertThat(board.detail()).contains(FindingDetail.HeldBack.PACK_LIMIT);
        assertThat(board.value().orElseThrow()).isLessThan(board.limit().orElseThrow());
        assertThat(board.limit()).hasValue(Limits.of(BOARD).motorBrake().value());
        assertThat(board.speed().orElseThrow()).isLessThan(BOARD.highestSpeed());
        assertThat(one(CART, Topic.BRAKE_FADES).detail())
                .contains(FindingDetail.HeldBack.HIGH_VOLTAGE_TAPER);
        Settings gentle = Settings.NONE.withMotorBrakeCurrent(10.0).withPackRegenCurrent(30.0);
        assertThat(told(BOARD.withSettings(gentle), Topic.BRAKE_FADES)).isEmpty();
    }

    /** Worksheets carry these names, which are never changed. */
    @Test
    void whatHoldsABrakeBackKeepsItsName() {
        assertThat(FindingDetail.HeldBack.values())
                .extracting(FindingDetail.HeldBack::key)
                .containsExactly("pack-regen-current", "high-voltage-taper");
    }

    /** The motor's braking takes power below the speed at which it begins to give it back. */
    @Test
    void aBrakeThatEndsBeforeItDrawsPowerDrawsNone() {
        Finding board = one(BOARD, Topic.BRAKE_DRAWS_POWER);
        double speed = board.speed().orElseThrow();
        assertThat(board.signal()).isEqualTo(Signal.NOTICE);
        assertThat(told(ending(BOARD, 0.9 * speed), Topic.BRAKE_DRAWS_POWER)).hasSize(1);
        assertThat(told(ending(BOARD, 1.1 * speed), Topic.BRAKE_DRAWS_POWER)).isEmpty();
    }

    /** A friction brake of 1 m/s² and tyres that roll at 0.02 of the weight. */
    @Test
    void belowTheEndOfTheBrakeFrictionAndTheRoadAreLeft() {
        Finding end = one(ending(rolling(BrakedBuilds.frictionOnly(1.0)), 1.5), Topic.BRAKE_ENDS);
        assertThat(end.signal()).isEqualTo(Signal.CAUTION);
        assertThat(end.value().orElseThrow()).isCloseTo(1.0 + 0.02 * GRAVITY, ROUNDING);
        assertThat(end.speed()).hasValue(1.5);
        assertThat(one(ending(BOARD, 1.5), Topic.BRAKE_ENDS).signal()).isEqualTo(Signal.WARNING);
        assertThat(told(BOARD, Topic.BRAKE_ENDS)).isEmpty();
    }

    /** 2 m/s² are wanted, of which a fifth is none. */
    @Test
    void aBrakeIsWeakBelowWhatIsWantedAndTakenAwayBelowAFifthOfIt() {
        Build enough = unset(BrakedBuilds.frictionOnly(2.1));
        assertThat(told(enough, Topic.BRAKE_WEAK)).isEmpty();
        Build weak = unset(BrakedBuilds.frictionOnly(1.9));
        assertThat(one(weak, Topic.BRAKE_WEAK).value().orElseThrow()).isCloseTo(1.9, ROUNDING);
        assertThat(one(weak, Topic.BRAKE_WEAK).limit()).hasValue(2.0);
        assertThat(told(weak, Topic.BRAKE_TAKEN_AWAY)).isEmpty();
        Finding none = one(unset(BrakedBuilds.frictionOnly(0.3)), Topic.BRAKE_TAKEN_AWAY);
        assertThat(none.constraint()).contains(ConstraintId.REMAINING_BRAKE);
        assertThat(none.value().orElseThrow()).isCloseTo(0.3, ROUNDING);
        assertThat(none.limit().orElseThrow()).isCloseTo(0.4, ROUNDING);
    }

    /**
     * A rider who keeps standing up to 0.15 of gravity, on a cart that friction slows by 1 m/s².
     */
    @Test
    void bothBrakesTogetherMayBeMoreThanARiderBears() {
        Finding hard = one(CART, Topic.BOTH_BRAKES_HARD);
        assertThat(hard.constraint()).contains(ConstraintId.RIDER_BALANCE);
        assertThat(hard.limit().orElseThrow()).isCloseTo(0.15 * GRAVITY, ROUNDING);
        double motor = Powertrain.of(CART).brakeForce(20.0, 3.0);
        double road = RoadLoad.of(CART).force(3.0, 0.0, 0.0);
        assertThat(hard.value().orElseThrow())
                .isCloseTo((motor + 170.0 + road) / CART.inertia(), ROUNDING);
        Build gentle = CART.withSettings(CART.settings().withMotorBrakeCurrent(1.0));
        assertThat(told(gentle, Topic.BOTH_BRAKES_HARD)).isEmpty();
        assertThat(told(BOARD, Topic.BOTH_BRAKES_HARD)).isEmpty();
    }

    @Test
    void theLighterAxleSlidesWhereAllMotorsBrakeHarderThanItBears() {
        assertThat(told(CART, Topic.LIGHTER_AXLE_SLIDES)).isEmpty();
        Build harsh =
                CART.withSettings(
                        Settings.NONE
                                .withMotorBrakeCurrent(200.0)
                                .withSpeedCap(OptionalDouble.of(3.0)));
        Finding slides = one(harsh, Topic.LIGHTER_AXLE_SLIDES);
        assertThat(slides.value().orElseThrow())
                .isCloseTo(Powertrain.of(CART).brakeForce(200.0, 3.0) / 170.0, ROUNDING);
        assertThat(slides.limit().orElseThrow()).isLessThan(0.6 * GRAVITY);
        Build oneAxle = BOARD.withSettings(Settings.NONE.withMotorBrakeCurrent(200.0));
        assertThat(told(oneAxle, Topic.LIGHTER_AXLE_SLIDES)).isEmpty();
    }

    @Test
    void aWetRoadIsToldWhereItBearsLessThanIsSet() {
        Finding wet = one(BOARD, Topic.WET_GRIP);
        double bound = wet.limit().orElseThrow();
        assertThat(wet.value()).hasValue(Limits.of(BOARD).motorBrake().value());
        assertThat(bound).isLessThan(wet.value().orElseThrow());
        assertThat(told(braking(BOARD, bound), Topic.WET_GRIP)).isEmpty();
        assertThat(told(braking(BOARD, 1.001 * bound), Topic.WET_GRIP)).hasSize(1);
        Vehicle old = BOARD.vehicle();
        Build alike = Builds.withVehicle(BOARD, old.withGripWet(old.grip()));
        assertThat(told(braking(alike, 100.0), Topic.WET_GRIP)).isEmpty();
    }

    @Test
    void aSlopeThatPullsMoreThanTheBrakeHoldsIsToldAndWorseWithoutAnother() {
        Finding cart = one(CART, Topic.SLOPE_NOT_HELD);
        assertThat(cart.signal()).isEqualTo(Signal.CAUTION);
        assertThat(cart.limit().orElseThrow())
                .isCloseTo(-RoadLoad.of(CART).force(3.0, -0.1, 0.0), ROUNDING);
        assertThat(told(BOARD, Topic.SLOPE_NOT_HELD)).isEmpty();
        Finding steep = one(braking(BOARD, 5.0), Topic.SLOPE_NOT_HELD);
        assertThat(steep.signal()).isEqualTo(Signal.WARNING);
        assertThat(steep.value().orElseThrow())
                .isCloseTo(Powertrain.of(BOARD).brakeForce(5.0, 11.0), ROUNDING);
    }

    @Test
    void onlyAVehicleWithoutFrictionHasOneBrake() {
        assertThat(told(BOARD, Topic.ONLY_BRAKE)).hasSize(1);
        assertThat(told(TRIKE, Topic.ONLY_BRAKE)).isEmpty();
    }

    /** Half a capacitance is filled in half the time, and one that is not known in no time. */
    @Test
    void theVoltageOfTheBusRisesWhereTheBrakeSendsAnythingBack() {
        double full = one(BOARD, Topic.BUS_RISE).value().orElseThrow();
        double half =
                one(filled(BOARD, OptionalDouble.of(1e-3)), Topic.BUS_RISE).value().orElseThrow();
        assertThat(full).isCloseTo(2.0 * half, ROUNDING);
        assertThat(full).isPositive();
        Build unknown = filled(BOARD, OptionalDouble.empty());
        assertThat(told(unknown, Topic.BUS_RISE)).isEmpty();
        assertThat(told(unknown, Topic.BUS_CAPACITANCE_UNKNOWN)).hasSize(1);
        assertThat(told(braking(BOARD, 0.0), Topic.BUS_RISE)).isEmpty();
        assertThat(told(braking(unknown, 0.0), Topic.BUS_CAPACITANCE_UNKNOWN)).isEmpty();
    }

    /** 39.6 V of twelve cells turn 170 rpm/V, through 4 : 1, a wheel of 0.2 m at 17.6 m/s. */
    @Test
    void fasterThanTheEmptyPackTurnsTheMotorTheReturnIsForced() {
        double speed = 12.0 * 3.3 * 170.0 / 4.0 / 60.0 * Math.PI * 0.2;
        Finding forced = one(upTo(BOARD, 18.0), Topic.FORCED_RETURN);
        assertThat(forced.speed().orElseThrow()).isCloseTo(speed, ROUNDING);
        assertThat(forced.charge()).hasValue(0.1);
        assertThat(told(upTo(BOARD, 17.6), Topic.FORCED_RETURN)).isEmpty();
    }

    @Test
    void aClimbIsShortBelowWhatIsWanted() {
        Finding climb = one(CART, Topic.CLIMB_SHORT);
        double steepest = climb.value().orElseThrow();
        assertThat(climb.limit()).hasValue(0.1);
        assertThat(told(wanting(CART, steepest, OptionalDouble.empty()), Topic.CLIMB_SHORT))
                .isEmpty();
        assertThat(told(wanting(CART, 1.001 * steepest, OptionalDouble.empty()), Topic.CLIMB_SHORT))
                .hasSize(1);
    }

    @Test
    void aClimbThatOutlastsWhatTheWindingBearsOverheats() {
        assertThat(told(BOARD, Topic.CLIMB_OVERHEATS)).isEmpty();
        Use use = BOARD.use();
        Build longer = BOARD.withUse(use.withSlope(use.slope(), 20_000.0));
        Finding climb = one(longer, Topic.CLIMB_OVERHEATS);
        assertThat(climb.signal()).isEqualTo(Signal.WARNING);
        double lasts = climb.value().orElseThrow();
        assertThat(lasts).isLessThan(climb.limit().orElseThrow());
        assertThat(climb.limit().orElseThrow() * climb.speed().orElseThrow())
                .isCloseTo(20_000.0, within(1e-6));
    }

    @Test
    void aRangeIsShortBelowWhatIsWanted() {
        assertThat(told(BOARD, Topic.RANGE_SHORT)).isEmpty();
        Finding range = one(wanting(BOARD, 0.1, OptionalDouble.of(1e6)), Topic.RANGE_SHORT);
        double reached = range.value().orElseThrow();
        assertThat(reached).isBetween(20e3, 1e6);
        assertThat(range.limit()).hasValue(1e6);
        assertThat(range.speed()).hasValue(6.0);
        assertThat(told(wanting(BOARD, 0.1, OptionalDouble.of(reached)), Topic.RANGE_SHORT))
                .isEmpty();
    }

    @Test
    void cellsOverheatAtWhatThePackMayGiveAndNotAtALittleOrNothing() {
        Finding hot = one(BOARD, Topic.CELLS_OVERHEAT);
        assertThat(hot.value().orElseThrow()).isCloseTo(40.5, ROUNDING);
        assertThat(hot.temperatureC()).hasValue(60.0);
        for (double draw : new double[] {0.0, 1.0}) {
            Build gentle = BOARD.withSettings(Settings.NONE.withPackDischargeCurrent(draw));
            assertThat(told(gentle, Topic.CELLS_OVERHEAT)).isEmpty();
        }
    }

    /** Heat goes with the square of the current: stops and starts warm more than they take. */
    @Test
    void townWarmsCellsWhereAnEvenRideDoesNot() {
        double stops = 1.0 / 80.0;
        Build build = stopping(warm(40.0, 43.0), stops);
        Finding town = one(build, Topic.TOWN_WARMS_CELLS);
        assertThat(town.signal()).isEqualTo(Signal.CAUTION);
        assertThat(town.value().orElseThrow()).isGreaterThan(45.0);
        assertThat(town.limit()).hasValue(45.0);
        assertThat(town.temperatureC()).hasValue(43.0);
        assertThat(told(build, Topic.RETURN_INTO_WARM_CELLS)).isEmpty();
        assertThat(told(stopping(warm(30.0, 43.0), stops), Topic.TOWN_WARMS_CELLS)).isEmpty();
        assertThat(told(stopping(warm(40.0, 46.0), stops), Topic.TOWN_WARMS_CELLS)).isEmpty();
        for (double rarely : new double[] {0.0, 1e-5}) {
            assertThat(told(stopping(warm(40.0, 43.0), rarely), Topic.TOWN_WARMS_CELLS)).isEmpty();
        }
        Build unbraked = warm(40.0, 43.0).withSettings(Settings.NONE.withMotorBrakeCurrent(0.0));
        assertThat(told(stopping(unbraked, stops), Topic.TOWN_WARMS_CELLS)).isEmpty();
    }

    private static Build warm(double airC, double cellsC) {
        Use use = BOARD.use();
        return BOARD.withUse(use.withClimate(new Climate(airC, cellsC, cellsC, 0.0, 60.0)));
    }

    private static Build stopping(Build build, double stopsPerMetre) {
        Riding riding = build.use().riding();
        return build.withUse(
                build.use()
                        .withRiding(
                                new Riding(
                                        riding.cruiseSpeed(),
                                        riding.headwind(),
                                        riding.idlePower(),
                                        stopsPerMetre,
                                        riding.measured())));
    }

    @Test
    void onlyWhoStandsIsToldToKeepSteady() {
        assertThat(one(BOARD, Topic.SPEED_STABILITY).speed()).hasValue(11.0);
        assertThat(told(TRIKE, Topic.SPEED_STABILITY)).isEmpty();
    }

    /** The board may be braked and driven at 19.8 A for ever. */
    @Test
    void aWindingIsToldOfBothCurrentsThatItDoesNotBearForEver() {
        assertThat(told(BOARD, Topic.WINDING_TIME)).hasSize(2);
        assertThat(one(BOARD, Topic.WINDING_RUNS_AWAY).value().orElseThrow())
                .isCloseTo(54.0, ROUNDING);
        Settings gentle = Settings.NONE.withMotorDriveCurrent(15.0).withMotorBrakeCurrent(15.0);
        assertThat(told(BOARD.withSettings(gentle), Topic.WINDING_TIME)).isEmpty();
        assertThat(told(BOARD.withSettings(gentle), Topic.WINDING_RUNS_AWAY)).isEmpty();
        assertThat(told(BOARD, Topic.MOTOR_HEAT_UNKNOWN)).isEmpty();
        assertThat(told(TRIKE, Topic.MOTOR_HEAT_UNKNOWN)).hasSize(1);
    }

    private static Finding one(Build build, Topic topic) {
        List<Finding> told = told(build, topic);
        assertThat(told).hasSize(1);
        return told.get(0);
    }

    private static List<Finding> told(Build build, Topic topic) {
        Limits limits = Limits.of(build);
        return Review.of(build, limits, Operation.of(build, limits)).findings().stream()
                .filter(each -> each.topic() == topic)
                .toList();
    }

    private static Build unset(Build build) {
        return braking(build, 0.0);
    }

    private static Build braking(Build build, double current) {
        return build.withSettings(Settings.NONE.withMotorBrakeCurrent(current));
    }

    private static Build upTo(Build build, double speed) {
        Use use = build.use();
        return build.withUse(use.withSpeedMax(speed));
    }

    private static Build ending(Build build, double speed) {
        Controllers old = build.controllers();
        return with(build, old.busCapacitance(), speed);
    }

    private static Build filled(Build build, OptionalDouble capacitance) {
        return with(build, capacitance, 0.0);
    }

    private static Build with(Build build, OptionalDouble capacitance, double brakeEndsBelow) {
        Controllers old = build.controllers();
        return Builds.withControllers(
                build, old.withBusCapacitance(capacitance).withBrakeEndsBelow(brakeEndsBelow));
    }

    private static Build rolling(Build build) {
        Vehicle old = build.vehicle();
        return Builds.withVehicle(
                build, old.withRollingResistance(0.02).withDragArea(0.0).withRotatingShare(0.0));
    }

    private static Build wanting(Build build, double climb, OptionalDouble range) {
        Criteria old = build.criteria();
        return build.withCriteria(old.withClimbMin(climb).withRangeMin(range));
    }
}
