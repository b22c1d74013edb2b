package brakewright.cli.buildfile;

import brakewright.spec.Input;
import brakewright.tables.ReferenceTables;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads what a build file says, key by key. */
final class GivenReader {

    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N} _.+-]{1,40}");

    /** How comparisons call the settings that are not proposed. */
    private static final String PRESENT = "present";

    private static final String NOTES = "notes";
    private static final String PROPOSALS = "proposals.";
    private static final String SETTINGS = "settings.";

    private final TomlKeys keys;
    private final List<Problem> problems;
    private final ValueReader reader;
    private final UnknownKeys unknown;
    private final List<PackPlace> places;
    private final Map<Input, Value> values = new EnumMap<>(Input.class);
    private final Map<String, Map<Input, Value>> packs = new LinkedHashMap<>();
    private final Map<String, Integer> lines = new LinkedHashMap<>();
    private final Map<String, Map<Input, Value>> proposals = new LinkedHashMap<>();
    private final Map<String, String> texts = new LinkedHashMap<>();

    /**
     * Prepares the reading.
     *
     * @param keys of the file
     * @param places where its packs are described
     * @param tables where curves are looked up
     * @param problems to which is added what is wrong
     */
    GivenReader(
            TomlKeys keys, List<PackPlace> places, ReferenceTables tables, List<Problem> problems) {
        this.keys = keys;
        this.problems = problems;
        this.reader = new ValueReader(new TableCurves(tables), problems);
        this.unknown = new UnknownKeys(problems);
        this.places = places;
    }

    Given read() {
        places.forEach(place -> packs.put(place.table(), new EnumMap<>(Input.class)));
        lines.putAll(keys.headings());
        keys.packs().forEach(place -> lines.put(place.table(), place.line()));
        keys.packs().stream()
                .findFirst()
                .ifPresent(first -> lines.put(PackPlace.SEVERAL, first.line()));
        keys.headings().forEach(this::checkProposal);
        keys.values().forEach(this::take);
        if (keys.isWhole()) {
            new RequiredKeys(keys, problems).check(places);
        }
        return new Given(
                text("title"),
                text(NOTES),
                values,
                places.stream().map(this::pack).toList(),
                lines,
                proposals);
    }

    private GivenPack pack(PackPlace place) {
        return new GivenPack(
                place,
                text(place.key(GivenPack.CELL)),
                packs.getOrDefault(place.table(), Map.of()));
    }

    private String text(String key) {
        return texts.getOrDefault(key, "");
    }

    private void take(String key, TomlKeys.Entry entry) {
        lines.put(key, entry.line());
        PackPlace place = placeOf(key);
        String schemaKey = place.contains(key) ? PackPlace.schemaKey(key) : key;
        Optional<Input> input = Input.ofKey(schemaKey);
        if (key.equals("title") || key.equals(NOTES)) {
            takeText(
                    key,
                    entry,
                    key + (key.equals(NOTES) ? " = \"Built for gravel.\"" : " = \"Trail board\""));
        } else if (schemaKey.equals(GivenPack.CELL)) {
            takeText(key, entry, "cell = \"samsung-30q\"");
        } else if (key.startsWith(PROPOSALS)) {
            takeProposal(key, entry);
        } else if (input.isPresent()) {
            Map<Input, Value> target =
                    PackPlace.holds(input.get())
                            ? packs.computeIfAbsent(
                                    place.table(), each -> new EnumMap<>(Input.class))
                            : values;
            read(input.get(), key, entry, target);
        } else if (TomlKeys.knownTables().contains(schemaKey)) {
            problems.add(
                    new Problem(
                            entry.line(),
                            key,
                            "this must be a table",
                            "a heading " + place.heading(schemaKey) + " with its keys below"));
        } else if (!key.equals(PackPlace.SEVERAL)) {
            unknown.tell(key, schemaKey, entry.line(), place);
        }
    }

    private PackPlace placeOf(String key) {
        return keys.packs().stream()
                .filter(place -> place.contains(key))
                .findFirst()
                .orElse(PackPlace.one());
    }

    private void read(Input input, String key, TomlKeys.Entry entry, Map<Input, Value> target) {
        reader.read(Schema.of(input), key, entry.raw(), entry.line())
                .ifPresent(value -> target.put(input, value));
    }

    private void takeText(String key, TomlKeys.Entry entry, String example) {
        String wrong = "this must be text";
        if (entry.raw() instanceof String text && !text.isBlank()) {
            boolean mayBreak = key.equals(NOTES);
            String plain = mayBreak ? text.replace("\r\n", "\n").strip() : text;
            Optional<String> fault =
                    mayBreak ? Printable.faultOfLines(plain) : Printable.fault(plain);
            if (fault.isEmpty()) {
                texts.put(key, plain);
                return;
            }
            wrong = fault.get();
        }
        problems.add(
                new Problem(
                        entry.line(), key, wrong, "plain text in quotes, for example " + example));
    }

    /** Once for a proposal, however many keys it has. */
    private void checkProposal(String heading, int line) {
        if (!heading.startsWith(PROPOSALS)) {
            return;
        }
        String name = heading.substring(PROPOSALS.length());
        if (!NAME.matcher(name).matches() || name.equals(PRESENT)) {
            problems.add(
                    new Problem(
                            line,
                            heading,
                            "this is no name for a proposal",
                            "up to 40 letters, digits, blanks, points and hyphens, and not"
                                    + " \"present\", for example [proposals.firmer-brake]"));
        }
        if (keys.values().keySet().stream().noneMatch(key -> key.startsWith(heading + "."))) {
            problems.add(
                    new Problem(
                            line,
                            heading,
                            "this proposal changes no setting",
                            "at least one setting below, for example motor_brake_current = \"30"
                                    + " A\""));
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
            unknown.tellSetting(key, PROPOSALS + name, entry.line());
            return;
        }
        read(
                input.get(),
                key,
                entry,
                proposals.computeIfAbsent(name, each -> new EnumMap<>(Input.class)));
    }
}
