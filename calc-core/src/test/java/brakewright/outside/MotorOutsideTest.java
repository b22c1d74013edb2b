package brakewright.outside;

import static brakewright.spec.CurrentBasis.DC_EQUIVALENT;
import static brakewright.spec.CurrentBasis.PHASE_PEAK;
import static brakewright.spec.CurrentBasis.PHASE_RMS;

import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.machine.Copper;
import brakewright.machine.MotorModel;
import brakewright.powertrain.Powertrain;
import brakewright.spec.Build;
import brakewright.spec.Builds;
import brakewright.spec.Controllers;
import brakewright.spec.CurrentBasis;
import java.util.OptionalDouble;

/** Torque, voltage and copper loss of a motor. */
class MotorOutsideTest {

    private static final double ANY_RESISTANCE = 0.05;
    private static final double DATA_SHEET_C = 25.0;

    /** [N·m]. */
    private static final double INCH_POUND = 0.0254 * 4.4482216152605;

    @OutsideCheck(quantity = "torque constant dc-equivalent", source = "motor-constants")
    void hasTheTorqueConstantOfItsKv(OutsideCase check) {
        check.agreesWith(torqueConstant(check, DC_EQUIVALENT));
    }

    @OutsideCheck(quantity = "torque constant phase-peak", source = "motor-constants")
    void hasLessTorquePerPhaseAmpere(OutsideCase check) {
        check.agreesWith(torqueConstant(check, PHASE_PEAK));
    }

    @OutsideCheck(quantity = "torque constant for effective amperes", source = "motor-constants")
    void hasMoreTorquePerEffectiveAmpere(OutsideCase check) {
        check.agreesWith(torqueConstant(check, PHASE_RMS));
    }

    @OutsideCheck(quantity = "torque constant of a servo motor", source = "motor-constants")
    void agreesWithTheServoMakersRule(OutsideCase check) {
        double peakEmf = Math.sqrt(2.0) * check.in("emf");
        check.agreesWith(effectiveTorqueConstant(peakEmf));
    }

    @OutsideCheck(quantity = "torque constant from the EMF of a phase", source = "servo-constants")
    void agreesWithTheRuleOfAnotherServoMaker(OutsideCase check) {
        double peakBetweenTerminals = Math.sqrt(2.0) * Math.sqrt(3.0) * check.in("emf");
        check.agreesWith(effectiveTorqueConstant(peakBetweenTerminals));
    }

    /** A motor of 1000 rpm/V has an EMF of 1 V at 1000 rpm. */
    @OutsideCheck(quantity = "EMF constant over torque constant", source = "servo-constants")
    void agreesWithAGlossaryOnSinusoidalMotors(OutsideCase check) {
        check.agreesWith(INCH_POUND / torqueConstant(check, PHASE_PEAK));
    }

    @OutsideCheck(quantity = "torque constant dc-equivalent", source = "motor-published")
    void hasThePublishedTorqueConstant(OutsideCase check) {
        check.agreesWith(torqueConstant(check, DC_EQUIVALENT));
    }

    @OutsideCheck(quantity = "torque dc-equivalent", source = "motor-published")
    void hasThePublishedTorque(OutsideCase check) {
        check.agreesWith(torqueConstant(check, DC_EQUIVALENT) * check.in("current"));
    }

    @OutsideCheck(quantity = "current at standstill", source = "motor-published")
    void drawsThePublishedCurrentWhenStalled(OutsideCase check) {
        MotorModel motor =
                new MotorModel(
                        Machines.motor(check.in("kv"), check.in("resistance"), 0.0), DC_EQUIVALENT);
        check.agreesWith(check.in("voltage") / motor.voltageNeed(0.0, 1.0, Machines.REFERENCE_C));
    }

    @OutsideCheck(quantity = "torque constant dc-equivalent", source = "small-motor-sheet")
    void hasTheTorqueConstantOfASmallMotorsDataSheet(OutsideCase check) {
        check.agreesWith(torqueConstant(check, DC_EQUIVALENT));
    }

    @OutsideCheck(quantity = "torque dc-equivalent", source = "small-motor-sheet")
    void hasTheStalledTorqueOfASmallMotorsDataSheet(OutsideCase check) {
        check.agreesWith(torqueConstant(check, DC_EQUIVALENT) * check.in("current"));
    }

    @OutsideCheck(quantity = "voltage at a speed and current", source = "small-motor-sheet")
    void needsTheVoltageOfASmallMotorsDataSheet(OutsideCase check) {
        check.agreesWith(dataSheetVoltage(check));
    }

    @OutsideCheck(quantity = "torque constant dc-equivalent", source = "brushed-motor-sheet")
    void hasTheTorqueConstantOfABrushedMotor(OutsideCase check) {
        check.agreesWith(torqueConstant(check, DC_EQUIVALENT));
    }

    @OutsideCheck(quantity = "torque dc-equivalent", source = "brushed-motor-sheet")
    void hasTheStalledTorqueOfABrushedMotor(OutsideCase check) {
        check.agreesWith(torqueConstant(check, DC_EQUIVALENT) * check.in("current"));
    }

    @OutsideCheck(quantity = "voltage at a speed and current", source = "brushed-motor-sheet")
    void needsTheVoltageOfABrushedMotor(OutsideCase check) {
        check.agreesWith(dataSheetVoltage(check));
    }

    @OutsideCheck(quantity = "current under load", source = "motor-textbook")
    void drawsTheCurrentOfTheCatalogueExample(OutsideCase check) {
        Powertrain bench =
                Machines.powertrain(
                        Machines.motor(
                                Machines.kvOf(check.in("k")),
                                ANY_RESISTANCE,
                                check.in("freeCurrent")),
                        DC_EQUIVALENT);
        check.agreesWith(bench.thrustCurrent(check.in("torque"), 0.0));
    }

    @OutsideCheck(quantity = "voltage with a torque constant", source = "motor-textbook")
    void needsTheVoltageOfTheTextbook(OutsideCase check) {
        MotorModel motor =
                new MotorModel(
                        Machines.motor(Machines.kvOf(check.in("k")), check.in("resistance"), 0.0),
                        DC_EQUIVALENT);
        check.agreesWith(
                motor.voltageNeed(
                        Machines.radiansPerSecond(check.in("speed")),
                        check.in("current"),
                        Machines.REFERENCE_C));
    }

    @OutsideCheck(quantity = "mechanical power phase-peak", source = "three-phase-sum")
    void hasTheMechanicalPowerOfThreePhases(OutsideCase check) {
        Powertrain bench = bench(check);
        double current = check.in("current");
        check.agreesWith(bench.drawnPower(current, check.in("speed")) - bench.copperLoss(current));
    }

    @OutsideCheck(quantity = "copper loss phase-peak", source = "three-phase-sum")
    void hasTheCopperLossOfThreePhases(OutsideCase check) {
        check.agreesWith(bench(check).copperLoss(check.in("current")));
    }

    @OutsideCheck(quantity = "loss resistance phase-peak", source = "three-phase-sum")
    void hasThreeQuartersOfTheTerminalResistance(OutsideCase check) {
        check.agreesWith(bench(check).copperLoss(1.0));
    }

    @OutsideCheck(quantity = "speed of no returned power", source = "three-phase-sum")
    void returnsNothingBelowASpeed(OutsideCase check) {
        check.agreesWith(bench(check).crossoverSpeed(check.in("current")));
    }

    @OutsideCheck(quantity = "returned power phase-peak", source = "three-phase-sum")
    void returnsAtMostAQuarterOfTheSquare(OutsideCase check) {
        check.agreesWith(bench(check).returnedPower(check.in("current"), check.in("speed")));
    }

    @OutsideCheck(quantity = "voltage without load phase-peak", source = "three-phase-sum")
    void reachesItsFreeSpeedAtTheLinearModulationLimit(OutsideCase check) {
        check.agreesWith(freeVoltage(check, PHASE_PEAK));
    }

    @OutsideCheck(quantity = "voltage without load dc-equivalent", source = "three-phase-sum")
    void reachesItsFreeSpeedInSixSteps(OutsideCase check) {
        check.agreesWith(freeVoltage(check, DC_EQUIVALENT));
    }

    @OutsideCheck(
            quantity = "speed at which the back-EMF reaches a voltage",
            source = "three-phase-sum")
    void capsTheSpeedWhereTheBackEmfReachesTheRating(OutsideCase check) {
        Build bench = Machines.bench(Machines.motor(check.in("kv"), 0.05, 0.0), PHASE_PEAK);
        Build rated =
                Builds.withMargins(
                        Builds.withControllers(
                                bench,
                                new Controllers(
                                        1,
                                        PHASE_PEAK,
                                        1e4,
                                        1e4,
                                        check.in("voltage"),
                                        1.0,
                                        OptionalDouble.empty())),
                        Builds.NO_MARGINS);
        double speed =
                Limits.of(rated).speedCap().constraints().stream()
                        .filter(each -> each.id() == ConstraintId.CONTROLLER_BACK_EMF)
                        .findFirst()
                        .orElseThrow()
                        .limit();
        check.agreesWith(Machines.rpm(speed));
    }

    private static double effectiveTorqueConstant(double peakEmf) {
        return new MotorModel(
                        Machines.motor(Machines.kvOf(peakEmf), ANY_RESISTANCE, 0.0), PHASE_RMS)
                .torqueConstant();
    }

    private static double torqueConstant(OutsideCase check, CurrentBasis basis) {
        return new MotorModel(Machines.motor(check.in("kv"), ANY_RESISTANCE, 0.0), basis)
                .torqueConstant();
    }

    /** Data sheets state the resistance at 25 °C. */
    private static double dataSheetVoltage(OutsideCase check) {
        double at20C = check.in("resistance") / Copper.resistanceFactor(DATA_SHEET_C);
        return new MotorModel(Machines.motor(check.in("kv"), at20C, 0.0), DC_EQUIVALENT)
                .voltageNeed(
                        Machines.radiansPerSecond(check.in("speed")),
                        check.in("current"),
                        DATA_SHEET_C);
    }

    private static double freeVoltage(OutsideCase check, CurrentBasis basis) {
        return new MotorModel(Machines.motor(check.in("kv"), ANY_RESISTANCE, 0.0), basis)
                .voltageNeed(
                        Machines.radiansPerSecond(check.in("speed")), 0.0, Machines.REFERENCE_C);
    }

    private static Powertrain bench(OutsideCase check) {
        return Machines.powertrain(
                Machines.motor(check.in("kv"), check.in("resistance"), 0.0), PHASE_PEAK);
    }
}
