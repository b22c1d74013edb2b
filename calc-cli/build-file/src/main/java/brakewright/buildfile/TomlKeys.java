package brakewright.buildfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.tomlj.Toml;
import org.tomlj.TomlArray;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * The keys of a TOML text, flattened, each with its line. Tables that the schema does not know stay
 * whole, so that they are reported once.
 *
 * @param values by dotted key, in the order of the file; the keys of each of several packs under
 *     the name of its place
 * @param headings the lines of the tables that were taken apart
 * @param packs where the tables {@code [[packs]]} stand
 * @param unread what of the text is no TOML
 */
record TomlKeys(
        Map<String, Entry> values,
        Map<String, Integer> headings,
        List<PackPlace> packs,
        UnreadText unread) {

    /**
     * What stands behind a key.
     *
     * @param raw as TOML gives it
     * @param line where the key stands
     */
    record Entry(Object raw, int line) {}

    private static final String PROPOSALS = "proposals";

    static TomlKeys parse(String text, List<Problem> problems) {
        TomlParseResult result;
        try {
            result = Toml.parse(text);
        } catch (StackOverflowError tooDeep) {
            problems.add(new Problem(0, "", "the file is nested too deeply", ""));
            return new TomlKeys(
                    Map.of(), Map.of(), List.of(), new UnreadText(text, Set.of(), List.of(0)));
        }
        for (TomlParseError error : result.errors()) {
            problems.add(
                    new Problem(
                            error.position().line(),
                            "",
                            String.valueOf(error.getMessage()).lines().findFirst().orElse(""),
                            "TOML, for example mass = \"92 kg\""));
        }
        Flattening flat = new Flattening();
        flat.table(result, new ArrayList<>());
        List<Integer> wrong =
                result.errors().stream().map(error -> error.position().line()).toList();
        return new TomlKeys(
                flat.values,
                flat.headings,
                flat.packs,
                wrong.isEmpty()
                        ? UnreadText.NONE
                        : new UnreadText(text, flat.values.keySet(), wrong));
    }

    /** Takes tables apart. */
    private static final class Flattening {

        private final Set<String> known = knownTables();
        private final Map<String, Entry> values = new LinkedHashMap<>();
        private final Map<String, Integer> headings = new LinkedHashMap<>();
        private final List<PackPlace> packs = new ArrayList<>();

        void table(TomlTable table, List<String> path) {
            for (String name : table.keySet()) {
                Object raw = table.get(List.of(name));
                int line = line(table.inputPositionOf(List.of(name)));
                path.add(name);
                String key = String.join(".", path);
                if (raw instanceof TomlTable inner && isTakenApart(key, path)) {
                    if (!isUseOfProposal(path)) {
                        headings.put(key, line);
                    }
                    table(inner, path);
                } else if (raw instanceof TomlArray array && isPacks(key, array)) {
                    packs(array);
                } else if (raw != null) {
                    values.put(key, new Entry(raw, line));
                }
                path.remove(path.size() - 1);
            }
        }

        private void packs(TomlArray array) {
            for (int i = 0; i < array.size(); i++) {
                PackPlace place = PackPlace.several(i + 1, line(array.inputPositionOf(i)));
                packs.add(place);
                table((TomlTable) array.get(i), new ArrayList<>(place.path()));
            }
        }

        private boolean isTakenApart(String key, List<String> path) {
            return known.contains(PackPlace.schemaKey(key))
                    || isProposal(path)
                    || isUseOfProposal(path);
        }

        private static boolean isPacks(String key, TomlArray array) {
            return key.equals(PackPlace.SEVERAL)
                    && !array.isEmpty()
                    && array.toList().stream().allMatch(TomlTable.class::isInstance);
        }

        private static int line(@Nullable TomlPosition position) {
            return position == null ? 0 : position.line();
        }
    }

    private static boolean isProposal(List<String> path) {
        return path.get(0).equals(PROPOSALS) && path.size() <= 2;
    }

    /** The keys of {@code use} that a proposal changes. */
    private static boolean isUseOfProposal(List<String> path) {
        return path.get(0).equals(PROPOSALS) && path.size() == 3 && path.get(2).equals("use");
    }

    /** Every table that holds a key of the schema. */
    static Set<String> knownTables() {
        Set<String> tables = new TreeSet<>();
        tables.add(PROPOSALS);
        for (Schema.Entry entry : Schema.all()) {
            String key = entry.key();
            for (int dot = key.lastIndexOf('.'); dot > 0; dot = key.lastIndexOf('.', dot - 1)) {
                tables.add(key.substring(0, dot));
            }
        }
        return tables;
    }
}
