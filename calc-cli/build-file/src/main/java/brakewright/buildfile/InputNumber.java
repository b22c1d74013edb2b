package brakewright.buildfile;

import brakewright.assembly.Value;
import brakewright.buildfile.QuantityParser.NotAQuantity;
import brakewright.spec.Input;
import java.util.List;

/** What numbers an input takes, and how one is read that a person typed. */
public final class InputNumber {

    private InputNumber() {}

    /**
     * Returns the lowest value that is physically possible.
     *
     * @param input one that is a number or a pair of them
     * @return in calculation units
     */
    public static double lowest(Input input) {
        return Schema.of(input).low();
    }

    /**
     * Returns the highest value that is physically possible.
     *
     * @param input one that is a number or a pair of them
     * @return in calculation units
     */
    public static double highest(Input input) {
        return Schema.of(input).high();
    }

    /**
     * Returns whether an input is a whole number.
     *
     * @param input which
     * @return true for a count
     */
    public static boolean isCount(Input input) {
        return Schema.of(input).kind() instanceof Kind.Count;
    }

    /**
     * Reads a number as a build file would write it, without quotes.
     *
     * @param asked how whoever typed it calls it, for the message
     * @param like an input of one number, whose units and range it has
     * @param text the number with its unit; a tolerance it has none
     * @return in calculation units
     * @throws BuildFileException if it is no such number, or not possible
     */
    public static double read(String asked, Input like, String text) throws BuildFileException {
        Schema.Entry entry = Schema.of(like);
        try {
            return ((Value.Number) OptionValue.read(entry, text)).quantity().value();
        } catch (NotAQuantity wrong) {
            throw new BuildFileException(
                    List.of(
                            new Problem(
                                    0,
                                    asked,
                                    String.valueOf(wrong.getMessage()),
                                    OptionValue.expected(entry)
                                            + ", for example "
                                            + OptionValue.example(entry))));
        }
    }
}
