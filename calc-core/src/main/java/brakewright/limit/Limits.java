package brakewright.limit;

import brakewright.battery.BatteryModel;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import org.jspecify.annotations.Nullable;

/**
 * Every limit of a vehicle, each derived when it is first asked for: a search asks thousands of
 * vehicles for one of them. Threads that ask at once may each derive it, and find the same.
 */
public final class Limits {

    private final Build build;
    private final BatteryModel model;
    private volatile @Nullable Limit motorDrive;
    private volatile @Nullable Limit motorBrake;
    private volatile @Nullable PackLimit packDischarge;
    private volatile @Nullable PackLimit packRegen;
    private volatile @Nullable TaperLimit lowVoltageTaper;
    private volatile @Nullable TaperLimit highVoltageTaper;
    private volatile @Nullable Limit speedCap;
    private volatile @Nullable BrakingTime brakingTime;

    private Limits(Build build) {
        this.build = build;
        this.model = new BatteryModel(build.battery());
    }

    /**
     * Derives the limits of a vehicle. The tapers are made wide enough for the pack currents that
     * are set, or for the recommended ones where none are set.
     *
     * @param build the vehicle
     * @return its limits
     */
    public static Limits of(Build build) {
        return new Limits(build);
    }

    /**
     * Returns the packs that the limits are derived for. What was found of them at one charge state
     * is remembered, so whoever asks on asks this model.
     *
     * @return the model of all packs
     */
    public BatteryModel battery() {
        return model;
    }

    /**
     * Returns the limit of the motor current when driving.
     *
     * @return per motor
     */
    public Limit motorDrive() {
        Limit found = motorDrive;
        if (found == null) {
            found = new MotorConstraints(build).driving();
            motorDrive = found;
        }
        return found;
    }

    /**
     * Returns the limit of the motor current when braking.
     *
     * @return per motor
     */
    public Limit motorBrake() {
        Limit found = motorBrake;
        if (found == null) {
            found = new MotorConstraints(build).braking(packRegen(), model.into());
            motorBrake = found;
        }
        return found;
    }

    /**
     * Returns the limit of the current out of the pack.
     *
     * @return of all controllers together
     */
    public PackLimit packDischarge() {
        PackLimit found = packDischarge;
        if (found == null) {
            found = new BatteryConstraints(build, model).giving();
            packDischarge = found;
        }
        return found;
    }

    /**
     * Returns the limit of the current into the pack.
     *
     * @return of all controllers together
     */
    public PackLimit packRegen() {
        PackLimit found = packRegen;
        if (found == null) {
            found = new BatteryConstraints(build, model.into()).taking(packRegenInEffect());
            packRegen = found;
        }
        return found;
    }

    /**
     * Returns where the drive must fade.
     *
     * @return as the pack's voltage falls
     */
    public TaperLimit lowVoltageTaper() {
        TaperLimit found = lowVoltageTaper;
        if (found == null) {
            found = new TaperRule(build, model).low(packDischargeInEffect());
            lowVoltageTaper = found;
        }
        return found;
    }

    /**
     * Returns where the electric brake must fade.
     *
     * @return as the pack's voltage rises
     */
    public TaperLimit highVoltageTaper() {
        TaperLimit found = highVoltageTaper;
        if (found == null) {
            found = new TaperRule(build, model.into()).high(packRegenInEffect());
            highVoltageTaper = found;
        }
        return found;
    }

    /**
     * Returns the limit of the speed.
     *
     * @return the highest
     */
    public Limit speedCap() {
        Limit found = speedCap;
        if (found == null) {
            found = new SpeedConstraints(build, model).cap();
            speedCap = found;
        }
        return found;
    }

    /**
     * Returns how long braking lasts, for which the packs' voltages are held.
     *
     * @return at the pack current that is set, or where none is set, at its limit
     */
    public BrakingTime brakingTime() {
        BrakingTime found = brakingTime;
        if (found == null) {
            found = BrakingTime.of(build, model, packRegenInEffect());
            brakingTime = found;
        }
        return found;
    }

    /**
     * Returns the current out of the pack in effect: what is set or, where nothing is, its limit at
     * whatever charge.
     *
     * @return of all controllers together [A]
     */
    public double packDischargeInEffect() {
        Settings settings = build.settings();
        return settings.packDischargeCurrent().isPresent()
                ? build.controllers().count() * settings.packDischargeCurrent().getAsDouble()
                : packDischarge().staticPart(build.battery().temperatureC()).value();
    }

    /**
     * Returns the current into the pack in effect: what is set or, where nothing is, its limit at
     * whatever charge. That part of the limit is the same however long braking lasts, so it is
     * asked before it is known for which current the rest is made.
     *
     * @return of all controllers together [A]
     */
    public double packRegenInEffect() {
        Settings settings = build.settings();
        return settings.packRegenCurrent().isPresent()
                ? build.controllers().count() * settings.packRegenCurrent().getAsDouble()
                : new BatteryConstraints(build, model.into())
                        .taking(0.0)
                        .staticPart(build.battery().temperatureC())
                        .value();
    }
}
