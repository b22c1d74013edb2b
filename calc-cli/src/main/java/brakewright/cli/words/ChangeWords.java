package brakewright.cli.words;

import brakewright.assembly.Value;
import brakewright.buildfile.Changes;
import brakewright.spec.Input;
import brakewright.spec.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Words for what was put in place of values of a build file. */
public final class ChangeWords {

    private ChangeWords() {}

    /**
     * Tells in which situation an answer holds.
     *
     * @param changes what was put in, at least one value
     * @param units for speeds
     * @return a sentence
     */
    public static String situation(Changes changes, UnitSystem units) {
        return "In the situation asked for: " + list(changes, units) + ".";
    }

    /**
     * Tells in which use two sides are judged.
     *
     * @param use what was put in, at least one value
     * @param units for speeds
     * @return a sentence
     */
    public static String bothSides(Changes use, UnitSystem units) {
        return "Both sides are judged in the use asked for: " + list(use, units) + ".";
    }

    /**
     * Lists values under the keys that they were given by.
     *
     * @param changes what was put in
     * @param units for speeds
     * @return the list, with commas between
     */
    public static String list(Changes changes, UnitSystem units) {
        List<String> each = new ArrayList<>();
        changes.all()
                .forEach(
                        (input, change) ->
                                each.add(
                                        Changes.keyOf(input)
                                                + " "
                                                + value(input, change.value(), units)));
        return String.join(", ", each);
    }

    /**
     * Writes a value as a build file has it, exact and in the units of the calculation.
     *
     * @param input of settings or of use
     * @param value a number or a pair
     * @return what stands behind the equals sign
     */
    public static String written(Input input, Value value) {
        if (value instanceof Value.Pair pair) {
            return "[" + written(input, pair.first()) + ", " + written(input, pair.second()) + "]";
        }
        return value instanceof Value.Number number
                ? written(input, number.quantity().value())
                : '"' + Value.Unset.WORD + '"';
    }

    private static String written(Input input, double value) {
        String number = BigDecimal.valueOf(value).toPlainString();
        return input.unit() == Unit.RATIO
                ? number
                : '"' + number + " " + input.unit().plain() + '"';
    }

    private static String value(Input input, Value value, UnitSystem units) {
        if (value instanceof Value.Pair pair) {
            return Numbers.significant(pair.first())
                    + " to "
                    + InputWords.nearest(input, pair.second(), units);
        }
        if (value instanceof Value.Number number) {
            return InputWords.nearest(input, number.quantity().value(), units);
        }
        if (value instanceof Value.Unset) {
            return Value.Unset.WORD;
        }
        throw new IllegalArgumentException(input.key() + " is no number");
    }
}
