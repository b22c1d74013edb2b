package brakewright.buildfile;

import brakewright.buildfile.internal.Printable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The table {@code [recording]}: how recordings of rides on the vehicle are written. It says
 * nothing of the vehicle, so its keys are no inputs.
 */
final class RecordingKeys {

    private static final String TABLE = "recording";
    private static final String BEGIN = TABLE + ".";
    private static final String COLUMNS = BEGIN + "columns";
    private static final String UNITS = BEGIN + "units";

    /** Those that are taken apart. */
    static final Set<String> TABLES = Set.of(TABLE, COLUMNS, UNITS);

    private static final Map<String, List<String>> WORDS =
            Map.of(
                    BEGIN + "current_sign",
                    List.of("out-of-pack-positive", "out-of-pack-negative"),
                    BEGIN + "time_format",
                    List.of("number", "clock", "date"));

    /** By the names that recordings have for them; a test holds that these are all. */
    private static final List<String> QUANTITIES =
            List.of(
                    "time",
                    "wheel_speed",
                    "satellite_speed",
                    "latitude",
                    "longitude",
                    "distance",
                    "altitude",
                    "pack_voltage",
                    "pack_current",
                    "motor_current",
                    "charge",
                    "pack_temperature",
                    "motor_temperature",
                    "wind_speed");

    private RecordingKeys() {}

    static boolean holds(String key) {
        return key.startsWith(BEGIN) || key.equals(TABLE);
    }

    /** What is wrong with a key of the table; empty where it is fine. */
    static Optional<Problem> problem(String key, WrittenTable.Item item) {
        if (TABLES.contains(key)) {
            return Optional.of(
                    new Problem(
                            item.line(),
                            key,
                            "this must be a table",
                            "[recording] with columns = { time = \"Timestamp\" }"));
        }
        List<String> words = WORDS.get(key);
        boolean isNamed = key.startsWith(COLUMNS + ".") || key.startsWith(UNITS + ".");
        if (words == null && !(isNamed && QUANTITIES.contains(name(key)))) {
            return Optional.of(
                    new Problem(
                            item.line(),
                            key,
                            isNamed ? "this is no quantity" : "this key is not known",
                            isNamed
                                    ? "one of " + String.join(" ", QUANTITIES)
                                    : "columns, units, current_sign or time_format"));
        }
        boolean isText =
                item.raw() instanceof String text
                        && !text.isBlank()
                        && Printable.fault(text).isEmpty()
                        && (words == null || words.contains(text));
        return isText
                ? Optional.empty()
                : Optional.of(
                        new Problem(
                                item.line(),
                                key,
                                words == null ? "this must be plain text" : "this is no such word",
                                words == null
                                        ? "text in quotes, as the file has it"
                                        : "one of " + String.join(", ", words)));
    }

    private static String name(String key) {
        return key.substring(key.lastIndexOf('.') + 1);
    }

    /** What a file says there, by what stands behind the name of the table. */
    static Map<String, String> told(Map<String, Object> raw) {
        Map<String, String> told = new LinkedHashMap<>();
        raw.forEach(
                (key, value) -> {
                    if (key.startsWith(BEGIN) && value instanceof String text) {
                        told.put(key.substring(BEGIN.length()), text);
                    }
                });
        return told;
    }

    /** Its keys in the order in which a file must have them: those of no inner table first. */
    static List<String> inOrder(Map<String, Object> raw) {
        List<String> all = new ArrayList<>();
        for (String table : List.of(TABLE, COLUMNS, UNITS)) {
            raw.keySet().stream()
                    .filter(key -> key.startsWith(BEGIN))
                    .filter(key -> key.substring(0, key.lastIndexOf('.')).equals(table))
                    .forEach(all::add);
        }
        return all;
    }
}
