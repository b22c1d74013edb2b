package brakewright.powertrain;

import brakewright.numeric.Accuracy;
import brakewright.numeric.Root;
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

    /** Currents that never bind, so that voltage alone does [A]. */
    private static final double NO_BOUND = 1e9;

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
        return taper.isEmpty()
                ? packCurrent
                : TaperedLimit.settled(
                        packCurrent,
                        taper.get(),
                        pack.voltage() - taper.get().ends(),
                        pack.resistance());
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
        return Math.min(greatestAsked(topSpeed, pack), settledPackLimit(pack));
    }

    /**
     * Returns the highest current that the motors would draw at any speed up to one, if nothing
     * held them back.
     *
     * @param topSpeed the highest speed [m/s]
     * @param pack the pack
     * @return the pack current; infinite where the pack cannot give so much power [A]
     */
    public double greatestAsked(double topSpeed, PackState pack) {
        return -pack.currentInto(-powertrain.drawnPower(motorCurrent, topSpeed));
    }

    /**
     * Returns what the drive does at a speed: the least of the motor current set, what the pack
     * limit leaves (taper included) and what the sagged voltage can still push against the field of
     * the motor. The field is not weakened.
     *
     * @param speed [m/s], not negative
     * @param pack the pack
     * @return currents, voltage and thrust
     */
    public DriveState at(double speed, PackState pack) {
        double limited =
                powertrain.limitedDriveCurrent(
                        motorCurrent, speed, pack.powerDrawnBy(settledPackLimit(pack)));
        TopSpeed.Holder holder =
                limited < motorCurrent
                        ? TopSpeed.Holder.PACK_CURRENT
                        : TopSpeed.Holder.MOTOR_CURRENT;
        double current = limited;
        if (voltageReserve(limited, speed, pack) < 0.0) {
            holder = TopSpeed.Holder.VOLTAGE;
            current = voltageLimited(limited, speed, pack);
        }
        double packCurrent = -pack.currentInto(-powertrain.drawnPower(current, speed));
        return new DriveState(
                current,
                packCurrent,
                pack.terminalVoltage(-packCurrent),
                powertrain.thrust(current, speed),
                holder);
    }

    /**
     * Returns what the voltage of a pack alone would leave at a speed, if neither motor nor pack
     * current were set.
     *
     * @param speed [m/s], not negative
     * @param pack the pack
     * @return currents, voltage and thrust; held down by something else than the voltage where the
     *     pack's greatest power is
     */
    public DriveState ofVoltage(double speed, PackState pack) {
        return new ElectricDrive(powertrain, NO_BOUND, NO_BOUND, Optional.empty()).at(speed, pack);
    }

    /** More current needs more voltage and sags the pack, so the reserve falls with the current. */
    private double voltageLimited(double most, double speed, PackState pack) {
        if (voltageReserve(0.0, speed, pack) <= 0.0) {
            return 0.0;
        }
        return Root.between(
                current -> voltageReserve(current, speed, pack),
                0.0,
                most,
                Accuracy.INNERMOST,
                Accuracy.INNERMOST);
    }

    /**
     * Returns the voltage left over at the pack's terminals.
     *
     * @param current per motor [A], not negative
     * @param speed [m/s]
     * @param pack the pack
     * @return the terminal voltage less the motors' need [V]; where the pack cannot give the power,
     *     the need alone, negative
     */
    double voltageReserve(double current, double speed, PackState pack) {
        double drawn = pack.currentInto(-powertrain.drawnPower(current, speed));
        double terminal = Double.isInfinite(drawn) ? 0.0 : pack.terminalVoltage(drawn);
        return terminal - powertrain.voltageNeed(current, speed);
    }
}
