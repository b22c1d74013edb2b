package brakewright.assembly;

import brakewright.spec.Curve;
import brakewright.spec.Input;
import java.util.Collection;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * The values of one part of a build, each read as what it is.
 *
 * @param all by input
 */
public record Values(Map<Input, Value> all) {

    /**
     * Leaves the origins aside.
     *
     * @param inputs with their origins
     * @return the values
     */
    public static Values of(Map<Input, Resolved> inputs) {
        Map<Input, Value> values = new EnumMap<>(Input.class);
        inputs.forEach((input, resolved) -> values.put(input, resolved.value()));
        return new Values(values);
    }

    boolean has(Input input) {
        return all.containsKey(input);
    }

    /**
     * Returns whether there is a value of each.
     *
     * @param inputs which
     * @return true where none is missing
     */
    public boolean hasAll(Collection<Input> inputs) {
        return all.keySet().containsAll(inputs);
    }

    /**
     * Returns a number.
     *
     * @param input of what
     * @return its nominal value, in calculation units
     * @throws MissingInput if there is none
     */
    public double number(Input input) {
        return ((Value.Number) value(input)).quantity().value();
    }

    int count(Input input) {
        return (int) number(input);
    }

    /**
     * Finds a number.
     *
     * @param input of what
     * @return its nominal value, in calculation units; empty where there is none
     */
    public OptionalDouble optional(Input input) {
        return has(input) ? OptionalDouble.of(number(input)) : OptionalDouble.empty();
    }

    Value.Pair pair(Input input) {
        return (Value.Pair) value(input);
    }

    Optional<Value.Pair> optionalPair(Input input) {
        return has(input) ? Optional.of(pair(input)) : Optional.empty();
    }

    Curve curve(Input input) {
        return ((Value.Points) value(input)).curve();
    }

    /** Whether something is said to be so; not where nothing is said. */
    boolean isYes(Input input) {
        return has(input) && ((Value.Word) value(input)).text().equals("yes");
    }

    /** Finds what a word stands for. */
    <E> E word(Input input, E[] known, Function<E, String> key) {
        String text = ((Value.Word) value(input)).text();
        for (E each : known) {
            if (key.apply(each).equals(text)) {
                return each;
            }
        }
        throw new IllegalStateException(input.key() + " is " + text);
    }

    private Value value(Input input) {
        Value value = all.get(input);
        if (value == null) {
            throw new MissingInput(input.key());
        }
        return value;
    }
}
