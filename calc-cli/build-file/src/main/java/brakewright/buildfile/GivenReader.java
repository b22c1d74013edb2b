package brakewright.buildfile;

import brakewright.assembly.Value;
import brakewright.buildfile.internal.Printable;
import brakewright.spec.Input;
import brakewright.tables.ReferenceTables;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads what a build file says, key by key. */
final class GivenReader {

    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N} _.+-]{1,40}");

    /** How comparisons call what is not proposed, and what a command line asks for. */
    private static final Set<String> TAKEN = Set.of("present", "as asked");

    private static final String NOTES = "notes";

    private final FileKeys keys;
    private final Spelling spelling;
    private final List<Problem> problems;
    private final ValueReader reader;
    private final UnknownKeys unknown;
    private final List<PackPlace> places;
    private final Map<Input, Value> values = new EnumMap<>(Input.class);
    private final Map<String, Map<Input, Value>> packs = new LinkedHashMap<>();
    private final Map<String, Integer> lines = new LinkedHashMap<>();
    private final Map<String, Map<Input, Changes.Change>> proposals = new LinkedHashMap<>();
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
            FileKeys keys, List<PackPlace> places, ReferenceTables tables, List<Problem> problems) {
        this.keys = keys;
        this.spelling = keys.spelling();
        this.problems = problems;
        this.reader = new ValueReader(new TableCurves(tables), spelling, problems);
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
        new RequiredKeys(keys, problems).check(places);
        return new Given(
                text("title"),
                text(NOTES),
                values,
                places.stream().map(this::pack).toList(),
                lines,
                proposals(),
                source(),
                Changes.NONE);
    }

    private WrittenSource source() {
        Map<String, Object> raw = new LinkedHashMap<>();
        keys.values().forEach((key, item) -> raw.put(key, item.raw()));
        return new WrittenSource(raw, keys.comments().owned(lines), spelling);
    }

    private GivenPack pack(PackPlace place) {
        return new GivenPack(
                place,
                text(place.key(GivenPack.CELL)),
                packs.getOrDefault(place.table(), Map.of()));
    }

    private Map<String, Changes> proposals() {
        Map<String, Changes> all = new LinkedHashMap<>();
        proposals.forEach((name, changes) -> all.put(name, new Changes(changes)));
        return all;
    }

    private String text(String key) {
        return texts.getOrDefault(key, "");
    }

    private void take(String key, WrittenTable.Item entry) {
        lines.put(key, entry.line());
        PackPlace place = placeOf(key);
        String schemaKey = place.contains(key) ? PackPlace.schemaKey(key) : key;
        Optional<Input> input = Input.ofKey(schemaKey);
        if (key.equals("title") || key.equals(NOTES)) {
            takeText(key, entry, key.equals(NOTES) ? "\"Built for gravel.\"" : "\"Trail board\"");
        } else if (schemaKey.equals(GivenPack.CELL)) {
            takeText(key, entry, "\"samsung-30q\"");
        } else if (key.startsWith(Changes.PROPOSALS)) {
            takeProposal(key, entry);
        } else if (input.isPresent()) {
            Map<Input, Value> target =
                    PackPlace.holds(input.get())
                            ? packs.computeIfAbsent(
                                    place.table(), each -> new EnumMap<>(Input.class))
                            : values;
            read(input.get(), key, entry, target);
        } else if (RecordingKeys.holds(key)) {
            RecordingKeys.problem(key, entry).ifPresent(problems::add);
        } else if (FileKeys.KNOWN_TABLES.contains(schemaKey)) {
            problems.add(
                    new Problem(
                            entry.line(),
                            key,
                            "this must be " + spelling.aTable(),
                            spelling.keysBelow(place, schemaKey)));
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

    private void read(Input input, String key, WrittenTable.Item entry, Map<Input, Value> target) {
        reader.read(Schema.of(input), key, entry.raw(), entry.line())
                .filter(value -> !(value instanceof Value.Unset))
                .ifPresent(value -> target.put(input, value));
    }

    private void takeText(String key, WrittenTable.Item entry, String example) {
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
                        entry.line(),
                        key,
                        wrong,
                        "plain text in quotes, for example " + spelling.pair(key, example)));
    }

    /** Once for a proposal, however many keys it has. */
    private void checkProposal(String heading, int line) {
        if (!heading.startsWith(Changes.PROPOSALS)) {
            return;
        }
        String name = heading.substring(Changes.PROPOSALS.length());
        if (!NAME.matcher(name).matches() || TAKEN.contains(name)) {
            problems.add(
                    new Problem(
                            line,
                            heading,
                            "this is no name for a proposal",
                            "up to 40 letters, digits, blanks, points and hyphens, and not"
                                    + " \"present\" or \"as asked\", for example "
                                    + spelling.name("proposals.firmer-brake")));
        }
        if (keys.values().keySet().stream().noneMatch(key -> key.startsWith(heading + "."))) {
            problems.add(
                    new Problem(
                            line,
                            heading,
                            "this proposal changes nothing",
                            "at least one setting below, for example "
                                    + spelling.pair("motor_brake_current", "\"30 A\"")));
        }
    }

    private void takeProposal(String key, WrittenTable.Item entry) {
        Optional<String> heading = headingOf(key);
        if (heading.isEmpty()) {
            problems.add(
                    new Problem(
                            entry.line(),
                            key,
                            "a proposal must be " + spelling.aTable(),
                            spelling.keysBelow(PackPlace.one(), key)));
            return;
        }
        Optional<Input> input = Changes.inputOf(key.substring(heading.get().length() + 1));
        if (input.isEmpty()) {
            unknown.tellChange(key, heading.get(), entry.line());
            return;
        }
        String name = heading.get().substring(Changes.PROPOSALS.length());
        reader.read(Schema.of(input.get()), key, entry.raw(), entry.line())
                .ifPresent(
                        value ->
                                proposals
                                        .computeIfAbsent(name, each -> new EnumMap<>(Input.class))
                                        .put(
                                                input.get(),
                                                new Changes.Change(value, Optional.of(name))));
    }

    /** The heading of the proposal that has a key. */
    private Optional<String> headingOf(String key) {
        return keys.headings().keySet().stream()
                .filter(heading -> heading.startsWith(Changes.PROPOSALS))
                .filter(heading -> key.startsWith(heading + "."))
                .max(Comparator.comparingInt(String::length));
    }
}
