package brakewright.assembly;

import brakewright.spec.ArrheniusCurve;
import brakewright.spec.Cell;
import brakewright.spec.ChargingWindow;
import brakewright.spec.Curve;
import brakewright.spec.DischargingWindow;
import brakewright.spec.FuseBreaking;
import brakewright.spec.GroupSpread;
import brakewright.spec.Input;
import brakewright.spec.Onset;
import brakewright.spec.Pack;
import brakewright.spec.Protection;
import brakewright.spec.PulseRating;
import brakewright.spec.Relaxation;
import brakewright.spec.ResistanceByCharge;
import brakewright.spec.Wiring;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** Makes a pack from resolved inputs. */
final class PackAssembler {

    private final UnaryOperator<String> keys;
    private final Values values;
    private final Attempts attempts;

    PackAssembler(UnaryOperator<String> keys, Map<Input, Resolved> inputs, Attempts attempts) {
        this.keys = keys;
        this.values = Values.of(inputs);
        this.attempts = attempts;
    }

    /** Makes the pack; null, with a problem noted, where its inputs do not go together. */
    @Nullable Pack assemble() {
        ChargingWindow charging = attempt(this::charging, Input.CELL_CHARGE_TEMPERATURE);
        DischargingWindow discharging =
                attempt(this::discharging, Input.CELL_DISCHARGE_TEMPERATURE);
        Cell cell =
                charging == null || discharging == null
                        ? null
                        : attempt(() -> cell(charging, discharging), Input.CELL_VOLTAGE_MIN);
        return cell == null ? null : attempt(() -> pack(cell), Input.PACK_SERIES);
    }

    private ChargingWindow charging() {
        Value.Pair pair = values.pair(Input.CELL_CHARGE_TEMPERATURE);
        return new ChargingWindow(
                pair.first(),
                pair.second(),
                values.number(Input.CELL_COLD_BAND),
                values.number(Input.CELL_COLD_CHARGE_SHARE),
                values.has(Input.CELL_CHARGE_CURRENT_BY_CHARGE)
                        ? values.curve(Input.CELL_CHARGE_CURRENT_BY_CHARGE)
                        : ChargingWindow.WHATEVER_THE_CHARGE);
    }

    private DischargingWindow discharging() {
        Value.Pair pair = values.pair(Input.CELL_DISCHARGE_TEMPERATURE);
        return new DischargingWindow(pair.first(), pair.second());
    }

    private Cell cell(ChargingWindow charging, DischargingWindow discharging) {
        return new Cell(
                values.number(Input.CELL_CAPACITY),
                values.number(Input.CELL_DISCHARGE_CURRENT),
                values.number(Input.CELL_CHARGE_CURRENT),
                values.number(Input.CELL_VOLTAGE_MAX),
                values.number(Input.CELL_VOLTAGE_MIN),
                values.number(Input.CELL_RESISTANCE),
                values.curve(Input.CELL_OPEN_CIRCUIT_VOLTAGE),
                new ResistanceByCharge(
                        values.curve(Input.CELL_RESISTANCE_BY_CHARGE),
                        values.curve(Input.CELL_RESISTANCE_INTO_BY_CHARGE),
                        moreInTheCold()),
                ArrheniusCurve.through(values.curve(Input.CELL_RESISTANCE_BY_TEMPERATURE)),
                new Relaxation(
                        values.number(Input.CELL_SUSTAINED_RISE),
                        values.number(Input.CELL_RELAXATION_TIME),
                        values.curve(Input.CELL_SUSTAINED_RISE_BY_CHARGE),
                        new Onset(
                                values.number(Input.CELL_OHMIC_SHARE),
                                values.number(Input.CELL_ONSET_TIME))),
                heatCapacity(),
                charging,
                discharging,
                pulse(),
                values.optional(Input.CELL_TAPER_FLOOR)
                        .orElse(values.number(Input.CELL_VOLTAGE_MIN)));
    }

    private Curve moreInTheCold() {
        return values.has(Input.CELL_RESISTANCE_COLD_BY_CHARGE)
                ? values.curve(Input.CELL_RESISTANCE_COLD_BY_CHARGE)
                : Curve.constant(0.0);
    }

    private OptionalDouble heatCapacity() {
        return values.has(Input.CELL_MASS)
                ? OptionalDouble.of(
                        values.number(Input.CELL_MASS) * values.number(Input.CELL_SPECIFIC_HEAT))
                : OptionalDouble.empty();
    }

    private Optional<PulseRating> pulse() {
        if (!values.has(Input.CELL_PULSE_TIME)) {
            return Optional.empty();
        }
        return Optional.of(
                new PulseRating(
                        values.optional(Input.CELL_DISCHARGE_PULSE),
                        values.optional(Input.CELL_CHARGE_PULSE),
                        values.number(Input.CELL_PULSE_TIME)));
    }

    private Pack pack(Cell cell) {
        return new Pack(
                cell,
                values.count(Input.PACK_SERIES),
                values.count(Input.PACK_PARALLEL),
                values.number(Input.PACK_JOINT_RESISTANCE),
                values.number(Input.PACK_RESISTANCE_SPREAD),
                new GroupSpread(
                        values.number(Input.PACK_GROUP_CHARGE),
                        values.number(Input.PACK_GROUP_CAPACITY),
                        values.number(Input.PACK_GROUP_RESISTANCE)),
                values.number(Input.PACK_TEMPERATURE),
                values.optional(Input.PACK_TO_AIR),
                values.optional(Input.PACK_CHARGE),
                protection(),
                new Wiring(
                        values.optional(Input.WIRING_FUSE),
                        new FuseBreaking(
                                values.optional(Input.WIRING_FUSE_VOLTAGE),
                                values.optional(Input.WIRING_FUSE_BREAKING_CAPACITY)),
                        values.optional(Input.WIRING_WIRE_AMPACITY),
                        values.optional(Input.WIRING_PLUG_RATING),
                        values.isYes(Input.WIRING_PLUG_ANTI_SPARK)));
    }

    /** What the file says of the trips of a protection that is bypassed concerns the charger. */
    private Protection protection() {
        Protection.Path path =
                values.word(Input.PROTECTION_PATH, Protection.Path.values(), Protection.Path::key);
        return path == Protection.Path.CHARGE_LEAD
                ? Protection.BYPASSED
                : new Protection(
                        values.optional(Input.PROTECTION_DISCHARGE_TRIP),
                        values.optional(Input.PROTECTION_CHARGE_TRIP),
                        values.optional(Input.PROTECTION_OVERVOLTAGE_TRIP),
                        values.optional(Input.PROTECTION_UNDERVOLTAGE_TRIP),
                        path,
                        values.optional(Input.PROTECTION_CHARGE_TRIP_DELAY),
                        values.optional(Input.PROTECTION_OVERVOLTAGE_TRIP_DELAY),
                        values.optional(Input.PROTECTION_DISCHARGE_TRIP_DELAY),
                        values.optional(Input.PROTECTION_UNDERVOLTAGE_TRIP_DELAY));
    }

    private <T> @Nullable T attempt(Supplier<T> part, Input blamed) {
        return attempts.attempt(part, keys.apply(blamed.key()));
    }
}
