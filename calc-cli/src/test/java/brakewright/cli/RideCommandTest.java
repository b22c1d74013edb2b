package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.cli.words.Cautions;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The command line of recorded rides. */
class RideCommandTest {

    private static final String BOARD = "examples/vineyard-trail-board.toml";
    private static final String STRAIGHT = "guide/straight.csv";

    @TempDir Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @Test
    void semicolonsDecimalCommasUnitsAndSignAreFoundOutAndTold() {
        CommandRun run = Answers.of("ride", "--inspect", STRAIGHT);

        assertThat(run.status()).isZero();
        assertThat(run.out())
                .contains("parted by a semicolon", "decimal comma", "negative out of the pack")
                .contains("wheel_speed in km/h: its name, unit in its head")
                .contains("1 x unreadable wheel_speed", "straight.csv line 52");
    }

    @Test
    void allThatIsWrongWithTheOptionsIsToldAtOnce() {
        CommandRun run =
                CommandRun.of(
                        "ride",
                        BOARD,
                        STRAIGHT,
                        "--piece",
                        "5.3",
                        "--hold",
                        "0s",
                        "--columns",
                        "wheel=x");

        assertThat(run.status()).isEqualTo(ExitStatus.UNUSABLE);
        assertThat(run.err())
                .contains("3 problems", "--piece", "0 to 10000000 m", "--hold", "0.1 to 3600 s")
                .contains("--columns");
    }

    /** A file is found again by its name as it is. */
    @Test
    void aFileIsCalledByItsOwnName() {
        assertThat(Answers.of("ride", "--inspect", STRAIGHT).out()).startsWith("straight.csv\n");
    }

    @Test
    void whoeverActsOnARideIsCautioned() {
        assertThat(Answers.of("ride", BOARD, STRAIGHT).out())
                .contains("CAUTIONS")
                .contains(Cautions.brief());
        assertThat(Answers.of("ride", BOARD, STRAIGHT, "--format", "json").out())
                .contains("\"cautions\"")
                .contains(Cautions.all().get(1));
    }

    @Test
    void jsonHasTheSameRide() {
        CommandRun run = Answers.of("ride", BOARD, STRAIGHT, "--format", "json");

        assertThat(run.out())
                .contains("\"schema\" : \"brakewright.ride/1\"", "\"speed_from\" : \"wheels\"");
    }

    /** The board's file states no tolerance, so nothing of a difference is explained. */
    @Test
    void whatWasMeasuredStandsBesideWhatTheModelSays() {
        assertThat(Answers.of("ride", BOARD, STRAIGHT).out())
                .contains("HELD AGAINST THE MODEL", "the road counts as level")
                .containsPattern("energy out +80\\.7 Wh +[0-9.]+ Wh +\\+[0-9.]+ Wh +0\\.0 Wh");
        assertThat(Answers.of("ride", BOARD, STRAIGHT, "--format", "json").out())
                .contains("\"against_model\"", "\"figure\" : \"consumption\"")
                .contains("\"predicted_low_Wh_per_km\"", "\"explained_Wh\" : 0.0");
    }

    /** What is written is read again, without a repair and with the same totals. */
    @Test
    void theSeriesIsCleanAndGivesTheSameRide() {
        Path series = folder.resolve("series.csv");
        CommandRun first = CommandRun.of("ride", BOARD, STRAIGHT, "--series", series.toString());
        CommandRun again = CommandRun.of("ride", BOARD, series.toString());

        assertThat(again.out()).contains("LEFT OUT OR REPAIRED\n  nothing\n");
        assertThat(section(again.out(), "ENERGY")).isEqualTo(section(first.out(), "ENERGY"));
        assertThat(section(again.out(), "DISTANCE")).isEqualTo(section(first.out(), "DISTANCE"));
    }

    /** Where only one piece has positions, the wheels are held against them there. */
    @Test
    void wheelsAreHeldAgainstPositionsWhereBothWereRecorded() throws IOException {
        StringBuilder bare = new StringBuilder("time_s,speed_km/h\n");
        StringBuilder located = new StringBuilder("time_s,speed_km/h,latitude,longitude\n");
        for (int second = 0; second < 200; second++) {
            bare.append(second).append(",18.0\n");
            located.append(second + 210)
                    .append(",18.0,")
                    .append(50.0 + 5.0 * second / 111_195.0)
                    .append(",8.0\n");
        }
        String page =
                CommandRun.of(
                                "ride",
                                BOARD,
                                file("one.csv", bare.toString()).toString(),
                                file("two.csv", located.toString()).toString())
                        .out();
        assertThat(page).containsPattern("positions over wheels +(1\\.000|0\\.999)");
    }

    private static String section(String page, String heading) {
        int from = page.indexOf(heading);
        assertThat(from).isNotNegative();
        return page.substring(from, page.indexOf("\n\n", from));
    }

    @Test
    void latin1AndMarksOfByteOrderAreRead() throws IOException {
        String text =
                "Zeit [s];Geschwindigkeit [km/h];Pack Temperature [°C]\n0;0;20\n1;9;20\n2;18;20\n";
        Path latin =
                Files.write(folder.resolve("l.csv"), text.getBytes(StandardCharsets.ISO_8859_1));
        Path marked = file("m.csv", "\ufeff" + text);

        assertThat(CommandRun.of("ride", "--inspect", latin.toString()).out())
                .contains("ISO-8859-1", "pack_temperature in °C");
        assertThat(CommandRun.of("ride", "--inspect", marked.toString()).out())
                .contains("UTF-8", "time in s");
    }

    @Test
    void aPieceOfWhichOnlyTheDistanceIsKnownIsToldApart() {
        assertThat(CommandRun.of("ride", BOARD, STRAIGHT, "--piece", "5.3km").out())
                .contains("not recorded, as told   5.300 km");
    }

    @Test
    void everyReasonIsToldAtOnceAndNothingPrinted() throws IOException {
        Path bare = file("bare.csv", "time,speed,volts\n0,1,40\n1,2,40\n");
        Path none = file("none.csv", "a;b\n1;2\n3;4\n");

        CommandRun run = CommandRun.of("ride", BOARD, bare.toString(), none.toString());

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("3 problems")
                .contains("it names no unit, and there are no positions to tell it")
                .contains("no column is known for a time")
                .contains("no column is known for a speed, a position or a distance");
    }

    @Test
    void columnsAndUnitsThatAreToldSettleIt() throws IOException {
        Path odd = file("odd.csv", "when,how fast\n0,0\n1,10\n2,20\n3,20\n4,20\n");

        CommandRun run =
                CommandRun.of(
                        "ride",
                        BOARD,
                        odd.toString(),
                        "--columns",
                        "time=when,speed=how fast",
                        "--column-units",
                        "time=s,speed=mph");

        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("0.027 km, by the wheels");
    }
}
