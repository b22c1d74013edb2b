package brakewright.buildfile;

import brakewright.assembly.Quantity;
import brakewright.assembly.Value;
import brakewright.buildfile.QuantityParser.NotAQuantity;

/** Values as they are given on the command line: without quotes, a pair with a comma between. */
final class OptionValue {

    private OptionValue() {}

    static Value read(Schema.Entry entry, String text) throws NotAQuantity {
        if (text.isBlank()) {
            throw new NotAQuantity("there is no value");
        }
        Kind kind = entry.kind();
        if (kind instanceof Kind.MeasuredPair pair) {
            if (pair.mayBeUnset() && text.strip().equals(Value.Unset.WORD)) {
                return new Value.Unset();
            }
            String[] parts = text.split(",", -1);
            if (parts.length != 2) {
                throw new NotAQuantity(
                        '"'
                                + text.strip()
                                + "\" is no pair of values"
                                + (parts.length > 2 ? "; decimals take a point" : ""));
            }
            return new Value.Pair(
                    possible(entry, QuantityParser.parse(parts[0], pair.dimension()), parts[0]),
                    possible(entry, QuantityParser.parse(parts[1], pair.dimension()), parts[1]));
        }
        Quantity quantity =
                kind instanceof Kind.Measured measured
                        ? QuantityParser.parse(text, measured.dimension())
                        : QuantityParser.parseRatio(text);
        if (kind instanceof Kind.Count && quantity.value() != Math.rint(quantity.value())) {
            throw new NotAQuantity('"' + text.strip() + "\" is no whole number");
        }
        return new Value.Number(possible(entry, quantity, text));
    }

    private static Quantity possible(Schema.Entry entry, Quantity quantity, String text)
            throws NotAQuantity {
        if (quantity.tolerance() > 0.0) {
            throw new NotAQuantity(
                    '"' + text.strip() + "\" has a tolerance; a value to try has none");
        }
        new PossibleRange(entry).check(quantity.value(), text);
        return quantity;
    }

    /** Says what belongs behind an equals sign. */
    static String expected(Schema.Entry entry) {
        return entry.kind().expectedUnquoted();
    }

    /** Writes an example value. */
    static String example(Schema.Entry entry) {
        return entry.example().replace("[", "").replace("]", "").replace("\"", "").replace(" ", "");
    }

    /** Writes an example of a change. */
    static String assignment(Schema.Entry entry) {
        return "--with " + Changes.keyOf(entry.input()) + "=" + example(entry);
    }
}
