package brakewright.cli.buildfile;

import java.util.List;

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

    record MeasuredPair(Dimension dimension) implements Kind {}

    record Words(List<String> allowed) implements Kind {}

    record Tabulated(String quantity) implements Kind {}

    static Kind quantity(Dimension dimension) {
        return new Measured(dimension);
    }

    static Kind pair(Dimension dimension) {
        return new MeasuredPair(dimension);
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

    /** What to say belongs here. */
    default String expected() {
        if (this instanceof Measured measured) {
            return measured.dimension().text() + " with its unit, in quotes";
        }
        if (this instanceof MeasuredPair pair) {
            return "two values, each " + pair.dimension().text() + " with its unit, in quotes";
        }
        if (this instanceof Words words) {
            return "one of " + String.join(", ", words.allowed());
        }
        if (this instanceof Ratio) {
            return "a fraction from 0 to 1 or a percentage in quotes";
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
        return "text in quotes";
    }
}
