package brakewright.buildfile;

import brakewright.assembly.Value;
import brakewright.buildfile.QuantityParser.NotAQuantity;
import brakewright.spec.Input;
import java.util.List;

/** A number with its unit that an option of the command line gives. */
public final class NumberOption {

    private NumberOption() {}

    /**
     * Reads one.
     *
     * @param option its name
     * @param like an input of one number, whose units and range it has
     * @param text what was given
     * @return in the unit of calculations
     * @throws BuildFileException if it is no such number
     */
    public static double read(String option, Input like, String text) throws BuildFileException {
        Schema.Entry entry = Schema.of(like);
        try {
            return ((Value.Number) OptionValue.read(entry, text)).quantity().value();
        } catch (NotAQuantity wrong) {
            throw new BuildFileException(
                    List.of(
                            new Problem(
                                    0,
                                    option,
                                    String.valueOf(wrong.getMessage()),
                                    OptionValue.expected(entry)
                                            + ", for example "
                                            + OptionValue.example(entry))));
        }
    }
}
