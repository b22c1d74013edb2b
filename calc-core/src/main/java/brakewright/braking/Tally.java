package brakewright.braking;

/** What adds up over a stop: one number for each thing that is counted. */
final class Tally {

    static final int TIME = 0;
    static final int DISTANCE = 1;
    static final int CHARGE = 2;
    static final int CURRENT_SQUARED = 3;
    static final int PACK = 4;
    static final int COPPER = 5;
    static final int CONTROLLER = 6;
    static final int MOTOR_DRAG = 7;
    static final int DRIVE = 8;
    static final int ROLLING = 9;
    static final int AIR = 10;
    static final int FRICTION = 11;
    static final int CLIMBED = 12;
    static final int SIZE = 13;

    private Tally() {}

    /** The fastest that the charge state has risen, and where; of equally fast ones the fullest. */
    static final class Peak {

        /** Rounding of a current that is worked out from its power and back. */
        private static final double EQUAL = 1e-9;

        private double rate;
        private double charge;

        /** Nothing has flowed yet. */
        Peak(double charge) {
            this.charge = charge;
        }

        /** How fast the charge state rose [1/s]; 0 where it never did. */
        double rate() {
            return rate;
        }

        /** The charge state there [1]. */
        double charge() {
            return charge;
        }

        void meet(double metRate, double metCharge) {
            if (metRate > rate * (1.0 + EQUAL)) {
                charge = metCharge;
            } else if (metRate > 0.0 && metRate >= rate * (1.0 - EQUAL)) {
                charge = Math.max(charge, metCharge);
            }
            rate = Math.max(rate, metRate);
        }
    }

    /**
     * Writes the rates at which everything grows in time.
     *
     * <p>Assumption: every ampere-hour that goes in comes to rest as charge (coulombic efficiency
     * 1); lithium cells lose less than 1 % of it.
     *
     * @param braking what brakes
     * @param speed [m/s]
     * @param charge the charge state [1]
     * @param share of the brakes that has built up [1]
     * @param rates receives the rates, per second
     * @return the force that slows the vehicle [N]
     */
    static double rates(
            Braking braking, double speed, double charge, double share, double[] rates) {
        var state = braking.pack(charge);
        double current = braking.motorCurrent(speed, state, share);
        double electric = braking.electricForce(current, speed, share);
        double friction = braking.frictionForce(share);
        double packPower = braking.packPower(current, speed);
        rates[TIME] = 1.0;
        rates[DISTANCE] = speed;
        rates[CHARGE] = state.currentInto(packPower) * braking.chargePerCoulomb();
        rates[CURRENT_SQUARED] = current * current;
        rates[PACK] = packPower;
        rates[COPPER] = braking.copperPower(current);
        rates[CONTROLLER] = braking.controllerPower(packPower);
        rates[MOTOR_DRAG] = braking.dragPower(electric, current, speed);
        rates[DRIVE] = braking.driveLossPower(electric, speed);
        rates[ROLLING] = braking.rollingForce() * speed;
        rates[AIR] = braking.airForce(speed) * speed;
        rates[FRICTION] = friction * speed;
        rates[CLIMBED] = braking.slopeForce() * speed;
        return electric + friction + braking.roadForce(speed);
    }
}
