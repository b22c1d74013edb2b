package brakewright.buildfile;

import brakewright.tables.CurveQuantity;
import java.util.List;
import java.util.Optional;

/** What kind of value stands behind a key. */
sealed interface Kind {

    /** A fraction or a percentage. */
    Kind RATIO = new Ratio();

    /** A plain number without a dimension. */
    Kind NUMBER = new PlainNumber();

    /** A whole number. */
    Kind COUNT = new Count();

    /** Free text. */
    Kind TEXT = new Text();

    record Ratio() implements Kind {}

    record PlainNumber() implements Kind {}

    record Count() implements Kind {}

    record Text() implements Kind {}

    record Measured(Dimension dimension) implements Kind {}

    record MeasuredPair(Dimension dimension, boolean mayBeUnset) implements Kind {}

    record Words(List<String> allowed) implements Kind {}

    record Tabulated(String quantity) implements Kind {}

    static Kind quantity(Dimension dimension) {
        return new Measured(dimension);
    }

    /** Finds a kind by its name in the table of keys; empty if there is none of that name. */
    static Optional<Kind> named(String name) {
        int bracket = name.indexOf('(');
        if (bracket > 0 && name.endsWith(")")) {
            return of(name.substring(0, bracket), name.substring(bracket + 1, name.length() - 1));
        }
        return switch (name) {
            case "share" -> Optional.of(RATIO);
            case "number" -> Optional.of(NUMBER);
            case "whole number" -> Optional.of(COUNT);
            case "text" -> Optional.of(TEXT);
            default -> {
                Dimension dimension = Dimension.named(name);
                yield dimension == null ? Optional.empty() : Optional.of(quantity(dimension));
            }
        };
    }

    private static Optional<Kind> of(String form, String content) {
        return switch (form) {
            case "words" ->
                    content.isBlank()
                            ? Optional.empty()
                            : Optional.of(new Words(List.of(content.split(" "))));
            case "curve" -> curve(content);
            case "pair" -> pair(content, false);
            case "pair-or-none" -> pair(content, true);
            default -> Optional.empty();
        };
    }

    private static Optional<Kind> curve(String name) {
        for (CurveQuantity quantity : CurveQuantity.values()) {
            if (quantity.text().equals(name)) {
                return Optional.of(new Tabulated(name));
            }
        }
        return Optional.empty();
    }

    private static Optional<Kind> pair(String name, boolean mayBeUnset) {
        Dimension dimension = Dimension.named(name);
        return dimension == null
                ? Optional.empty()
                : Optional.of(new MeasuredPair(dimension, mayBeUnset));
    }

    /** Whether a value is one number, so that the tables may hold a default for it. */
    default boolean isSingleNumber() {
        return this instanceof Measured
                || this instanceof Ratio
                || this instanceof PlainNumber
                || this instanceof Count;
    }

    /** Whether a value has a lowest and a highest that is possible. */
    default boolean isRanged() {
        return !(this instanceof Words || this instanceof Text);
    }

    /** The dimension of each number; empty where numbers have none. */
    default Optional<Dimension> dimensionOfNumbers() {
        if (this instanceof Measured measured) {
            return Optional.of(measured.dimension());
        }
        return this instanceof MeasuredPair pair ? Optional.of(pair.dimension()) : Optional.empty();
    }

    /** What to say belongs behind a key of a file. */
    default String expected() {
        if (this instanceof MeasuredPair pair) {
            return "two values, each "
                    + pair.dimension().text()
                    + " with its unit, in quotes"
                    + (pair.mayBeUnset() ? ", or \"none\"" : "");
        }
        if (this instanceof Measured) {
            return expectedUnquoted() + ", in quotes";
        }
        return this instanceof Ratio || this instanceof Text
                ? expectedUnquoted() + " in quotes"
                : expectedUnquoted();
    }

    /** What to say belongs behind a key on the command line. */
    default String expectedUnquoted() {
        if (this instanceof Measured measured) {
            return measured.dimension().text() + " with its unit";
        }
        if (this instanceof MeasuredPair pair) {
            return "two values with a comma between, each "
                    + pair.dimension().text()
                    + " with its unit"
                    + (pair.mayBeUnset() ? ", or none" : "");
        }
        if (this instanceof Words words) {
            return "one of " + String.join(", ", words.allowed());
        }
        if (this instanceof Ratio) {
            return "a fraction or a percentage";
        }
        if (this instanceof Count) {
            return "a whole number";
        }
        if (this instanceof PlainNumber) {
            return "a number";
        }
        if (this instanceof Tabulated) {
            return "pairs of numbers, or the id of a curve in the tables";
        }
        return "text";
    }
}
