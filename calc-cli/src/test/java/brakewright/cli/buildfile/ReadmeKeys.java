package brakewright.cli.buildfile;

import brakewright.tables.Default;
import brakewright.tables.ReferenceTables;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes README.md's list of keys from the table of keys, and the defaults from theirs. */
final class ReadmeKeys {

    /** What the table of keys says where a default is taken. */
    static final String ASSUMED = "assumed";

    private static final String BEGIN = "`none` leaves out what depends on it.\n\n";
    private static final String END = "## Use it as a library";

    /** What stands above the keys of each table of a build file, in the order of the list. */
    private static final String HEADINGS =
            """
            **Top** of the file
            **`[rider]`**
            **`[vehicle]`**
            **`[vehicle.friction_brake]`**
            **`[drive]`**
            **`[motor]`**
            **`[controller]`**
            **`[pack]`** or `[[packs]]` for each of several
            **`[pack.cell]`** or `[packs.cell]`; required only where `cell` is no id of the tables
            **`[pack.group_spread]`** or `[packs.group_spread]`; how far the worst group in series departs from the mean
            **`[pack.protection]`** or `[packs.protection]`; without it the worksheet cannot know what opens first
            **`[pack.wiring]`** or `[packs.wiring]`
            **`[battery]`** only with `[[packs]]`
            **`[use]`**
            **`[margins]`** what is kept from each bound
            **`[criteria]`**
            **`[settings]`** what is in the controller now; `[proposals.NAME]` has the same keys, each laid over these, and those of `[use]` with their table, as `use.charge_from = "88 %"`
            """;

    private final ReferenceTables tables;

    ReadmeKeys(ReferenceTables tables) {
        this.tables = tables;
    }

    /** The whole page with the list as the tables have it now. */
    String putInto(String readme) {
        int begin = readme.indexOf(BEGIN);
        int end = readme.indexOf(END, begin);
        if (begin < 0 || end < 0) {
            throw new AssertionError("no place for the list between " + BEGIN + END);
        }
        return readme.substring(0, begin) + BEGIN + list() + readme.substring(end);
    }

    private String list() {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        HEADINGS.lines().forEach(heading -> rows.put(heading, new ArrayList<>()));
        add(rows, "title", "\"Trail board\"", "required", "what the vehicle is called");
        add(rows, "notes", "\"Built for gravel.\"", "none", "anything; may have several lines");
        add(
                rows,
                "pack.cell",
                "\"samsung-30q\"",
                "required, or `[pack.cell]`",
                "id of a cell of the tables, or a table of its own");
        for (Schema.Entry entry : Schema.all()) {
            add(rows, entry.key(), example(entry), without(entry), entry.what());
        }
        StringBuilder text = new StringBuilder();
        rows.forEach(
                (heading, ofTable) -> {
                    text.append(heading).append("\n\n");
                    text.append("| key | example | left out | what it is |\n|---|---|---|---|\n");
                    ofTable.forEach(text::append);
                    text.append('\n');
                });
        return text.toString();
    }

    private static void add(
            Map<String, List<String>> rows,
            String key,
            String example,
            String without,
            String what) {
        int dot = key.lastIndexOf('.');
        String begin = dot < 0 ? "**Top**" : "**`[" + key.substring(0, dot) + "]`**";
        List<String> list =
                rows.entrySet().stream()
                        .filter(each -> each.getKey().startsWith(begin))
                        .findFirst()
                        .orElseThrow(() -> new AssertionError("no heading for " + key))
                        .getValue();
        list.add(
                "| `"
                        + key.substring(dot + 1)
                        + "` | `"
                        + example
                        + "` | "
                        + without
                        + " | "
                        + what
                        + " |\n");
    }

    static String example(Schema.Entry entry) {
        return ValueReader.example(entry).split(" = ", 2)[1];
    }

    /** What is taken where a key is left out. */
    private String without(Schema.Entry entry) {
        if (entry.need() != Schema.Need.OPTIONAL) {
            return "required";
        }
        return entry.leftOut().equals(ASSUMED)
                ? span(entry, defaultsOf(entry.key()))
                : entry.leftOut();
    }

    /** The rows of a key, or those of the two ends of its range. */
    List<Default> defaultsOf(String key) {
        return tables.defaults().stream()
                .filter(
                        each ->
                                each.key().equals(key)
                                        || each.key().equals(key + "_low")
                                        || each.key().equals(key + "_high"))
                .toList();
    }

    /** One value, or the range of those that depend on something. */
    private static String span(Schema.Entry entry, List<Default> rows) {
        List<Default> ascending =
                rows.stream().sorted(Comparator.comparingDouble(Default::value)).toList();
        double low = ascending.get(0).value();
        double high = ascending.get(ascending.size() - 1).value();
        String unit =
                ascending
                        .get(0)
                        .figure()
                        .unit()
                        .replace("degC", "°C")
                        .replace("m2", "m²")
                        .replace("s2", "s²")
                        .replace("*", "·")
                        .replaceAll("^1(/km)?$", "");
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
}
