package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import brakewright.buildfile.BuildFile;
import brakewright.replay.RouteRide;
import brakewright.replay.Underway;
import brakewright.spec.Build;
import brakewright.tables.ReferenceTables;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/**
 * The recording in the guide is invented: a ride that the model made of a board that rolls harder
 * than it is described, with noise, and with one field that nobody can read.
 */
class GuideRecordingTest {

    private static final Path BOARD = Path.of("examples", "vineyard-trail-board.toml");
    private static final Path RECORDING = Path.of("guide", "straight.csv");
    private static final String HEADS =
            "Time (s);Velocity [km/h];Battery Voltage (V);Battery_Current_A;SoC [%]";
    private static final double SPACING = 0.5;
    private static final int UNREADABLE = 50;
    private static final long SEED = 11L;

    private static List<String> made() throws Exception {
        Build described = BuildFile.read(Files.readAllBytes(BOARD), ReferenceTables.load()).build();
        Build real =
                described.withVehicle(
                        described.vehicle().withRollingResistance(0.033).withDragArea(0.56));
        RouteRide ride =
                RouteRide.of(
                        real, InventedRide.STRAIGHT_AND_BACK, Underway.rested(0.8, 20.0, 20.0));
        List<String> rows =
                InventedRide.rows(ride, SPACING, SEED, GuideRecordingTest::row).lines().toList();
        return rows.stream()
                .map(row -> row.equals(rows.get(UNREADABLE)) ? unreadable(row) : row)
                .toList();
    }

    /** As a recorder does that counts what flows in as positive, with decimal commas. */
    private static String row(
            double time, double speed, double voltage, double current, double charge) {
        return String.format(
                Locale.GERMANY,
                "%.1f;%.1f;%.2f;%.1f;%.1f%n",
                time,
                3.6 * speed,
                voltage,
                -current,
                100.0 * charge);
    }

    private static String unreadable(String row) {
        String[] fields = row.split(";", -1);
        fields[1] = "#";
        return String.join(";", fields);
    }

    /** But for a last digit, which another processor may round to the other side. */
    @Test
    void theRecordingIsTheModelsOwn() throws Exception {
        List<String> made = made();
        if ("write".equals(System.getProperty("brakewright.guide"))) {
            Files.writeString(RECORDING, HEADS + "\n" + String.join("\n", made) + "\n");
        }
        List<String> kept = Files.readAllLines(RECORDING);
        assertThat(kept).hasSize(made.size() + 1).startsWith(HEADS);
        for (int row = 0; row < made.size(); row++) {
            String[] here = kept.get(row + 1).split(";", -1);
            String[] there = made.get(row).split(";", -1);
            for (int field = 0; field < there.length; field++) {
                if (row == UNREADABLE && field == 1) {
                    assertThat(here[field]).isEqualTo("#");
                } else {
                    assertThat(number(here[field])).isCloseTo(number(there[field]), within(0.11));
                }
            }
        }
    }

    private static double number(String field) {
        return Double.parseDouble(field.replace(',', '.'));
    }
}
