package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.buildfile.BuildFile;
import brakewright.spec.Build;
import brakewright.tables.ReferenceTables;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tomlj.Toml;

/** What a ride says of its vehicle, as a build file says it. */
class FittedBuildTest {

    private static final Path BOARD = Path.of("examples", "vineyard-trail-board.toml");

    @TempDir Path folder;

    private static Build board() throws Exception {
        return BuildFile.read(Files.readAllBytes(BOARD), ReferenceTables.load()).build();
    }

    /** The board really rolls harder than it is described. */
    private Path ridden() throws Exception {
        Build described = board();
        Build real =
                described.withVehicle(
                        described.vehicle().withRollingResistance(0.034).withDragArea(0.5));
        return Files.writeString(
                folder.resolve("ride.csv"),
                InventedRide.csv(real, InventedRide.STRAIGHT_AND_BACK, 3L));
    }

    @Test
    void linesThatArePrintedAreTrueAndCanBePasted() throws Exception {
        String page = CommandRun.of("ride", BOARD.toString(), ridden().toString()).out();
        Matcher rolling =
                Pattern.compile("rolling_resistance = (\"([0-9.]+) ± ([0-9.]+) %\")").matcher(page);
        Matcher drag =
                Pattern.compile("drag_area = (\"([0-9.]+) m² ± ([0-9.]+) %\")").matcher(page);
        assertThat(rolling.find() && drag.find()).isTrue();
        assertThat(isWithin(rolling, 0.034)).isTrue();
        assertThat(isWithin(drag, 0.5)).isTrue();

        String text =
                Files.readString(BOARD)
                        .replace("rolling_resistance = 0.028", rolling.group(0))
                        .replace("drag_area = \"0.60 m²\"", drag.group(0));
        Path pasted = Files.writeString(folder.resolve("pasted.toml"), text);
        assertThat(CommandRun.of("worksheet", pasted.toString(), "--show", "doubts").err())
                .isEmpty();
        assertThat(text).contains(rolling.group(1), drag.group(1));
    }

    private static boolean isWithin(Matcher line, double truth) {
        double value = Double.parseDouble(line.group(2));
        double percent = Double.parseDouble(line.group(3));
        return Math.abs(value - truth) <= value * percent / 100.0;
    }

    @Test
    void aNewBuildFileSaysWhatTheRideSaysAndAllElseAsBefore() throws Exception {
        byte[] before = Files.readAllBytes(BOARD);
        Path target = folder.resolve("new.toml");
        String ride = ridden().toString();
        CommandRun.of("ride", BOARD.toString(), ride, "--write", target.toString());

        String text = Files.readString(target);
        assertThat(text).contains("rolling_resistance = \"0.03", "drag_area = \"0.4", "idle_power");
        assertThat(Files.readString(BOARD).lines().filter(line -> !text.contains(line)))
                .containsExactly("rolling_resistance = 0.028", "drag_area = \"0.60 m²\"");
        assertThat(Files.readAllBytes(BOARD)).isEqualTo(before);
        assertThat(CommandRun.of("ride", target.toString(), ride).err()).isEmpty();

        CommandRun again =
                CommandRun.of("ride", BOARD.toString(), ride, "--write", target.toString());
        assertThat(again.status()).isEqualTo(ExitStatus.UNUSABLE);
        assertThat(again.err()).contains("--force");
        assertThat(
                        CommandRun.of(
                                        "ride",
                                        BOARD.toString(),
                                        ride,
                                        "--write",
                                        BOARD.toString(),
                                        "--force")
                                .status())
                .isEqualTo(ExitStatus.UNUSABLE);
        assertThat(Files.readAllBytes(BOARD)).isEqualTo(before);
    }

    @Test
    void whatStandsBesideAReplacedValueStays() throws Exception {
        Path noted = noted("rolling_resistance = 0.028  # of the shop's \"best\" tyres");
        Path target = folder.resolve("new.toml");
        CommandRun.of("ride", noted.toString(), ridden().toString(), "--write", target.toString());
        assertThat(Files.readString(target))
                .containsPattern("rolling_resistance = \"[^\"]*\" # of the shop's \"best\" tyres");
    }

    @Test
    void aValueThatCannotBeReplacedWhereItStandsIsToldAndNothingIsWritten() throws Exception {
        Path noted = noted("rolling_resistance = \"\"\"\\\n0.028\"\"\"");
        assertThat(CommandRun.of("worksheet", noted.toString()).err()).isEmpty();
        notWritten(noted);
        Path object =
                Files.writeString(
                        folder.resolve("board.json"), Toml.parse(Files.readString(BOARD)).toJson());
        assertThat(CommandRun.of("worksheet", object.toString()).err()).isEmpty();
        notWritten(object);
    }

    private Path noted(String line) throws Exception {
        return Files.writeString(
                folder.resolve("noted.toml"),
                Files.readString(BOARD).replace("rolling_resistance = 0.028", line));
    }

    private void notWritten(Path build) throws Exception {
        Path target = folder.resolve("none.toml");
        CommandRun run =
                CommandRun.of(
                        "ride",
                        build.toString(),
                        ridden().toString(),
                        "--write",
                        target.toString());
        assertThat(run.status()).isEqualTo(ExitStatus.UNUSABLE);
        assertThat(run.err()).isNotEmpty().doesNotContain("Exception");
        assertThat(target).doesNotExist();
    }

    @Test
    void whereNothingIsToldNothingIsWritten() throws Exception {
        Path begun =
                Files.write(
                        folder.resolve("begun.csv"),
                        Files.readAllLines(Path.of("guide", "straight.csv")).subList(0, 60));
        Path target = folder.resolve("none.toml");
        CommandRun run =
                CommandRun.of(
                        "ride", BOARD.toString(), begun.toString(), "--write", target.toString());
        assertThat(run.status()).isEqualTo(ExitStatus.UNUSABLE);
        assertThat(target).doesNotExist();
    }

    @Test
    void jsonHasWhatIsFoundAndWhatIsRefused() throws Exception {
        assertThat(
                        CommandRun.of(
                                        "ride",
                                        BOARD.toString(),
                                        ridden().toString(),
                                        "--format",
                                        "json")
                                .out())
                .contains("\"fits\"", "\"of\" : \"drag-area\"", "\"value_m2\"", "\"doubt_m2\"")
                .contains("\"refused\"");
    }
}
