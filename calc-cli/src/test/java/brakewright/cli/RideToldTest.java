package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.internal.RecordedQuantity;
import brakewright.recording.Quantity;
import brakewright.tables.ReferenceTables;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the build file, options and heads tell of a recording, and what is shown where it fails. */
class RideToldTest {

    private static final String TABLE =
            "\n# how the logger writes\n[recording]\n"
                    + "columns = { time = \"when\", wheel_speed = \"how fast\","
                    + " pack_current = \"flow\" }\n"
                    + "units = { time = \"s\", wheel_speed = \"km/h\" }\n"
                    + "current_sign = \"out-of-pack-negative\"\n";

    @TempDir Path folder;

    private Path board(String table) throws IOException {
        return Files.writeString(
                folder.resolve("board.toml"),
                Files.readString(Path.of(Example.TRAIL_BOARD.path())) + table);
    }

    /**
     * Up and down between 3 and 9 m/s, a current of 1 A for each m/s², out of the pack negative.
     */
    private Path odd() throws IOException {
        return Files.writeString(
                folder.resolve("odd.csv"),
                "when,how fast,flow\n"
                        + IntStream.range(0, 120)
                                .mapToObj(
                                        row -> {
                                            boolean isPulling = row / 6 % 2 == 0;
                                            int step = isPulling ? row % 6 : 6 - row % 6;
                                            return row
                                                    + ","
                                                    + 3.6 * (3 + step)
                                                    + ","
                                                    + (isPulling ? -9 : 3);
                                        })
                                .collect(Collectors.joining("\n"))
                        + "\n");
    }

    private CommandRun ride(Path board, Path file, String... options) {
        return CommandRun.of(
                Stream.concat(
                                Stream.of("ride", board.toString(), file.toString()),
                                Stream.of(options))
                        .toArray(String[]::new));
    }

    @Test
    void theBuildFileTellsHowItsRidesAreRecorded() throws IOException {
        CommandRun run = ride(board(TABLE), odd());

        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("negative out of the pack in the files: as told");
    }

    /** Options are for this ride, the table for all. */
    @Test
    void optionsGoFirst() throws IOException {
        CommandRun run = ride(board(TABLE), odd(), "--column-units", "wheel_speed=mph");

        assertThat(run.out()).containsPattern("measured +1\\.1[0-9]+ km, by the wheels");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void aSignThatBrakingContradictsIsNotBelieved() throws IOException {
        CommandRun run = ride(board(TABLE), odd(), "--current-sign", "out-of-pack-positive");

        assertThat(run.status()).isEqualTo(ExitStatus.UNUSABLE);
        assertThat(run.err())
                .contains("it is told to be positive out of the pack")
                .contains("braking returns what pulling draws");
    }

    @Test
    void whatIsWrongInTheTableIsToldWithItsLine() throws IOException {
        CommandRun run =
                CommandRun.of(
                        "check",
                        board("\n[recording]\ncolumns = { wheel = \"x\" }\nsign = \"plus\"\n")
                                .toString());

        assertThat(run.status()).isEqualTo(ExitStatus.UNUSABLE);
        assertThat(run.err())
                .contains("recording.columns.wheel", "this is no quantity")
                .contains("recording.sign", "columns, units, current_sign or time_format");
    }

    @Test
    void theQuantitiesThatTheTableKnowsAreThoseOfARecording() {
        assertThat(Arrays.stream(RecordedQuantity.values()).map(RecordedQuantity::key))
                .containsExactlyElementsOf(
                        Arrays.stream(Quantity.values()).map(Quantity::key).toList());
    }

    @Test
    void aUnitThatIsNoneOfItsQuantityIsTold() throws IOException {
        CommandRun run = ride(board(TABLE.replace("km/h", "kg")), odd());

        assertThat(run.status()).isEqualTo(ExitStatus.UNUSABLE);
        assertThat(run.err())
                .contains("recording.units.wheel_speed", "this is no unit of wheel_speed", "km/h");
    }

    /** A first field that looks like a number would decide it otherwise. */
    @Test
    void howTimesAreWrittenCanBeTold() throws IOException {
        Path file =
                Files.writeString(
                        folder.resolve("clock.csv"),
                        "time,speed [km/h]\n7,18\n10:00:00,18\n10:00:01,18\n10:00:02,18\n");

        assertThat(ride(board("\n[recording]\ntime_format = \"clock\"\n"), file).out())
                .contains("0.010 km, by the wheels");
    }

    /** The file goes on, with all that it said. */
    @Test
    void writingABuildFileAnewKeepsTheTable() throws Exception {
        String written =
                BuildFile.read(Files.readAllBytes(board(TABLE)), ReferenceTables.load()).toml();

        assertThat(written)
                .contains("# how the logger writes\n[recording]\ncurrent_sign")
                .contains("[recording.columns]\ntime = \"when\"");
    }

    @Test
    void whatWasFoundIsShownEvenWhereTheFileIsRefused() throws IOException {
        CommandRun run = CommandRun.of("ride", "--inspect", odd().toString());

        assertThat(run.status()).isEqualTo(ExitStatus.UNUSABLE);
        assertThat(run.out())
                .contains("odd.csv", "fields parted by a comma", "how fast", "not used");
        assertThat(run.err()).contains("no column is known for a time");
        assertThat(CommandRun.of("ride", "--inspect", odd().toString(), "--format", "json").out())
                .contains("\"heading\" : \"how fast\"", "\"problems\"");
    }

    /** The same columns, for the same reasons, as when the ride is read. */
    @Test
    void whatIsInspectedBehindABuildFileIsWhatWillBeRead() throws IOException {
        CommandRun run = ride(board(TABLE), odd(), "--inspect");

        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isEqualTo(ExitStatus.FINE);
        assertThat(run.out())
                .startsWith("odd.csv\n")
                .containsPattern("how fast +wheel_speed in km/h: as told; unit as told")
                .contains("negative out of the pack in the files, as told");
        assertThat(
                        ride(board(TABLE), odd(), "--inspect", "--column-units", "wheel_speed=mph")
                                .out())
                .containsPattern("how fast +wheel_speed in m(ph|i/h): as told; unit as told");
    }

    @Test
    void aBuildFileAloneIsNoRecordingToInspect() throws IOException {
        CommandRun run = CommandRun.of("ride", "--inspect", board(TABLE).toString());

        assertThat(run.status()).isEqualTo(ExitStatus.UNUSABLE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("no recording is named; --inspect wants one or more");
    }

    @Test
    void nothingIsWrittenToAFileWhereOneIsRefused() throws IOException {
        Path target = folder.resolve("found.txt");
        CommandRun run =
                CommandRun.of("ride", "--inspect", odd().toString(), "--output", target.toString());

        assertThat(run.status()).isEqualTo(ExitStatus.UNUSABLE);
        assertThat(target).doesNotExist();
    }

    @Test
    void unitsWithoutAStrokeAreKnownInHeads() throws IOException {
        Path file =
                Files.writeString(
                        folder.resolve("heads.csv"),
                        "time_s,wheel_speed_m_per_s,satellite_speed_km_per_h,wind_speed_kmh\n"
                                + "0,5,18,3\n1,5,18,3\n2,5,18,3\n");

        assertThat(CommandRun.of("ride", "--inspect", file.toString()).out())
                .contains("wheel_speed in m/s", "satellite_speed in km/h", "wind_speed in km/h");
    }
}
