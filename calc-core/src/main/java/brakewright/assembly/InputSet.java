package brakewright.assembly;

import brakewright.spec.Input;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import java.util.function.Function;

/**
 * The inputs of one part of a build while they are completed. What has a value keeps it: whatever
 * comes later only fills what is still missing.
 */
public final class InputSet {

    private static final String DERIVED = "derived";

    /** The unit of a default that is a share of the wheelbase. */
    private static final String WHEELBASE = "wheelbase";

    private final Defaults defaults;
    private final Map<Input, Resolved> inputs = new EnumMap<>(Input.class);
    private final Map<String, String> facts;

    private InputSet(
            Defaults defaults,
            Map<Input, Value> given,
            Function<Input, String> sources,
            Map<String, String> facts) {
        this.defaults = defaults;
        this.facts = new HashMap<>(facts);
        given.forEach(
                (input, value) ->
                        fill(input, value, Resolved.From.FILE, sources.apply(input), "", ""));
    }

    /**
     * Starts with what is told once of the whole vehicle.
     *
     * @param defaults where what is missing is looked up
     * @param given what is told
     * @param sources by whom, for each
     * @return the inputs, with the facts on which defaults depend
     */
    public static InputSet ofWhole(
            Defaults defaults, Map<Input, Value> given, Function<Input, String> sources) {
        InputSet whole = new InputSet(defaults, given, sources, Map.of());
        whole.word(Input.RIDER_STANCE).ifPresent(stance -> whole.facts.put("stance", stance));
        whole.word(Input.CONTROLLER_CURRENT_BASIS)
                .ifPresent(basis -> whole.facts.put("basis", basis));
        return whole;
    }

    /**
     * Starts with what is told of one pack of the vehicle.
     *
     * @param given what is told
     * @param source by whom
     * @return the inputs
     */
    public InputSet ofPack(Map<Input, Value> given, String source) {
        return new InputSet(defaults, given, input -> source, facts);
    }

    /**
     * Takes from the tables what they have of the cell that is named, and the curves of its
     * chemistry for what is still missing.
     *
     * @param cell id of a cell; empty where the cell is told by its figures
     * @return false where the tables have no such cell
     */
    public boolean lookUpCell(String cell) {
        Optional<Map<Input, Taken>> known =
                cell.isEmpty() ? Optional.of(Map.of()) : defaults.ofCell(cell);
        known.ifPresent(all -> all.forEach(this::look));
        word(Input.CELL_CHEMISTRY)
                .flatMap(
                        chemistry -> {
                            facts.put("chemistry", chemistry);
                            return defaults.ofChemistry(chemistry);
                        })
                .ifPresent(
                        curves ->
                                curves.forEach(
                                        (input, taken) ->
                                                fill(
                                                        input,
                                                        taken,
                                                        cell.isEmpty()
                                                                ? Resolved.From.ASSUMED
                                                                : Resolved.From.TABLE)));
        return known.isPresent();
    }

    /**
     * Returns what there is by now.
     *
     * @return each input with its origin
     */
    public Map<Input, Resolved> inputs() {
        return inputs;
    }

    void learn(String fact, String value) {
        facts.put(fact, value);
    }

    /**
     * Returns whether there is a value.
     *
     * @param input of what
     * @return true where it was told or filled in
     */
    public boolean has(Input input) {
        return inputs.containsKey(input);
    }

    private void fill(
            Input input, Value value, Resolved.From from, String source, String kind, String note) {
        inputs.putIfAbsent(input, new Resolved(input, value, from, source, kind, note));
    }

    /**
     * Fills in a value of a table entry that is named.
     *
     * @param input of what
     * @param taken the value
     */
    public void look(Input input, Taken taken) {
        fill(input, taken, Resolved.From.TABLE);
    }

    private void fill(Input input, Taken taken, Resolved.From from) {
        fill(input, taken.value(), from, taken.source(), taken.kind(), taken.note());
    }

    void derive(Input input, double value, String from) {
        derive(input, new Value.Number(Quantity.exact(value)), from);
    }

    /** Works a number out only where it is missing. */
    void derive(Input input, DoubleSupplier value, String from) {
        if (!has(input)) {
            derive(input, value.getAsDouble(), from);
        }
    }

    void derive(Input input, Value value, String from) {
        fill(input, value, Resolved.From.ASSUMED, DERIVED, "", from);
    }

    /** Takes a default, if the tables have one that is no share of another input. */
    void assume(Input input) {
        defaults.defaultOf(input.key(), facts)
                .filter(taken -> !taken.unit().equals(WHEELBASE))
                .ifPresent(taken -> fill(input, taken, Resolved.From.ASSUMED));
    }

    /** Takes a default that the tables give as a share of another input. */
    void assumeShare(Input input, Input whole) {
        if (!has(input)) {
            Taken share = tableDefault(input.key());
            assume(input, Quantity.exact(share.number() * number(whole)), share);
        }
    }

    /** Takes a default that the tables give by its two ends. */
    void assumePair(Input input) {
        if (!has(input)) {
            Taken low = tableDefault(input.key() + "_low");
            Taken high = tableDefault(input.key() + "_high");
            fill(
                    input,
                    new Value.Pair(low.number(), high.number()),
                    Resolved.From.ASSUMED,
                    low.source(),
                    low.kind(),
                    low.note());
        }
    }

    /** Finds a default that the tables must have. */
    Taken tableDefault(String key) {
        return defaults.defaultOf(key, facts).orElseThrow(() -> new MissingInput(key));
    }

    private void assume(Input input, Quantity quantity, Taken taken) {
        fill(
                input,
                new Value.Number(quantity),
                Resolved.From.ASSUMED,
                taken.source(),
                taken.kind(),
                taken.note());
    }

    /**
     * Returns a number.
     *
     * @param input of what
     * @return its nominal value, in calculation units
     * @throws MissingInput if there is none
     */
    public double number(Input input) {
        Resolved resolved = inputs.get(input);
        if (resolved == null) {
            throw new MissingInput(input.key());
        }
        return resolved.number();
    }

    /** Returns a number with its tolerance. */
    Quantity quantity(Input input) {
        Resolved resolved = inputs.get(input);
        if (resolved != null && resolved.value() instanceof Value.Number number) {
            return number.quantity();
        }
        throw new MissingInput(input.key());
    }

    /**
     * Finds a word.
     *
     * @param input of what
     * @return as it was told; empty where it was not
     */
    public Optional<String> word(Input input) {
        Resolved resolved = inputs.get(input);
        return resolved != null && resolved.value() instanceof Value.Word word
                ? Optional.of(word.text())
                : Optional.empty();
    }
}
