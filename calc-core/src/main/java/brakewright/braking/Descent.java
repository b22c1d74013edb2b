package brakewright.braking;

import brakewright.battery.BatteryModel;
import brakewright.limit.ConstraintId;
import brakewright.limit.Limits;
import brakewright.limit.MotorHeatBalance;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Powertrain;
import brakewright.road.Gravity;
import brakewright.road.LoadTransfer;
import brakewright.road.RoadLoad;
import brakewright.road.Slope;
import brakewright.spec.Build;
import brakewright.spec.Require;
import brakewright.spec.Unit;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A steady descent held by the electric brake alone, from a charge state to where it ends.
 *
 * <p>{@code F = m·g·(sinθ − crr·cosθ) − air}; the power that holding this force returns fills the
 * packs by {@code dt = 3600·Q·ds/I(s)}. Where the windings take more than the slope gives, holding
 * draws from the packs, down to the lowest charge in use.
 *
 * <p>A descent lasts for many minutes: the packs have the resistance of an endless current, and the
 * cells' continuous ratings hold, not those for a short pulse.
 *
 * <p>Source: equilibrium on a slope; conservation of energy and of charge.
 *
 * <p>Assumption: the speed is steady and the slope even; there is no wind.
 *
 * <p>Assumption: every coulomb that enters the cells stays in them (coulombic efficiency 1), as
 * nearly all do in lithium cells; less would let the descent last longer.
 *
 * <p>Assumption: efficiencies, and the temperatures of windings and cells, stay what they are at
 * the beginning. A winding that warms returns less, which lets the descent last longer, too; one
 * that draws at a walk draws more, which ends it sooner.
 *
 * <p>Assumption: what electronics draw is left out, which errs on the side of fuller packs.
 *
 * @param speed held [m/s]
 * @param slope of the descent, as a positive rise over run [1]
 * @param pull of the slope less rolling and air [N]; not positive where nothing needs to be held
 * @param available force of the electric brake at this charge state as the settings leave it and
 *     the driven wheels grip on this slope, whether the packs bear that or not; in the first
 *     seconds or after minutes, whichever is less [N]
 * @param steepestHeld the steepest slope that settings and grip hold at this speed, rise over run
 *     [1]; infinite where they hold any
 * @param steepestSustained the steepest slope up to which the packs bear, at the beginning, what
 *     holding it for many minutes sends into or draws from them, rise over run [1]; at most {@code
 *     steepestHeld}
 * @param motorCurrent that holds the descent, per motor [A]
 * @param packCurrent that this returns at the beginning [A]; negative when drawn, negative infinity
 *     where the packs cannot give so much
 * @param end what ends it
 * @param refusing the condition on the packs that ends it; empty where something else does
 * @param endCharge the charge state where it ends; that of the beginning where it is not held, or
 *     is held for ever [1]
 * @param endCellVoltage there, while it is still held [V]
 * @param distance ridden until then [m]; infinite where it is held for ever
 * @param windingTime until the winding limit, from cold, its drag loss taken at this speed [s];
 *     empty where it is never reached or not known
 */
public record Descent(
        double speed,
        double slope,
        double pull,
        double available,
        double steepestHeld,
        double steepestSustained,
        double motorCurrent,
        double packCurrent,
        DescentEnd end,
        Optional<ConstraintId> refusing,
        double endCharge,
        double endCellVoltage,
        double distance,
        OptionalDouble windingTime) {

    /**
     * Returns whether the electric brake as it is set holds the speed at the beginning. The packs
     * may refuse at once nevertheless.
     *
     * @return true if it does
     */
    public boolean isHeld() {
        return available >= pull;
    }

    /**
     * Returns how long it is held.
     *
     * @return the time until it ends [s]; infinite where it is held for ever
     */
    public double time() {
        return distance / speed;
    }

    /**
     * Computes a descent.
     *
     * @param build the vehicle
     * @param brake its electric brake
     * @param limits what the pack may take and give
     * @param cellsC cell temperature [°C]
     * @param slope of the descent, as a positive rise over run [1]
     * @param speed held [m/s], positive
     * @param charge the charge state at the beginning [1], from 0 to 1
     * @return the descent
     * @throws IllegalArgumentException if the speed is not positive, the slope is negative or the
     *     charge state is outside its range
     */
    public static Descent of(
            Build build,
            ElectricBrake brake,
            Limits limits,
            double cellsC,
            double slope,
            double speed,
            double charge) {
        Require.positive("descent speed", speed, Unit.METRE_PER_SECOND);
        Require.notNegative("descent slope", slope, Unit.RATIO);
        Require.within("charge state of descent", charge, 0.0, 1.0, Unit.RATIO);
        Powertrain powertrain = brake.powertrain();
        RoadLoad load = RoadLoad.of(build);
        double pull = -load.force(speed, -slope, 0.0);
        double current = pull > 0.0 ? powertrain.brakeCurrent(pull, speed) : 0.0;
        EnduranceBraking braking =
                new EnduranceBraking(build, brake, limits, cellsC, speed, current);
        PackState pack = braking.pack(charge);
        PackState fresh = PackState.of(new BatteryModel(build.battery()), charge, cellsC);
        double set =
                Math.min(
                        brake.settledMotorCurrent(speed, fresh, 1.0),
                        brake.settledMotorCurrent(speed, pack, 1.0));
        double borne = packsBear(powertrain, limits, set, speed, pack);
        double grip = new LoadTransfer(build.vehicle().axles()).brakingGrip(build.vehicle().grip());
        double gripped = steepest(load, load.rollingResistance() + grip, 0.0, speed);
        double available =
                Math.min(
                        powertrain.brakeForce(set, speed),
                        load.mass() * Gravity.pressing(slope) * grip);
        Course course =
                available >= pull
                        ? Course.along(braking, charge, build.use().chargeTo())
                        : new Course(DescentEnd.NOT_HELD, charge, 0.0);
        return new Descent(
                speed,
                slope,
                pull,
                available,
                Math.min(gripped, steepest(load, powertrain.brakeForce(set, speed), speed)),
                Math.min(gripped, steepest(load, powertrain.brakeForce(borne, speed), speed)),
                current,
                braking.packCurrent(charge),
                course.end(),
                course.end() == DescentEnd.PACK_REFUSES
                        ? Optional.of(braking.binding(course.charge()))
                        : Optional.empty(),
                course.charge(),
                braking.cellVoltage(course.charge()),
                speed * course.time(),
                MotorHeatBalance.timeToLimit(build, speed, current));
    }

    /**
     * What holding comes to.
     *
     * @param end what ends it
     * @param charge where [1]
     * @param time until then [s]
     */
    private record Course(DescentEnd end, double charge, double time) {

        static Course along(EnduranceBraking braking, double from, double lowest) {
            if (braking.power() == 0.0) {
                return new Course(DescentEnd.NEVER, from, Double.POSITIVE_INFINITY);
            }
            boolean fills = braking.power() > 0.0;
            double to = fills ? 1.0 : Math.min(from, lowest);
            double last = braking.lastHeld(from, to);
            return new Course(end(braking, last, to, fills), last, braking.time(from, last));
        }

        private static DescentEnd end(
                EnduranceBraking braking, double last, double to, boolean fills) {
            double brake = braking.brakeReserve(last);
            double pack = braking.packReserve(last);
            if (last == to && brake >= 0.0 && pack >= 0.0) {
                return fills ? DescentEnd.FULL : DescentEnd.LOWEST_CHARGE;
            }
            return brake < pack ? DescentEnd.BRAKE_FADES : DescentEnd.PACK_REFUSES;
        }
    }

    /** The motor current up to which the packs bear what is returned or drawn for minutes [A]. */
    private static double packsBear(
            Powertrain powertrain, Limits limits, double most, double speed, PackState pack) {
        double taken = limits.packRegen().sustained().valueAt(pack.charge(), pack.temperatureC());
        double given =
                limits.packDischarge().sustained().valueAt(pack.charge(), pack.temperatureC());
        return powertrain.suppliedBrakeCurrent(
                powertrain.limitedBrakeCurrent(most, speed, pack.powerReturnedBy(taken)),
                speed,
                () -> pack.powerDrawnBy(given));
    }

    private static double steepest(RoadLoad load, double force, double speed) {
        return steepest(load, load.rollingResistance(), force, speed);
    }

    /** {@code m·g·(sinθ − c·cosθ) = F + air}, where c holds as rolling and grip do. */
    private static double steepest(RoadLoad load, double coefficient, double force, double speed) {
        double multiple = (force + load.airForce(speed)) / (load.mass() * Gravity.STANDARD);
        return Slope.held(multiple, -coefficient);
    }
}
