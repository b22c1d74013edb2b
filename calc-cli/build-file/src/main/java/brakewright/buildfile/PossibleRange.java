package brakewright.buildfile;

import brakewright.assembly.Value;
import brakewright.buildfile.QuantityParser.NotAQuantity;
import brakewright.buildfile.internal.Plain;
import brakewright.spec.Unit;
import java.util.Locale;
import java.util.Optional;

/** Refuses values outside what is physically possible, in the unit in which they were written. */
final class PossibleRange {

    private final Schema.Entry entry;

    PossibleRange(Schema.Entry entry) {
        this.entry = entry;
    }

    /**
     * Checks every number of a value that a file gives.
     *
     * @param value in calculation units
     * @param raw the same as the file has it
     * @throws NotAQuantity if a number is not possible
     */
    void check(Value value, Object raw) throws NotAQuantity {
        if (value instanceof Value.Number number) {
            check(number.quantity().value(), raw);
        } else if (value instanceof Value.Pair pair && raw instanceof WrittenTable.Row both) {
            check(pair.first(), both.raw(0));
            check(pair.second(), both.raw(1));
        } else if (value instanceof Value.Points points) {
            int number = 0;
            for (double[] point : points.pairs()) {
                number++;
                String said = "point " + number + ": " + Plain.number(point[1]);
                if (!isPossible(point[1])) {
                    throw impossible(said, asCalculated());
                }
                checkSize(said, point[1]);
            }
        }
    }

    /**
     * Checks one number.
     *
     * @param value in calculation units
     * @param written as it was written
     * @throws NotAQuantity if it is not possible
     */
    void check(double value, Object written) throws NotAQuantity {
        String said =
                written instanceof String text
                        ? '"' + text.strip() + '"'
                        : ValueReader.said(written);
        if (!isPossible(value)) {
            throw impossible(
                    said, written instanceof String text ? asWritten(text) : asCalculated());
        }
        checkSize(said, value);
    }

    /** Refuses what is no number to calculate with: neither nothing nor anything. */
    private void checkSize(String said, double value) throws NotAQuantity {
        if (value > 0.0 && value < entry.least()) {
            throw new NotAQuantity(
                    said + " is too small to mean anything: 0, or at least " + least());
        }
    }

    private String least() {
        return (Plain.number(entry.least()) + " " + unit(entry)).strip();
    }

    private boolean isPossible(double value) {
        return value >= entry.low() && value <= entry.high();
    }

    private static NotAQuantity impossible(String said, String range) {
        return new NotAQuantity(said + " is outside what is possible, " + range);
    }

    private String asWritten(String text) throws NotAQuantity {
        Optional<Dimension> dimension = entry.kind().dimensionOfNumbers();
        if (dimension.isPresent()) {
            UnitTable.Unit unit = QuantityParser.unitOf(text, dimension.get());
            return range(
                    (entry.low() - unit.offset()) / unit.factor(),
                    (entry.high() - unit.offset()) / unit.factor(),
                    unit.symbol());
        }
        return text.contains("%")
                ? range(100.0 * entry.low(), 100.0 * entry.high(), "%")
                : asCalculated();
    }

    private String asCalculated() {
        return of(entry);
    }

    /** Lowest and highest possible value, in the unit of calculations. */
    static String of(Schema.Entry entry) {
        return range(entry.low(), entry.high(), unit(entry));
    }

    /** Likewise, and as a percentage where one may be typed. */
    static String told(Schema.Entry entry) {
        return of(entry)
                + (entry.kind() == Kind.RATIO
                        ? ", or " + range(100.0 * entry.low(), 100.0 * entry.high(), "%")
                        : "");
    }

    /** As a person enters it. */
    private static String unit(Schema.Entry entry) {
        return entry.input().unit() == Unit.RATIO ? "" : entry.input().unit().plain();
    }

    private static String range(double low, double high, String unit) {
        return String.format(
                        Locale.ROOT, "%s to %s %s", Plain.number(low), Plain.number(high), unit)
                .stripTrailing();
    }
}
