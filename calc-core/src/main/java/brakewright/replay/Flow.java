package brakewright.replay;

import brakewright.powertrain.Spending;

/**
 * What moves the vehicle in a step, and where the power goes.
 *
 * @param force at the wheels and the friction brake together; negative while braking [N]
 * @param motorCurrent per motor; negative while braking [A]
 * @param packCurrent out of the packs [A]
 * @param packVoltage at the terminals [V]
 * @param isFull whether all that is permitted is asked for, in pulling or in braking
 * @param spent where what the cells give goes, a foot on the ground among the friction brake [W]
 */
record Flow(
        double force,
        double motorCurrent,
        double packCurrent,
        double packVoltage,
        boolean isFull,
        Spending spent) {

    /** What leaves the terminals; negative into them [W]. */
    double terminals() {
        return packVoltage * packCurrent;
    }
}
