package brakewright.cli.recording;

import brakewright.buildfile.BuildFileException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What was found out about a file.
 *
 * @param source its name
 * @param charset in which it is written
 * @param separator between its fields, in a word
 * @param decimalMark in a word
 * @param rows how many it has; below 0 where they were not counted
 * @param columns all of them
 */
public record FileNotes(
        String source,
        String charset,
        String separator,
        String decimalMark,
        int rows,
        List<ColumnNote> columns) {

    private static final int NOT_COUNTED = -1;

    /** Copies the list. */
    public FileNotes {
        columns = List.copyOf(columns);
    }

    static FileNotes of(Scaled scaled) {
        return of(
                scaled.file().source(),
                scaled.file().layout(),
                scaled.file().lines().length,
                scaled.notes());
    }

    /** Of a file that cannot be used, as far as it has columns; its rows are not counted. */
    static Optional<FileNotes> ofRefused(Path path, ColumnChoice choice) throws IOException {
        try {
            Layout layout = Layout.of(path);
            return Optional.of(
                    of(
                            String.valueOf(path.getFileName()),
                            layout,
                            NOT_COUNTED,
                            TakenColumns.notes(layout, choice)));
        } catch (BuildFileException noColumns) {
            return Optional.empty();
        }
    }

    private static FileNotes of(String source, Layout layout, int rows, List<ColumnNote> columns) {
        return new FileNotes(
                source,
                layout.charset().name(),
                switch (layout.separator()) {
                    case ';' -> "semicolon";
                    case '\t' -> "tab";
                    case '|' -> "bar";
                    default -> "comma";
                },
                layout.mark() == DecimalMark.COMMA ? "comma" : "point",
                rows,
                columns);
    }
}
