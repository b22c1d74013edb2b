package brakewright.powertrain;

import brakewright.road.RoadLoad;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The steady speed at which the thrust that motor current, pack current and sagged voltage leave
 * just meets the road load.
 *
 * <p>The current that holds a speed, the power it takes and the voltage it needs all rise with
 * speed, so the three reserves fall and the least of them has one zero.
 */
public final class TopSpeed {

    private static final double RELATIVE_ACCURACY = 1e-12;
    private static final double ABSOLUTE_ACCURACY = 1e-9;
    private static final int ITERATIONS = 200;

    private TopSpeed() {}

    /** What holds the top speed down. */
    public enum Holder {
        /** The motor current. */
        MOTOR_CURRENT,
        /** The pack current. */
        PACK_CURRENT,
        /** The sagged voltage. */
        VOLTAGE,
        /** Nothing: the vehicle does not move off at all. */
        STANDSTILL
    }

    /**
     * A top speed.
     *
     * @param speed [m/s]
     * @param holder what holds it down
     */
    public record Result(double speed, Holder holder) {}

    /**
     * Finds the top speed.
     *
     * @param powertrain motors and controllers
     * @param load the road load
     * @param slope rise over run [1]
     * @param motorCurrent highest drive current per motor [A]
     * @param packCurrent highest pack current, of all controllers together [A]
     * @param pack the pack
     * @return the top speed; zero where the vehicle cannot move off
     */
    public static Result find(
            Powertrain powertrain,
            RoadLoad load,
            double slope,
            double motorCurrent,
            double packCurrent,
            PackState pack) {
        double packPower = pack.powerDrawnBy(packCurrent);
        Reserves reserves = new Reserves(powertrain, load, slope, motorCurrent, packPower, pack);
        if (!(reserves.value(0.0) > 0.0)) {
            return new Result(0.0, Holder.STANDSTILL);
        }
        double high = 10.0;
        while (reserves.value(high) > 0.0) {
            high *= 2.0;
        }
        double speed =
                new BrentSolver(RELATIVE_ACCURACY, ABSOLUTE_ACCURACY)
                        .solve(ITERATIONS, reserves, 0.0, high);
        return new Result(speed, reserves.holderAt(speed));
    }

    private record Reserves(
            Powertrain powertrain,
            RoadLoad load,
            double slope,
            double motorCurrent,
            double packPower,
            PackState pack)
            implements UnivariateFunction {

        @Override
        public double value(double speed) {
            double holding = holding(speed);
            return Math.min(
                    currentReserve(holding),
                    Math.min(powerReserve(holding, speed), voltageReserve(holding, speed)));
        }

        Holder holderAt(double speed) {
            double holding = holding(speed);
            double current = currentReserve(holding);
            double power = powerReserve(holding, speed);
            double voltage = voltageReserve(holding, speed);
            if (current <= power && current <= voltage) {
                return Holder.MOTOR_CURRENT;
            }
            return power <= voltage ? Holder.PACK_CURRENT : Holder.VOLTAGE;
        }

        private double holding(double speed) {
            return powertrain.thrustCurrent(Math.max(0.0, load.force(speed, slope, 0.0)), speed);
        }

        private double currentReserve(double holding) {
            return 1.0 - holding / motorCurrent;
        }

        private double powerReserve(double holding, double speed) {
            return 1.0 - powertrain.drawnPower(holding, speed) / packPower;
        }

        /**
         * The voltage left over at the terminals, or less than none where the pack cannot give the
         * power.
         */
        private double voltageReserve(double holding, double speed) {
            double drawn = pack.currentInto(-powertrain.drawnPower(holding, speed));
            double terminal = Double.isInfinite(drawn) ? 0.0 : pack.terminalVoltage(drawn);
            return (terminal - powertrain.voltageNeed(holding, speed)) / pack.voltage();
        }
    }
}
