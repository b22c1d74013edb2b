package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are spoiled: what was lost is told, or they are refused. */
class RideFaultsTest {

    private static final String BOARD = "examples/vineyard-trail-board.toml";
    private static final String HEAD = "time [s],lean,speed [km/h],note";

    @TempDir Path folder;

    /** Everything behind it would be one field, and the ride a few metres long. */
    @Test
    void aQuotationMarkThatIsNotClosedIsRefusedWithItsLine() throws IOException {
        CommandRun run = ride(HEAD + "\n" + rows(10) + "10,0,18,\"fast\n" + rows(11, 200));

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("line 12", "a quotation mark is not closed");
    }

    /** A number that lost its neighbour would be taken for another. */
    @Test
    void aRowThatLostAFieldIsLeftOutAndTold() throws IOException {
        CommandRun run = ride(HEAD + "\n" + rows(10) + "10,18,fast\n" + rows(11, 100));

        assertThat(run.status()).isZero();
        assertThat(run.out())
                .contains("0.495 km, by the wheels")
                .contains("1 x odd-row", "ride.csv line 12");
    }

    /** One broken off while it was written. */
    @Test
    void aLastRowThatWasNotWrittenWholeIsLeftOut() throws IOException {
        CommandRun run = ride(HEAD + "\n" + rows(100) + "100,0,1");

        assertThat(run.out())
                .contains("0.495 km, by the wheels")
                .contains("1 x odd-row", "ride.csv line 102");
    }

    @Test
    void aSeparatorBehindTheLastFieldPartsNothing() throws IOException {
        String rows = rows(100);

        assertThat(ride(HEAD + "\n" + rows.replace("\n", ",\n")).out())
                .contains("0.495 km, by the wheels", "LEFT OUT OR REPAIRED\n  nothing");
        assertThat(ride(HEAD + ",\n" + rows).out())
                .contains("0.495 km, by the wheels", "LEFT OUT OR REPAIRED\n  nothing");
    }

    /** Behind a last separator there is no column, and nothing but marks names none. */
    @Test
    void aMarkNamesNoColumn() throws IOException {
        Path file = Files.writeString(folder.resolve("ride.csv"), HEAD + ",\n" + rows(100));

        CommandRun run = CommandRun.of("ride", BOARD, file.toString(), "--columns", "time='");

        assertThat(run.status()).isEqualTo(ExitStatus.UNUSABLE);
        assertThat(run.err()).contains("there is no column \"'\"");
    }

    @Test
    void oneRowIsNoRide() throws IOException {
        CommandRun run = ride(HEAD + "\n" + rows(1));

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("no two rows follow each other");
    }

    /** Rows an hour apart tell nothing of what was ridden between them. */
    @Test
    void rowsThatAreAllFarApartAreNoRide() throws IOException {
        CommandRun run = ride(HEAD + "\n0,0,18,a\n3600,0,20,b\n7200,0,15,c\n");

        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("no two rows follow each other", "30 s apart");
    }

    /** What stands for a field that was not recorded is no fault. */
    @Test
    void aFieldThatIsNoNumberIsLeftOutAndOneThatIsMissingIsNoFault() throws IOException {
        String rows = rows(100);

        assertThat(ride(HEAD + "\n" + rows.replace("\n50,0,18,", "\n50,0,1.8.0,")).out())
                .contains("0.495 km, by the wheels")
                .contains("1 x unreadable", "wheel_speed", "ride.csv line 52");
        for (String missing : new String[] {"", " ", "-", "NaN"}) {
            assertThat(
                            ride(HEAD
                                            + "\n"
                                            + rows.replace("\n50,0,18,", "\n50,0," + missing + ","))
                                    .out())
                    .contains("0.495 km, by the wheels", "LEFT OUT OR REPAIRED\n  nothing");
        }
    }

    /** The first row of the next day stands on line 32; the same minute at noon needs nothing. */
    @Test
    void aClockThatPassesMidnightRunsOn() throws IOException {
        assertThat(ride(clock(86_370)).out())
                .contains("0.295 km, by the wheels")
                .contains("rows                    60 in 1 piece")
                .contains("1 x midnight", "ride.csv line 32");
        assertThat(ride(clock(43_170)).out())
                .contains("0.295 km, by the wheels", "LEFT OUT OR REPAIRED\n  nothing");
    }

    /** A minute at 5 m/s from a second of the day on. */
    private static String clock(int from) {
        return "time,speed [km/h]\n"
                + IntStream.range(from, from + 60)
                        .mapToObj(second -> LocalTime.ofSecondOfDay(second % 86_400))
                        .map(time -> time.format(DateTimeFormatter.ISO_LOCAL_TIME) + ",18\n")
                        .collect(Collectors.joining());
    }

    /** One wrong digit of a date would begin another ride. */
    @Test
    void aDateThatLeapsAwayCostsItsRowAlone() throws IOException {
        String text =
                "time,speed [km/h]\n"
                        + IntStream.range(0, 60)
                                .mapToObj(
                                        second ->
                                                (second == 30 ? "2027" : "2026")
                                                        + "-05-02 10:00:"
                                                        + (second < 10 ? "0" : "")
                                                        + second
                                                        + ",18\n")
                                .collect(Collectors.joining());

        assertThat(ride(text).out())
                .contains("0.295 km, by the wheels")
                .contains("rows                    59 in 1 piece")
                .contains("1 x time-leap", "ride.csv line 32");
    }

    private CommandRun ride(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("ride.csv"), text);
        return CommandRun.of("ride", BOARD, file.toString());
    }

    private static String rows(int to) {
        return rows(0, to);
    }

    /** A row a second, steadily at 18 km/h, which are 5 m/s. */
    private static String rows(int from, int to) {
        return IntStream.range(from, to)
                .mapToObj(second -> second + ",0,18,ok\n")
                .collect(Collectors.joining());
    }
}
