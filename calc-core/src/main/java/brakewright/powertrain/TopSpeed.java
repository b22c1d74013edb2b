package brakewright.powertrain;

import brakewright.numeric.Accuracy;
import brakewright.numeric.Root;
import brakewright.road.RoadLoad;

/**
 * The steady speed at which the thrust that motor current, pack current and sagged voltage leave
 * just meets the road load.
 *
 * <p>The current that holds a speed, the power it takes and the voltage it needs all rise with
 * speed, so the three reserves fall and the least of them has one zero.
 */
public final class TopSpeed {

    private TopSpeed() {}

    /** What holds the top speed down. */
    public enum Holder {
        /** The motor current. */
        MOTOR_CURRENT("motor-drive-current"),
        /** The pack current. */
        PACK_CURRENT("pack-discharge-current"),
        /** The sagged voltage. */
        VOLTAGE("pack-voltage"),
        /** Nothing: the vehicle does not move off at all. */
        STANDSTILL("standstill");

        private final String key;

        Holder(String key) {
            this.key = key;
        }

        /**
         * Returns the name that worksheets use.
         *
         * @return lower case with hyphens
         */
        public String key() {
            return key;
        }
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
     * @param drive the drive as it is set, its low-voltage taper included
     * @param load the road load
     * @param slope rise over run [1]
     * @param headwind [m/s]; negative from behind
     * @param pack the pack
     * @return the top speed; zero where the vehicle cannot move off
     */
    public static Result find(
            ElectricDrive drive, RoadLoad load, double slope, double headwind, PackState pack) {
        double packPower = pack.powerDrawnBy(drive.settledPackLimit(pack));
        Reserves reserves = new Reserves(drive, load, slope, headwind, packPower, pack);
        if (!(reserves.least(0.0) > 0.0)) {
            return new Result(0.0, Holder.STANDSTILL);
        }
        double high = 10.0;
        while (reserves.least(high) > 0.0) {
            high *= 2.0;
        }
        double speed = Root.between(reserves::least, 0.0, high, Accuracy.INNERMOST, Accuracy.MODEL);
        return new Result(speed, reserves.holderAt(speed));
    }

    private record Reserves(
            ElectricDrive drive,
            RoadLoad load,
            double slope,
            double headwind,
            double packPower,
            PackState pack) {

        double least(double speed) {
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
            return drive.powertrain()
                    .thrustCurrent(Math.max(0.0, load.force(speed, slope, headwind)), speed);
        }

        private double currentReserve(double holding) {
            return 1.0 - holding / drive.motorCurrent();
        }

        private double powerReserve(double holding, double speed) {
            return 1.0 - drive.powertrain().drawnPower(holding, speed) / packPower;
        }

        private double voltageReserve(double holding, double speed) {
            return drive.voltageReserve(holding, speed, pack) / pack.voltage();
        }
    }
}
