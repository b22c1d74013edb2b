package brakewright.outside;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.braking.Descent;
import brakewright.braking.StopOutcome;
import brakewright.limit.Limits;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Stops and descents, as rules, textbooks and arithmetic have them. */
class StoppingOutsideTest {

    private static final double KILOMETRES_PER_HOUR = 1.0 / 3.6;
    private static final double MILES_PER_HOUR = 0.44704;
    private static final double FOOT = 0.3048;
    private static final double CHARGE = 0.5;
    private static final double ROOM_C = 25.0;

    @OutsideCheck(quantity = "stopping distance", source = "light-vehicle-rule")
    void stopsAsALightVehicleMust(OutsideCase check) {
        check.agreesWith(distance(check));
    }

    @OutsideCheck(quantity = "stopping distance", source = "stopping-textbook")
    void stopsAsTheTextbookSays(OutsideCase check) {
        check.agreesWith(distance(check));
    }

    @OutsideCheck(quantity = "distance with reaction", source = "moped-directive")
    void stopsWithinTheDistancesOfTheDirective(OutsideCase check) {
        check.agreesWith(withReaction(check, KILOMETRES_PER_HOUR));
    }

    @OutsideCheck(quantity = "distance with reaction", source = "motorcycle-standard")
    void stopsWithinTheDistancesOfTheMotorcycleStandard(OutsideCase check) {
        check.agreesWith(withReaction(check, KILOMETRES_PER_HOUR));
    }

    @OutsideCheck(quantity = "distance with reaction", source = "car-standard")
    void stopsWithinTheDistanceOfTheCarStandard(OutsideCase check) {
        check.agreesWith(withReaction(check, KILOMETRES_PER_HOUR));
    }

    @OutsideCheck(quantity = "distance by the code", source = "highway-code")
    void stopsWithinTheMetresOfTheHighwayCode(OutsideCase check) {
        check.agreesWith(withReaction(check, MILES_PER_HOUR));
    }

    @OutsideCheck(quantity = "distance by the code in feet", source = "highway-code")
    void stopsWithinTheFeetOfTheHighwayCode(OutsideCase check) {
        check.agreesWith(withReaction(check, MILES_PER_HOUR) / FOOT);
    }

    @OutsideCheck(quantity = "distance by thinking longer", source = "highway-code")
    void ridesFurtherWhenTheRiderThinksLonger(OutsideCase check) {
        double speed = check.in("speed") * MILES_PER_HOUR;
        Roller roller = Roller.braking(check.in("deceleration"));
        check.agreesWith(
                roller.reacting(check.in("reaction")).distanceOnWorksheet(speed)
                        - roller.reacting(check.in("shorter")).distanceOnWorksheet(speed));
    }

    @OutsideCheck(quantity = "stopping distance in feet", source = "older-motorcycle-standard")
    void stopsWithinTheFeetOfTheOlderStandard(OutsideCase check) {
        double speed = check.in("speed") * MILES_PER_HOUR;
        check.agreesWith(
                Roller.braking(check.in("deceleration") * FOOT).stop(speed).distance() / FOOT);
    }

    @OutsideCheck(quantity = "deceleration within a distance", source = "moped-directive")
    void needsTheDecelerationsOfTheDirective(OutsideCase check) {
        check.agreesWith(neededDeceleration(check));
    }

    @OutsideCheck(quantity = "deceleration within a distance", source = "motorcycle-standard")
    void needsTheDecelerationsOfTheMotorcycleStandard(OutsideCase check) {
        check.agreesWith(neededDeceleration(check));
    }

    @OutsideCheck(quantity = "deceleration within a distance", source = "car-standard")
    void needsTheDecelerationOfTheCarStandard(OutsideCase check) {
        check.agreesWith(neededDeceleration(check));
    }

    @OutsideCheck(quantity = "deceleration within a distance", source = "tram-rule")
    void needsTheDecelerationsOfATram(OutsideCase check) {
        check.agreesWith(neededDeceleration(check));
    }

    @OutsideCheck(quantity = "deceleration within a distance", source = "bicycle-rule")
    void needsTheDecelerationOfABicycle(OutsideCase check) {
        check.agreesWith(neededDeceleration(check));
    }

    @OutsideCheck(quantity = "mean fully developed deceleration", source = "developed-deceleration")
    void developsTheDecelerationThatIsConstant(OutsideCase check) {
        check.agreesWith(
                Roller.braking(check.in("deceleration"))
                        .buildingUp(check.in("buildUp"))
                        .stop(check.in("speed") * KILOMETRES_PER_HOUR)
                        .fullyDeveloped());
    }

    @OutsideCheck(quantity = "sliding distance with reaction in feet", source = "road-design")
    void seesAsFarAsARoadDesignerRequires(OutsideCase check) {
        check.agreesWith(
                Roller.sliding(check.in("grip"))
                                .reacting(check.in("reaction"))
                                .distanceOnWorksheet(check.in("speed") * MILES_PER_HOUR)
                        / FOOT);
    }

    @OutsideCheck(quantity = "sliding distance with reaction", source = "road-design")
    void seesAsManyMetresAsARoadDesignerRequires(OutsideCase check) {
        check.agreesWith(
                Roller.sliding(check.in("grip"))
                        .reacting(check.in("reaction"))
                        .distanceOnWorksheet(check.in("speed") * KILOMETRES_PER_HOUR));
    }

    @OutsideCheck(quantity = "sliding distance", source = "stopping-textbook")
    void skidsAsFarAsTheTextbookSays(OutsideCase check) {
        check.agreesWith(
                Roller.sliding(check.in("grip"))
                        .stop(check.in("speed") * KILOMETRES_PER_HOUR)
                        .distance());
    }

    @OutsideCheck(quantity = "speed before a skid", source = "stopping-textbook")
    void wasAsFastAsItsSkidMarksSay(OutsideCase check) {
        Roller roller = Roller.sliding(check.in("grip"));
        check.agreesWith(
                root(speed -> roller.stop(speed).distance() - check.in("distance"), 1.0, 50.0));
    }

    @OutsideCheck(quantity = "distance while the brake builds up", source = "braking-arithmetic")
    void losesDistanceWhileTheBrakeBuildsUp(OutsideCase check) {
        check.agreesWith(
                Roller.braking(check.in("deceleration"))
                        .buildingUp(check.in("buildUp"))
                        .stop(check.in("speed") * KILOMETRES_PER_HOUR)
                        .distance());
    }

    @OutsideCheck(quantity = "distance at constant power", source = "braking-arithmetic")
    void slowsAtThePowerThatThePackTakes(OutsideCase check) {
        Roller roller = heldByThePack(check);
        check.agreesWith(
                roller.stop(check.in("from")).distance() - roller.stop(check.in("to")).distance());
    }

    @OutsideCheck(quantity = "time at constant power", source = "braking-arithmetic")
    void takesItsTimeAtThePowerThatThePackTakes(OutsideCase check) {
        Roller roller = heldByThePack(check);
        check.agreesWith(roller.stop(check.in("from")).time() - roller.stop(check.in("to")).time());
    }

    @OutsideCheck(quantity = "distance with air and rolling", source = "braking-arithmetic")
    void isHelpedByAirAndTyresAndHinderedByASlope(OutsideCase check) {
        check.agreesWith(
                Roller.braking(check.in("force") / check.in("mass"))
                        .weighing(check.in("mass"), check.in("rolling"), check.in("area"))
                        .on(check.in("slope"))
                        .stop(check.in("speed") * KILOMETRES_PER_HOUR)
                        .distance());
    }

    @OutsideCheck(quantity = "braking on a descent", source = "scooter-field-test")
    void brakesAsHardAsTheTestedScooter(OutsideCase check) {
        check.agreesWith(
                testedDeceleration(check.in("speed"), check.in("distance"), check.in("slope")));
    }

    @OutsideCheck(quantity = "deceleration that holds a descent", source = "scooter-field-test")
    void needsADecelerationMerelyToHoldADescent(OutsideCase check) {
        Roller roller = Roller.braking(0.0);
        check.agreesWith(descent(roller, check.in("slope"), 5.0).pull() / roller.mass());
    }

    /** What both brakes gave beyond the foot brake is what the electric brake alone can give. */
    @Test
    @Tag("outside")
    void theElectricBrakeAloneDoesNotStopTheTestedScooter() {
        double electric =
                testedDeceleration(15.5, 33.0, 0.14) - testedDeceleration(15.5, 47.0, 0.14);
        assertThat(Roller.braking(electric).on(-0.17).outcome(15.5 * MILES_PER_HOUR))
                .isInstanceOf(StopOutcome.Unstoppable.class);
    }

    @OutsideCheck(quantity = "force that holds a descent", source = "descent-arithmetic")
    void isPulledDownASlope(OutsideCase check) {
        check.agreesWith(descent(check).pull());
    }

    @OutsideCheck(quantity = "power into the pack", source = "descent-arithmetic")
    void returnsThePowerOfASlope(OutsideCase check) {
        check.agreesWith(descent(check).packCurrent() * Roller.VOLTAGE);
    }

    @OutsideCheck(quantity = "energy of 100 m of height", source = "descent-arithmetic")
    void returnsTheEnergyOfAHeight(OutsideCase check) {
        double way = 100.0 / Math.sin(Math.atan(check.in("slope")));
        Descent descent = descent(check);
        double seconds = way / descent.speed();
        check.agreesWith(descent.packCurrent() * Roller.VOLTAGE * seconds / 3600.0);
    }

    @OutsideCheck(quantity = "terminal speed", source = "descent-arithmetic")
    void rollsDownASlopeNoFasterThanTheAirPermits(OutsideCase check) {
        Roller roller = rolling(check);
        check.agreesWith(
                root(speed -> descent(roller, check.in("slope"), speed).pull(), 1.0, 50.0)
                        / KILOMETRES_PER_HOUR);
    }

    private static double distance(OutsideCase check) {
        return Roller.braking(check.in("deceleration"))
                .stop(check.in("speed") * KILOMETRES_PER_HOUR)
                .distance();
    }

    private static double withReaction(OutsideCase check, double unit) {
        return Roller.braking(check.in("deceleration"))
                .reacting(check.in("reaction"))
                .distanceOnWorksheet(check.in("speed") * unit);
    }

    /** The friction brake with which the vehicle just stops within the distance. */
    private static double neededDeceleration(OutsideCase check) {
        double speed = check.in("speed") * KILOMETRES_PER_HOUR;
        return root(
                deceleration ->
                        Roller.braking(deceleration)
                                        .reacting(check.in("reaction"))
                                        .distanceWithReaction(speed)
                                - check.in("distance"),
                0.5,
                20.0);
    }

    private static double testedDeceleration(double mph, double feet, double slope) {
        return root(
                deceleration ->
                        Roller.braking(deceleration)
                                        .on(-slope)
                                        .stop(mph * MILES_PER_HOUR)
                                        .distance()
                                - feet * FOOT,
                2.0,
                20.0);
    }

    /** The grip is strong enough for the power to decide at both speeds. */
    private static Roller heldByThePack(OutsideCase check) {
        return Roller.sliding(0.7)
                .weighing(check.in("mass"), 0.0, 0.0)
                .returning(check.in("power"));
    }

    private static Roller rolling(OutsideCase check) {
        return Roller.sliding(0.8)
                .weighing(check.in("mass"), check.in("rolling"), check.in("area"));
    }

    private static Descent descent(OutsideCase check) {
        return descent(rolling(check), check.in("slope"), check.in("speed") * KILOMETRES_PER_HOUR);
    }

    private static Descent descent(Roller roller, double slope, double speed) {
        return Descent.of(
                roller.build(),
                roller.brake(),
                Limits.of(roller.build()),
                ROOM_C,
                slope,
                speed,
                CHARGE);
    }

    private static double root(DoubleUnaryOperator function, double low, double high) {
        return new BrentSolver(1e-9).solve(200, function::applyAsDouble, low, high);
    }
}
