package brakewright.tables;

import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** One row of a table, with messages that say where a fault is. */
final class TableRow {

    private final String table;
    private final long line;
    private final Map<String, Integer> places;
    private final CsvRecord fields;

    TableRow(String table, long line, Map<String, Integer> places, CsvRecord fields) {
        this.table = table;
        this.line = line;
        this.places = places;
        this.fields = fields;
    }

    /** The field as it stands, without blanks at its ends; may be empty. */
    String text(String column) {
        Integer place = places.get(column);
        if (place == null) {
            throw new IllegalArgumentException("table " + table + " has no column " + column);
        }
        return fields.getField(place).strip();
    }

    String requiredText(String column) {
        String text = text(column);
        if (text.isEmpty()) {
            throw fault(column, "a text");
        }
        return text;
    }

    double number(String column) {
        String text = requiredText(column);
        double value;
        try {
            value = Double.parseDouble(text);
        } catch (NumberFormatException notANumber) {
            throw fault(column, "a number");
        }
        if (!Double.isFinite(value)) {
            throw fault(column, "a finite number");
        }
        return value;
    }

    double positive(String column) {
        double value = number(column);
        if (!(value > 0.0)) {
            throw fault(column, "a number above zero");
        }
        return value;
    }

    double notNegative(String column) {
        double value = number(column);
        if (!(value >= 0.0)) {
            throw fault(column, "zero or a number above");
        }
        return value;
    }

    OptionalDouble positiveIfGiven(String column) {
        return text(column).isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(positive(column));
    }

    <T> T oneOf(String column, Optional<T> parsed, String expected) {
        return parsed.orElseThrow(() -> fault(column, expected));
    }

    <T> void putNew(Map<String, T> entries, String column, String id, T entry) {
        if (entries.putIfAbsent(id, entry) != null) {
            throw fault(column, "an id that no earlier row has");
        }
    }

    TableException fault(String column, String expected) {
        return new TableException(
                table
                        + ", line "
                        + line
                        + ", column "
                        + column
                        + ": expected "
                        + expected
                        + ", was \""
                        + text(column)
                        + "\"");
    }
}
