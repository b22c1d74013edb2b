package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import brakewright.buildfile.BuildFile;
import brakewright.cli.doubt.Vehicles;
import brakewright.cli.recording.ColumnChoice;
import brakewright.cli.recording.Recordings;
import brakewright.recording.Quantity;
import brakewright.recording.Ride;
import brakewright.replay.AgainstModel;
import brakewright.replay.Compared;
import brakewright.replay.Figure;
import brakewright.spec.Settings;
import brakewright.tables.ReferenceTables;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Fifteen rides of a scooter whose charge alone was shown (DualEMobilityData-datasets, Dublin City
 * University, 2023), predicted from what is published of it: 446 Wh in ten cells in series, the
 * range of each rider's mass. From memory: 14 kg, wheels of 8.5 inch, one front hub motor. All else
 * is common practice for such scooters, with wide tolerances. The set is looked for beside the
 * project and is no part of it.
 */
class PublishedScooterTest {

    private static final Path FOLDER = Path.of("..", "..", "shared", "data", "rides", "scooter");

    private static final double WATT_HOURS_PER_CENT = 4.46;

    /** Our own past output [Wh/km]. */
    private static final double CALM = 7.9;

    private static final double WINDY = 16.8;

    private static final String SCOOTER =
            """
            title = "Rental scooter, as far as it is published"
            [rider]
            mass = "%s"
            stance = "standing-forward"
            [vehicle]
            mass = "14 kg ± 10 %%"
            wheel_diameter = "216 mm ± 3 %%"
            driven_axle = "front"
            rolling_resistance = "0.015 ± 40 %%"
            drag_area = "0.60 m² ± 25 %%"
            [vehicle.friction_brake]
            deceleration = "3 m/s²"
            [drive]
            motors = 1
            reduction = 1
            efficiency = "98 %%"
            [motor]
            kv = "17 rpm/V ± 15 %%"
            resistance = "240 mΩ ± 25 %%"
            no_load_current = "0.5 A ± 50 %%"
            current_rating = "30 A"
            [controller]
            current_basis = "phase-peak"
            motor_current_rating = "40 A"
            pack_current_rating = "25 A"
            voltage_rating = "60 V"
            efficiency = "95 %% ± 3 %%"
            [pack]
            series = 10
            parallel = 4
            [pack.cell]
            chemistry = "nmc"
            capacity = "3.1 Ah"
            discharge_current = "10 A"
            charge_current = "3.1 A"
            voltage_max = "4.2 V"
            voltage_min = "2.5 V"
            resistance = "40 mΩ ± 30 %%"
            [use]
            charge_from = "100 %%"
            charge_to = "5 %%"
            speed_max = "30 km/h"
            ambient = "10 °C"
            idle_power = "5 W ± 60 %%"
            headwind = "%s"
            [settings]
            motor_drive_current = "30 A"
            motor_brake_current = "10 A"
            pack_discharge_current = "20 A"
            pack_regen_current = "6 A"
            """;

    private record Row(int trip, double kilometres, double percent, String mass, double wind) {}

    private static List<Row> rows() throws Exception {
        List<Row> rows = new ArrayList<>();
        List<String> lines = Files.readAllLines(FOLDER.resolve("summary.csv"));
        for (String line : lines.subList(1, lines.size())) {
            String[] fields = line.split(",", -1);
            String[] range = fields[2].split("-", -1);
            double middle = 0.5 * (number(range[0]) + number(range[1]));
            double half = 0.5 * (number(range[1]) - number(range[0]));
            rows.add(
                    new Row(
                            (int) number(fields[0]),
                            number(fields[4]),
                            number(fields[5]) - number(fields[6]),
                            middle + " kg ± " + Math.ceil(1000.0 * half / middle) / 10.0 + " %",
                            number(fields[13])));
        }
        return rows;
    }

    private static double number(String text) {
        return Double.parseDouble(text);
    }

    private static Compared consumption(Row row, double wind) throws Exception {
        ColumnChoice choice =
                new ColumnChoice(Map.of(), Map.of(Quantity.WHEEL_SPEED, "km/h"), Optional.empty());
        Path file = FOLDER.resolve("trip_" + row.trip() + ".csv");
        Recordings read =
                Recordings.read(
                        List.of(file),
                        row.trip() == 5 ? choice : ColumnChoice.NONE,
                        Optional.empty());
        Ride ride = Ride.of(read.recording(), 3.0, 0.0, read.repairs()).orElseThrow();
        BuildFile build =
                BuildFile.read(
                        String.format(SCOOTER, row.mass(), wind + " m/s")
                                .getBytes(StandardCharsets.UTF_8),
                        ReferenceTables.load());
        Vehicles vehicles = Vehicles.of(build);
        return AgainstModel.of(
                        build.build(), ride, vehicles.ranges(), vehicles.under(Settings.NONE))
                .orElseThrow()
                .figures()
                .stream()
                .filter(each -> each.figure() == Figure.CONSUMPTION)
                .findFirst()
                .orElseThrow();
    }

    /** The shown charge is told in whole per cent, at both ends [%]. */
    private static final double STEP = 1.0;

    /**
     * What the model may say reaches from calm air at the lower end of all tolerances to all of the
     * published wind ahead at their upper end. A frozen count: the page for contributors names it.
     */
    @Test
    void theShownChargeFallsFasterThanARideTakesAndMostWhereItIsLow() throws Exception {
        assumeTrue(
                Files.isDirectory(FOLDER),
                "SKIPPED: the published recordings are not at " + FOLDER.toAbsolutePath());
        List<Integer> above = new ArrayList<>();
        double used = 0.0;
        double calm = 0.0;
        double windy = 0.0;
        double kilometres = 0.0;
        for (Row row : rows()) {
            Compared without = consumption(row, 0.0);
            Compared against = consumption(row, row.wind());
            double least = WATT_HOURS_PER_CENT * (row.percent() - STEP) / row.kilometres();
            double most = WATT_HOURS_PER_CENT * (row.percent() + STEP) / row.kilometres();
            assertThat(most).as("trip %s", row.trip()).isGreaterThan(without.low() / 3.6);
            if (least > against.high() / 3.6) {
                above.add(row.trip());
            }
            used += WATT_HOURS_PER_CENT * row.percent();
            kilometres += row.kilometres();
            calm += without.predicted() / 3.6 * row.kilometres();
            windy += against.predicted() / 3.6 * row.kilometres();
        }
        assertThat(used / kilometres).isCloseTo(24.8, within(0.05));
        assertThat(calm / kilometres).isCloseTo(CALM, within(0.05));
        assertThat(windy / kilometres).isCloseTo(WINDY, within(0.05));
        assertThat(above).containsExactly(5, 7, 11, 13, 15, 29);
    }
}
