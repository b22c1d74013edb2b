package brakewright.ride;

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

    /**
     * Writes the rates at which everything grows in time.
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
        double electric = braking.electricForce(current, speed);
        double friction = braking.frictionForce(share);
        double packPower = braking.packPower(current, speed);
        rates[TIME] = 1.0;
        rates[DISTANCE] = speed;
        rates[CHARGE] = state.currentInto(packPower) * braking.chargePerCoulomb();
        rates[CURRENT_SQUARED] = current * current;
        rates[PACK] = packPower;
        rates[COPPER] = braking.copperPower(current);
        rates[CONTROLLER] = braking.controllerPower(packPower);
        rates[MOTOR_DRAG] = braking.dragPower(speed);
        rates[DRIVE] = braking.driveLossPower(electric, speed);
        rates[ROLLING] = braking.rollingForce() * speed;
        rates[AIR] = braking.airForce(speed) * speed;
        rates[FRICTION] = friction * speed;
        rates[CLIMBED] = braking.slopeForce() * speed;
        return electric + friction + braking.roadForce(speed);
    }
}
