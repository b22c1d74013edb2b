package brakewright.assembly;

import brakewright.spec.Climate;
import brakewright.spec.Effort;
import brakewright.spec.Input;
import brakewright.spec.Riding;
import brakewright.spec.Use;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Makes what the vehicle will meet from resolved inputs. */
final class UseAssembler {

    private static final double METRES_PER_KM = 1000.0;
    private static final double JOULES_PER_WH = 3600.0;

    private final Values values;
    private final Attempts attempts;

    UseAssembler(Values values, Attempts attempts) {
        this.values = values;
        this.attempts = attempts;
    }

    /** Makes the use; null, with a problem noted, where its inputs do not go together. */
    @Nullable Use assemble() {
        Climate climate = attempts.attempt(this::climate, Input.USE_PACK_TEMPERATURE.key());
        return climate == null
                ? null
                : attempts.attempt(() -> use(climate), Input.USE_CHARGE_TO.key());
    }

    private Climate climate() {
        Value.Pair pack = values.pair(Input.USE_PACK_TEMPERATURE);
        return new Climate(
                values.number(Input.USE_AMBIENT),
                pack.first(),
                pack.second(),
                values.number(Input.USE_ALTITUDE),
                values.number(Input.USE_DECK_TEMPERATURE));
    }

    private Use use(Climate climate) {
        return new Use(
                values.number(Input.USE_CHARGE_FROM),
                values.number(Input.USE_CHARGE_TO),
                values.number(Input.USE_SPEED_MAX),
                climate,
                values.number(Input.USE_SLOPE_MAX),
                values.number(Input.USE_SLOPE_LENGTH),
                riding(),
                new Effort(
                        values.number(Input.USE_HARD_PULL),
                        values.number(Input.USE_HARD_BRAKE),
                        values.number(Input.USE_REACTION_TIME),
                        values.number(Input.USE_BRAKE_BUILD_UP)));
    }

    private Riding riding() {
        return new Riding(
                values.number(Input.USE_CRUISE_SPEED),
                values.number(Input.USE_HEADWIND),
                values.number(Input.USE_IDLE_POWER),
                values.number(Input.USE_STOPS_PER_KM) / METRES_PER_KM,
                measured());
    }

    private Optional<Riding.Measured> measured() {
        return values.has(Input.USE_MEASURED_CONSUMPTION)
                ? Optional.of(
                        new Riding.Measured(
                                values.number(Input.USE_MEASURED_CONSUMPTION)
                                        * JOULES_PER_WH
                                        / METRES_PER_KM,
                                values.number(Input.USE_MEASURED_SPEED)))
                : Optional.empty();
    }
}
