package brakewright.buildfile;

import brakewright.assembly.Completed;
import brakewright.assembly.Resolved;
import brakewright.spec.Build;
import brakewright.spec.Input;
import brakewright.spec.WhichPack;
import brakewright.tables.ReferenceTables;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A build file that was read: the vehicle, and where each of its numbers came from.
 *
 * @param title what the vehicle is called
 * @param notes free text; may be empty
 * @param inputs every input that has a value; those of the pack only where there is one
 * @param packs the inputs of each pack; one where there is one
 * @param build the vehicle
 * @param proposals what to compare with, by name: changes of the settings and of the use
 * @param tableVersion the edition of the reference tables
 * @param variations makes the vehicle anew from other numbers
 * @param spreads of its numbers that are not known exactly
 */
public record BuildFile(
        String title,
        String notes,
        Map<Input, Resolved> inputs,
        List<Map<Input, Resolved>> packs,
        Build build,
        Map<String, Changes> proposals,
        String tableVersion,
        Variations variations,
        Spreads spreads) {

    private static final int LARGEST_BYTES = 1 << 20;

    /** Some editors put it before the first letter; it says nothing. */
    private static final String BYTE_ORDER_MARK = "\ufeff";

    /**
     * Reads a build file: TOML, or an object of JSON of the same keys and texts.
     *
     * @param bytes its content, UTF-8
     * @param tables the reference tables
     * @return the build file
     * @throws BuildFileException if it cannot be used, with everything that is wrong
     */
    public static BuildFile read(byte[] bytes, ReferenceTables tables) throws BuildFileException {
        List<Problem> problems = new ArrayList<>();
        FileKeys keys = FileKeys.parse(decode(bytes), problems);
        List<PackPlace> places = new PackTables(keys, problems).places();
        Given given = new GivenReader(keys, places, tables, problems).read();
        for (Changes changes : given.proposals().values()) {
            problems.addAll(
                    new Blame(given, changes, each -> Consistency.of(each, tables)).problems());
        }
        BuildFile file = of(given, tables, problems);
        for (Changes changes : given.proposals().values()) {
            if (!changes.ofUse().isNone()) {
                problems.addAll(
                        new Blame(given, changes, each -> Assembly.problems(each, tables))
                                .problems());
            }
        }
        Assembly.stopAt(problems);
        return file;
    }

    /** Makes the file of what is given; problems are those that are known already. */
    static BuildFile of(Given given, ReferenceTables tables, List<Problem> problems)
            throws BuildFileException {
        Assembly assembly = Assembly.of(given, tables, problems);
        return new BuildFile(
                given.title(),
                given.notes(),
                withOnePack(assembly.inputs()),
                assembly.inputs().packs(),
                assembly.build(),
                given.proposals(),
                tables.version(),
                new Variations(given, assembly.inputs(), tables),
                new Spreads(given, assembly.inputs(), tables));
    }

    /**
     * Puts other values in place of those of the file. What the file leaves out is completed again,
     * so that everything derived from them follows; a tolerance of a replaced value is gone.
     *
     * @param changes the values
     * @return as if the file had said so
     * @throws BuildFileException if they do not go together with the rest
     */
    public BuildFile with(Changes changes) throws BuildFileException {
        return changes.isNone() ? this : variations.with(changes);
    }

    /**
     * Returns what was put in place of values of the file.
     *
     * @return none of it as the file was read
     */
    public Changes changes() {
        return variations.changes();
    }

    /**
     * Returns what the table {@code recording} says of how rides are recorded.
     *
     * @return by what stands behind the name of the table, as {@code columns.time}; empty where the
     *     file has none
     */
    public Map<String, String> recording() {
        return variations.recording();
    }

    /**
     * Writes the file anew: what was given in its own words and with its own comments, and as
     * comments that begin with {@code #:} what is taken where nothing was given, each with where it
     * is from. Read again it is the same vehicle. Comments of a file of JSON there are none.
     *
     * @return TOML, ready to be written as UTF-8
     */
    public String toml() {
        return variations.toml();
    }

    /**
     * Replaces values of a file of TOML line by line and leaves all else as it stands; a key that
     * is not there is put below the name of its table.
     *
     * @param bytes of the build file, which can be read
     * @param values by key with its table, as the file writes them
     * @param tables the reference tables
     * @return the new text, which was read again
     * @throws BuildFileException if the file is written so that lines cannot be replaced
     */
    public static String rewritten(byte[] bytes, Map<String, String> values, ReferenceTables tables)
            throws BuildFileException {
        return RewrittenBuild.of(bytes, values, tables);
    }

    /**
     * Returns every input under the name that worksheets have for it.
     *
     * @return by name; where there are several packs theirs come last, as {@code packs.1.series}
     */
    public Map<String, Resolved> named() {
        Map<String, Resolved> named = new LinkedHashMap<>();
        inputs.forEach((input, resolved) -> named.put(input.key(), resolved));
        if (packs.size() > 1) {
            for (int number = 1; number <= packs.size(); number++) {
                WhichPack pack = WhichPack.of(number);
                packs.get(number - 1)
                        .forEach((input, resolved) -> named.put(nameOf(input, pack), resolved));
            }
        }
        return named;
    }

    /**
     * Finds where the value of an input came from.
     *
     * @param input which
     * @param pack of which of several packs, or of the whole
     * @return the input; empty if it has no value
     */
    public Optional<Resolved> find(Input input, WhichPack pack) {
        Map<Input, Resolved> of =
                PackPlace.holds(input)
                        ? pack.map(number -> packs.get(number - 1)).orElse(inputs)
                        : inputs;
        return Optional.ofNullable(of.get(input));
    }

    /**
     * Returns the name that worksheets have for an input.
     *
     * @param input which
     * @param pack of which of several packs, or of the whole
     * @return its key, with the number of the pack where it is one of a pack
     */
    public static String nameOf(Input input, WhichPack pack) {
        return pack.map(number -> PackPlace.several(number, 0).key(input)).orElse(input.key());
    }

    private static Map<Input, Resolved> withOnePack(Completed inputs) {
        Map<Input, Resolved> all = new EnumMap<>(inputs.whole());
        if (inputs.packs().size() == 1) {
            all.putAll(inputs.packs().get(0));
        }
        return all;
    }

    /** Loads what reading a build file needs, so that the first reading is quicker. */
    public static void warmUp() {
        FileKeys.parse("a = [\"b\"] # c", new ArrayList<>());
    }

    private static String decode(byte[] bytes) throws BuildFileException {
        if (bytes.length > LARGEST_BYTES) {
            throw new BuildFileException(
                    List.of(new Problem(0, "", "the file is larger than 1 MiB", "")));
        }
        try {
            String text =
                    StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
        } catch (CharacterCodingException wrong) {
            throw new BuildFileException(
                    List.of(
                            new Problem(
                                    0, "", "the file is not UTF-8 text", "a text file in UTF-8")));
        }
    }
}
