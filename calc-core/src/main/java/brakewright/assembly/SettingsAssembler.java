package brakewright.assembly;

import brakewright.spec.Input;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Makes the settings from resolved inputs. */
public final class SettingsAssembler {

    private final Values values;
    private final Attempts attempts;

    /**
     * Prepares settings.
     *
     * @param values by the inputs of settings; others do not matter
     * @param attempts where problems are noted
     */
    public SettingsAssembler(Values values, Attempts attempts) {
        this.values = values;
        this.attempts = attempts;
    }

    /**
     * Makes the settings.
     *
     * @return the settings; null, with a refusal noted, where they contradict each other
     */
    public @Nullable Settings assemble() {
        String lowKey = Input.SETTINGS_LOW_VOLTAGE_TAPER.key();
        String highKey = Input.SETTINGS_HIGH_VOLTAGE_TAPER.key();
        Optional<Taper> low = taper(Input.SETTINGS_LOW_VOLTAGE_TAPER, lowKey);
        Optional<Taper> high = taper(Input.SETTINGS_HIGH_VOLTAGE_TAPER, highKey);
        Settings first = attempts.attempt(() -> settings(low, Optional.empty()), lowKey);
        Settings second = attempts.attempt(() -> settings(Optional.empty(), high), highKey);
        return first == null || second == null ? null : first.overlaidBy(second);
    }

    private Settings settings(Optional<Taper> low, Optional<Taper> high) {
        return new Settings(
                values.optional(Input.SETTINGS_MOTOR_DRIVE_CURRENT),
                values.optional(Input.SETTINGS_MOTOR_BRAKE_CURRENT),
                values.optional(Input.SETTINGS_PACK_DISCHARGE_CURRENT),
                values.optional(Input.SETTINGS_PACK_REGEN_CURRENT),
                low,
                high,
                values.optional(Input.SETTINGS_SPEED_CAP));
    }

    private Optional<Taper> taper(Input input, String key) {
        return values.optionalPair(input)
                .map(pair -> attempts.attempt(() -> new Taper(pair.first(), pair.second()), key));
    }
}
