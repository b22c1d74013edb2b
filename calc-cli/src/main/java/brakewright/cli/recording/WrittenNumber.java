package brakewright.cli.recording;

import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.Problem;
import brakewright.buildfile.internal.Plain;
import brakewright.recording.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a number with a unit behind an option, such as 5.3km. */
public final class WrittenNumber {

    private static final Pattern TEXT =
            Pattern.compile("\\s*([0-9.]+(?:[eE][0-9]+)?)\\s*(\\S+)\\s*");

    private WrittenNumber() {}

    /**
     * Reads a number.
     *
     * @param option behind which it stands
     * @param quantity in whose units it may be
     * @param least the lowest that it may be
     * @param most the highest that it may be
     * @param text such as 5.3km
     * @return the value in the unit of the quantity
     * @throws BuildFileException where it is none, or out of the range
     */
    public static double read(
            String option, Quantity quantity, double least, double most, String text)
            throws BuildFileException {
        Matcher matcher = TEXT.matcher(text);
        if (matcher.matches()) {
            Optional<Scale> scale = Scale.named(quantity, matcher.group(2));
            double written = DecimalMark.POINT.number(matcher.group(1));
            double value = scale.map(each -> each.value(written)).orElse(Double.NaN);
            if (value >= least && value <= most) {
                return value;
            }
        }
        throw new BuildFileException(
                List.of(
                        new Problem(
                                0,
                                option,
                                "\"" + text + "\" is no such number",
                                "a number from "
                                        + Plain.number(least)
                                        + " to "
                                        + Plain.number(most)
                                        + " "
                                        + quantity.unit().plain()
                                        + ", with a unit of "
                                        + String.join(" ", Scale.spellings(quantity)))));
    }
}
