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
 */
public record Limits(
        Limit motorDrive,
        Limit motorBrake,
        PackLimit packDischarge,
        PackLimit packRegen,
        TaperLimit lowVoltageTaper,
        TaperLimit highVoltageTaper,
        Limit speedCap) {

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
        PackLimit regen = pack.taking();
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
                        : regen.staticPart(temperature).value();
        return new Limits(
                motor.driving(),
                motor.braking(),
                discharge,
                regen,
                tapers.low(discharging),
                tapers.high(charging),
                new SpeedConstraints(build).cap());
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
