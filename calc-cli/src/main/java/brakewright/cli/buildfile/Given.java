package brakewright.cli.buildfile;

import brakewright.spec.Input;
import brakewright.tables.CurveEntry;
import brakewright.tables.ReferenceTables;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a build file itself says.
 *
 * @param title what the vehicle is called
 * @param notes free text
 * @param cell the id of a cell in the tables; empty where the file describes its own
 * @param values by input
 * @param lines where each key stands
 * @param proposals settings by the name of the proposal
 */
record Given(
        String title,
        String notes,
        String cell,
        Map<Input, Value> values,
        Map<String, Integer> lines,
        Map<String, Map<Input, Value>> proposals) {

    private static final String CELL = "pack.cell";
    private static final String PROPOSALS = "proposals.";
    private static final String SETTINGS = "settings.";

    static Given read(TomlKeys keys, ReferenceTables tables, List<Problem> problems) {
        Reading reading = new Reading(keys, tables, problems);
        reading.run();
        return new Given(
                reading.text("title"),
                reading.text("notes"),
                reading.text(CELL),
                reading.values,
                reading.lines,
                reading.proposals);
    }

    /** Returns the line of a key, or of the nearest table around it that stands in the file. */
    int line(String key) {
        return lines.getOrDefault(key, 0);
    }

    private static final class Reading {

        private final TomlKeys keys;
        private final List<Problem> problems;
        private final ValueReader reader;
        private final Map<Input, Value> values = new EnumMap<>(Input.class);
        private final Map<String, Integer> lines = new LinkedHashMap<>();
        private final Map<String, Map<Input, Value>> proposals = new LinkedHashMap<>();
        private final Map<String, String> texts = new LinkedHashMap<>();

        Reading(TomlKeys keys, ReferenceTables tables, List<Problem> problems) {
            this.keys = keys;
            this.problems = problems;
            this.reader = new ValueReader(curvesOf(tables), problems);
        }

        void run() {
            keys.values().forEach(this::take);
            if (keys.isWhole()) {
                missing();
            }
        }

        String text(String key) {
            return texts.getOrDefault(key, "");
        }

        private void take(String key, TomlKeys.Entry entry) {
            lines.put(key, entry.line());
            Optional<Input> input = Input.ofKey(key);
            if (key.equals("title") || key.equals("notes")) {
                takeText(key, entry, key + " = \"Trail board\"");
            } else if (key.equals(CELL)) {
                takeText(key, entry, "cell = \"samsung-30q\"");
            } else if (key.startsWith(PROPOSALS)) {
                takeProposal(key, entry);
            } else if (input.isPresent()) {
                reader.read(Schema.of(input.get()), key, entry.raw(), entry.line())
                        .ifPresent(value -> values.put(input.get(), value));
            } else if (TomlKeys.knownTables().contains(key)) {
                problems.add(
                        new Problem(
                                entry.line(),
                                key,
                                "this must be a table",
                                "a heading [" + key + "] with its keys below"));
            } else {
                unknown(key, key, entry.line(), candidates());
            }
        }

        private void takeText(String key, TomlKeys.Entry entry, String example) {
            if (entry.raw() instanceof String text && !text.isBlank()) {
                texts.put(key, text);
            } else {
                problems.add(
                        new Problem(
                                entry.line(),
                                key,
                                "this must be text",
                                "text in quotes, for example " + example));
            }
        }

        private void takeProposal(String key, TomlKeys.Entry entry) {
            String rest = key.substring(PROPOSALS.length());
            int dot = rest.lastIndexOf('.');
            if (dot < 0) {
                problems.add(
                        new Problem(
                                entry.line(),
                                key,
                                "a proposal must be a table",
                                "a heading [proposals." + rest + "] with settings below"));
                return;
            }
            String name = rest.substring(0, dot);
            String setting = SETTINGS + rest.substring(dot + 1);
            Optional<Input> input = Input.ofKey(setting);
            if (input.isEmpty()) {
                unknown(key, setting, entry.line(), settingKeys());
                return;
            }
            Map<Input, Value> proposal =
                    proposals.computeIfAbsent(name, each -> new EnumMap<>(Input.class));
            reader.read(Schema.of(input.get()), key, entry.raw(), entry.line())
                    .ifPresent(value -> proposal.put(input.get(), value));
        }

        private void unknown(String key, String word, int line, Set<String> candidates) {
            problems.add(
                    new Problem(
                            line,
                            key,
                            "this key is not known",
                            Nearest.to(word, candidates)
                                    .map(nearest -> "the nearest known one is " + nearest)
                                    .orElse("see the list of keys in README.md")));
        }

        private static Set<String> candidates() {
            Set<String> all = new TreeSet<>(TomlKeys.knownTables());
            Schema.all().forEach(entry -> all.add(entry.key()));
            all.add("title");
            all.add("notes");
            all.add(CELL);
            return all;
        }

        private static Set<String> settingKeys() {
            Set<String> all = new TreeSet<>();
            for (Schema.Entry entry : Schema.all()) {
                if (entry.key().startsWith(SETTINGS)) {
                    all.add(entry.key());
                }
            }
            return all;
        }

        private void missing() {
            if (!lines.containsKey("title")) {
                problems.add(
                        new Problem(
                                0,
                                "title",
                                "this required key is missing",
                                "text in quotes, for example title = \"Trail board\""));
            }
            boolean ownCell = lines.keySet().stream().anyMatch(key -> key.startsWith(CELL + "."));
            if (!ownCell && !lines.containsKey(CELL)) {
                problems.add(
                        new Problem(
                                0,
                                CELL,
                                "this required key is missing",
                                "the id of a cell in the tables, for example cell ="
                                        + " \"samsung-30q\", or a table [pack.cell]"));
            }
            for (Schema.Entry entry : Schema.all()) {
                boolean wanted = entry.required() || (ownCell && CELL_KEYS.contains(entry.input()));
                if (wanted && !lines.containsKey(entry.key())) {
                    problems.add(
                            new Problem(
                                    0,
                                    entry.key(),
                                    "this required key is missing",
                                    entry.kind().expected()
                                            + ", for example "
                                            + ValueReader.example(entry)));
                }
            }
        }

        private static ValueReader.CurveTable curvesOf(ReferenceTables tables) {
            return new ValueReader.CurveTable() {
                @Override
                public Optional<brakewright.spec.Curve> curve(String id, String quantity) {
                    return tables.curve(id)
                            .filter(entry -> entry.quantity().text().equals(quantity))
                            .map(CurveEntry::curve);
                }

                @Override
                public List<String> ids(String quantity) {
                    List<String> ids = new ArrayList<>();
                    for (CurveEntry entry : tables.curves()) {
                        if (entry.quantity().text().equals(quantity)) {
                            ids.add(entry.id());
                        }
                    }
                    return ids;
                }
            };
        }
    }

    /** What a cell that is not in the tables must say of itself. */
    private static final Set<Input> CELL_KEYS =
            Set.of(
                    Input.CELL_CHEMISTRY,
                    Input.CELL_CAPACITY,
                    Input.CELL_DISCHARGE_CURRENT,
                    Input.CELL_CHARGE_CURRENT,
                    Input.CELL_VOLTAGE_MAX,
                    Input.CELL_VOLTAGE_MIN,
                    Input.CELL_RESISTANCE);
}
