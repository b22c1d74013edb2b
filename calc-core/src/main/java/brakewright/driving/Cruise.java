package brakewright.driving;

import brakewright.battery.BatteryModel;
import brakewright.charge.ChargeIntegral;
import brakewright.charge.ReserveWalk;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.powertrain.Spending;
import brakewright.spec.Build;
import brakewright.spec.Require;
import brakewright.spec.Unit;
import brakewright.spec.Use;
import java.util.ArrayList;
import java.util.List;

/**
 * A steady ride from the fullest to the emptiest charge in use: how far it goes and where the
 * energy is spent.
 *
 * <p>The power drawn at a speed does not depend on the charge, the current that it takes from the
 * sagging pack does: {@code dx = v·3600·Q·ds/I(s)}. The resistance of the pack is that of an
 * endless pull. Below the charge at which the speed can no longer be held the ride goes on at the
 * speed that can, slower and slower.
 *
 * <p>Source: conservation of energy.
 *
 * @param speed asked for [m/s]
 * @param heldDownTo the charge state down to which it is held [1]; the beginning where it never is
 * @param distance in all, the slower part included [m]; infinite where the ride takes no power
 * @param distanceHeld at the speed asked for [m]
 * @param time in all [s]
 * @param spent where the energy of the cells went, in all [J]
 * @param spentHeld likewise at the speed asked for [J]
 * @param quarters of the charge that flows at the speed asked for, fullest first; none where it is
 *     held never, or for ever
 */
public record Cruise(
        double speed,
        double heldDownTo,
        double distance,
        double distanceHeld,
        double time,
        Spending spent,
        Spending spentHeld,
        List<Quarter> quarters) {

    private static final int QUARTERS = 4;

    /** Where the ride slows, what rules the speed changes between the knots too. */
    private static final int PIECES = 16;

    /** Slower than this the vehicle is as good as standing [m/s]. */
    private static final double STANDING = 0.05;

    /** Copies the list. */
    public Cruise {
        quarters = List.copyOf(quarters);
    }

    /**
     * One quarter of the charge that flows at the speed asked for.
     *
     * @param from the higher charge state [1]
     * @param to the lower one [1]
     * @param meanVoltage at the pack's terminals, over the charge: energy by charge [V]
     */
    public record Quarter(double from, double to, double meanVoltage) {}

    /**
     * Returns the consumption at the pack's terminals at the speed asked for.
     *
     * @return energy per distance [J/m]; NaN where the speed is never held
     */
    public double consumption() {
        return spentHeld.atTerminals() / distanceHeld;
    }

    /**
     * Returns whether the speed asked for is held, and the ride ends.
     *
     * @return false where it is never held, or for ever
     */
    public boolean isHeld() {
        return distanceHeld > 0.0 && Double.isFinite(distanceHeld);
    }

    /**
     * Returns how long the speed asked for is held.
     *
     * @return the time [s]
     */
    public double timeHeld() {
        return distanceHeld / speed;
    }

    /**
     * Returns the mean voltage at the pack's terminals while the speed asked for is held, over the
     * charge that flows.
     *
     * @return the voltage [V]; NaN where there are no quarters
     */
    public double meanVoltageHeld() {
        double sum = 0.0;
        for (Quarter quarter : quarters) {
            sum += quarter.meanVoltage();
        }
        return sum / quarters.size();
    }

    /**
     * Returns how far the ride goes on below the speed asked for.
     *
     * @return the distance [m]
     */
    public double distanceSlower() {
        return distance - distanceHeld;
    }

    /**
     * Returns what the whole ride takes at the pack's terminals, however fast it is.
     *
     * @return energy per distance [J/m]
     */
    public double consumptionInAll() {
        return spent.atTerminals() / distance;
    }

    /**
     * Computes a steady ride.
     *
     * @param build the vehicle
     * @param drive its drive as it is set
     * @param road the way ahead
     * @param speed asked for [m/s], positive
     * @return the ride
     * @throws IllegalArgumentException if the speed is not positive
     */
    public static Cruise of(Build build, ElectricDrive drive, Road road, double speed) {
        Require.positive("cruise speed", speed, Unit.METRE_PER_SECOND);
        return new Ride(build, new BatteryModel(build.battery()), drive, road).at(speed);
    }

    /**
     * Returns whether the fullest pack in use holds a speed.
     *
     * @param build the vehicle
     * @param model its packs
     * @param drive its drive as it is set
     * @param road the way ahead
     * @param speed [m/s]
     * @return false where the ride would be slower from the beginning
     */
    public static boolean isHeldAtFirst(
            Build build, BatteryModel model, ElectricDrive drive, Road road, double speed) {
        return new Ride(build, model, drive, road).isHeld(speed, build.use().chargeFrom());
    }

    private static final class Ride {

        private final Use use;
        private final double cellsC;
        private final BatteryModel model;
        private final Propulsion propulsion;
        private final ReserveWalk walk;

        Ride(Build build, BatteryModel model, ElectricDrive drive, Road road) {
            this.use = build.use();
            this.cellsC = build.battery().temperatureC();
            this.model = model;
            this.propulsion = new Propulsion(build, drive, road);
            this.walk = new ReserveWalk(model.knots());
        }

        Cruise at(double speed) {
            if (propulsion.terminalPower(propulsion.holdingCurrent(speed), speed) <= 0.0) {
                return endless(speed);
            }
            double held = heldDownTo(speed);
            List<Quarter> quarters = new ArrayList<>();
            ChargeIntegral.Sum steady = steady(speed, held, quarters);
            double standing = movesDownTo(held);
            ChargeIntegral.Sum slower =
                    new ChargeIntegral(model, PIECES)
                            .over(
                                    held,
                                    standing,
                                    charge -> moment(Math.min(speed, possible(charge)), charge));
            ChargeIntegral.Sum all = steady.plus(slower);
            return new Cruise(
                    speed,
                    held,
                    all.distance(),
                    steady.distance(),
                    all.time(),
                    all.spent(),
                    steady.spent(),
                    quarters);
        }

        private ChargeIntegral.Sum steady(double speed, double held, List<Quarter> quarters) {
            ChargeIntegral integral = new ChargeIntegral(model);
            ChargeIntegral.Sum sum = ChargeIntegral.Sum.NOTHING;
            double full = use.chargeFrom();
            double upper = full;
            for (int part = 1; part <= QUARTERS && held < full; part++) {
                double lower = part == QUARTERS ? held : full + (held - full) * part / QUARTERS;
                ChargeIntegral.Sum quarter =
                        integral.over(upper, lower, charge -> moment(speed, charge));
                double coulombs = integral.coulombs() * (upper - lower);
                quarters.add(new Quarter(upper, lower, quarter.spent().atTerminals() / coulombs));
                sum = sum.plus(quarter);
                upper = lower;
            }
            return sum;
        }

        /** Road and wind do all the work, and nothing else draws. */
        private Cruise endless(double speed) {
            return new Cruise(
                    speed,
                    use.chargeFrom(),
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    Double.POSITIVE_INFINITY,
                    Spending.NONE,
                    Spending.NONE,
                    List.of());
        }

        private PackState pack(double charge) {
            return PackState.of(model, charge, cellsC, Double.POSITIVE_INFINITY);
        }

        private ChargeIntegral.Moment moment(double speed, double charge) {
            PackState pack = pack(charge);
            double current = propulsion.holdingCurrent(speed);
            double packCurrent = -pack.currentInto(-propulsion.terminalPower(current, speed));
            return new ChargeIntegral.Moment(
                    packCurrent, speed, propulsion.spending(current, speed, pack));
        }

        private double possible(double charge) {
            return propulsion.steadySpeed(pack(charge));
        }

        boolean isHeld(double speed, double charge) {
            return !(propulsion.reserve(speed, pack(charge)) < 0.0);
        }

        /** As the charge falls, the last state that holds the speed: its voltage is told. */
        private double heldDownTo(double speed) {
            return walk.lastWithReserve(
                    use.chargeFrom(),
                    use.chargeTo(),
                    charge -> propulsion.reserve(speed, pack(charge)));
        }

        private double movesDownTo(double held) {
            return walk.whereGone(held, use.chargeTo(), charge -> possible(charge) - STANDING);
        }
    }
}
