package brakewright.cli.buildfile;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.tomlj.Toml;
import org.tomlj.TomlParseError;
import org.tomlj.TomlParseResult;
import org.tomlj.TomlPosition;
import org.tomlj.TomlTable;

/**
 * The keys of a TOML text, flattened, each with its line. Tables that the schema does not know stay
 * whole, so that they are reported once.
 *
 * @param values by dotted key, in the order of the file
 * @param isWhole whether the text is TOML throughout; what is missing from a broken text says
 *     nothing
 */
record TomlKeys(Map<String, Entry> values, boolean isWhole) {

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
            return new TomlKeys(Map.of(), false);
        }
        for (TomlParseError error : result.errors()) {
            problems.add(
                    new Problem(
                            error.position().line(),
                            "",
                            String.valueOf(error.getMessage()).lines().findFirst().orElse(""),
                            "TOML, for example mass = \"92 kg\""));
        }
        Map<String, Entry> values = new LinkedHashMap<>();
        flatten(result, new ArrayList<>(), knownTables(), values);
        return new TomlKeys(values, result.errors().isEmpty());
    }

    private static void flatten(
            TomlTable table, List<String> path, Set<String> known, Map<String, Entry> values) {
        for (String name : table.keySet()) {
            Object raw = table.get(List.of(name));
            path.add(name);
            String key = String.join(".", path);
            if (raw instanceof TomlTable inner && (known.contains(key) || isProposal(path))) {
                flatten(inner, path, known, values);
            } else if (raw != null) {
                TomlPosition position = table.inputPositionOf(List.of(name));
                values.put(key, new Entry(raw, position == null ? 0 : position.line()));
            }
            path.remove(path.size() - 1);
        }
    }

    private static boolean isProposal(List<String> path) {
        return path.get(0).equals(PROPOSALS) && path.size() <= 2;
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
