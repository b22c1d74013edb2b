package brakewright.cli.recording;

import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.Problem;
import brakewright.recording.Quantity;
import brakewright.replay.Leg;
import brakewright.replay.Route;
import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Reads a route: a row for each place with its distance along the road, its altitude, the speed
 * that is allowed from there on, and how long to stand there.
 */
public final class RouteFile {

    private static final int MOST_ROWS = 100_000;
    private static final double FASTEST = 100.0;
    private static final double LONGEST_STAND = 86_400.0;
    private static final List<String> COLUMNS = List.of("distance", "altitude", "speed", "stop");
    private static final List<Quantity> QUANTITIES =
            List.of(Quantity.DISTANCE, Quantity.ALTITUDE, Quantity.WHEEL_SPEED, Quantity.TIME);
    private static final List<String> EXAMPLES = List.of("m", "m", "km/h", "s");

    private final List<Problem> problems = new ArrayList<>();
    private final List<double[]> rows = new ArrayList<>();
    private final List<Integer> lines = new ArrayList<>();

    private RouteFile() {}

    /**
     * Reads a route.
     *
     * @param file comma-separated values, or by a semicolon
     * @return the route
     * @throws IOException if the file cannot be read
     * @throws BuildFileException with everything that is wrong in it
     */
    public static Route read(Path file) throws IOException, BuildFileException {
        RouteFile reading = new RouteFile();
        Layout layout = Layout.of(file);
        int[] columns = reading.columns(layout);
        reading.check();
        reading.rows(file, layout, columns);
        reading.check();
        List<Leg> legs = reading.legs();
        reading.check();
        return new Route(legs);
    }

    /**
     * Tells a route from a recording, which has a time.
     *
     * @param file that may be either
     * @param choice what is told about columns of recordings
     * @return true for a recording
     * @throws IOException if the file cannot be read
     * @throws BuildFileException if it has no columns
     */
    public static boolean isRecording(Path file, ColumnChoice choice)
            throws IOException, BuildFileException {
        return choice.columns().containsKey(Quantity.TIME)
                || Layout.of(file).headings().stream()
                        .anyMatch(head -> UsualNames.of(Quantity.TIME).contains(head.name()));
    }

    private void check() throws BuildFileException {
        if (!problems.isEmpty()) {
            throw new BuildFileException(problems);
        }
    }

    private void problem(int line, String key, String wrong, String expected) {
        problems.add(new Problem(line, key, wrong, expected));
    }

    /** Where each stands; -1 where a stop does not. */
    private int[] columns(Layout layout) {
        int[] places = new int[COLUMNS.size()];
        for (int which = 0; which < places.length; which++) {
            places[which] = -1;
            for (int column = 0; column < layout.headings().size(); column++) {
                if (layout.headings().get(column).name().equals(COLUMNS.get(which))) {
                    places[which] = column;
                }
            }
            String example = COLUMNS.get(which) + " [" + EXAMPLES.get(which) + "]";
            if (places[which] < 0 && which < 3) {
                problem(layout.headerLine(), "", "there is no such column", example);
            } else if (places[which] >= 0 && scale(layout, which, places[which]).isEmpty()) {
                problem(layout.headerLine(), COLUMNS.get(which), "it names no unit", example);
            }
        }
        return places;
    }

    private static Optional<Scale> scale(Layout layout, int which, int column) {
        return layout.headings()
                .get(column)
                .unit()
                .flatMap(unit -> Scale.named(QUANTITIES.get(which), unit));
    }

    private void rows(Path file, Layout layout, int[] columns)
            throws IOException, BuildFileException {
        try (CsvReader<CsvRecord> records = layout.records(file)) {
            for (CsvRecord each : records) {
                if (each.getStartingLineNumber() > layout.headerLine()) {
                    row(each, layout, columns);
                }
                if (rows.size() > MOST_ROWS) {
                    problem(0, "", "it has more than " + MOST_ROWS + " rows", "a shorter route");
                    return;
                }
            }
        } catch (CsvParseException | UncheckedIOException broken) {
            problem(0, "", "its fields cannot be parted: " + broken.getMessage(), "a table");
        }
    }

    private void row(CsvRecord record, Layout layout, int[] columns) {
        int line = (int) record.getStartingLineNumber();
        double[] row = new double[columns.length];
        for (int which = 0; which < columns.length; which++) {
            int column = columns[which];
            boolean isThere = column >= 0 && column < record.getFieldCount();
            String text = isThere ? record.getField(column) : "";
            if (which == 3 && text.isBlank()) {
                continue;
            }
            double written = layout.mark().number(text);
            row[which] = scale(layout, which, column).orElseThrow().value(written);
            if (!Double.isFinite(row[which])) {
                problem(line, COLUMNS.get(which), "\"" + text + "\" is no number", "a number");
            }
        }
        rows.add(row);
        lines.add(line);
    }

    private List<Leg> legs() {
        List<Leg> legs = new ArrayList<>();
        if (rows.size() < 2) {
            problem(0, "", "it has fewer than two rows", "a row for its beginning and its end");
        }
        for (int row = 0; row + 1 < rows.size(); row++) {
            double[] here = rows.get(row);
            double[] next = rows.get(row + 1);
            int line = lines.get(row + 1);
            double length = next[0] - here[0];
            double rise = next[1] - here[1];
            if (!(length > 0.0)) {
                problem(line, "distance", "it does not grow", "from row to row a greater one");
            } else if (!(Math.abs(rise) < length)) {
                problem(line, "altitude", "so steep is no road", "less rise than way");
            } else if (!(here[2] > 0.0 && here[2] <= FASTEST)) {
                problem(lines.get(row), "speed", "it is out of its range", above(FASTEST, "m/s"));
            } else if (!(next[3] >= 0.0 && next[3] <= LONGEST_STAND)) {
                problem(line, "stop", "it is out of its range", range(LONGEST_STAND, "s"));
            } else {
                legs.add(new Leg(length, rise, here[2], next[3]));
            }
        }
        return legs;
    }

    private static String above(double most, String unit) {
        return String.format(Locale.ROOT, "above 0 up to %.0f %s", most, unit);
    }

    private static String range(double most, String unit) {
        return String.format(Locale.ROOT, "from 0 to %.0f %s", most, unit);
    }
}
