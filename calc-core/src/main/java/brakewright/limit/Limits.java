package brakewright.limit;

import brakewright.spec.Build;
import brakewright.spec.Settings;

/**
 * Every limit of a vehicle.
 *
 * @param motorDrive motor current when driving, per motor
 * @param motorBrake motor current when braking, per motor
 * @param packDischarge current out of the pack, of all controllers together
 * @param packRegen current into the pack, of all controllers together
 * @param lowVoltageTaper where the drive must fade
 * @param highVoltageTaper where the electric brake must fade
 * @param speedCap highest speed
 * @param brakingTime how long braking lasts at the pack current that is set, or where none is set,
 *     at its limit; the packs' voltages are held for so long
 */
public record Limits(
        Limit motorDrive,
        Limit motorBrake,
        PackLimit packDischarge,
        PackLimit packRegen,
        TaperLimit lowVoltageTaper,
        TaperLimit highVoltageTaper,
        Limit speedCap,
        BrakingTime brakingTime) {

    /**
     * Derives the limits of a vehicle. The tapers are made wide enough for the pack currents that
     * are set, or for the recommended ones where none are set.
     *
     * @param build the vehicle
     * @return its limits
     */
    public static Limits of(Build build) {
        MotorConstraints motor = new MotorConstraints(build);
        BatteryConstraints pack = new BatteryConstraints(build);
        PackLimit discharge = pack.giving();
        TaperRule tapers = new TaperRule(build);
        Settings settings = build.settings();
        int count = build.controllers().count();
        double temperature = build.battery().temperatureC();
        double discharging =
                settings.packDischargeCurrent().isPresent()
                        ? count * settings.packDischargeCurrent().getAsDouble()
                        : discharge.staticPart(temperature).value();
        double charging =
                settings.packRegenCurrent().isPresent()
                        ? count * settings.packRegenCurrent().getAsDouble()
                        : pack.taking(0.0).staticPart(temperature).value();
        return new Limits(
                motor.driving(),
                motor.braking(),
                discharge,
                pack.taking(charging),
                tapers.low(discharging),
                tapers.high(charging),
                new SpeedConstraints(build).cap(),
                pack.braking(charging));
    }

    /**
     * Derives what the packs may give alone, where the other limits are not needed.
     *
     * @param build the vehicle
     * @return the limit of the current out of the pack, of all controllers together
     */
    public static PackLimit packDischargeOf(Build build) {
        return new BatteryConstraints(build).giving();
    }
}
