package brakewright.buildfile;

import brakewright.assembly.Quantity;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads a quantity such as {@code "68 mΩ"} or {@code "68 mΩ ± 10 %"}. */
final class QuantityParser {

    private static final String NUMBER = "[+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?";
    private static final String UNIT = "[^\\d\\s±+-][^\\s±+(]*?(?:\\([^()±+]*\\)[^\\s±+]*?)?";
    private static final String UNIT_OF_TOLERANCE = "[^\\s(]+(?:\\([^()]*\\)\\S*)?";
    private static final Pattern QUANTITY =
            Pattern.compile(
                    "\\s*("
                            + NUMBER
                            + ")\\s*("
                            + UNIT
                            + ")?\\s*(?:(?:±|\\+-|\\+/-)\\s*("
                            + NUMBER
                            + ")\\s*("
                            + UNIT_OF_TOLERANCE
                            + ")\\s*)?");
    private static final Pattern SAYS_MORE_THAN_ZERO = Pattern.compile("^[^eE]*[1-9]");
    private static final Pattern COMMA_IN_NUMBER = Pattern.compile(",\\s*\\d");

    private QuantityParser() {}

    /** A text that is no quantity of the dimension wanted; the message says why. */
    static final class NotAQuantity extends Exception {
        private static final long serialVersionUID = 1L;

        NotAQuantity(String message) {
            super(message);
        }
    }

    static Quantity parse(String text, Dimension dimension) throws NotAQuantity {
        Matcher matcher = match(text);
        String symbol = matcher.group(2);
        if (symbol == null) {
            throw new NotAQuantity(
                    String.format(Locale.ROOT, "the number \"%s\" has no unit", text.strip()));
        }
        UnitTable.Unit unit = unit(symbol, dimension);
        double number = number(matcher.group(1));
        return new Quantity(
                number * unit.factor() + unit.offset(),
                tolerance(matcher, number * unit.factor(), dimension));
    }

    /** Finds the unit in which a quantity is written. */
    static UnitTable.Unit unitOf(String text, Dimension dimension) throws NotAQuantity {
        String symbol = match(text).group(2);
        return unit(symbol == null ? "" : symbol, dimension);
    }

    /** Reads a plain fraction or a percentage. */
    static Quantity parseRatio(String text) throws NotAQuantity {
        Matcher matcher = match(text);
        String symbol = matcher.group(2);
        double divisor;
        if (symbol == null) {
            divisor = 1.0;
        } else if (symbol.equals("%")) {
            divisor = 100.0;
        } else {
            throw new NotAQuantity(
                    String.format(Locale.ROOT, "the unit \"%s\" does not belong here", symbol));
        }
        double value = number(matcher.group(1)) / divisor;
        double tolerance = 0.0;
        if (matcher.group(3) != null) {
            if (!matcher.group(4).equals("%")) {
                throw new NotAQuantity("the tolerance of a ratio must be in percent of it");
            }
            tolerance = Math.abs(value) * tolerancePercent(matcher);
        }
        return new Quantity(value, tolerance);
    }

    private static Matcher match(String text) throws NotAQuantity {
        if (COMMA_IN_NUMBER.matcher(text).find()) {
            throw new NotAQuantity(
                    String.format(
                            Locale.ROOT,
                            "\"%s\" has a comma; decimals take a point, thousands no mark",
                            text.strip()));
        }
        Matcher matcher = QUANTITY.matcher(text);
        if (!matcher.matches()) {
            throw new NotAQuantity(
                    String.format(
                            Locale.ROOT,
                            "\"%s\" does not read as a number with a unit",
                            text.strip()));
        }
        return matcher;
    }

    private static UnitTable.Unit unit(String symbol, Dimension dimension) throws NotAQuantity {
        var unit = UnitTable.find(symbol, dimension);
        if (unit.isPresent()) {
            return unit.get();
        }
        List<UnitTable.Unit> others = UnitTable.all(symbol);
        throw new NotAQuantity(
                others.isEmpty()
                        ? String.format(Locale.ROOT, "the unit \"%s\" is not known", symbol)
                        : String.format(
                                Locale.ROOT,
                                "\"%s\" is the unit of %s",
                                symbol,
                                others.stream()
                                        .map(other -> other.dimension().text())
                                        .distinct()
                                        .collect(Collectors.joining(" or "))));
    }

    private static double tolerance(Matcher matcher, double scaled, Dimension dimension)
            throws NotAQuantity {
        if (matcher.group(3) == null) {
            return 0.0;
        }
        if (matcher.group(4).equals("%")) {
            if (dimension == Dimension.TEMPERATURE) {
                throw new NotAQuantity("the tolerance of a temperature must be in K or °C");
            }
            return Math.abs(scaled) * tolerancePercent(matcher);
        }
        double amount = number(matcher.group(3));
        if (amount < 0.0) {
            throw new NotAQuantity("a tolerance must not be negative");
        }
        Dimension difference =
                dimension == Dimension.TEMPERATURE ? Dimension.TEMPERATURE_DIFFERENCE : dimension;
        return amount * unit(matcher.group(4), difference).factor();
    }

    private static double tolerancePercent(Matcher matcher) throws NotAQuantity {
        double percent = number(matcher.group(3));
        if (!(percent >= 0.0 && percent < 100.0)) {
            throw new NotAQuantity("a tolerance must lie from 0 % to below 100 %");
        }
        return percent / 100.0;
    }

    private static double number(String text) throws NotAQuantity {
        double value = Double.parseDouble(text);
        if (!Double.isFinite(value)) {
            throw new NotAQuantity(
                    String.format(Locale.ROOT, "the number \"%s\" is too large", text));
        }
        if (value == 0.0 && SAYS_MORE_THAN_ZERO.matcher(text).find()) {
            throw new NotAQuantity(
                    String.format(Locale.ROOT, "the number \"%s\" is too small", text));
        }
        return value + 0.0; // a zero has no sign
    }
}
