package brakewright.buildfile;

import brakewright.assembly.Quantity;
import brakewright.assembly.Value;
import brakewright.buildfile.internal.Printable;
import brakewright.spec.Curve;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Turns what stands behind a key of a file into a value of the kind the schema wants. */
final class ValueReader {

    private final List<Problem> problems;
    private final CurveTable curves;
    private final Spelling spelling;

    /** Where curve ids are looked up. */
    interface CurveTable {

        Optional<Curve> curve(String id, String quantity);

        List<String> ids(String quantity);
    }

    ValueReader(CurveTable curves, Spelling spelling, List<Problem> problems) {
        this.curves = curves;
        this.spelling = spelling;
        this.problems = problems;
    }

    /** Reads a value; empty, with a problem noted, where it does not fit. */
    Optional<Value> read(Schema.Entry entry, String key, Object raw, int line) {
        try {
            Value value = convert(entry, raw);
            new PossibleRange(entry).check(value, raw);
            return Optional.of(value);
        } catch (QuantityParser.NotAQuantity wrong) {
            note(entry, key, line, String.valueOf(wrong.getMessage()));
            return Optional.empty();
        }
    }

    private void note(Schema.Entry entry, String key, int line, String wrong) {
        problems.add(
                new Problem(
                        line,
                        key,
                        wrong,
                        entry.kind().expected()
                                + ", for example "
                                + (key.startsWith(Changes.PROPOSALS)
                                        ? spelling.change(
                                                Changes.keyOf(entry.input()),
                                                Spelling.literal(entry))
                                        : spelling.example(entry, key))));
    }

    private Value convert(Schema.Entry entry, Object raw) throws QuantityParser.NotAQuantity {
        Kind kind = entry.kind();
        if (kind instanceof Kind.Measured measured) {
            return new Value.Number(QuantityParser.parse(text(raw), measured.dimension()));
        }
        if (kind instanceof Kind.MeasuredPair pair) {
            return pair.mayBeUnset() && Value.Unset.WORD.equals(raw)
                    ? new Value.Unset()
                    : pair(raw, pair.dimension());
        }
        if (kind instanceof Kind.Ratio || kind instanceof Kind.PlainNumber) {
            return new Value.Number(ratio(raw));
        }
        if (kind instanceof Kind.Count) {
            if (raw instanceof Long count) {
                return new Value.Number(Quantity.exact(count));
            }
            throw new QuantityParser.NotAQuantity(describe(raw) + " is no whole number");
        }
        if (kind instanceof Kind.Words words) {
            String word = text(raw);
            if (!words.allowed().contains(word)) {
                throw new QuantityParser.NotAQuantity(
                        String.format(Locale.ROOT, "\"%s\" is not one of the words known", word));
            }
            return new Value.Word(word);
        }
        if (kind instanceof Kind.Tabulated tabulated) {
            return new Value.Points(curve(raw, tabulated.quantity()));
        }
        String text = text(raw);
        Optional<String> unprintable = Printable.fault(text);
        if (unprintable.isPresent()) {
            throw new QuantityParser.NotAQuantity(unprintable.get());
        }
        return new Value.Word(text);
    }

    private String text(Object raw) throws QuantityParser.NotAQuantity {
        if (raw instanceof String text) {
            return text;
        }
        throw new QuantityParser.NotAQuantity(
                raw instanceof Long || raw instanceof Double
                        ? "the bare number " + said(raw) + " has no unit"
                        : describe(raw) + " does not belong here");
    }

    private Quantity ratio(Object raw) throws QuantityParser.NotAQuantity {
        if (raw instanceof Long number) {
            return Quantity.exact(number);
        }
        if (raw instanceof Double number && Double.isFinite(number)) {
            return Quantity.exact(number + 0.0); // a zero has no sign
        }
        if (raw instanceof String text) {
            return QuantityParser.parseRatio(text);
        }
        throw new QuantityParser.NotAQuantity(describe(raw) + " is no number");
    }

    private Value pair(Object raw, Dimension dimension) throws QuantityParser.NotAQuantity {
        if (!(raw instanceof WrittenTable.Row array) || array.size() != 2) {
            throw new QuantityParser.NotAQuantity(describe(raw) + " is no pair of values");
        }
        return new Value.Pair(
                QuantityParser.parse(text(array.raw(0)), dimension),
                QuantityParser.parse(text(array.raw(1)), dimension));
    }

    private Curve curve(Object raw, String quantity) throws QuantityParser.NotAQuantity {
        if (raw instanceof String id) {
            Optional<Curve> curve = curves.curve(id, quantity);
            if (curve.isPresent()) {
                return curve.get();
            }
            throw new QuantityParser.NotAQuantity(
                    String.format(
                            Locale.ROOT,
                            "\"%s\" is no %s curve of the tables, which have %s",
                            id,
                            quantity,
                            String.join(", ", curves.ids(quantity))));
        }
        if (!(raw instanceof WrittenTable.Row array)) {
            throw new QuantityParser.NotAQuantity(describe(raw) + " is no curve");
        }
        List<Double> where = new ArrayList<>();
        List<Double> what = new ArrayList<>();
        for (int i = 0; i < array.size(); i++) {
            if (!(array.raw(i) instanceof WrittenTable.Row point) || point.size() != 2) {
                throw new QuantityParser.NotAQuantity(
                        "point " + (i + 1) + " of the curve is no pair of numbers");
            }
            where.add(ratio(point.raw(0)).value());
            what.add(ratio(point.raw(1)).value());
        }
        try {
            return Curve.of(
                    where.stream().mapToDouble(Double::doubleValue).toArray(),
                    what.stream().mapToDouble(Double::doubleValue).toArray());
        } catch (IllegalArgumentException wrong) {
            throw new QuantityParser.NotAQuantity(String.valueOf(wrong.getMessage()));
        }
    }

    private String describe(Object raw) {
        if (raw instanceof WrittenTable) {
            return spelling.aTable();
        }
        if (raw instanceof WrittenTable.Row array) {
            return spelling.aRow() + " of " + array.size();
        }
        return raw instanceof String text ? '"' + text + '"' : said(raw);
    }

    /** Says a number as TOML writes it, not as Java does. */
    static String said(Object raw) {
        if (raw instanceof Double number && !Double.isFinite(number)) {
            return Double.isNaN(number) ? "nan" : number > 0.0 ? "inf" : "-inf";
        }
        return String.valueOf(raw);
    }
}
