package brakewright.cli.recording;

import java.util.List;

/**
 * What was found out about a file.
 *
 * @param source its name
 * @param charset in which it is written
 * @param separator between its fields, in a word
 * @param decimalMark in a word
 * @param rows how many it has
 * @param columns all of them
 */
public record FileNotes(
        String source,
        String charset,
        String separator,
        String decimalMark,
        int rows,
        List<ColumnNote> columns) {

    /** Copies the list. */
    public FileNotes {
        columns = List.copyOf(columns);
    }

    static FileNotes of(Scaled scaled) {
        Layout layout = scaled.file().layout();
        return new FileNotes(
                scaled.file().source(),
                layout.charset().name(),
                switch (layout.separator()) {
                    case ';' -> "semicolon";
                    case '\t' -> "tab";
                    case '|' -> "bar";
                    default -> "comma";
                },
                layout.mark() == DecimalMark.COMMA ? "comma" : "point",
                scaled.file().lines().length,
                scaled.notes());
    }
}
