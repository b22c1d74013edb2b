package brakewright.replay;

import brakewright.powertrain.PackState;

/**
 * A step of a ride.
 *
 * @param end how it stands behind it
 * @param seconds how long it lasts [s]
 * @param speed its mean [m/s]
 * @param flow what flows in it
 * @param pack the packs in it, as whoever drives or brakes meets them
 * @param isSettled whether mean speed and force were found to agree
 * @param isStopped whether what pulls does not bring it so far
 */
record Step(
        Underway end,
        double seconds,
        double speed,
        Flow flow,
        PackState pack,
        boolean isSettled,
        boolean isStopped) {}
