package brakewright.cli.recording;

import brakewright.recording.Quantity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a written number becomes a value: factor·x + offset.
 *
 * <p>Source of the factors that are not powers of ten: the international yard (1959), 1 mi =
 * 1609.344 m and 1 ft = 0.3048 m, exact.
 *
 * @param unit as it is told
 * @param factor to the unit of the quantity
 * @param offset added behind it
 */
record Scale(String unit, double factor, double offset) {

    static final Scale KILOMETRES_PER_HOUR = new Scale("km/h", 1.0 / 3.6, 0.0);
    static final Scale METRES_PER_SECOND = new Scale("m/s", 1.0, 0.0);
    static final Scale MILES_PER_HOUR = new Scale("mi/h", 0.44704, 0.0);
    static final Scale PER_CENT = new Scale("%", 0.01, 0.0);
    static final Scale FRACTION = new Scale("fraction", 1.0, 0.0);
    static final Scale SECONDS = new Scale("s", 1.0, 0.0);
    static final Scale MILLISECONDS = new Scale("ms", 1e-3, 0.0);
    private static final Scale METRES = new Scale("m", 1.0, 0.0);
    private static final Scale VOLTS = new Scale("V", 1.0, 0.0);
    private static final Scale AMPERES = new Scale("A", 1.0, 0.0);
    private static final Scale CELSIUS = new Scale("°C", 1.0, 0.0);
    private static final Scale DEGREES = new Scale("°", 1.0, 0.0);

    /** Of speeds that name no unit one of these is found out. */
    static final List<Scale> SPEEDS =
            List.of(KILOMETRES_PER_HOUR, METRES_PER_SECOND, MILES_PER_HOUR);

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
                put(all, new Scale("min", 60.0, 0.0), "min");
                put(all, new Scale("h", 3600.0, 0.0), "h");
            }
            case WHEEL_SPEED, SATELLITE_SPEED, WIND_SPEED -> {
                put(all, KILOMETRES_PER_HOUR, "km/h", "kmh", "kph", "KPH", "Km/h");
                put(all, METRES_PER_SECOND, "m/s", "mps");
                put(all, MILES_PER_HOUR, "mi/h", "mph", "MPH");
            }
            case LATITUDE, LONGITUDE -> put(all, DEGREES, "°", "deg", "degrees");
            case DISTANCE, ALTITUDE -> {
                put(all, METRES, "m");
                put(all, new Scale("km", 1000.0, 0.0), "km");
                put(all, new Scale("mi", 1609.344, 0.0), "mi");
                put(all, new Scale("ft", 0.3048, 0.0), "ft");
            }
            case PACK_VOLTAGE -> {
                put(all, VOLTS, "V", "volts");
                put(all, new Scale("mV", 1e-3, 0.0), "mV");
            }
            case PACK_CURRENT, MOTOR_CURRENT -> {
                put(all, AMPERES, "A", "amps");
                put(all, new Scale("mA", 1e-3, 0.0), "mA");
            }
            case CHARGE -> {
                put(all, PER_CENT, "%", "pct", "percent");
                put(all, FRACTION, "1", "fraction");
            }
            case PACK_TEMPERATURE, MOTOR_TEMPERATURE -> {
                put(all, CELSIUS, "°C", "C", "degC");
                put(all, new Scale("K", 1.0, -273.15), "K");
                put(all, new Scale("°F", 5.0 / 9.0, -160.0 / 9.0), "°F", "F", "degF");
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
