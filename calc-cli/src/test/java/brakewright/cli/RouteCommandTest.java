package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A route that is ridden in thought: what it takes, and files that are no route. */
class RouteCommandTest {

    private static final String BOARD = Example.TRAIL_BOARD.path();
    private static final String HEAD = "distance [m],altitude [m],speed [km/h],stop [s]\n";

    @TempDir Path folder;

    private CommandRun ridden(String text, String... options) throws IOException {
        Path file = Files.writeString(folder.resolve("road.csv"), text);
        String[] all = new String[options.length + 4];
        all[0] = "ride";
        all[1] = BOARD;
        all[2] = "--route";
        all[3] = file.toString();
        System.arraycopy(options, 0, all, 4, options.length);
        return CommandRun.of(all);
    }

    @Test
    void arrivesAndTellsWhatItTook() throws IOException {
        CommandRun run = ridden(HEAD + "0,0,20,\n500,0,20,\n", "--charge", "60%");
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("it arrives", "0.500 km", "CAUTIONS");
    }

    @Test
    void aRoadTooLongEndsWithTheChargeAndStatusOne() throws IOException {
        CommandRun run = ridden(HEAD + "0,0,20,\n90000,0,0,\n", "--charge", "60%");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out()).contains("the charge in use is gone on the way");
    }

    @Test
    void whatHoldsItBackStandsWithItsPlace() throws IOException {
        CommandRun run = ridden(HEAD + "0,0,40,\n1500,0,0,\n");
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("down to 32.0 km/h where 40.0 km/h is allowed (speed-cap)");
    }

    /** Downhill from a full pack more comes back than it may take; from half full it does not. */
    @Test
    void whatThePackMayNotTakeIsToldAndEndsWithStatusOne() throws IOException {
        String hill = HEAD + "0,100,20,\n300,70,20,\n400,70,0,\n";
        CommandRun full = ridden(hill, "--charge", "100%");
        assertThat(full.status()).isEqualTo(1);
        assertThat(full.out()).contains("BEYOND THE LIMITS").containsPattern("into the pack +\\d");
        Map<String, Object> json =
                JsonMaps.read(ridden(hill, "--charge", "100%", "--format", "json").out());
        Map<String, Object> beyond = JsonMaps.objects(json, "beyond_limits").get(0);
        assertThat(JsonMaps.number(beyond, "current_A"))
                .isGreaterThan(JsonMaps.number(beyond, "permitted_A"));
        CommandRun half = ridden(hill, "--charge", "50%");
        assertThat(half.status()).isZero();
        assertThat(half.out()).contains("nowhere: the packs bear all that flows");
    }

    @Test
    void aHeavierRiderTakesMoreInJson() throws IOException {
        String road = HEAD + "0,0,20,\n500,0,20,\n";
        Map<String, Object> light = JsonMaps.read(ridden(road, "--format", "json").out());
        Map<String, Object> heavy =
                JsonMaps.read(ridden(road, "--format", "json", "--rider", "110kg").out());
        assertThat(JsonMaps.text(light, "schema")).isEqualTo("brakewright.route/1");
        assertThat(JsonMaps.number(heavy, "consumption_Wh_per_km"))
                .isGreaterThan(JsonMaps.number(light, "consumption_Wh_per_km"));
    }

    @Test
    void aSpeedOfNothingIsToldWithWhatIsPossible() throws IOException {
        assertThat(ridden(HEAD + "0,0,0,\n500,0,20,\n").err())
                .contains("line 2", "above 0 up to 100 m/s")
                .doesNotContain("from 0 to 100");
    }

    /**
     * Motors that turn against more than the current set: nothing is divided by no way, no time.
     */
    @Test
    void whereItDoesNotSetOffAPageSaysSo() throws IOException {
        BuildText idle = BuildText.of(Example.TRAIL_BOARD);
        idle.replace("motor", "no_load_current", "no_load_current = \"50 A\"");
        Path board = Files.writeString(folder.resolve("idle.toml"), idle.text());
        Path road = Files.writeString(folder.resolve("flat.csv"), HEAD + "0,0,20,\n500,0,20,\n");
        for (String format : new String[] {"text", "html", "markdown", "json"}) {
            CommandRun run =
                    CommandRun.of(
                            "ride",
                            board.toString(),
                            "--route",
                            road.toString(),
                            "--format",
                            format);
            assertThat(run.status()).as(run.err()).isEqualTo(1);
            assertThat(run.out()).doesNotContain("NaN").doesNotContain("Infinity");
        }
    }

    /** Twenty in a hundred are more than the motors pull. */
    @Test
    void whereItStandsWhatIsTooWeakIsNamed() throws IOException {
        CommandRun run = ridden(HEAD + "0,0,20,\n100,0,20,\n600,300,0,\n");

        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("it stands on the way")
                .doesNotContain("HELD BACK nowhere")
                .contains("down to 0.0 km/h where");
    }

    /** A recorder without a fault: what is read of it again is what was predicted. */
    @Test
    void aPredictedRideIsWrittenAsARecording() throws IOException {
        Path series = folder.resolve("predicted.csv");
        CommandRun run =
                ridden(
                        HEAD + "0,0,20,\n900,9,20,5\n1500,9,0,\n",
                        "--charge",
                        "60%",
                        "--series",
                        series.toString());
        CommandRun again = CommandRun.of("ride", BOARD, series.toString());

        assertThat(run.status()).isZero();
        assertThat(again.err()).isEmpty();
        assertThat(again.out())
                .contains("LEFT OUT OR REPAIRED\n  nothing", "1.500 km, by the wheels");
    }

    /** Its own speeds, stands and heights are the route: it takes as long again. */
    @Test
    void aRecordingIsARoute() throws IOException {
        Map<String, Object> again =
                JsonMaps.read(
                        CommandRun.of(
                                        "ride",
                                        BOARD,
                                        "--route",
                                        "guide/straight.csv",
                                        "--charge",
                                        "80%",
                                        "--format",
                                        "json")
                                .out());

        assertThat(JsonMaps.text(again, "end")).isEqualTo("arrives");
        assertThat(JsonMaps.number(again, "distance_m")).isCloseTo(4500.0, within(10.0));
        assertThat(JsonMaps.number(again, "time_s")).isCloseTo(908.5, within(0.05 * 908.5));
    }

    /** Windings of which nothing is known are not told as cool. */
    @Test
    void heatThatIsNotKnownIsNotTold() throws IOException {
        BuildText board = BuildText.of(Example.TRAIL_BOARD);
        for (String key :
                new String[] {
                    "winding_to_case", "case_to_air", "winding_heat_capacity", "case_heat_capacity"
                }) {
            board.remove("motor", key);
        }
        Path build = Files.writeString(folder.resolve("board.toml"), board.text());
        Path road = Files.writeString(folder.resolve("r.csv"), HEAD + "0,0,20,\n500,0,20,\n");
        CommandRun run = CommandRun.of("ride", build.toString(), "--route", road.toString());
        assertThat(run.out()).containsPattern("warmest winding +not known");
    }

    @Test
    void everythingThatIsWrongInAFileIsToldWithItsLine() throws IOException {
        CommandRun run = ridden(HEAD + "0,0,20,\n500,x,20,\n400,0,20,oops\n");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("line 3", "\"x\" is no number", "line 4", "\"oops\"");

        assertThat(ridden(HEAD + "0,0,20,\n500,0,20,\n400,0,0,\n").err())
                .contains("line 4", "does not grow");
        assertThat(ridden("distance,altitude [m]\n0,0\n5,0\n").err())
                .contains("it names no unit", "there is no such column");
        assertThat(ridden(HEAD + "0,0,20,\n5,90,0,\n").err()).contains("so steep is no road");
        assertThat(ridden(HEAD + "0,0,20,\n").err()).contains("fewer than two rows");
    }

    @Test
    void optionsThatDoNotGoTogetherAreRefused() throws IOException {
        assertThat(ridden(HEAD + "0,0,20,\n5,0,0,\n", "--inspect").status()).isEqualTo(2);
        assertThat(ridden(HEAD + "0,0,20,\n5,0,0,\n", "--charge", "5%").err())
                .contains("use.charge_to");
        assertThat(CommandRun.of("ride", BOARD, "x.csv", "--rider", "90kg").err())
                .contains("belong to --route");
        assertThat(CommandRun.of("ride", BOARD, "--route", "nowhere.csv").err())
                .contains("there is no such file");
    }
}
