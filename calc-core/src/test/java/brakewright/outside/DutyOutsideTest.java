package brakewright.outside;

import static brakewright.spec.CurrentBasis.DC_EQUIVALENT;

import brakewright.machine.WindingHeat;
import brakewright.powertrain.DriveState;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.powertrain.TopSpeed;
import brakewright.road.RoadLoad;
import brakewright.spec.Motor;
import brakewright.spec.MotorHeat;
import java.util.Optional;
import java.util.OptionalDouble;

/** What a motor does on a supply under load, and what it bears for a while. */
class DutyOutsideTest {

    private static final double BOUNDLESS = 1e6;
    private static final double AIR_C = 20.0;

    /** So small a rise that the copper's resistance stays what it is [K]. */
    private static final double SMALL_RISE_K = 0.1;

    private static final double RESISTANCE = 0.01;
    private static final double TO_AIR = 2.0;
    private static final double NEGLIGIBLE = 1e-6;

    /** One metre is one radian, so a rolling force stands for the torque. */
    @OutsideCheck(quantity = "speed under a torque", source = "motor-duty")
    void turnsAsFastAsTheDataSheetSays(OutsideCase check) {
        RoadLoad torque = new RoadLoad(1.0, check.in("torque") / 9.80665, 0.0, 1.2);
        double speed = TopSpeed.find(drive(check, 0.0), torque, 0.0, 0.0, supply(check)).speed();
        check.agreesWith(Machines.rpm(speed));
    }

    @OutsideCheck(quantity = "greatest efficiency", source = "motor-duty")
    void isAsEfficientAtBestAsTheDataSheetSays(OutsideCase check) {
        ElectricDrive drive = drive(check, check.in("viscous"));
        double free = Machines.radiansPerSecond(check.in("kv") * check.in("voltage"));
        int steps = 10_000;
        double best = 0.0;
        for (int step = 1; step < steps; step++) {
            double speed = free * step / steps;
            DriveState state = drive.at(speed, supply(check));
            if (state.packCurrent() > 0.0) {
                best =
                        Math.max(
                                best,
                                state.thrust()
                                        * speed
                                        / (state.packCurrent() * state.packVoltage()));
            }
        }
        check.agreesWith(100.0 * best);
    }

    @OutsideCheck(quantity = "shaft power at a speed", source = "motor-duty")
    void givesTheShaftPowerOfTheTextbook(OutsideCase check) {
        double speed = Machines.radiansPerSecond(check.in("speed"));
        check.agreesWith(drive(check, 0.0).at(speed, supply(check)).thrust() * speed);
    }

    @OutsideCheck(quantity = "rise in a duty cycle", source = "motor-duty")
    void warmsAndCoolsInADutyCycleAsTheTextbookSays(OutsideCase check) {
        WindingHeat heat =
                new WindingHeat(
                        oneNode(check.in("constant")),
                        RESISTANCE,
                        200.0,
                        AIR_C,
                        check.in("steady") / TO_AIR);
        double start = AIR_C + check.in("start");
        check.agreesWith(
                heat.after(new WindingHeat.Temperatures(start, start), 0.0, check.in("time"))
                                .caseC()
                        - AIR_C);
    }

    /** The power of a machine of constant flux goes with its current. */
    @OutsideCheck(quantity = "power of a short burst", source = "motor-duty")
    void bearsTheBurstOfTheTextbook(OutsideCase check) {
        double share = check.in("constantLoss");
        double copperLoss = SMALL_RISE_K / TO_AIR / (1.0 + share);
        WindingHeat heat =
                new WindingHeat(
                        oneNode(check.in("constant")),
                        RESISTANCE,
                        AIR_C + SMALL_RISE_K,
                        AIR_C,
                        share * copperLoss);
        check.agreesWith(
                check.in("rated")
                        * heat.highestCurrentFor(heat.cold(), check.in("time"))
                        / heat.continuousCurrent());
    }

    /** Winding and case are as good as one body. */
    private static MotorHeat oneNode(double timeConstant) {
        return new MotorHeat(1e-4 * TO_AIR, TO_AIR, NEGLIGIBLE, timeConstant / TO_AIR - NEGLIGIBLE);
    }

    private static ElectricDrive drive(OutsideCase check, double viscousDrag) {
        Motor motor =
                new Motor(
                        check.in("kv"),
                        check.in("resistance"),
                        1,
                        0.0,
                        check.in("freeCurrent"),
                        viscousDrag,
                        OptionalDouble.empty(),
                        200.0,
                        Optional.empty());
        Powertrain bench = Machines.powertrain(motor, DC_EQUIVALENT);
        return new ElectricDrive(bench, BOUNDLESS, BOUNDLESS, Optional.empty());
    }

    private static PackState supply(OutsideCase check) {
        return new PackState(0.5, 25.0, check.in("voltage"), 0.0);
    }
}
