package brakewright.powertrain;

import brakewright.spec.Taper;
import java.util.Optional;

/**
 * The electric brake as it is set: a current per motor, held back by a limit on what goes into the
 * pack, down to the speed at which the controllers end it. Below that no current flows, and what
 * the motors drag is all that they brake with.
 *
 * @param powertrain motors and controllers
 * @param motorCurrent the brake current set, per motor [A]
 * @param packCurrent the pack regen current set, of all controllers together [A]
 * @param taper fades the pack regen current as the pack's voltage rises; empty where none is set
 * @param endsBelow the speed below which it does not act [m/s], not negative
 */
public record ElectricBrake(
        Powertrain powertrain,
        double motorCurrent,
        double packCurrent,
        Optional<Taper> taper,
        double endsBelow) {

    /**
     * An electric brake that acts down to a standstill.
     *
     * @param powertrain motors and controllers
     * @param motorCurrent the brake current set, per motor [A]
     * @param packCurrent the pack regen current set, of all controllers together [A]
     * @param taper fades the pack regen current as the pack's voltage rises; empty where none is
     *     set
     */
    public ElectricBrake(
            Powertrain powertrain, double motorCurrent, double packCurrent, Optional<Taper> taper) {
        this(powertrain, motorCurrent, packCurrent, taper, 0.0);
    }

    /**
     * Returns this brake with another taper.
     *
     * @param replacement the taper that fades it; empty for none
     * @return a changed copy
     */
    public ElectricBrake withTaper(Optional<Taper> replacement) {
        return new ElectricBrake(powertrain, motorCurrent, packCurrent, replacement, endsBelow);
    }

    /**
     * Returns the brake current that is set for a speed.
     *
     * @param speed [m/s]
     * @return the current per motor; 0 below the speed at which the controllers end the brake [A]
     */
    public double motorCurrentAt(double speed) {
        return speed < endsBelow ? 0.0 : motorCurrent;
    }

    /**
     * Returns what the brake would send back if nothing held it. Where it draws, it draws no more
     * than the pack can give.
     *
     * @param speed [m/s]
     * @param pack the pack
     * @return the pack current; negative when drawn [A]
     */
    public double askedPackCurrent(double speed, PackState pack) {
        return pack.currentInto(powertrain.returnedPower(supplied(speed, pack), speed));
    }

    /**
     * Returns the motor current that the pack regen limit leaves, the taper left out.
     *
     * @param speed [m/s]
     * @param pack the pack
     * @return the current per motor [A]
     */
    public double motorCurrent(double speed, PackState pack) {
        return powertrain.limitedBrakeCurrent(
                supplied(speed, pack), speed, pack.powerReturnedBy(packCurrent));
    }

    /**
     * Returns whether the pack regen limit, the taper left out, weakens the brake at a speed.
     *
     * @param speed [m/s]
     * @param pack the pack
     * @return false, too, where braking draws more power than the pack can give: that is no limit
     */
    public boolean isHeldBack(double speed, PackState pack) {
        return motorCurrent(speed, pack) < supplied(speed, pack);
    }

    /**
     * Returns the motor current that the pack regen limit leaves in steady state, the taper
     * included.
     *
     * @param speed [m/s]
     * @param pack the pack
     * @param share of the brake current set that is asked for, as when it builds up [1]
     * @return the current per motor [A]
     */
    public double settledMotorCurrent(double speed, PackState pack, double share) {
        return powertrain.limitedBrakeCurrent(
                supplied(share, speed, pack), speed, pack.powerReturnedBy(settledPackLimit(pack)));
    }

    /**
     * Returns the power that the brake would send back beyond what the settled pack regen limit
     * lets in.
     *
     * @param speed [m/s]
     * @param pack the pack
     * @param share of the brake current set that is asked for, as when it builds up [1]
     * @return the power; negative where that limit holds nothing back [W]
     */
    public double returnedBeyondLimit(double speed, PackState pack, double share) {
        return powertrain.returnedPower(supplied(share, speed, pack), speed)
                - pack.powerReturnedBy(settledPackLimit(pack));
    }

    private double supplied(double speed, PackState pack) {
        return supplied(1.0, speed, pack);
    }

    private double supplied(double share, double speed, PackState pack) {
        return powertrain.suppliedBrakeCurrent(
                share * motorCurrentAt(speed), speed, pack::greatestPower);
    }

    /**
     * Returns the pack current after the pack regen limit, the taper left out.
     *
     * @param speed [m/s]
     * @param pack the pack
     * @return the pack current; negative when drawn [A]
     */
    public double packCurrent(double speed, PackState pack) {
        return pack.currentInto(powertrain.returnedPower(motorCurrent(speed, pack), speed));
    }

    /**
     * Returns the speed above which the pack regen limit weakens the brake, the taper left out.
     *
     * @param pack the pack
     * @return the speed, not below that at which the brake ends [m/s]
     */
    public double fadeSpeed(PackState pack) {
        return Math.max(
                endsBelow, powertrain.fadeSpeed(motorCurrent, pack.powerReturnedBy(packCurrent)));
    }

    /**
     * Returns the highest current that the settings let into the pack in steady state, the taper
     * included: where the pack's voltage meets the tapered limit.
     *
     * <p>With the band from b to e the limit at voltage V is {@code Iset·(e − V)/(e − b)}, and
     * {@code V = U + I·R}.
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
                        taper.get().ends() - pack.voltage(),
                        pack.resistanceInto());
    }

    /**
     * Returns a brake without a taper that does, at one state of the pack, what this one settles
     * at.
     *
     * @param pack the state of the pack
     * @return the same motor current, held back by what is let into the pack in steady state
     */
    public ElectricBrake settled(PackState pack) {
        return taper.isEmpty()
                ? this
                : new ElectricBrake(
                        powertrain,
                        motorCurrent,
                        settledPackLimit(pack),
                        Optional.empty(),
                        endsBelow);
    }

    /**
     * Returns whether the taper lets less into the pack than the pack regen current does.
     *
     * @param pack the state of the pack
     * @return true where the taper, not the pack regen current, holds the brake back
     */
    public boolean isHeldByTaper(PackState pack) {
        return settledPackLimit(pack) < packCurrent;
    }

    /**
     * Returns the highest current that reaches the pack at any speed up to one, braking in full or
     * in part.
     *
     * <p>At a motor current the returned power grows with speed, so the highest speed decides; of
     * the motor currents up to the set one the one that returns most does.
     *
     * @param topSpeed the highest speed [m/s]
     * @param pack the pack
     * @return the pack current, not negative [A]
     */
    public double greatestReturn(double topSpeed, PackState pack) {
        return Math.min(greatestAsked(topSpeed, pack), settledPackLimit(pack));
    }

    /**
     * Returns the highest current that the motors would return at any speed up to one, braking in
     * full or in part, if nothing held them back.
     *
     * @param topSpeed the highest speed [m/s]
     * @param pack the pack
     * @return the pack current, not negative [A]
     */
    public double greatestAsked(double topSpeed, PackState pack) {
        double most = powertrain.mostReturningCurrent(motorCurrentAt(topSpeed), topSpeed);
        return pack.currentInto(powertrain.returnedPower(most, topSpeed));
    }

    /**
     * Returns the lowest speed at which the motors would return a current if nothing held them
     * back.
     *
     * @param current into the pack [A]
     * @param pack the pack
     * @return the speed [m/s]; infinite without a brake current
     */
    public double speedAsking(double current, PackState pack) {
        return motorCurrent == 0.0
                ? Double.POSITIVE_INFINITY
                : Math.max(
                        endsBelow,
                        powertrain.fadeSpeed(motorCurrent, pack.powerReturnedBy(current)));
    }

    /**
     * Returns the lowest speed at which a current reaches the pack, braking in full or in part.
     *
     * @param current into the pack [A]
     * @param pack the pack
     * @return the speed [m/s]; infinite where the settings keep it below at any speed
     */
    public double speedReturning(double current, PackState pack) {
        return current > settledPackLimit(pack)
                ? Double.POSITIVE_INFINITY
                : speedAsking(current, pack);
    }
}
