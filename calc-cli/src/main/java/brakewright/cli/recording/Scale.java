package brakewright.cli.recording;

import brakewright.buildfile.InputUnit;
import brakewright.recording.Quantity;
import brakewright.spec.Input;
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
    private static final Scale METRES = of(Input.VEHICLE_WHEEL_DIAMETER, "m");
    private static final Scale VOLTS = of(Input.CONTROLLER_VOLTAGE_RATING, "V");
    private static final Scale AMPERES = of(Input.SETTINGS_MOTOR_BRAKE_CURRENT, "A");
    private static final Scale CELSIUS = of(Input.PACK_TEMPERATURE, "°C");
    private static final Scale DEGREES = new Scale("°", 1.0, 0.0);

    /** Of speeds that name no unit one of these is found out. */
    static final List<Scale> SPEEDS =
            List.of(KILOMETRES_PER_HOUR, METRES_PER_SECOND, MILES_PER_HOUR);

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
        return switch (quantity) {
            case PACK_VOLTAGE -> Optional.of(VOLTS);
            case PACK_CURRENT, MOTOR_CURRENT -> Optional.of(AMPERES);
            case PACK_TEMPERATURE, MOTOR_TEMPERATURE -> Optional.of(CELSIUS);
            case LATITUDE, LONGITUDE -> Optional.of(DEGREES);
            case ALTITUDE -> Optional.of(METRES);
            case WIND_SPEED -> Optional.of(METRES_PER_SECOND);
            case TIME, CHARGE, WHEEL_SPEED, SATELLITE_SPEED, DISTANCE -> Optional.empty();
        };
    }

    private static Map<String, Scale> spelled(Quantity quantity) {
        Map<String, Scale> all = new LinkedHashMap<>();
        switch (quantity) {
            case TIME -> {
                put(all, SECONDS, "s", "sec", "seconds");
                put(all, MILLISECONDS, "ms");
                put(all, of(Input.USE_HARD_BRAKE, "min"), "min");
                put(all, of(Input.USE_HARD_BRAKE, "h"), "h");
            }
            case WHEEL_SPEED, SATELLITE_SPEED, WIND_SPEED -> {
                put(all, KILOMETRES_PER_HOUR, "km/h", "kmh", "kph", "KPH", "KMH", "Km/h");
                put(all, METRES_PER_SECOND, "m/s", "mps");
                put(all, MILES_PER_HOUR, "mi/h", "mph", "MPH");
            }
            case LATITUDE, LONGITUDE -> put(all, DEGREES, "°", "deg", "degrees");
            case DISTANCE, ALTITUDE -> {
                put(all, METRES, "m");
                put(all, of(Input.VEHICLE_WHEEL_DIAMETER, "km"), "km");
                put(all, of(Input.VEHICLE_WHEEL_DIAMETER, "mi"), "mi");
                put(all, of(Input.VEHICLE_WHEEL_DIAMETER, "ft"), "ft");
            }
            case PACK_VOLTAGE -> {
                put(all, VOLTS, "V", "volts");
                put(all, of(Input.CONTROLLER_VOLTAGE_RATING, "mV"), "mV");
            }
            case PACK_CURRENT, MOTOR_CURRENT -> {
                put(all, AMPERES, "A", "amps");
                put(all, of(Input.SETTINGS_MOTOR_BRAKE_CURRENT, "mA"), "mA");
            }
            case CHARGE -> {
                put(all, PER_CENT, "%", "pct", "percent");
                put(all, FRACTION, "1", "fraction");
            }
            case PACK_TEMPERATURE, MOTOR_TEMPERATURE -> {
                put(all, CELSIUS, "°C", "C", "degC");
                put(all, of(Input.PACK_TEMPERATURE, "K"), "K");
                put(all, of(Input.PACK_TEMPERATURE, "°F"), "°F", "F", "degF");
            }
        }
        return all;
    }

    private static void put(Map<String, Scale> all, Scale scale, String... spellings) {
        for (String spelling : spellings) {
            all.put(spelling, scale);
        }
    }

    double value(double written) {
        return factor * written + offset;
    }
}
