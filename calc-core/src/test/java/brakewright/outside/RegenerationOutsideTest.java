package brakewright.outside;

import static brakewright.spec.CurrentBasis.DC_EQUIVALENT;

import brakewright.powertrain.BusRise;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;

/** Power between motor and pack. */
class RegenerationOutsideTest {

    @OutsideCheck(quantity = "current into a source", source = "regeneration-textbook")
    void chargesTheSourceOfTheTextbook(OutsideCase check) {
        PackState source = new PackState(0.5, 25.0, check.in("emf"), check.in("sourceResistance"));
        check.agreesWith(source.currentInto(returnedPower(check)));
    }

    @OutsideCheck(quantity = "voltage without load", source = "regeneration-textbook")
    void hasTheBackEmfOfTheTextbook(OutsideCase check) {
        check.agreesWith(motor(check).voltageNeed(0.0, speed(check)));
    }

    @OutsideCheck(quantity = "power into a source", source = "regeneration-textbook")
    void returnsThePowerOfTheTextbook(OutsideCase check) {
        check.agreesWith(returnedPower(check));
    }

    @OutsideCheck(quantity = "speed returning a power", source = "regeneration-textbook")
    void returnsThePowerAtTheSpeedOfTheTextbook(OutsideCase check) {
        check.agreesWith(
                Machines.rpm(motor(check).fadeSpeed(check.in("current"), check.in("power"))));
    }

    @OutsideCheck(quantity = "duty when driving", source = "regeneration-textbook")
    void drawsThePowerThatTheDutyOfTheTextbookGives(OutsideCase check) {
        double current = check.in("current");
        check.agreesWith(
                motor(check).drawnPower(current, speed(check)) / (check.in("voltage") * current));
    }

    @OutsideCheck(quantity = "duty when braking", source = "regeneration-textbook")
    void returnsThePowerThatTheDutyOfTheTextbookGives(OutsideCase check) {
        check.agreesWith(returnedPower(check) / (check.in("voltage") * check.in("current")));
    }

    @OutsideCheck(quantity = "speed of no returned power", source = "regeneration-textbook")
    void returnsNothingWhereTheBackEmfIsUsedUp(OutsideCase check) {
        check.agreesWith(Machines.rpm(motor(check).crossoverSpeed(check.in("current"))));
    }

    @OutsideCheck(quantity = "time to the highest bus voltage", source = "bus-capacitance")
    void fillsTheBusCapacitance(OutsideCase check) {
        check.agreesWith(
                BusRise.time(
                        check.in("capacitance"),
                        check.in("from"),
                        check.in("to"),
                        check.in("power")));
    }

    private static double returnedPower(OutsideCase check) {
        return motor(check).returnedPower(check.in("current"), speed(check));
    }

    private static double speed(OutsideCase check) {
        return Machines.radiansPerSecond(check.in("speed"));
    }

    private static Powertrain motor(OutsideCase check) {
        double kv = check.in("ratedSpeed") / check.in("ratedEmf");
        return Machines.powertrain(Machines.motor(kv, check.in("resistance"), 0.0), DC_EQUIVALENT);
    }
}
