package brakewright.buildfile;

import brakewright.buildfile.internal.Nearest;
import brakewright.buildfile.internal.Plain;
import brakewright.tables.Default;
import brakewright.tables.ReferenceTables;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What a person has to know about the keys of a build file. */
public final class KeyGuide {

    /** What the table of keys says of those whose value stands in the table of defaults. */
    static final String ASSUMED = "assumed";

    private static final String REQUIRED = "required";

    private static final Set<String> PREFIXES = Set.of("packs.", "proposals.");

    /** The first key of a pack: an id, or a table. */
    private static final Entry CELL =
            plain(
                    "pack.cell",
                    "\"samsung-30q\"",
                    "required, or `[pack.cell]`",
                    "id of a cell of the tables, or a table of its own",
                    "the print on the wrap of the cell");

    private final ReferenceTables tables;
    private final List<Entry> entries;

    /**
     * One key.
     *
     * @param key dotted, its table first
     * @param example of its value, as a file writes it behind the equals sign
     * @param expected kind of value
     * @param range lowest and highest possible value, with their unit; empty where there is none
     * @param units it may be written in; empty where it has none
     * @param leftOut {@code required}, or in short what is taken where it is not given
     * @param taken the rows that hold what is taken; empty where it is no figure of the tables
     * @param what what it is
     * @param found where a person finds it; empty where nothing need be said
     */
    public record Entry(
            String key,
            String example,
            String expected,
            String range,
            List<String> units,
            String leftOut,
            List<Default> taken,
            String what,
            String found) {

        /** Copies the lists. */
        public Entry {
            units = List.copyOf(units);
            taken = List.copyOf(taken);
        }

        /**
         * Returns the table of the build file in which the key stands.
         *
         * @return its dotted name; empty for the top of the file
         */
        public String table() {
            return key.substring(0, Math.max(0, key.lastIndexOf('.')));
        }

        /**
         * Returns the key without its table.
         *
         * @return the name before the equals sign
         */
        public String name() {
            return key.substring(key.lastIndexOf('.') + 1);
        }
    }

    /**
     * Gathers what is known of the keys.
     *
     * @param tables where defaults stand
     */
    public KeyGuide(ReferenceTables tables) {
        this.tables = tables;
        List<Entry> all = new ArrayList<>();
        all.add(plain("title", "\"Trail board\"", REQUIRED, "what the vehicle is called", ""));
        all.add(
                plain(
                        "notes",
                        "\"Built for gravel.\"",
                        "none",
                        "anything; may have several lines",
                        ""));
        for (Schema.Entry entry : Schema.all()) {
            if (entry.key().startsWith("pack.")
                    && all.get(all.size() - 1).table().equals("controller")) {
                all.add(CELL);
            }
            all.add(measured(entry));
        }
        RecordingKeys.all().forEach(key -> all.add(recorded(key)));
        this.entries = List.copyOf(all);
    }

    /**
     * Returns every key.
     *
     * @return those of one table together
     */
    public List<Entry> all() {
        return entries;
    }

    /**
     * Finds the keys of a name.
     *
     * @param name a dotted key, the last part of one, or a table; a dash does for an underscore,
     *     {@code packs} for {@code pack}, and a proposal has the keys of the settings
     * @return one entry where exactly that key is meant, or all that may be; empty where none is
     */
    public List<Entry> find(String name) {
        String key = settled(name);
        List<Entry> exact = entries.stream().filter(each -> each.key().equals(key)).toList();
        List<Entry> below =
                entries.stream().filter(each -> each.key().startsWith(key + ".")).toList();
        if (!exact.isEmpty() || !below.isEmpty()) {
            List<Entry> both = new ArrayList<>(exact);
            both.addAll(below);
            return both;
        }
        return entries.stream().filter(each -> each.name().equals(key)).toList();
    }

    /**
     * Finds what a misspelt name most likely means.
     *
     * @param name that {@link #find} does not find
     * @return a key or a table; empty where none is near enough
     */
    public Optional<String> nearest(String name) {
        Set<String> candidates = new LinkedHashSet<>();
        for (Entry entry : entries) {
            candidates.add(entry.key());
            if (!entry.table().isEmpty()) {
                candidates.add(entry.table());
            }
        }
        String key = settled(name);
        return Nearest.key(key, candidates).or(() -> Nearest.to(key, candidates));
    }

    private static String settled(String name) {
        String key =
                PackPlace.schemaKey(
                        name.strip()
                                .toLowerCase(Locale.ROOT)
                                .replace('-', '_')
                                .replace("[", "")
                                .replace("]", ""));
        for (String prefix : PREFIXES) {
            if (key.startsWith(prefix)) {
                String rest = key.substring(prefix.length());
                return prefix.equals("packs.")
                        ? "pack." + rest
                        : "settings." + rest.substring(rest.indexOf('.') + 1);
            }
        }
        return key;
    }

    private static Entry plain(
            String key, String example, String leftOut, String what, String found) {
        return new Entry(
                key, example, "a text in quotes", "", List.of(), leftOut, List.of(), what, found);
    }

    private static Entry recorded(RecordingKeys.Key key) {
        return new Entry(
                key.name(),
                '"' + key.example() + '"',
                key.words().isEmpty()
                        ? "a text in quotes"
                        : "one of " + String.join(", ", key.words()) + ", in quotes",
                "",
                List.of(),
                key.leftOut(),
                List.of(),
                key.what(),
                key.found());
    }

    private Entry measured(Schema.Entry entry) {
        Kind kind = entry.kind();
        List<Default> taken = defaultsOf(entry.key());
        return new Entry(
                entry.key(),
                Spelling.literal(entry),
                kind.expected(),
                kind.isRanged() ? shownUnit(PossibleRange.told(entry)) : "",
                kind.dimensionOfNumbers().map(UnitTable::symbols).orElse(List.of()),
                leftOut(entry, taken),
                entry.leftOut().equals(ASSUMED) ? taken : List.of(),
                entry.what(),
                entry.found());
    }

    private static String leftOut(Schema.Entry entry, List<Default> taken) {
        if (entry.need() != Schema.Need.OPTIONAL) {
            return REQUIRED;
        }
        return entry.leftOut().equals(ASSUMED) ? span(entry, taken) : entry.leftOut();
    }

    /** The rows of a key, or those of the two ends of its range. */
    List<Default> defaultsOf(String key) {
        Set<String> keys = Set.of(key, key + "_low", key + "_high");
        return tables.defaults().stream().filter(each -> keys.contains(each.key())).toList();
    }

    /** One value, or the range of those that depend on something. */
    private static String span(Schema.Entry entry, List<Default> rows) {
        List<Default> ascending =
                rows.stream().sorted(Comparator.comparingDouble(Default::value)).toList();
        double low = ascending.get(0).value();
        double high = ascending.get(ascending.size() - 1).value();
        String unit = shownUnit(ascending.get(0).figure().unit());
        if (unit.isEmpty() && entry.example().contains("%")) {
            low *= 100.0;
            high *= 100.0;
            unit = "%";
        }
        String value = Plain.number(low) + (low == high ? "" : " to " + Plain.number(high));
        String fact =
                rows.stream()
                        .flatMap(row -> row.when().keySet().stream())
                        .findFirst()
                        .filter(any -> value.contains(" to "))
                        .map(name -> ", by " + name)
                        .orElse("");
        return (value + " " + unit).strip() + fact;
    }

    /**
     * Writes what the tables have for a key as a build file would.
     *
     * @param entry the key
     * @param taken a row of the table of defaults
     * @return a number with its unit; a percentage where the example is one
     */
    public static String shown(Entry entry, Default taken) {
        String unit = shownUnit(taken.figure().unit());
        return unit.isEmpty() && entry.example().contains("%")
                ? Plain.number(100.0 * taken.value()) + " %"
                : (Plain.number(taken.value()) + " " + unit).strip();
    }

    /**
     * Spells a unit of the tables as it is printed.
     *
     * @param unit as the tables spell it
     * @return with its signs; empty for a ratio
     */
    public static String shownUnit(String unit) {
        return unit.replace("degC", "°C")
                .replace("ohm", "Ω")
                .replace("m2", "m²")
                .replace("s2", "s²")
                .replace("*", "·")
                .replaceAll("^1(/km)?$", "");
    }
}
