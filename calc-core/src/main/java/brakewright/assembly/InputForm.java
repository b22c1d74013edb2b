package brakewright.assembly;

import brakewright.spec.CurrentBasis;
import brakewright.spec.DrivenAxle;
import brakewright.spec.Input;
import brakewright.spec.Joining;
import brakewright.spec.Protection;
import brakewright.spec.Stance;
import brakewright.spec.Unit;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Which form the value of an input has: a number, two, a word or a curve. */
final class InputForm {

    private static final Set<Input> PAIRS =
            EnumSet.of(
                    Input.CELL_CHARGE_TEMPERATURE,
                    Input.CELL_DISCHARGE_TEMPERATURE,
                    Input.USE_PACK_TEMPERATURE,
                    Input.SETTINGS_LOW_VOLTAGE_TAPER,
                    Input.SETTINGS_HIGH_VOLTAGE_TAPER);

    private static final Set<Input> CURVES =
            EnumSet.of(
                    Input.CELL_CHARGE_CURRENT_BY_CHARGE,
                    Input.CELL_OPEN_CIRCUIT_VOLTAGE,
                    Input.CELL_RESISTANCE_BY_CHARGE,
                    Input.CELL_RESISTANCE_INTO_BY_CHARGE,
                    Input.CELL_RESISTANCE_COLD_BY_CHARGE,
                    Input.CELL_RESISTANCE_BY_TEMPERATURE,
                    Input.CELL_SUSTAINED_RISE_BY_CHARGE);

    private static final Set<Input> COUNTS =
            EnumSet.of(
                    Input.DRIVE_MOTORS,
                    Input.CONTROLLER_COUNT,
                    Input.PACK_SERIES,
                    Input.PACK_PARALLEL,
                    Input.MOTOR_POLE_PAIRS);

    private static final Set<Input> LOOKED_UP =
            EnumSet.of(
                    Input.WIRING_FUSE_FAMILY,
                    Input.WIRING_WIRE,
                    Input.WIRING_PLUG,
                    Input.TRUNK_FUSE_FAMILY,
                    Input.TRUNK_WIRE,
                    Input.TRUNK_PLUG);

    private static final Set<Input> LENGTHS = EnumSet.of(Input.WIRING_LENGTH, Input.TRUNK_LENGTH);

    private InputForm() {}

    /** Whether an input says nothing of a single pack. */
    static boolean isOfSeveralPacks(Input input) {
        return input == Input.PACK_CHARGE || input.key().startsWith("battery.");
    }

    /** Says why an input cannot have a value; empty if it can. */
    static Optional<String> fault(Input input, Value value) {
        if (LOOKED_UP.contains(input)) {
            return Optional.of("is looked up by build files only: tell the ratings instead");
        }
        if (LENGTHS.contains(input)) {
            return Optional.of("counts by the wire, which build files look up: tell resistances");
        }
        if (value instanceof Value.Word word) {
            return faultOfWord(input, word.text());
        }
        if (value instanceof Value.Points) {
            return CURVES.contains(input) ? Optional.empty() : Optional.of("is no curve");
        }
        if (value instanceof Value.Pair pair) {
            return PAIRS.contains(input)
                    ? faultOfNumber(pair.first()).or(() -> faultOfNumber(pair.second()))
                    : Optional.of("is no pair of values");
        }
        return value instanceof Value.Number number && isOneNumber(input)
                ? faultOfNumber(number.quantity().value())
                        .or(() -> faultOfCount(input, number.quantity().value()))
                : Optional.of("is no single number");
    }

    private static boolean isOneNumber(Input input) {
        return input.unit() != Unit.NONE && !PAIRS.contains(input) && !CURVES.contains(input);
    }

    private static Optional<String> faultOfNumber(double value) {
        return Double.isFinite(value)
                ? Optional.empty()
                : Optional.of("must be a finite number, was " + value);
    }

    private static Optional<String> faultOfCount(Input input, double value) {
        return COUNTS.contains(input) && !(value == Math.rint(value) && value >= 1.0)
                ? Optional.of("must be a whole number of at least 1, was " + value)
                : Optional.empty();
    }

    private static Optional<String> faultOfWord(Input input, String word) {
        if (input.unit() != Unit.NONE) {
            return Optional.of("is no word");
        }
        List<String> known = words(input);
        return known.isEmpty() || known.contains(word)
                ? Optional.empty()
                : Optional.of(
                        "must be one of " + String.join(", ", known) + ", was \"" + word + "\"");
    }

    /** The words that may be told; empty where the tables say which. */
    private static List<String> words(Input input) {
        return switch (input) {
            case RIDER_STANCE -> keys(Stance.values(), Stance::key);
            case VEHICLE_DRIVEN_AXLE -> keys(DrivenAxle.values(), DrivenAxle::key);
            case CONTROLLER_CURRENT_BASIS -> keys(CurrentBasis.values(), CurrentBasis::key);
            case PROTECTION_PATH -> keys(Protection.Path.values(), Protection.Path::key);
            case PACKS_JOINING -> keys(Joining.values(), Joining::key);
            case WIRING_PLUG_ANTI_SPARK, TRUNK_PLUG_ANTI_SPARK -> List.of("yes", "no");
            case VEHICLE_TYRES -> List.of("rubber", "urethane");
            default -> List.of();
        };
    }

    private static <E> List<String> keys(E[] values, Function<E, String> key) {
        return Arrays.stream(values).map(key).toList();
    }
}
