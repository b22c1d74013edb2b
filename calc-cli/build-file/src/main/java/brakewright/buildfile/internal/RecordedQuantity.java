package brakewright.buildfile.internal;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a recording may hold of each moment: what it is, and in which units files write it. A test
 * holds that these are all.
 */
public enum RecordedQuantity {
    /** By a clock, a date or counted from any beginning. */
    TIME(
            "when each row was taken",
            "Timestamp",
            "",
            unit("s", "sec", "seconds"),
            unit("ms"),
            unit("min"),
            unit("h")),
    /** The controller has it. */
    WHEEL_SPEED("the speed as the wheels tell it", "Velocity", "", speeds()),
    /** A receiver has it. */
    SATELLITE_SPEED("the speed as satellites tell it", "GPS speed", "", speeds()),
    /** North positive. */
    LATITUDE("the latitude, north positive", "Lat", "°", degrees()),
    /** East positive. */
    LONGITUDE("the longitude, east positive", "Lon", "°", degrees()),
    /** Since any beginning. */
    DISTANCE("the distance ridden since some beginning", "Trip", "", lengths()),
    /** Above the sea. */
    ALTITUDE("the height above the sea", "Elevation", "m", lengths()),
    /** Under load. */
    PACK_VOLTAGE(
            "the voltage at the terminals of the pack",
            "Battery voltage",
            "V",
            unit("V", "volts"),
            unit("mV")),
    /** Counted either way. */
    PACK_CURRENT("the current of the pack", "Battery current", "A", currents()),
    /** Counted either way. */
    MOTOR_CURRENT("the current of a motor", "Phase current", "A", currents()),
    /** As it is displayed. */
    CHARGE(
            "the charge of the pack",
            "Battery level",
            "",
            unit("%", "pct", "percent"),
            unit("fraction", "1")),
    /** Of the cells. */
    PACK_TEMPERATURE("the temperature of the cells", "Battery temp", "°C", temperatures()),
    /** Of the winding or the case. */
    MOTOR_TEMPERATURE("the temperature of a motor", "Motor temp", "°C", temperatures()),
    /** Of the air over the ground. */
    WIND_SPEED("the speed of the wind", "Wind", "m/s", speeds());

    private final String what;
    private final String head;
    private final String usual;
    private final List<Unit> units;

    RecordedQuantity(String what, String head, String usual, Unit... units) {
        this.what = what;
        this.head = head;
        this.usual = usual;
        this.units = List.of(units);
    }

    /**
     * A unit.
     *
     * @param symbol as it is told
     * @param spellings that files may have for it, the symbol first
     */
    public record Unit(String symbol, List<String> spellings) {

        /** Copies the list. */
        public Unit {
            spellings = List.copyOf(spellings);
        }
    }

    private static Unit unit(String symbol, String... others) {
        return new Unit(
                symbol,
                Stream.concat(Stream.of(symbol), Arrays.stream(others))
                        .collect(Collectors.toList()));
    }

    private static Unit[] speeds() {
        return new Unit[] {
            unit("km/h", "kmh", "kph", "KPH", "KMH", "Km/h"),
            unit("m/s", "mps"),
            unit("mi/h", "mph", "MPH")
        };
    }

    private static Unit[] degrees() {
        return new Unit[] {unit("°", "deg", "degrees")};
    }

    private static Unit[] lengths() {
        return new Unit[] {unit("m"), unit("km"), unit("mi"), unit("ft")};
    }

    private static Unit[] currents() {
        return new Unit[] {unit("A", "amps"), unit("mA")};
    }

    private static Unit[] temperatures() {
        return new Unit[] {unit("°C", "C", "degC"), unit("K"), unit("°F", "F", "degF")};
    }

    /**
     * Returns the name that files and options use.
     *
     * @return lower case with underscores
     */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * Says what it is.
     *
     * @return words that go on behind a name
     */
    public String what() {
        return what;
    }

    /**
     * Returns what the head of its column may read.
     *
     * @return an invented example
     */
    public String head() {
        return head;
    }

    /**
     * Returns the unit that is taken where none is told.
     *
     * @return its symbol; empty where no one unit is usual
     */
    public Optional<String> usualUnit() {
        return Optional.of(usual).filter(symbol -> !symbol.isEmpty());
    }

    /**
     * Returns the units in which it may be written.
     *
     * @return at least one
     */
    public List<Unit> units() {
        return units;
    }
}
