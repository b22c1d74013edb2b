package brakewright.buildfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The units a build file may use, with their factor to the unit that calculations take (coherent
 * SI; °C for temperatures, Ah for capacities, rpm/V for speed constants, Wh/km for consumptions).
 *
 * <p>Source of the factors that are not powers of ten: the international yard and pound (1959),
 * exact: 1 in = 0.0254 m, 1 ft = 0.3048 m, 1 mi = 1609.344 m, 1 lb = 0.45359237 kg.
 */
final class UnitTable {

    /** One unit: value in calculation units = factor·x + offset. */
    record Unit(String symbol, Dimension dimension, double factor, double offset) {}

    /**
     * Source: International System of Units (SI), BIPM. The letter u is the usual one for micro.
     */
    private static final Map<String, Double> PREFIXES = prefixes();

    private static final Map<String, List<Unit>> BY_SYMBOL = build();

    private UnitTable() {}

    /** Finds a unit of a dimension. */
    static Optional<Unit> find(String symbol, Dimension dimension) {
        return all(symbol).stream().filter(unit -> unit.dimension() == dimension).findFirst();
    }

    /** Finds every reading of a symbol. */
    static List<Unit> all(String symbol) {
        return BY_SYMBOL.getOrDefault(normal(symbol), List.of());
    }

    /** Every spelling of every unit of a dimension. */
    static List<String> symbols(Dimension dimension) {
        return BY_SYMBOL.values().stream()
                .flatMap(List::stream)
                .filter(unit -> unit.dimension() == dimension)
                .map(Unit::symbol)
                .toList();
    }

    private static String normal(String symbol) {
        return symbol.replace('\u2126', '\u03a9')
                .replace('\u00b5', '\u03bc')
                .replace('*', '·')
                .replace(' ', '·')
                .replace("^2", "²");
    }

    private static Map<String, Double> prefixes() {
        Map<String, Double> prefixes = new LinkedHashMap<>();
        prefixes.put("k", 1e3);
        prefixes.put("m", 1e-3);
        prefixes.put("μ", 1e-6);
        prefixes.put("u", 1e-6);
        prefixes.put("n", 1e-9);
        return prefixes;
    }

    private static Map<String, List<Unit>> build() {
        Map<String, List<Unit>> table = new LinkedHashMap<>();
        prefixed(table, Dimension.MASS, 1e-3, "g");
        add(table, Dimension.MASS, 0.45359237, "lb", "lbs");
        prefixed(table, Dimension.LENGTH, 1.0, "m");
        add(table, Dimension.LENGTH, 1e-2, "cm");
        add(table, Dimension.LENGTH, 0.0254, "in");
        add(table, Dimension.LENGTH, 0.3048, "ft");
        add(table, Dimension.LENGTH, 1609.344, "mi");
        add(table, Dimension.AREA, 1.0, "m²", "m2");
        add(table, Dimension.AREA, 1e-4, "cm²", "cm2");
        add(table, Dimension.SPEED, 1.0, "m/s");
        add(table, Dimension.SPEED, 1.0 / 3.6, "km/h", "kmh", "kph");
        add(table, Dimension.SPEED, 0.44704, "mi/h", "mph");
        add(table, Dimension.ACCELERATION, 1.0, "m/s²", "m/s2");
        add(table, Dimension.ACCELERATION, 9.80665, "g");
        prefixed(table, Dimension.TIME, 1.0, "s");
        add(table, Dimension.TIME, 60.0, "min");
        add(table, Dimension.TIME, 3600.0, "h");
        prefixed(table, Dimension.CURRENT, 1.0, "A");
        prefixed(table, Dimension.VOLTAGE, 1.0, "V");
        prefixed(table, Dimension.RESISTANCE, 1.0, "Ω", "ohm", "Ohm");
        prefixed(table, Dimension.INDUCTANCE, 1.0, "H");
        prefixed(table, Dimension.CAPACITANCE, 1.0, "F");
        prefixed(table, Dimension.CHARGE, 1.0, "Ah");
        add(table, Dimension.SPEED_CONSTANT, 1.0, "rpm/V");
        add(table, Dimension.SPEED_CONSTANT, 30.0 / Math.PI, "rad/s/V");
        add(table, Dimension.TEMPERATURE, 1.0, "°C", "degC");
        add(table, Dimension.TEMPERATURE_DIFFERENCE, 1.0, "K", "°C", "degC");
        add(table, Dimension.TEMPERATURE_DIFFERENCE, 5.0 / 9.0, "°F", "degF");
        addShifted(table, Dimension.TEMPERATURE, 5.0 / 9.0, -160.0 / 9.0, "°F", "degF");
        addShifted(table, Dimension.TEMPERATURE, 1.0, -273.15, "K");
        prefixed(table, Dimension.THERMAL_RESISTANCE, 1.0, "K/W", "°C/W");
        prefixed(table, Dimension.HEAT_CAPACITY, 1.0, "J/K", "J/°C");
        prefixed(table, Dimension.SPECIFIC_HEAT, 1.0, "J/(kg·K)", "J/kg/K");
        add(table, Dimension.SPECIFIC_HEAT, 1e3, "J/(g·K)", "J/g/K");
        prefixed(table, Dimension.POWER, 1.0, "W");
        add(table, Dimension.CONSUMPTION, 1.0, "Wh/km");
        add(table, Dimension.CONSUMPTION, 1.0 / 1.609344, "Wh/mi");
        add(table, Dimension.CONSUMPTION, 10.0, "kWh/100km");
        add(table, Dimension.VISCOUS_DRAG, 1.0, "N·m·s/rad", "N·m·s", "Nm·s/rad", "Nm·s");
        return table;
    }

    /** The unit itself and with every prefix that a vehicle of this class may need. */
    private static void prefixed(
            Map<String, List<Unit>> table, Dimension dimension, double factor, String... symbols) {
        add(table, dimension, factor, symbols);
        PREFIXES.forEach(
                (prefix, times) -> {
                    for (String symbol : symbols) {
                        add(table, dimension, times * factor, prefix + symbol);
                    }
                });
    }

    private static void add(
            Map<String, List<Unit>> table, Dimension dimension, double factor, String... symbols) {
        for (String symbol : symbols) {
            table.computeIfAbsent(symbol, key -> new ArrayList<>(2))
                    .add(new Unit(symbol, dimension, factor, 0.0));
        }
    }

    private static void addShifted(
            Map<String, List<Unit>> table,
            Dimension dimension,
            double factor,
            double offset,
            String... symbols) {
        for (String symbol : symbols) {
            table.computeIfAbsent(symbol, key -> new ArrayList<>(2))
                    .add(new Unit(symbol, dimension, factor, offset));
        }
    }
}
