package brakewright.outside;

import static brakewright.spec.CurrentBasis.DC_EQUIVALENT;

import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.powertrain.TopSpeed;
import brakewright.road.LoadTransfer;
import brakewright.road.RoadLoad;
import brakewright.road.StandardAtmosphere;
import brakewright.spec.Axles;
import brakewright.spec.Builds;
import brakewright.spec.Drive;
import brakewright.spec.DrivenAxle;
import java.util.Optional;

/** Air, rolling, slopes, grip and gearing. */
class RoadOutsideTest {

    private static final double KILOMETRES_PER_HOUR = 1.0 / 3.6;
    private static final double ZERO_CELSIUS_K = 273.15;

    @OutsideCheck(quantity = "air density", source = "standard-atmosphere")
    void hasTheDensityOfTheStandardAtmosphere(OutsideCase check) {
        check.agreesWith(density(check.in("altitude")));
    }

    @OutsideCheck(quantity = "density ratio", source = "standard-atmosphere")
    void thinsAsThePublishedTableSays(OutsideCase check) {
        check.agreesWith(density(check.in("altitude")) / density(0.0));
    }

    @OutsideCheck(quantity = "air temperature", source = "standard-atmosphere")
    void coolsAsThePublishedTableSays(OutsideCase check) {
        check.agreesWith(StandardAtmosphere.temperatureC(check.in("altitude")) + ZERO_CELSIUS_K);
    }

    @OutsideCheck(quantity = "air density at a temperature", source = "dry-air")
    void isDenserWhenCold(OutsideCase check) {
        check.agreesWith(StandardAtmosphere.density(check.in("altitude"), check.in("temperature")));
    }

    @OutsideCheck(quantity = "braking grip of the rear axle", source = "load-transfer")
    void slidesItsUnloadedRearWheels(OutsideCase check) {
        check.agreesWith(transfer(check, DrivenAxle.REAR).brakingGrip(check.in("grip")));
    }

    @OutsideCheck(quantity = "braking grip of the front axle", source = "load-transfer")
    void slidesItsLoadedFrontWheels(OutsideCase check) {
        check.agreesWith(transfer(check, DrivenAxle.FRONT).brakingGrip(check.in("grip")));
    }

    @OutsideCheck(quantity = "deceleration that lifts the rear", source = "load-transfer")
    void liftsItsRearWheels(OutsideCase check) {
        check.agreesWith(transfer(check, DrivenAxle.REAR).brakingTip());
    }

    /** Just sliding, the rear wheels carry the braking force over the grip. */
    @OutsideCheck(quantity = "weight shifted to the front", source = "load-transfer")
    void shiftsTheWeightOfTheTextbook(OutsideCase check) {
        double multiple = check.in("deceleration");
        double lever = check.in("front") / check.in("wheelbase");
        double reach = check.in("height") / check.in("wheelbase");
        double slidingGrip = multiple / (lever - multiple * reach);
        double sliding = transfer(check, DrivenAxle.REAR).brakingGrip(slidingGrip);
        check.agreesWith(check.in("weight") * (lever - sliding / slidingGrip));
    }

    @OutsideCheck(quantity = "road load", source = "road-load")
    void resistsAsWorkedByHand(OutsideCase check) {
        check.agreesWith(load(check).force(check.in("speed") * KILOMETRES_PER_HOUR, 0.0, 0.0));
    }

    /** A motor without noticeable loss, held down by the power of the pack alone. */
    @OutsideCheck(quantity = "top speed at a wheel power", source = "road-load")
    void runsAsFastAsItsPowerAllows(OutsideCase check) {
        Powertrain bench = Machines.powertrain(Machines.motor(1.0, 1e-9, 0.0), DC_EQUIVALENT);
        double voltage = 1000.0;
        PackState pack = new PackState(0.5, 25.0, voltage, 0.0);
        TopSpeed.Result top =
                TopSpeed.find(
                        new ElectricDrive(
                                bench, 1e6, check.in("power") / voltage, Optional.empty()),
                        load(check),
                        0.0,
                        0.0,
                        pack);
        check.agreesWith(top.speed() / KILOMETRES_PER_HOUR);
    }

    @OutsideCheck(quantity = "engine power on a grade", source = "climb-textbook")
    void climbsWithThePowerOfTheTextbook(OutsideCase check) {
        double speed = check.in("speed");
        double force = weight(check).force(speed, check.in("slope"), 0.0);
        check.agreesWith(force * speed / check.in("efficiency") / 1000.0);
    }

    @OutsideCheck(quantity = "force on a grade", source = "climb-textbook")
    void isPulledDownTheGradeOfTheTextbook(OutsideCase check) {
        check.agreesWith(weight(check).force(0.0, check.in("slope"), 0.0));
    }

    @OutsideCheck(quantity = "force down a grade against the air", source = "climb-textbook")
    void mustBePushedDownTheGradeOfTheTextbook(OutsideCase check) {
        double slope = -Math.tan(Math.toRadians(check.in("angle")));
        double coasting = check.in("coasting") * KILOMETRES_PER_HOUR;
        double halfDensity = 0.6;
        double area = -weight(check).force(0.0, slope, 0.0) / (halfDensity * coasting * coasting);
        RoadLoad load = new RoadLoad(check.in("mass"), 0.0, area, 2.0 * halfDensity);
        check.agreesWith(load.force(check.in("speed") * KILOMETRES_PER_HOUR, slope, 0.0));
    }

    @OutsideCheck(quantity = "force up a grade as fast as coasting down", source = "climb-textbook")
    void mustBePushedUpTheGradeOfTheTextbook(OutsideCase check) {
        double slope = Math.tan(Math.toRadians(check.in("angle")));
        double speed = 5.0;
        double area = -weight(check).force(0.0, -slope, 0.0) / (0.5 * speed * speed);
        RoadLoad load = new RoadLoad(check.in("mass"), 0.0, area, 1.0);
        check.agreesWith(load.force(speed, slope, 0.0));
    }

    @OutsideCheck(quantity = "power at the wheel", source = "cycling-power")
    void takesThePowerOfTheCyclingModel(OutsideCase check) {
        double speed = check.in("speed");
        double force = load(check).force(speed, check.in("slope"), check.in("headwind"));
        check.agreesWith(force * speed / check.in("efficiency"));
    }

    @OutsideCheck(quantity = "speed by gearing", source = "gearing-textbook")
    void goesAsFastAsItsGearingSays(OutsideCase check) {
        double diameter = check.in("circumference") / Math.PI;
        Powertrain kart =
                Powertrain.of(
                        Builds.withDrive(
                                Builds.trailBoard(),
                                new Drive(2, check.in("reduction"), 1.0),
                                diameter));
        check.agreesWith(
                kart.speed(Machines.radiansPerSecond(check.in("engine"))) / KILOMETRES_PER_HOUR);
    }

    @OutsideCheck(quantity = "turning speed of a wheel", source = "gearing-textbook")
    void turnsItsWheelsAsTheTextbookSays(OutsideCase check) {
        Powertrain direct =
                Powertrain.of(
                        Builds.withDrive(
                                Builds.trailBoard(), new Drive(2, 1.0, 1.0), check.in("diameter")));
        check.agreesWith(direct.angularSpeed(check.in("speed")));
    }

    private static double density(double altitude) {
        return StandardAtmosphere.density(altitude, StandardAtmosphere.temperatureC(altitude));
    }

    private static LoadTransfer transfer(OutsideCase check, DrivenAxle driven) {
        return new LoadTransfer(
                new Axles(check.in("wheelbase"), check.in("height"), check.in("front"), driven));
    }

    private static RoadLoad load(OutsideCase check) {
        return new RoadLoad(
                check.in("mass"), check.in("rolling"), check.in("area"), check.in("density"));
    }

    private static RoadLoad weight(OutsideCase check) {
        return new RoadLoad(check.in("mass"), 0.0, 0.0, 1.2);
    }
}
