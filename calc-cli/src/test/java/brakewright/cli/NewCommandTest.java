package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.cli.describe.Interview;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import org.jline.terminal.Size;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** Vehicles of our own, described by answers, from a file and at a pseudo-terminal. */
@Timeout(60)
class NewCommandTest {

    /** A board whose owner knows little: eleven things are not known. */
    private static final String HARBOUR_BOARD =
            """
            title = Harbour board
            rider.stance = standing-sideways
            rider.mass = 78 kg
            vehicle.mass = don't know
            vehicle.wheel_diameter = 7.9 in
            vehicle.driven_axle = rear
            label.friction_brake = no
            drive.motors = 2
            label.drive = geared
            label.teeth_motor = 15
            label.teeth_wheel = 48
            motor.kv = 190 rpm/V
            motor.resistance = don't know
            label.motor_power = 2.2 kW
            motor.pole_pairs = 7
            motor.current_rating = don't know
            controller.count = 2
            controller.voltage_rating = 60 V
            controller.motor_current_rating = 80 A
            controller.pack_current_rating = 50 A
            controller.current_basis = don't know
            pack.series = 12
            pack.parallel = 4
            pack.cell = don't know
            label.pack_capacity = 12 Ah
            label.protection = don't know
            pack.wiring.fuse = don't know
            pack.wiring.wire = don't know
            pack.wiring.plug = xt90
            use.charge_from = 90 %
            use.speed_max = 35 km/h
            use.slope_max = don't know
            use.pack_temperature = 5 °C, 35 °C
            settings.motor_drive_current = 40 A
            settings.motor_brake_current = 30 A
            settings.pack_discharge_current = don't know
            settings.pack_regen_current = don't know
            """;

    /** A hub-motor scooter with a drum brake and a known cell. */
    private static final String MILL_SCOOTER =
            """
            title = Mill scooter
            rider.stance = standing-forward
            rider.mass = 70 kg
            vehicle.mass = 16 kg
            vehicle.wheel_diameter = 216 mm
            vehicle.driven_axle = front
            label.friction_brake = yes
            vehicle.friction_brake.deceleration = 3 m/s2
            drive.motors = 1
            label.drive = hub
            motor.kv = 18 rpm/V
            motor.resistance = 180 mohm +- 10 %
            motor.pole_pairs = 15
            motor.current_rating = 25 A
            controller.count = 1
            controller.voltage_rating = 60 V
            controller.motor_current_rating = 40 A
            controller.pack_current_rating = 25 A
            controller.current_basis = dc-equivalent
            pack.series = 10
            pack.parallel = 3
            pack.cell = INR18650-35E
            label.protection = yes
            pack.protection.discharge_trip = 40 A
            pack.protection.charge_trip = 15 A
            pack.protection.cell_overvoltage_trip = 4.28 V
            pack.protection.cell_undervoltage_trip = 2.7 V
            pack.wiring.fuse = 30 A
            pack.wiring.wire = 12 AWG
            pack.wiring.length = 0.4 m
            pack.wiring.plug = xt60
            use.charge_from = 100 %
            use.speed_max = 25 km/h
            use.slope_max = 8 %
            use.pack_temperature = 0 °C to 30 °C
            settings.motor_drive_current = 25 A
            settings.motor_brake_current = 15 A
            settings.pack_discharge_current = 15 A
            settings.pack_regen_current = 3 A
            """;

    /** A chain-driven kart whose teeth nobody has counted. */
    private static final String QUARRY_KART =
            """
            title = Quarry kart
            rider.stance = seated
            rider.mass = 82 kg
            vehicle.mass = 70 kg
            vehicle.wheel_diameter = 28 cm
            vehicle.driven_axle = rear
            label.friction_brake = yes
            vehicle.friction_brake.deceleration = don't know
            drive.motors = 1
            label.drive = geared
            label.teeth_motor = don't know
            label.teeth_wheel = 60
            drive.reduction = 5.5
            motor.kv = 70 rpm/V
            motor.resistance = 14 mΩ
            motor.pole_pairs = don't know
            motor.current_rating = 120 A
            controller.count = 1
            controller.voltage_rating = 84 V
            controller.motor_current_rating = 250 A
            controller.pack_current_rating = 150 A
            controller.current_basis = phase-rms
            pack.series = 16
            pack.parallel = 10
            pack.cell = molicel-p42a
            label.protection = no
            pack.wiring.fuse = 150 A
            pack.wiring.wire = don't know
            pack.wiring.plug = don't know
            use.charge_from = 95 %
            use.speed_max = 55 km/h
            use.slope_max = 5 %
            use.pack_temperature = don't know
            settings.motor_drive_current = 150 A
            settings.motor_brake_current = 60 A
            settings.pack_discharge_current = 100 A
            settings.pack_regen_current = 20 A
            """;

    @TempDir Path folder = Path.of("");

    private CommandRun fromFile(String answers) throws IOException {
        Path from = Files.writeString(folder.resolve("answers.txt"), answers);
        return CommandRun.of("new", build().toString(), "--from", from.toString());
    }

    private Path build() {
        return folder.resolve("build.toml");
    }

    @ParameterizedTest
    @CsvSource({"HARBOUR_BOARD, 11", "MILL_SCOOTER, 0", "QUARRY_KART, 6"})
    void whatIsDescribedGetsAWorksheet(String name, int unknown) throws IOException {
        String answers =
                switch (name) {
                    case "HARBOUR_BOARD" -> HARBOUR_BOARD;
                    case "MILL_SCOOTER" -> MILL_SCOOTER;
                    default -> QUARRY_KART;
                };
        assertThat(answers.split("don't know", -1)).hasSize(unknown + 1);
        CommandRun made = fromFile(answers);
        assertThat(made.err()).isEmpty();
        assertThat(made.status()).isZero();
        assertThat(made.out()).contains("brakewright worksheet " + build());
        CommandRun sheet = CommandRun.of("worksheet", build().toString());
        assertThat(sheet.err()).isEmpty();
        assertThat(sheet.status()).isIn(0, 1);
        assertThat(sheet.out())
                .startsWith(
                        answers.lines()
                                .findFirst()
                                .orElseThrow()
                                .substring(8)
                                .toUpperCase(Locale.ROOT));
    }

    /**
     * 15 and 48 teeth are 3.2 to 1; 2200 W at 50.4 V, 15 % lost, half of it in the copper: 73.6 mΩ.
     */
    @Test
    void labelsGiveWhatNobodyHasMeasured() throws IOException {
        fromFile(HARBOUR_BOARD);
        assertThat(Files.readString(build()))
                .contains(
                        "reduction = 3.2\n",
                        "resistance = \"73.6 mΩ ± 50 %\"",
                        "estimated from 2.2 kW on the label",
                        "capacity = \"3 Ah\"",
                        "# current_rating = ",
                        "# not known, taken: the one with the worst verdict");
    }

    @Test
    void everythingWrongIsToldAtOnceAndNothingWritten() throws IOException {
        String wrong =
                HARBOUR_BOARD
                        .replace("190 rpm/V", "190")
                        .replace("title = ", "titel = ")
                        .replace("drive.motors = 2", "drive.motors = don't know");
        CommandRun run = fromFile(wrong);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err())
                .contains(
                        "line 1  titel: no question has that name",
                        "motor.kv: ",
                        "drive.motors: there is no doing without it",
                        "title: What is the vehicle called?");
        assertThat(build()).doesNotExist();
    }

    @Test
    void aBuildFileIsNeverReplacedUnasked() throws IOException {
        Files.writeString(build(), "mine");
        assertThat(fromFile(HARBOUR_BOARD).err()).contains("the file exists; --force");
        assertThat(build()).hasContent("mine");
    }

    @Test
    void whatCannotBeWrittenIsRefused() throws IOException {
        Path from = Files.writeString(folder.resolve("answers.txt"), MILL_SCOOTER);
        Path nowhere = folder.resolve("none").resolve("build.toml");
        for (Path path : new Path[] {nowhere, folder}) {
            CommandRun run =
                    CommandRun.of("new", path.toString(), "--from", from.toString(), "--force");
            assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
            assertThat(run.err()).contains(path.toString(), "folder");
        }
    }

    @Test
    void withoutATerminalItSaysWhatToDo() {
        CommandRun run = CommandRun.of("new", build().toString());
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("needs a terminal", "--from ANSWERS");
    }

    /** What a person sees and types; each answer ends with the return key. */
    private String typed(String keys) throws IOException {
        return typed(keys, 0);
    }

    private String typed(String keys, int columns) throws IOException {
        ByteArrayOutputStream screen = new ByteArrayOutputStream();
        LineDisciplineTerminal terminal =
                new LineDisciplineTerminal("test", "ansi", screen, StandardCharsets.UTF_8);
        terminal.setSize(new Size(columns, columns == 0 ? 0 : 40));
        CompletableFuture<Void> typing =
                CompletableFuture.runAsync(
                        () -> {
                            try {
                                terminal.processInputBytes(keys.getBytes(StandardCharsets.UTF_8));
                            } catch (IOException gone) {
                                throw new IllegalStateException(gone);
                            }
                        });
        NewCommand command = new NewCommand();
        CommandLine parser = new CommandLine(command);
        StringWriter out = new StringWriter();
        parser.setOut(new PrintWriter(out));
        parser.parseArgs(build().toString());
        int status = command.converse(new Interview(Ahead.tables()), terminal);
        typing.join();
        assertThat(status).isZero();
        return screen.toString(StandardCharsets.UTF_8) + out;
    }

    private static String answersOf(String file) {
        return file.replaceAll("(?m)^[^=]*= ", "").replace('\n', '\r');
    }

    /** Counts what is typed from nothing to the first page, and holds the guide to it. */
    @Test
    void threeVehiclesAreDescribedAtAPseudoTerminal() throws IOException {
        StringBuilder counted =
                new StringBuilder(
                        """

                        | vehicle | questions | of them "don't know" | keystrokes, return keys and both commands included |
                        |---|---|---|---|
                        """);
        for (String vehicle : new String[] {HARBOUR_BOARD, MILL_SCOOTER, QUARRY_KART}) {
            Files.deleteIfExists(build());
            fromFile(vehicle);
            String expected = Files.readString(build());
            Files.delete(build());
            String keys = answersOf(vehicle);
            assertThat(typed(keys)).contains("Written to " + build());
            assertThat(build()).hasContent(expected);
            assertThat(folder.resolve("build.toml.answers")).doesNotExist();
            assertThat(CommandRun.of("worksheet", build().toString()).outLines())
                    .hasSizeBetween(40, 66);
            String commands = "brakewright new build.toml\rbrakewright worksheet build.toml\r";
            counted.append(
                    String.format(
                            Locale.ROOT,
                            "| %s | %d | %d | %d |%n",
                            keys.split("\r")[0],
                            vehicle.lines().count(),
                            vehicle.split("= don't know", -1).length - 1,
                            commands.length() + keys.length()));
        }
        GuidePage page = GuidePage.of("describe.md");
        GuidePage expected = page.withPart("keystrokes", counted.append('\n').toString());
        assertThat(expected.keptFor(page).text())
                .as("written anew with -Dbrakewright.guide=write")
                .isEqualTo(expected.text());
    }

    @Test
    void itTellsWhatIsKnownSoFarAndHelps() throws IOException {
        String screen =
                typed("?\r" + answersOf(HARBOUR_BOARD).replace("190 rpm/V", "fast\r190 rpm/V"));
        assertThat(screen)
                .contains(
                        "without it: My vehicle",
                        "\"fast\" does not read as a number with a unit; for example 170 rpm/V",
                        "known so far: full pack 50.4 V, 12.0 Ah, gearing 3.20 to 1, at most some 113 km/h");
    }

    @Test
    void itFollowsTheWidthOfTheTerminal() throws IOException {
        String screen = typed("?\r" + answersOf(HARBOUR_BOARD), 72);
        assertThat(screen).contains("How is it ridden", "known so far");
        assertThat(screen.replaceAll("\u001b\\[[0-9;?]*[a-zA-Z]|\u001b[=>]", "").split("[\r\n]+"))
                .filteredOn(line -> !line.startsWith(">"))
                .filteredOn(line -> !line.contains("build.toml"))
                .allSatisfy(line -> assertThat(line.length()).as(line).isLessThan(73));
    }

    @Test
    void whatMustBeAnsweredSaysSo() throws IOException {
        assertThat(typed(answersOf(HARBOUR_BOARD).replace("geared", "don't know\rgeared")))
                .contains("there is no doing without it; for example geared");
    }

    @Test
    void itIsLeftAndGoneOnWith() throws IOException {
        String[] answers = answersOf(MILL_SCOOTER).split("\r");
        String first = String.join("\r", Arrays.copyOf(answers, 10)) + "\r";
        assertThat(typed(first + "back\rhub\rleave\r")).contains("Kept in ");
        assertThat(build()).doesNotExist();
        String rest = String.join("\r", Arrays.copyOfRange(answers, 10, answers.length)) + "\r";
        assertThat(typed(rest)).contains("Going on from ", "Written to ");
        String written = Files.readString(build());
        Files.delete(build());
        fromFile(MILL_SCOOTER);
        assertThat(build()).hasContent(written);
    }
}
