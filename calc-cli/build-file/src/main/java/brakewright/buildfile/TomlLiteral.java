package brakewright.buildfile;

import brakewright.assembly.Quantity;
import brakewright.assembly.Value;
import brakewright.buildfile.internal.Printable;
import brakewright.spec.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Values as TOML writes them behind the equals sign. */
final class TomlLiteral {

    /** As many digits as tell any two numbers apart. */
    private static final int MOST_DIGITS = 17;

    private TomlLiteral() {}

    /** Writes what a file said. */
    static String ofRaw(Object raw) {
        if (raw instanceof String text) {
            return quoted(text);
        }
        if (raw instanceof WrittenTable.Row row) {
            return row.items().stream()
                    .map(item -> ofRaw(item.raw()))
                    .collect(Collectors.joining(", ", "[", "]"));
        }
        return ValueReader.said(raw);
    }

    /** Writes a text on one line, or on several where it has several. */
    static String quoted(String text) {
        String escaped = Printable.shownBut(text.replace("\\", "\\\\").replace("\"", "\\\""), "\n");
        return escaped.contains("\n") ? "\"\"\"\n" + escaped + "\"\"\"" : '"' + escaped + '"';
    }

    /**
     * Writes a value so that reading it gives the same number again, in the unit of the example of
     * its key where that takes no more digits.
     */
    static String of(Schema.Entry entry, Value value) {
        if (value instanceof Value.Number number) {
            return entry.kind() instanceof Kind.Count
                    ? String.valueOf((long) number.quantity().value())
                    : number(entry, number.quantity());
        }
        if (value instanceof Value.Pair pair) {
            return "[" + number(entry, pair.one()) + ", " + number(entry, pair.two()) + "]";
        }
        if (value instanceof Value.Points points) {
            return points.pairs().stream()
                    .map(point -> "[" + plain(point[0]) + ", " + plain(point[1]) + "]")
                    .collect(Collectors.joining(", ", "[", "]"));
        }
        return quoted(value instanceof Value.Word word ? word.text() : Value.Unset.WORD);
    }

    private static String number(Schema.Entry entry, Quantity quantity) {
        Optional<Dimension> dimension = entry.kind().dimensionOfNumbers();
        if (dimension.isEmpty()) {
            return ratio(quantity);
        }
        Unit calculated = entry.input().unit();
        String own = plain(quantity.value()) + " " + calculated.text();
        String shorter =
                written(quantity.value(), ofExample(entry, dimension.get()))
                        .filter(usual -> usual.length() <= own.length())
                        .orElse(own);
        return '"' + shorter + tolerance(quantity, dimension.get(), calculated) + '"';
    }

    private static String ratio(Quantity quantity) {
        return quantity.tolerance() > 0.0
                ? '"'
                        + plain(quantity.value())
                        + " ± "
                        + plain(100.0 * quantity.tolerance() / Math.abs(quantity.value()))
                        + " %\""
                : plain(quantity.value());
    }

    private static String tolerance(Quantity quantity, Dimension dimension, Unit calculated) {
        if (!(quantity.tolerance() > 0.0)) {
            return "";
        }
        String unit = dimension == Dimension.TEMPERATURE ? Unit.KELVIN.text() : calculated.text();
        return " ± " + plain(quantity.tolerance()) + " " + unit;
    }

    /** In the fewest digits that give the same number again; empty where none do. */
    private static Optional<String> written(double value, UnitTable.Unit unit) {
        BigDecimal number = new BigDecimal((value - unit.offset()) / unit.factor());
        return IntStream.rangeClosed(1, MOST_DIGITS)
                .mapToObj(digits -> number.round(new MathContext(digits)))
                .filter(each -> each.doubleValue() * unit.factor() + unit.offset() == value)
                .findFirst()
                .map(each -> each.stripTrailingZeros().toPlainString() + " " + unit.symbol());
    }

    private static UnitTable.Unit ofExample(Schema.Entry entry, Dimension dimension) {
        String first = entry.example().replaceAll("[\\[\\]\"]", "").split(",")[0];
        try {
            return QuantityParser.unitOf(first, dimension);
        } catch (QuantityParser.NotAQuantity impossible) {
            throw new IllegalStateException(entry.key() + ": a wrong example", impossible);
        }
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
