package brakewright.ride;

import brakewright.battery.BatteryModel;
import brakewright.limit.Limits;
import brakewright.limit.MotorHeatBalance;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.road.Gravity;
import brakewright.road.RoadLoad;
import brakewright.spec.Build;
import java.util.OptionalDouble;

/**
 * A steady descent held by the electric brake alone.
 *
 * @param speed held [m/s]
 * @param slope of the descent, as a positive rise over run [1]
 * @param pull of the slope less rolling and air [N]; not positive where nothing needs to be held
 * @param available force of the electric brake at the beginning [N]
 * @param steepestHeld the steepest slope that this force holds at this speed, rise over run [1];
 *     infinite where it holds any
 * @param motorCurrent that holds it, per motor [A]
 * @param packCurrent that this returns at the beginning; negative when drawn [A]
 * @param endCharge the charge state at which the pack may take no more or the brake no longer
 *     holds; the beginning where it does not hold at all, 0 where holding draws from the pack [1]
 * @param endCellVoltage there [V]
 * @param distance ridden until then [m]; infinite where it can be held for ever
 * @param windingTime until the winding limit, from cold [s]; empty where it is never reached or not
 *     known
 */
public record Descent(
        double speed,
        double slope,
        double pull,
        double available,
        double steepestHeld,
        double motorCurrent,
        double packCurrent,
        double endCharge,
        double endCellVoltage,
        double distance,
        OptionalDouble windingTime) {

    /**
     * Assumption: our own choice; where the descent runs out is told to this share of the charge.
     */
    private static final double CHARGE_STEP = 0.0025;

    /**
     * Returns whether the electric brake holds the speed at the beginning.
     *
     * @return true if it does
     */
    public boolean isHeld() {
        return available >= pull;
    }

    /**
     * Computes a descent.
     *
     * @param build the vehicle
     * @param brake its electric brake
     * @param limits what the pack may take
     * @param cellsC cell temperature [°C]
     * @param slope of the descent, as a positive rise over run [1]
     * @param speed held [m/s], positive
     * @param charge the charge state at the beginning [1]
     * @return the descent
     */
    public static Descent of(
            Build build,
            ElectricBrake brake,
            Limits limits,
            double cellsC,
            double slope,
            double speed,
            double charge) {
        Powertrain powertrain = brake.powertrain();
        BatteryModel pack = new BatteryModel(build.battery());
        RoadLoad load = RoadLoad.of(build);
        double pull = -load.force(speed, -slope, 0.0);
        Braking braking =
                new Braking(
                        build,
                        brake,
                        new Surroundings(-slope, build.vehicle().grip(), cellsC, false));
        PackState start = PackState.of(pack, charge, cellsC);
        double available = powertrain.brakeForce(braking.motorCurrent(speed, start, 1.0), speed);
        double current = pull > 0.0 ? powertrain.brakeCurrent(pull, speed) : 0.0;
        double power = powertrain.returnedPower(current, speed);
        double end = charge;
        double seconds = 0.0;
        double perCoulomb = braking.chargePerCoulomb();
        boolean holds = available >= pull;
        boolean fills = power > 0.0;
        while (holds && fills && end < 1.0) {
            double next = Math.min(1.0, end + CHARGE_STEP);
            PackState middle = PackState.of(pack, 0.5 * (end + next), cellsC);
            double into = middle.currentInto(power);
            holds =
                    current <= braking.motorCurrent(speed, middle, 1.0)
                            && into <= limits.packRegen().valueAt(middle.charge(), cellsC);
            if (holds) {
                seconds += (next - end) / (into * perCoulomb);
                end = next;
            }
        }
        PackState last = PackState.of(pack, end, cellsC);
        double drawn = -start.currentInto(power);
        if (available >= pull && drawn > 0.0) {
            seconds = charge / (drawn * perCoulomb);
            end = 0.0;
        }
        boolean forever = available >= pull && power == 0.0;
        return new Descent(
                speed,
                slope,
                pull,
                available,
                steepest(load, available, speed),
                current,
                start.currentInto(power),
                end,
                pack.cellVoltage(last.currentInto(power), end, cellsC),
                forever ? Double.POSITIVE_INFINITY : speed * seconds,
                MotorHeatBalance.of(build)
                        .map(heat -> heat.timeToLimit(heat.cold(), current))
                        .orElse(OptionalDouble.empty()));
    }

    /** {@code m·g·(sinθ − crr·cosθ) = F + air}, solved for tanθ. */
    private static double steepest(RoadLoad load, double force, double speed) {
        double multiple = (force + load.airForce(speed)) / (load.mass() * Gravity.STANDARD);
        double reach = Math.hypot(1.0, load.rollingResistance());
        if (multiple >= reach) {
            return Double.POSITIVE_INFINITY;
        }
        double angle = Math.asin(multiple / reach) + Math.atan(load.rollingResistance());
        return angle >= Math.PI / 2.0 ? Double.POSITIVE_INFINITY : Math.tan(angle);
    }
}
