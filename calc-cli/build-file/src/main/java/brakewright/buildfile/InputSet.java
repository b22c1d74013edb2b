package brakewright.buildfile;

import brakewright.spec.Input;
import brakewright.tables.Default;
import brakewright.tables.Figure;
import brakewright.tables.ReferenceTables;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The inputs of one part of a build while they are completed. What has a value keeps it: whatever
 * comes later only fills what is still missing.
 */
final class InputSet {

    private static final String BUILD_FILE = "build-file";
    private static final String DERIVED = "derived";

    /** The unit of a default that is a share of the wheelbase. */
    private static final String WHEELBASE = "wheelbase";

    private final ReferenceTables tables;
    private final Map<Input, Resolved> inputs = new EnumMap<>(Input.class);
    private final Map<String, String> facts;

    /**
     * Starts with what a build file says.
     *
     * @param tables where defaults are looked up
     * @param given by the build file
     * @param changes which of these were put in place of those of the file
     * @param facts on which defaults depend
     */
    InputSet(
            ReferenceTables tables,
            Map<Input, Value> given,
            Changes changes,
            Map<String, String> facts) {
        this.tables = tables;
        this.facts = new HashMap<>(facts);
        given.forEach(
                (input, value) ->
                        fill(
                                input,
                                value,
                                Resolved.From.FILE,
                                changes.sourceOf(input).orElse(BUILD_FILE),
                                "",
                                ""));
    }

    Map<Input, Resolved> inputs() {
        return inputs;
    }

    Map<String, String> facts() {
        return facts;
    }

    boolean has(Input input) {
        return inputs.containsKey(input);
    }

    void fill(
            Input input, Value value, Resolved.From from, String source, String kind, String note) {
        inputs.putIfAbsent(input, new Resolved(input, value, from, source, kind, note));
    }

    /** Fills in a number of a table entry that the build file names. */
    void look(Input input, Figure figure) {
        look(input, new Value.Number(Quantity.exact(figure.value())), figure);
    }

    /** Fills in a value of a table entry that the build file names. */
    void look(Input input, Value value, Figure figure) {
        fill(
                input,
                value,
                Resolved.From.TABLE,
                figure.source(),
                figure.kind().text(),
                figure.note());
    }

    void derive(Input input, double value, String from) {
        derive(input, new Value.Number(Quantity.exact(value)), from);
    }

    void derive(Input input, Value value, String from) {
        fill(input, value, Resolved.From.ASSUMED, DERIVED, "", from);
    }

    /** Takes a default, if the tables have one that is no share of another input. */
    void assume(Input input) {
        tables.defaultFor(input.key(), facts)
                .map(Default::figure)
                .filter(figure -> !figure.unit().equals(WHEELBASE))
                .ifPresent(
                        figure ->
                                assume(
                                        input,
                                        new Value.Number(Quantity.exact(figure.value())),
                                        figure));
    }

    /** Takes a default that the tables give as a share of another input. */
    void assumeShare(Input input, Input whole) {
        Figure share = tableDefault(input.key());
        double value = share.value() * number(whole);
        assume(input, new Value.Number(Quantity.exact(value)), share);
    }

    /** Takes a default that the tables give by its two ends. */
    void assumePair(Input input) {
        Figure low = tableDefault(input.key() + "_low");
        Figure high = tableDefault(input.key() + "_high");
        assume(input, new Value.Pair(low.value(), high.value()), low);
    }

    /** Finds a default that the tables must have. */
    Figure tableDefault(String key) {
        return tables.defaultFor(key, facts).orElseThrow().figure();
    }

    private void assume(Input input, Value value, Figure figure) {
        fill(
                input,
                value,
                Resolved.From.ASSUMED,
                figure.source(),
                figure.kind().text(),
                figure.note());
    }

    double number(Input input) {
        Resolved resolved = inputs.get(input);
        if (resolved == null) {
            throw new IllegalStateException("no value and no default for " + input.key());
        }
        return resolved.number();
    }

    Optional<String> word(Input input) {
        Resolved resolved = inputs.get(input);
        return resolved != null && resolved.value() instanceof Value.Word word
                ? Optional.of(word.text())
                : Optional.empty();
    }
}
