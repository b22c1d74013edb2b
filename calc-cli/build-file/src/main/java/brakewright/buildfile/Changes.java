package brakewright.buildfile;

import brakewright.assembly.Value;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Values to put in place of those of a build file: of the settings, and of the use to which the
 * vehicle is put. A proposal of the file is such a set, and so is what a command line asks for.
 *
 * @param all by input, only such of settings and of use
 */
public record Changes(Map<Input, Change> all) {

    /** Nothing changes. */
    public static final Changes NONE = new Changes(Map.of());

    /** How the keys of proposals begin. */
    static final String PROPOSALS = "proposals.";

    private static final String SETTINGS = "settings.";
    private static final String USE = "use.";

    /**
     * One value.
     *
     * @param value in calculation units
     * @param proposal the proposal that has it; empty where the command line does
     */
    public record Change(Value value, Optional<String> proposal) {

        /**
         * Returns what worksheets tell as the source of such a value.
         *
         * @return the table of the proposal, or {@code command-line}
         */
        public String source() {
            return proposal.map(name -> PROPOSALS + name).orElse("command-line");
        }
    }

    /** Copies the values, in the order of the inputs. */
    public Changes {
        Map<Input, Change> copy = new EnumMap<>(Input.class);
        copy.putAll(all);
        all = Collections.unmodifiableMap(copy);
    }

    /**
     * Reads changes given one by one as {@code key=value}, without quotes.
     *
     * @param texts each a key of the settings or of {@code use}, an equals sign and a value; pairs
     *     with a comma between
     * @return the changes; none where nothing is said
     * @throws BuildFileException with everything that is wrong
     */
    public static Changes read(List<String> texts) throws BuildFileException {
        return ChangeReader.read(texts);
    }

    /**
     * Returns whether nothing changes.
     *
     * @return true where there is no value
     */
    public boolean isNone() {
        return all.isEmpty();
    }

    /**
     * Lays others over these.
     *
     * @param others which take precedence
     * @return both together
     */
    public Changes overlaidBy(Changes others) {
        Map<Input, Change> both = new EnumMap<>(Input.class);
        both.putAll(all);
        both.putAll(others.all);
        return new Changes(both);
    }

    /**
     * Returns what of these is about the use of the vehicle.
     *
     * @return those of keys of {@code use}
     */
    public Changes ofUse() {
        return only(input -> input.key().startsWith(USE));
    }

    /**
     * Returns what of these is about the settings of the vehicle.
     *
     * @return those of settings keys
     */
    public Changes ofSettings() {
        return only(input -> input.key().startsWith(SETTINGS));
    }

    /** Tells where the value of an input came from; empty where it stays. */
    Optional<String> sourceOf(Input input) {
        return Optional.ofNullable(all.get(input)).map(Change::source);
    }

    /**
     * Returns these without one.
     *
     * @param left the input whose value is left out
     * @return the others
     */
    public Changes without(Input left) {
        return only(input -> input != left);
    }

    /**
     * Returns what several have in common.
     *
     * @param several changes, at least one
     * @return the values that are in each
     */
    public static Changes common(List<Changes> several) {
        return several.get(0)
                .only(
                        input ->
                                several.stream()
                                                .map(each -> each.all.get(input))
                                                .distinct()
                                                .limit(2)
                                                .count()
                                        == 1);
    }

    private Changes only(Predicate<Input> wanted) {
        Map<Input, Change> some = new EnumMap<>(Input.class);
        all.forEach(
                (input, change) -> {
                    if (wanted.test(input)) {
                        some.put(input, change);
                    }
                });
        return new Changes(some);
    }

    /** Returns whether an input is one that may be changed. */
    static boolean isChangeable(Input input) {
        return input.key().startsWith(SETTINGS) || input.key().startsWith(USE);
    }

    /**
     * Finds the input that a proposal or an option calls so.
     *
     * @param key {@code motor_brake_current} or {@code use.charge_from}
     * @return the input; empty where there is no such key
     */
    static Optional<Input> inputOf(String key) {
        return key.startsWith(USE) ? Input.ofKey(key) : Input.ofKey(SETTINGS + key);
    }

    /**
     * Returns what proposals and options call an input.
     *
     * @param input of settings or of use
     * @return {@code motor_brake_current} or {@code use.charge_from}
     */
    public static String keyOf(Input input) {
        return input.key().startsWith(SETTINGS)
                ? input.key().substring(SETTINGS.length())
                : input.key();
    }

    /** Returns every key that may be changed. */
    static List<String> keys() {
        List<String> keys = new ArrayList<>();
        for (Schema.Entry entry : Schema.all()) {
            if (isChangeable(entry.input())) {
                keys.add(keyOf(entry.input()));
            }
        }
        Collections.sort(keys);
        return keys;
    }

    /** Tells what is wrong with one of these, under the name that it was given. */
    Problem problem(Input input, String wrong, Given given) {
        Schema.Entry entry = Schema.of(input);
        String fitting = ", one that goes with the others, for example ";
        Optional<String> proposal = Optional.ofNullable(all.get(input)).flatMap(Change::proposal);
        if (proposal.isEmpty()) {
            return new Problem(
                    0,
                    keyOf(input),
                    wrong,
                    OptionValue.expected(entry) + fitting + OptionValue.assignment(entry));
        }
        String key = PROPOSALS + proposal.get() + "." + keyOf(input);
        return new Problem(
                given.line(key),
                key,
                wrong,
                entry.kind().expected()
                        + fitting
                        + given.spelling().change(keyOf(input), Spelling.literal(entry)));
    }
}
