package brakewright.powertrain;

import brakewright.spec.Taper;
import java.util.Optional;

/**
 * The drive as it is set: a current per motor, held back by a limit on what leaves the pack.
 *
 * @param powertrain motors and controllers
 * @param motorCurrent the drive current set, per motor [A]
 * @param packCurrent the pack discharge current set, of all controllers together [A]
 * @param taper fades the pack discharge current as the pack's voltage falls; empty where none is
 *     set
 */
public record ElectricDrive(
        Powertrain powertrain, double motorCurrent, double packCurrent, Optional<Taper> taper) {

    /**
     * Returns the highest current that the settings let out of the pack in steady state, the taper
     * included.
     *
     * <p>With the band from b down to e the limit at voltage V is {@code Iset·(V − e)/(b − e)}, and
     * {@code V = U − I·R}.
     *
     * @param pack the pack
     * @return the pack current [A]
     */
    public double settledPackLimit(PackState pack) {
        if (taper.isEmpty()) {
            return packCurrent;
        }
        Taper band = taper.get();
        double settled =
                packCurrent
                        * (pack.voltage() - band.ends())
                        / (band.band() + packCurrent * pack.resistance());
        return Math.max(0.0, Math.min(packCurrent, settled));
    }

    /**
     * Returns the highest current that leaves the pack at any speed up to one.
     *
     * <p>At a set motor current the drawn power grows with speed, so the highest speed decides.
     *
     * @param topSpeed the highest speed [m/s]
     * @param pack the pack
     * @return the pack current [A]
     */
    public double greatestDraw(double topSpeed, PackState pack) {
        double asked = -pack.currentInto(-powertrain.drawnPower(motorCurrent, topSpeed));
        return Math.min(asked, settledPackLimit(pack));
    }

    /**
     * Returns the motor current that the pack discharge limit leaves, the voltage left out.
     *
     * @param speed [m/s]
     * @param pack the pack
     * @return the current per motor [A]
     */
    public double motorCurrent(double speed, PackState pack) {
        return powertrain.limitedDriveCurrent(motorCurrent, speed, pack.powerDrawnBy(packCurrent));
    }
}
