package brakewright.outside;

import brakewright.recording.Cleaning;
import brakewright.recording.Joining;
import brakewright.recording.Quantity;
import brakewright.recording.Recording;
import brakewright.recording.Repairs;
import brakewright.recording.StepResistance;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Recordings that were published. The files are no part of this project: they are looked for beside
 * it, or where {@code -Dbrakewright.rides} says.
 */
class RecordingOutsideTest {

    private static final Path DRIVES =
            Path.of(System.getProperty("brakewright.rides", "../../shared/data/rides"), "car")
                    .toAbsolutePath()
                    .normalize();

    private static final int TIME = 0;
    private static final int VOLTAGE = 7;
    private static final int CURRENT = 8;
    private static final int TEMPERATURE = 9;

    @OutsideCheck(quantity = "resistance by steps of the current", source = "recorded-car-drives")
    void hasTheResistanceThatItsStepsShow(OutsideCase check) {
        check.agreesWith(measured(check, check.in("step")).resistance());
    }

    /** The colder pack resists more, and each more to a longer step. */
    @OutsideCheck(quantity = "temperature of the cells", source = "recorded-car-drives")
    void hasTheTemperatureOfItsCells(OutsideCase check) {
        check.agreesWith(measured(check, StepResistance.INSTANT).temperatureC().orElseThrow());
    }

    private static StepResistance.Measured measured(OutsideCase check, double step) {
        Recording recording =
                read(check, String.format(Locale.ROOT, "TripA%02d.csv", (int) check.in("drive")));
        return (StepResistance.Measured)
                StepResistance.of(recording, step, check.in("least-change"));
    }

    private static Recording read(OutsideCase check, String name) {
        Path file = DRIVES.resolve(name);
        check.needs(file);
        try {
            List<String[]> rows =
                    Files.readAllLines(file, StandardCharsets.ISO_8859_1).stream()
                            .skip(1)
                            .map(line -> line.split(";"))
                            .toList();
            Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
            columns.put(Quantity.TIME, column(rows, TIME, 1.0));
            columns.put(Quantity.PACK_VOLTAGE, column(rows, VOLTAGE, 1.0));
            columns.put(Quantity.PACK_CURRENT, column(rows, CURRENT, -1.0));
            columns.put(Quantity.PACK_TEMPERATURE, column(rows, TEMPERATURE, 1.0));
            Repairs repairs = new Repairs();
            int[] lines = IntStream.range(0, rows.size()).map(row -> row + 2).toArray();
            return Joining.join(Cleaning.of(name, lines, columns, repairs), true, repairs);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static double[] column(List<String[]> rows, int column, double sign) {
        return rows.stream().mapToDouble(row -> sign * Double.parseDouble(row[column])).toArray();
    }
}
