package brakewright.cli.recording;

import brakewright.buildfile.InputUnit;
import brakewright.buildfile.internal.RecordedQuantity;
import brakewright.recording.Quantity;
import brakewright.spec.Input;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a written number becomes a value: factor·x + offset, by the units of build files.
 *
 * @param unit as it is told
 * @param factor to the unit of the quantity
 * @param offset added behind it
 */
record Scale(String unit, double factor, double offset) {

    static final Scale KILOMETRES_PER_HOUR = of(Input.USE_SPEED_MAX, "km/h");
    static final Scale METRES_PER_SECOND = of(Input.USE_SPEED_MAX, "m/s");
    static final Scale MILES_PER_HOUR = of(Input.USE_SPEED_MAX, "mi/h");
    static final Scale PER_CENT = new Scale("%", 0.01, 0.0);
    static final Scale FRACTION = new Scale("fraction", 1.0, 0.0);
    static final Scale SECONDS = of(Input.USE_HARD_BRAKE, "s");
    static final Scale MILLISECONDS = of(Input.USE_HARD_BRAKE, "ms");
    private static final Scale DEGREES = new Scale("°", 1.0, 0.0);

    /** Of speeds that name no unit one of these is found out. */
    static final List<Scale> SPEEDS =
            List.of(KILOMETRES_PER_HOUR, METRES_PER_SECOND, MILES_PER_HOUR);

    private static final Map<Quantity, Map<String, Scale>> SPELLED = spelled();

    private static Scale of(Input like, String symbol) {
        InputUnit unit = InputUnit.of(like, symbol);
        return new Scale(symbol, unit.factor(), unit.offset());
    }

    /** Finds a unit that a heading or an option names. */
    static Optional<Scale> named(Quantity quantity, String unit) {
        return Optional.ofNullable(spelled(quantity).get(unit.strip()));
    }

    /** The spellings that a quantity may have. */
    static List<String> spellings(Quantity quantity) {
        return List.copyOf(spelled(quantity).keySet());
    }

    /** The unit of a quantity that names none, where only one is usual. */
    static Optional<Scale> usual(Quantity quantity) {
        return recorded(quantity).usualUnit().map(symbol -> of(quantity, symbol));
    }

    private static RecordedQuantity recorded(Quantity quantity) {
        return RecordedQuantity.valueOf(quantity.name());
    }

    private static Map<String, Scale> spelled(Quantity quantity) {
        return SPELLED.getOrDefault(quantity, Map.of());
    }

    private static Map<Quantity, Map<String, Scale>> spelled() {
        Map<Quantity, Map<String, Scale>> all = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            Map<String, Scale> spelled = new LinkedHashMap<>();
            for (RecordedQuantity.Unit unit : recorded(quantity).units()) {
                Scale scale = of(quantity, unit.symbol());
                unit.spellings().forEach(spelling -> spelled.put(spelling, scale));
            }
            all.put(quantity, spelled);
        }
        return Collections.unmodifiableMap(all);
    }

    private static Scale of(Quantity quantity, String symbol) {
        return switch (quantity) {
            case TIME -> of(Input.USE_HARD_BRAKE, symbol);
            case WHEEL_SPEED, SATELLITE_SPEED, WIND_SPEED -> of(Input.USE_SPEED_MAX, symbol);
            case LATITUDE, LONGITUDE -> DEGREES;
            case DISTANCE, ALTITUDE -> of(Input.VEHICLE_WHEEL_DIAMETER, symbol);
            case PACK_VOLTAGE -> of(Input.CONTROLLER_VOLTAGE_RATING, symbol);
            case PACK_CURRENT, MOTOR_CURRENT -> of(Input.SETTINGS_MOTOR_BRAKE_CURRENT, symbol);
            case CHARGE -> symbol.equals(PER_CENT.unit) ? PER_CENT : FRACTION;
            case PACK_TEMPERATURE, MOTOR_TEMPERATURE -> of(Input.PACK_TEMPERATURE, symbol);
        };
    }

    double value(double written) {
        return factor * written + offset;
    }
}
