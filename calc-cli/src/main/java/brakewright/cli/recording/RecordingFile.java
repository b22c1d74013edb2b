package brakewright.cli.recording;

import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.Problem;
import brakewright.recording.Place;
import brakewright.recording.Quantity;
import brakewright.recording.Repair;
import brakewright.recording.Repairs;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads one file: only the columns that are taken are kept, as numbers. */
final class RecordingFile {

    private static final double DAY = 86_400.0;

    /** Assumption: our own choice; a plain number of seconds so great is counted since 1970. */
    private static final double DATE_LIKE = 5e8;

    /** Likewise of milliseconds. */
    private static final double DATE_LIKE_MILLISECONDS = 5e11;

    private final String source;
    private final Layout layout;
    private final List<Taken> taken;
    private final Repairs repairs;
    private final DoubleColumn lines = new DoubleColumn();
    private final Map<Quantity, DoubleColumn> columns = new EnumMap<>(Quantity.class);
    private Optional<TimeFormat> format = Optional.empty();
    private double lastClock = Double.NEGATIVE_INFINITY;
    private double days;

    private RecordingFile(String source, Layout layout, List<Taken> taken, Repairs repairs) {
        this.source = source;
        this.layout = layout;
        this.taken = taken;
        this.repairs = repairs;
        taken.forEach(each -> columns.put(each.quantity(), new DoubleColumn()));
    }

    /** Reads a file; scales that must still be found out are left to {@link Scaled}. */
    static RawFile read(Path file, ColumnChoice choice, Repairs repairs)
            throws IOException, BuildFileException {
        Layout layout = Layout.of(file);
        List<Taken> taken = TakenColumns.of(layout, choice);
        RecordingFile reading =
                new RecordingFile(String.valueOf(file.getFileName()), layout, taken, repairs);
        reading.format =
                choice.timeFormat().map(word -> TimeFormat.valueOf(word.toUpperCase(Locale.ROOT)));
        return reading.rows(file);
    }

    private RawFile rows(Path file) throws IOException, BuildFileException {
        try (CsvReader<CsvRecord> records = layout.records(file)) {
            for (CsvRecord each : records) {
                requireOneLine(each);
                if (each.getStartingLineNumber() > layout.headerLine()) {
                    row(each);
                }
            }
        } catch (CsvParseException | UncheckedIOException broken) {
            throw new BuildFileException(
                    List.of(
                            new Problem(
                                    0,
                                    "",
                                    "its fields cannot be parted: " + broken.getMessage(),
                                    "a quotation mark is closed on its own line")));
        }
        int[] numbered = Arrays.stream(lines.all()).mapToInt(line -> (int) line).toArray();
        Map<Quantity, double[]> all = new EnumMap<>(Quantity.class);
        columns.forEach((quantity, column) -> all.put(quantity, column.all()));
        if (numbered.length == 0 || format.isEmpty()) {
            throw new BuildFileException(
                    List.of(
                            new Problem(
                                    layout.headerLine() + 1,
                                    "time",
                                    numbered.length == 0
                                            ? "there is no row"
                                            : "no row has a time that can be read",
                                    "seconds, a clock as 13:35:24, or a date as"
                                            + " 2026-05-02 13:35:24")));
        }
        return new RawFile(
                source,
                layout,
                taken,
                numbered,
                all,
                format.orElse(TimeFormat.NUMBER),
                isDated(all));
    }

    /** A separator behind the last field, in the header or in rows, parts nothing. */
    private boolean isWhole(CsvRecord record) {
        int fields = record.getFieldCount();
        int heads = layout.headings().size();
        return fields == heads
                || (fields == heads + 1 && record.getField(heads).isBlank())
                || (fields == heads - 1 && layout.headings().get(fields).text().isBlank());
    }

    private void requireOneLine(CsvRecord record) throws BuildFileException {
        for (String field : record.getFields()) {
            if (field.indexOf('\n') >= 0) {
                throw new BuildFileException(
                        List.of(
                                new Problem(
                                        (int) record.getStartingLineNumber(),
                                        "",
                                        "a quotation mark is not closed: what follows would be one"
                                                + " field",
                                        "a quotation mark is closed on its own line")));
            }
        }
    }

    private void row(CsvRecord record) {
        int line = (int) record.getStartingLineNumber();
        if (!isWhole(record)) {
            repairs.row(Repair.Rule.ODD_ROW, new Place(source, line));
            return;
        }
        lines.add(line);
        for (Taken each : taken) {
            String text = record.getField(each.column());
            double value =
                    each.quantity() == Quantity.TIME
                            ? time(text, each.scale(), line)
                            : number(text, each, line);
            DoubleColumn column = columns.get(each.quantity());
            if (column != null) {
                column.add(value);
            }
        }
    }

    /** An empty field was not recorded; one that cannot be read is told. */
    private double number(String text, Taken column, int line) {
        double written = layout.mark().number(text);
        if (Double.isNaN(written) && !isMissing(text)) {
            repairs.field(Repair.Rule.UNREADABLE, column.quantity(), new Place(source, line));
        }
        return column.scale().map(scale -> scale.value(written)).orElse(written);
    }

    private static boolean isMissing(String text) {
        return text.isBlank() || text.strip().equalsIgnoreCase("nan") || text.strip().equals("-");
    }

    private double time(String text, Optional<Scale> scale, int line) {
        if (format.isEmpty()) {
            format = TimeFormat.of(text, layout.mark());
        }
        double seconds = format.map(known -> known.seconds(text, layout.mark())).orElse(Double.NaN);
        if (format.filter(known -> known == TimeFormat.NUMBER).isPresent()) {
            return scale.map(known -> known.value(seconds)).orElse(seconds);
        }
        if (format.filter(known -> known == TimeFormat.CLOCK).isPresent()
                && !Double.isNaN(seconds)) {
            if (seconds < lastClock - DAY / 2.0) {
                days++;
                repairs.row(Repair.Rule.MIDNIGHT, new Place(source, line));
            }
            lastClock = seconds;
            return seconds + days * DAY;
        }
        return seconds;
    }

    private boolean isDated(Map<Quantity, double[]> all) {
        double[] times = all.getOrDefault(Quantity.TIME, new double[0]);
        double first = Arrays.stream(times).filter(Double::isFinite).findFirst().orElse(Double.NaN);
        return format.filter(known -> known == TimeFormat.DATE).isPresent() || first > DATE_LIKE;
    }

    /** Since 1970 in seconds or in milliseconds, where no unit is told. */
    static Scale timeScale(RawFile file) {
        double first =
                Arrays.stream(file.columns().getOrDefault(Quantity.TIME, new double[0]))
                        .filter(Double::isFinite)
                        .findFirst()
                        .orElse(0.0);
        return file.format() == TimeFormat.NUMBER && first > DATE_LIKE_MILLISECONDS
                ? Scale.MILLISECONDS
                : Scale.SECONDS;
    }
}
