package brakewright.buildfile;

import brakewright.spec.Input;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One line of the table of keys, with messages that say where a fault is. */
final class KeyRow {

    /** The columns, from left to right. */
    enum Column {
        KEY,
        KIND,
        NEED,
        LOWEST,
        HIGHEST,
        EXAMPLE,
        WHAT,
        FOUND,
        LEFT_OUT;

        String text() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    private final CsvRecord line;

    KeyRow(CsvRecord line) {
        this.line = line;
    }

    /** Refuses a first line that names other columns. */
    void checkHead() {
        List<String> columns = new ArrayList<>();
        for (Column column : Column.values()) {
            columns.add(column.text());
        }
        if (!line.getFields().equals(columns)) {
            throw new IllegalStateException(
                    place()
                            + ": expected the columns "
                            + String.join(",", columns)
                            + ", was "
                            + String.join(",", line.getFields()));
        }
    }

    Schema.Entry entry() {
        int columns = Column.values().length;
        if (line.getFieldCount() != columns) {
            throw new IllegalStateException(
                    place() + ": expected " + columns + " fields, was " + line.getFieldCount());
        }
        Kind kind = kind();
        double low = kind.isRanged() ? number(Column.LOWEST) : nothing(Column.LOWEST);
        double high = kind.isRanged() ? number(Column.HIGHEST) : nothing(Column.HIGHEST);
        if (kind.isRanged() && !(low < high)) {
            throw fault(Column.HIGHEST, "a number above " + text(Column.LOWEST));
        }
        Schema.Need need = need();
        return new Schema.Entry(
                input(),
                kind,
                need,
                low,
                high,
                some(Column.EXAMPLE),
                some(Column.WHAT),
                some(Column.FOUND),
                leftOut(need));
    }

    private Input input() {
        Optional<Input> input = Input.ofKey(text(Column.KEY));
        if (input.isEmpty()) {
            throw fault(Column.KEY, "the key of an input");
        }
        return input.get();
    }

    private Kind kind() {
        Optional<Kind> kind = Kind.named(text(Column.KIND));
        if (kind.isEmpty()) {
            throw fault(Column.KIND, "a kind that the first lines name");
        }
        return kind.get();
    }

    private Schema.Need need() {
        String text = text(Column.NEED);
        for (Schema.Need need : Schema.Need.values()) {
            if (need.text().equals(text)) {
                return need;
            }
        }
        throw fault(Column.NEED, "required, own cell or optional");
    }

    private String leftOut(Schema.Need need) {
        if (need == Schema.Need.REQUIRED) {
            nothing(Column.LEFT_OUT);
            return "";
        }
        return some(Column.LEFT_OUT);
    }

    private double number(Column column) {
        double value;
        try {
            value = Double.parseDouble(text(column));
        } catch (NumberFormatException notANumber) {
            throw fault(column, "a number");
        }
        if (!Double.isFinite(value)) {
            throw fault(column, "a finite number");
        }
        return value;
    }

    /** Where a row has nothing to say; an entry then has 0. */
    private double nothing(Column column) {
        if (!text(column).isEmpty()) {
            throw fault(column, "nothing");
        }
        return 0.0;
    }

    private String some(Column column) {
        String text = text(column);
        if (text.isEmpty()) {
            throw fault(column, "a text");
        }
        return text;
    }

    private String text(Column column) {
        return line.getField(column.ordinal()).strip();
    }

    IllegalStateException fault(Column column, String expected) {
        return new IllegalStateException(
                place()
                        + ", column "
                        + column.text()
                        + ": expected "
                        + expected
                        + ", was \""
                        + text(column)
                        + '"');
    }

    private String place() {
        return KeyTable.NAME + ", line " + line.getStartingLineNumber();
    }
}
