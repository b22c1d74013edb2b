package brakewright.braking;

import brakewright.numeric.Rounding;

/** What adds up over a stop: one number for each thing that is counted. */
final class Tally {

    private Tally() {}

    /** The fastest that the charge state has risen, and where; of equally fast ones the fullest. */
    static final class Peak {

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
            if (metRate > rate * (1.0 + Rounding.OF_A_RESULT)) {
                charge = metCharge;
            } else if (metRate > 0.0 && metRate >= rate * (1.0 - Rounding.OF_A_RESULT)) {
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
        Counted.TIME.put(rates, 1.0);
        Counted.DISTANCE.put(rates, speed);
        double packCurrent = state.currentInto(packPower);
        Counted.CHARGE.put(rates, packCurrent * braking.chargePerCoulomb());
        Counted.CURRENT_SQUARED.put(rates, current * current);
        Counted.TERMINALS.put(rates, packPower);
        Counted.PACK.put(rates, packPower - packCurrent * state.voltage());
        Counted.COPPER.put(rates, braking.copperPower(current));
        Counted.CONTROLLER.put(rates, braking.controllerPower(packPower));
        Counted.MOTOR_DRAG.put(rates, braking.dragPower(electric, current, speed));
        Counted.DRIVE.put(rates, braking.driveLossPower(electric, speed));
        Counted.ROLLING.put(rates, braking.rollingForce() * speed);
        Counted.AIR.put(rates, braking.airForce(speed) * speed);
        Counted.FRICTION.put(rates, friction * speed);
        Counted.CLIMBED.put(rates, braking.slopeForce() * speed);
        double force = electric + friction + braking.roadForce(speed);
        Counted.SPEED.put(rates, -force / braking.inertia());
        return force;
    }
}
