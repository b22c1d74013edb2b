package brakewright.buildfile;

import brakewright.buildfile.internal.Printable;
import brakewright.buildfile.internal.RecordedQuantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

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

    private static final String INSPECTED = "`brakewright ride --inspect FILE` shows it";

    private static final Map<String, Key> KEYS = keys();

    /**
     * One key.
     *
     * @param name dotted, its table first
     * @param words that it may have; empty where it may be any text
     * @param example of its value, without quotes
     * @param leftOut what is taken without it
     * @param what what it is
     * @param found where a person finds it
     */
    record Key(
            String name,
            List<String> words,
            String example,
            String leftOut,
            String what,
            String found) {}

    private RecordingKeys() {}

    /** All, those of one table together. */
    static Collection<Key> all() {
        return KEYS.values();
    }

    private static Map<String, Key> keys() {
        Map<String, Key> keys = new LinkedHashMap<>();
        put(
                keys,
                new Key(
                        BEGIN + "current_sign",
                        List.of("out-of-pack-positive", "out-of-pack-negative"),
                        "out-of-pack-negative",
                        "as braking and the voltage show it",
                        "how recordings count the current of the pack while it drives",
                        "the column of the current in rows where the vehicle speeds up"));
        put(
                keys,
                new Key(
                        BEGIN + "time_format",
                        List.of("number", "clock", "date"),
                        "clock",
                        "as the first time in the file is written",
                        "how recordings write times: a `number`, a `clock` as 14:30:05 or a `date`"
                                + " with a clock as 2024-05-01T14:30:05",
                        INSPECTED));
        for (RecordedQuantity quantity : RecordedQuantity.values()) {
            put(keys, column(quantity));
        }
        for (RecordedQuantity quantity : RecordedQuantity.values()) {
            put(keys, unit(quantity));
        }
        return Collections.unmodifiableMap(keys);
    }

    private static void put(Map<String, Key> keys, Key key) {
        keys.put(key.name(), key);
    }

    private static Key column(RecordedQuantity quantity) {
        return new Key(
                COLUMNS + "." + quantity.key(),
                List.of(),
                quantity.head(),
                "a column with a usual name for it, if there is one",
                "head of the column for " + quantity.what(),
                "the line of the recording that names its columns; " + INSPECTED);
    }

    private static Key unit(RecordedQuantity quantity) {
        return new Key(
                UNITS + "." + quantity.key(),
                quantity.units().stream()
                        .flatMap(unit -> unit.spellings().stream())
                        .collect(Collectors.toList()),
                quantity.units().get(0).symbol(),
                "as the head of its column names it"
                        + quantity.usualUnit().map(symbol -> ", or " + symbol).orElse(""),
                "unit of the column for " + quantity.what(),
                "the manual of what records; " + INSPECTED);
    }

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
        Key known = KEYS.get(key);
        return known == null ? Optional.of(unknown(key, item)) : wrong(known, item);
    }

    private static Problem unknown(String key, WrittenTable.Item item) {
        boolean isNamed = key.startsWith(COLUMNS + ".") || key.startsWith(UNITS + ".");
        return new Problem(
                item.line(),
                key,
                isNamed ? "this is no quantity" : "this key is not known",
                isNamed
                        ? Arrays.stream(RecordedQuantity.values())
                                .map(RecordedQuantity::key)
                                .collect(Collectors.joining(" ", "one of ", ""))
                        : "columns, units, current_sign or time_format");
    }

    private static Optional<Problem> wrong(Key key, WrittenTable.Item item) {
        List<String> words = key.words();
        boolean isText =
                item.raw() instanceof String text
                        && !text.trim().isEmpty()
                        && Printable.fault(text).isEmpty()
                        && (words.isEmpty() || words.contains(text));
        return isText
                ? Optional.empty()
                : Optional.of(
                        new Problem(
                                item.line(),
                                key.name(),
                                words.isEmpty() ? "this must be plain text" : noWord(key),
                                words.isEmpty()
                                        ? "text in quotes, as the file has it"
                                        : "one of " + String.join(", ", words)));
    }

    private static String noWord(Key key) {
        return key.name().startsWith(UNITS + ".")
                ? "this is no unit of " + key.name().substring(UNITS.length() + 1)
                : "this is no such word";
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
