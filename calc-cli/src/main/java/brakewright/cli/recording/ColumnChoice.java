package brakewright.cli.recording;

import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.Problem;
import brakewright.buildfile.internal.Nearest;
import brakewright.recording.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What was told about the columns of a recording, over what is found out.
 *
 * @param columns the head of the column of a quantity
 * @param units the unit of a quantity
 * @param timeFormat how times are written: number, clock or date; empty where that is found out
 */
public record ColumnChoice(
        Map<Quantity, String> columns, Map<Quantity, String> units, Optional<String> timeFormat) {

    /** Nothing was told. */
    public static final ColumnChoice NONE = new ColumnChoice(Map.of(), Map.of(), Optional.empty());

    private static final String COLUMNS = "columns.";
    private static final String UNITS = "units.";

    /** Copies the maps. */
    public ColumnChoice {
        columns = Map.copyOf(columns);
        units = Map.copyOf(units);
    }

    /**
     * Reads what options say.
     *
     * @param columns such as {@code wheel_speed=Velocity [km/h]}
     * @param units such as {@code wheel_speed=km/h}
     * @return both
     * @throws BuildFileException with everything that is wrong in them
     */
    public static ColumnChoice read(List<String> columns, List<String> units)
            throws BuildFileException {
        List<Problem> problems = new ArrayList<>();
        Map<Quantity, String> heads = pairs("--columns", columns, problems);
        Map<Quantity, String> told = pairs("--column-units", units, problems);
        told.forEach(
                (quantity, unit) -> {
                    if (Scale.named(quantity, unit).isEmpty()) {
                        problems.add(
                                new Problem(
                                        0,
                                        "--column-units",
                                        "\"" + unit + "\" is no unit of " + quantity.key(),
                                        "one of " + String.join(" ", Scale.spellings(quantity))));
                    }
                });
        if (!problems.isEmpty()) {
            throw new BuildFileException(problems);
        }
        return new ColumnChoice(heads, told, Optional.empty());
    }

    /**
     * Takes what the table {@code recording} of a build file says.
     *
     * @param told by key, as {@code columns.time}, as the build file was read
     * @return the choice
     */
    public static ColumnChoice ofBuild(Map<String, String> told) {
        Map<Quantity, String> heads = new EnumMap<>(Quantity.class);
        Map<Quantity, String> units = new EnumMap<>(Quantity.class);
        for (Quantity quantity : Quantity.values()) {
            put(heads, quantity, told.get(COLUMNS + quantity.key()));
            put(units, quantity, told.get(UNITS + quantity.key()));
        }
        return new ColumnChoice(heads, units, Optional.ofNullable(told.get("time_format")));
    }

    private static void put(Map<Quantity, String> all, Quantity quantity, @Nullable String text) {
        if (text != null) {
            all.put(quantity, text.strip());
        }
    }

    /**
     * Puts what else was told over this.
     *
     * @param over what goes first
     * @return both
     */
    public ColumnChoice overlaidBy(ColumnChoice over) {
        Map<Quantity, String> heads = new EnumMap<>(Quantity.class);
        heads.putAll(columns);
        heads.putAll(over.columns);
        Map<Quantity, String> told = new EnumMap<>(Quantity.class);
        told.putAll(units);
        told.putAll(over.units);
        return new ColumnChoice(heads, told, over.timeFormat.or(() -> timeFormat));
    }

    private static Map<Quantity, String> pairs(
            String option, List<String> given, List<Problem> problems) {
        Map<Quantity, String> pairs = new EnumMap<>(Quantity.class);
        for (String each : given) {
            int sign = each.indexOf('=');
            String name = (sign < 0 ? each : each.substring(0, sign)).strip();
            Optional<Quantity> quantity = quantity(name);
            String value = sign < 0 ? "" : each.substring(sign + 1).strip();
            if (quantity.isEmpty() || value.isEmpty()) {
                problems.add(
                        new Problem(
                                0,
                                option,
                                quantity.isEmpty()
                                        ? "\"" + name + "\" is no quantity" + nearest(name)
                                        : "nothing stands behind " + name,
                                "QUANTITY=TEXT, a quantity being one of "
                                        + String.join(" ", names())));
            } else if (pairs.put(quantity.get(), value) != null) {
                problems.add(new Problem(0, option, name + " is given twice", ""));
            }
        }
        return pairs;
    }

    private static List<String> names() {
        return Arrays.stream(Quantity.values()).map(Quantity::key).toList();
    }

    private static String nearest(String name) {
        return Nearest.to(name, names()).map(near -> "; the nearest is " + near).orElse("");
    }

    /** Dashes do for underscores, and speed alone is that of the wheels. */
    private static Optional<Quantity> quantity(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replace('-', '_');
        String key = plain.equals("speed") ? Quantity.WHEEL_SPEED.key() : plain;
        return Arrays.stream(Quantity.values()).filter(each -> each.key().equals(key)).findFirst();
    }
}
