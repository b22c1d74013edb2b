package brakewright.cli.describe;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A number that a label tells: teeth, watts or ampere-hours. */
final class LabelNumber {

    private static final Pattern NUMBER =
            Pattern.compile("(\\d{1,6}(?:\\.\\d{1,6})?)\\s*(kW|W|Ah|mAh|)");

    private LabelNumber() {}

    /**
     * Reads one.
     *
     * @param text as typed
     * @param unit what it is wanted in: W, Ah, or nothing for a count
     * @return above 0; empty if it is no such number
     */
    static OptionalDouble read(String text, String unit) {
        Matcher matcher = NUMBER.matcher(text.strip());
        if (!matcher.matches()) {
            return OptionalDouble.empty();
        }
        String given = matcher.group(2);
        double factor = given.equals("kW") ? 1000.0 : given.equals("mAh") ? 1e-3 : 1.0;
        String base = given.equals("kW") ? "W" : given.equals("mAh") ? "Ah" : given;
        double value = Double.parseDouble(matcher.group(1)) * factor;
        boolean isCount = unit.isEmpty() && value == Math.rint(value);
        return base.equals(unit) && value > 0.0 && (!unit.isEmpty() || isCount)
                ? OptionalDouble.of(value)
                : OptionalDouble.empty();
    }
}
