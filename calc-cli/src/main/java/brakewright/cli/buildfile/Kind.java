package brakewright.cli.buildfile;

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

    static Kind pair(Dimension dimension) {
        return new MeasuredPair(dimension, false);
    }

    /** A pair that may be said not to be set. */
    static Kind pairOrNone(Dimension dimension) {
        return new MeasuredPair(dimension, true);
    }

    static Kind words(String... allowed) {
        return new Words(List.of(allowed));
    }

    static Kind curve(String quantity) {
        return new Tabulated(quantity);
    }

    /** Whether a value is one number, so that the tables may hold a default for it. */
    default boolean isSingleNumber() {
        return this instanceof Measured
                || this instanceof Ratio
                || this instanceof PlainNumber
                || this instanceof Count;
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
            return "a fraction from 0 to 1 or a percentage";
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
