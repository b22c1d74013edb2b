package brakewright.outside;

import brakewright.limit.AmbientCorrection;
import brakewright.machine.Copper;
import brakewright.machine.WindingHeat;
import brakewright.spec.MotorHeat;

/** Copper over temperature and the warming of a motor. */
class HeatOutsideTest {

    private static final double DATA_SHEET_C = 25.0;
    private static final double SMALL_MOTOR_LIMIT_C = 155.0;
    private static final double ROBOT_RESISTANCE_AT_65_C = 0.376;
    private static final double ROBOT_LIMIT_C = 115.0;
    private static final double ROBOT_AIR_C = 21.0;

    @OutsideCheck(quantity = "resistance ratio of copper", source = "copper")
    void agreesWithTheOtherFormOfTheCopperLaw(OutsideCase check) {
        check.agreesWith(
                Copper.resistanceFactor(check.in("to"))
                        / Copper.resistanceFactor(check.in("from")));
    }

    @OutsideCheck(quantity = "correction of resistance to 20 C", source = "cable-standard")
    void agreesWithTheCableStandard(OutsideCase check) {
        check.agreesWith(1.0 / Copper.resistanceFactor(check.in("temperature")));
    }

    @OutsideCheck(quantity = "ampacity in warmer air", source = "ambient-correction")
    void agreesWithTheElectricalCodesFactors(OutsideCase check) {
        check.agreesWith(AmbientCorrection.factor(check.in("insulation"), check.in("air")));
    }

    @OutsideCheck(quantity = "continuous current", source = "small-motor-sheet")
    void bearsAtLeastTheContinuousCurrentOfASmallMotorsDataSheet(OutsideCase check) {
        double at20C = check.in("resistance") / Copper.resistanceFactor(DATA_SHEET_C);
        WindingHeat heat =
                new WindingHeat(
                        new MotorHeat(2.46, 32.0, 0.3, 6.0),
                        at20C,
                        SMALL_MOTOR_LIMIT_C,
                        DATA_SHEET_C,
                        0.0);
        check.agreesWith(heat.continuousCurrent());
    }

    @OutsideCheck(quantity = "continuous current by the hot resistance", source = "heat-arithmetic")
    void bearsTheCurrentOfTheHotResistance(OutsideCase check) {
        WindingHeat heat =
                new WindingHeat(
                        new MotorHeat(check.in("winding"), check.in("case"), 50.0, 400.0),
                        check.in("resistance"),
                        check.in("limit"),
                        check.in("air"),
                        0.0);
        check.agreesWith(heat.continuousCurrent());
    }

    @OutsideCheck(quantity = "loss resistance at the limit", source = "heat-arithmetic")
    void hasTheHotResistance(OutsideCase check) {
        check.agreesWith(check.in("resistance") * Copper.resistanceFactor(check.in("limit")));
    }

    /** The loss arises in the case, so that the winding only follows and one node remains. */
    @OutsideCheck(quantity = "rise of one node", source = "heat-arithmetic")
    void warmsAsOneNodeWhereTheWindingHardlyCounts(OutsideCase check) {
        double air = 20.0;
        double winding = 1e-6;
        WindingHeat heat =
                new WindingHeat(
                        new MotorHeat(
                                1.0,
                                check.in("resistance"),
                                winding,
                                check.in("capacity") - winding),
                        0.01,
                        200.0,
                        air,
                        check.in("power"));
        check.agreesWith(heat.after(heat.cold(), 0.0, check.in("time")).caseC() - air);
    }

    @OutsideCheck(quantity = "steady winding temperature", source = "heat-arithmetic")
    void settlesWhereAFixedPointIterationDoes(OutsideCase check) {
        check.agreesWith(robot().steady(check.in("current")).orElseThrow().windingC());
    }

    @OutsideCheck(quantity = "current that reaches the winding limit", source = "heat-arithmetic")
    void reachesTheLimitWhereAFixedPointIterationDoes(OutsideCase check) {
        check.agreesWith(robot().continuousCurrent());
    }

    @OutsideCheck(quantity = "steady winding temperature", source = "robot-actuator-heat")
    void settlesWhereARobotActuatorsModelDoes(OutsideCase check) {
        check.agreesWith(robot().steady(check.in("current")).orElseThrow().windingC());
    }

    @OutsideCheck(
            quantity = "current that reaches the winding limit",
            source = "robot-actuator-heat")
    void reachesTheLimitWhereARobotActuatorsModelDoes(OutsideCase check) {
        check.agreesWith(robot().continuousCurrent());
    }

    private static WindingHeat robot() {
        return new WindingHeat(
                new MotorHeat(1.070, 1.941, 16.29, 512.2),
                ROBOT_RESISTANCE_AT_65_C / Copper.resistanceFactor(65.0),
                ROBOT_LIMIT_C,
                ROBOT_AIR_C,
                0.0);
    }
}
