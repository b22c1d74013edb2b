package brakewright.worksheet;

import brakewright.limit.BrakingTime;
import brakewright.limit.Limit;
import brakewright.limit.Limits;
import brakewright.limit.TaperLimit;
import brakewright.spec.Build;

/** What is permitted, each limit derived when it is first asked for. */
public final class LimitSheet {

    private final Build build;
    private final Limits limits;

    LimitSheet(Build build, Limits limits) {
        this.build = build;
        this.limits = limits;
    }

    /**
     * Returns the limit of the motor current when driving.
     *
     * @return per motor
     */
    public Limit motorDrive() {
        return limits.motorDrive();
    }

    /**
     * Returns the limit of the motor current when braking.
     *
     * @return per motor
     */
    public Limit motorBrake() {
        return limits.motorBrake();
    }

    /**
     * Returns the limit of the current out of the pack.
     *
     * @return of all controllers together
     */
    public PackLimitSheet packDischarge() {
        return new PackLimitSheet(
                build,
                limits.packDischarge(),
                build.settings().packDischargeCurrent(),
                build.use().chargeTo());
    }

    /**
     * Returns the limit of the current into the pack.
     *
     * @return of all controllers together
     */
    public PackLimitSheet packRegen() {
        return new PackLimitSheet(
                build,
                limits.packRegen(),
                build.settings().packRegenCurrent(),
                build.use().chargeFrom());
    }

    /**
     * Returns where the drive must fade.
     *
     * @return as the pack's voltage falls
     */
    public TaperLimit lowVoltageTaper() {
        return limits.lowVoltageTaper();
    }

    /**
     * Returns where the electric brake must fade.
     *
     * @return as the pack's voltage rises
     */
    public TaperLimit highVoltageTaper() {
        return limits.highVoltageTaper();
    }

    /**
     * Returns the limit of the speed.
     *
     * @return the highest
     */
    public Limit speedCap() {
        return limits.speedCap();
    }

    /**
     * Returns how long braking lasts, for which the packs' voltages are held.
     *
     * @return at the pack current in effect
     */
    public BrakingTime brakingTime() {
        return limits.brakingTime();
    }
}
