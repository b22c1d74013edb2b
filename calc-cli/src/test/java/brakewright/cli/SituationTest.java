package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A proposal and values typed beside it, put into a build file by every command alike. */
class SituationTest {

    private static final String RAIN =
            """

            [proposals.rain]
            motor_drive_current = "30 A"
            motor_brake_current = "20 A"
            use.pack_temperature = ["13 °C", "25 °C"]
            use.charge_from = "95 %"
            """;

    private static final String[] ASKED = {
        "--proposal", "rain", "--with", "use.charge_from=90%", "--with", "use.speed_max=20km/h"
    };

    @TempDir Path folder = Path.of("");

    private BuildFolder builds = new BuildFolder(folder);
    private String rainy = "";
    private String written = "";

    @BeforeEach
    void writeTheBoardAndTheSameInThatSituation() {
        builds = new BuildFolder(folder);
        rainy = builds.put("rainy", BuildText.of(Example.TRAIL_BOARD).text() + RAIN);
        BuildText there = inRain(BuildText.of(Example.TRAIL_BOARD));
        there.replace("use", "charge_from", "charge_from = \"90 %\"");
        there.replace("use", "speed_max", "speed_max = \"20 km/h\"");
        written = builds.put("written", there.text() + RAIN);
    }

    /** What the proposal says, said in the file. */
    private static BuildText inRain(BuildText board) {
        board.replace("settings", "motor_drive_current", "motor_drive_current = \"30 A\"");
        board.replace("settings", "motor_brake_current", "motor_brake_current = \"20 A\"");
        board.replace("use", "pack_temperature", "pack_temperature = [\"13 °C\", \"25 °C\"]");
        board.replace("use", "charge_from", "charge_from = \"95 %\"");
        return board;
    }

    private static CommandRun run(String command, String build, List<String> options) {
        List<String> arguments = new ArrayList<>(List.of(command, build));
        arguments.addAll(options);
        return CommandRun.of(arguments.toArray(String[]::new));
    }

    private static List<String> and(String[] asked, String... more) {
        List<String> all = new ArrayList<>(List.of(asked));
        all.addAll(List.of(more));
        return all;
    }

    private static List<String> flow(CommandRun run) {
        return List.of(run.out().strip().split("\\s+"));
    }

    private static String flowing(CommandRun run) {
        return String.join(" ", flow(run));
    }

    @Test
    void theHighestBrakeCurrentInTheRainIsThatOfAFileThatSaysSo() {
        CommandRun asked = run("solve", rainy, and(ASKED, "--for", "motor_brake_current"));
        CommandRun said = run("solve", written, List.of("--for", "motor_brake_current"));
        assertThat(asked.err()).isEmpty();
        assertThat(asked.status()).isZero();
        String situation =
                "In the situation asked for: use.charge_from 90 %, use.speed_max 20.0 km/h,"
                        + " use.pack_temperature 13 to 25 °C, motor_drive_current 30 A. ";
        assertThat(flowing(asked)).contains(situation);
        assertThat(flowing(asked).replace(situation, "")).isEqualTo(flowing(said));
        assertThat(flowing(asked))
                .isNotEqualTo(
                        flowing(run("solve", rainy, List.of("--for", "motor_brake_current"))));
    }

    @Test
    void theAnswerInASituationTellsOtherProgramsTheSituation() {
        String[] json = {"--for", "motor_brake_current", "--format", "json"};
        Map<String, Object> asked = JsonMaps.read(run("solve", rainy, and(ASKED, json)).out());
        Map<String, Object> said = JsonMaps.read(run("solve", written, List.of(json)).out());
        Map<String, Object> changes = JsonMaps.object(asked, "changes");
        assertThat(changes.keySet())
                .containsExactly(
                        "use.charge_from",
                        "use.speed_max",
                        "use.pack_temperature",
                        "settings.motor_drive_current");
        Map<String, Object> charge = JsonMaps.object(changes, "use.charge_from");
        assertThat(JsonMaps.number(charge, "value")).isEqualTo(0.9);
        assertThat(JsonMaps.text(charge, "source")).isEqualTo("command-line");
        assertThat(
                        JsonMaps.text(
                                JsonMaps.object(changes, "settings.motor_drive_current"), "source"))
                .isEqualTo("proposals.rain");
        assertThat(JsonMaps.object(asked, "nominal")).isEqualTo(JsonMaps.object(said, "nominal"));
        assertThat(said).doesNotContainKey("changes");
    }

    @ParameterizedTest
    @ValueSource(strings = {"pack_regen_current", "charge_to=5%..20%/3"})
    void everyQuestionIsAskedInTheSituation(String question) {
        String[] options =
                question.contains("=")
                        ? new String[] {"--for", "motor_brake_current", "--against", question}
                        : new String[] {"--for", question};
        CommandRun asked = run("solve", rainy, and(ASKED, options));
        CommandRun said = run("solve", written, List.of(options));
        assertThat(asked.err()).isEmpty();
        assertThat(flowing(asked).replaceFirst("In the situation asked for: .*? A\\. ", ""))
                .isEqualTo(flowing(said));
    }

    @Test
    void aWorksheetInASituationIsThatOfAFileThatSaysSo() {
        CommandRun asked = run("worksheet", rainy, List.of(ASKED));
        CommandRun said = run("worksheet", written, List.of());
        assertThat(asked.err()).isEmpty();
        assertThat(asked.status()).isEqualTo(said.status());
        assertThat(flowing(asked).replaceFirst("In the situation asked for: .*? A\\. ", ""))
                .isEqualTo(flowing(said));
    }

    @Test
    void theInputsOfAWorksheetTellWhereEachCameFrom() {
        Map<String, Object> sheet =
                JsonMaps.read(run("worksheet", rainy, and(ASKED, "--format", "json")).out());
        Map<String, Object> inputs = JsonMaps.object(sheet, "inputs");
        assertThat(source(inputs, "use.charge_from")).isEqualTo("command-line");
        assertThat(source(inputs, "use.pack_temperature")).isEqualTo("proposals.rain");
        assertThat(source(inputs, "use.charge_to")).isEqualTo("build-file");
        assertThat(JsonMaps.number(JsonMaps.object(inputs, "use.charge_from"), "value"))
                .isEqualTo(0.9);
    }

    private static String source(Map<String, Object> inputs, String key) {
        return JsonMaps.text(JsonMaps.object(inputs, key), "source");
    }

    @ParameterizedTest
    @ValueSource(strings = {"motor-brake-current", "range"})
    void anExplanationInASituationNamesWhatWasAskedFor(String word) {
        CommandRun asked = run("explain", rainy, and(ASKED, word));
        CommandRun said = run("explain", written, List.of(word));
        assertThat(asked.err()).isEmpty();
        assertThat(flowing(asked)).contains("In the situation asked for: use.charge_from 90 %");
        assertThat(
                        flowing(asked)
                                .replaceFirst("In the situation asked for: .*? A\\. ", "")
                                .replaceAll(", (command-line|proposals\\.rain)", ""))
                .isEqualTo(flowing(said));
    }

    @Test
    void bothSidesOfACheckAreJudgedInTheUseAskedFor() {
        BuildText board = BuildText.of(Example.TRAIL_BOARD);
        board.replace("use", "charge_from", "charge_from = \"85 %\"");
        String fuller = builds.put("fuller", board.text() + RAIN);
        List<String> harder = List.of("--with", "motor_brake_current=38A");
        CommandRun asked =
                run(
                        "check",
                        rainy,
                        and(harder.toArray(String[]::new), "--with", "charge_from=85%"));
        String told = "Both sides are judged in the use asked for: use.charge_from 85 %. ";
        assertThat(flowing(asked)).contains(told);
        assertThat(flowing(asked).replace(told, ""))
                .isEqualTo(flowing(run("check", fuller, harder)));
        assertThat(flowing(run("check", rainy, harder))).doesNotContain("Both sides are judged");
    }

    @Test
    void aSpeedCapThatIsTriedIsFollowedByTheUse() {
        BuildText board = BuildText.of(Example.TRAIL_BOARD);
        board.remove("use", "speed_max");
        String derived = builds.put("derived", board.text());
        board.replace("settings", "speed_cap", "speed_cap = \"20 km/h\"");
        String slow = builds.put("slow", board.text());
        assertThat(derivedSpeed(derived)).isCloseTo(32.0 / 3.6, within(1e-9));
        Map<String, Object> tried =
                JsonMaps.read(
                        run(
                                        "worksheet",
                                        derived,
                                        List.of("--with", "speed_cap=20km/h", "--format", "json"))
                                .out());
        assertThat(speed(tried)).isCloseTo(20.0 / 3.6, within(1e-9));
        assertThat(JsonMaps.text(tried, "verdict"))
                .isEqualTo(JsonMaps.text(sheet(slow), "verdict"));
        assertThat(JsonMaps.list(tried, "stops")).isEqualTo(JsonMaps.list(sheet(slow), "stops"));
    }

    private static Map<String, Object> sheet(String build) {
        return JsonMaps.read(run("worksheet", build, List.of("--format", "json")).out());
    }

    private static double derivedSpeed(String build) {
        return speed(sheet(build));
    }

    private static double speed(Map<String, Object> sheet) {
        return JsonMaps.number(
                JsonMaps.object(JsonMaps.object(sheet, "inputs"), "use.speed_max"), "value");
    }

    @Test
    void aTypedUseHoldsForEveryColumnAndTypedSettingsMakeOneMore() {
        BuildText board = BuildText.of(Example.TRAIL_BOARD);
        board.replace("use", "charge_from", "charge_from = \"85 %\"");
        String fuller =
                builds.put(
                        "fuller",
                        board.text() + "\n[proposals.tried]\nmotor_brake_current = \"33 A\"\n");
        String[] rows = {"--only", "verdict,stop-dry,safe-charge"};
        CommandRun asked =
                run(
                        "compare",
                        rainy,
                        and(
                                rows,
                                "firmer-brake",
                                "--with",
                                "motor_brake_current=33A",
                                "--with",
                                "use.charge_from=85%"));
        CommandRun said = run("compare", fuller, and(rows, "firmer-brake", "tried"));
        assertThat(asked.err()).isEmpty();
        assertThat(asked.status()).isEqualTo(said.status());
        String told = "All are judged in the use asked for: use.charge_from 85 %. ";
        assertThat(flowing(asked)).contains(told);
        assertThat(flowing(asked).replace(told, "").replace("as asked", "tried"))
                .isEqualTo(flowing(said));
    }

    @Test
    void aUseThatIsTypedMakesNoColumn() {
        String[] options = {"firmer-brake", "--only", "verdict", "--format", "csv"};
        String columns =
                run("compare", rainy, and(options, "--with", "charge_from=85%")).outLines().get(0);
        assertThat(columns).isEqualTo(run("compare", rainy, List.of(options)).outLines().get(0));
        assertThat(run("compare", rainy, and(options, "--proposal", "rain")).outLines().get(0))
                .contains("as asked");
    }

    @Test
    void aProposalWithAUseOfItsOwnIsComparedInIt() {
        String[] options = {"rain", "--only", "verdict"};
        CommandRun plain = run("compare", rainy, List.of(options));
        assertThat(flowing(plain))
                .contains(
                        "rain has a use of its own: use.charge_from 95 %, use.pack_temperature"
                                + " 13 to 25 °C.");
        assertThat(flowing(run("compare", rainy, and(options, "--with", "charge_from=85%"))))
                .contains("All are judged in the use asked for: use.charge_from 85 %.")
                .contains("rain has a use of its own: use.pack_temperature 13 to 25 °C.");
    }

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "SCOOTER")
    void withNothingNewTheSituationIsTheFile(Example example) {
        String file = example.json();
        double emptiest =
                JsonMaps.number(
                        JsonMaps.object(JsonMaps.read(file), "inputs", "use.charge_to"), "value");
        String[] same = {"--with", "use.charge_to=" + emptiest, "--format", "json"};
        String typed = run("worksheet", example.path(), List.of(same)).out();
        assertThat(typed).contains("\"command-line\"");
        assertThat(typed.replace("\"command-line\"", "\"build-file\"")).isEqualTo(file);
    }

    @Test
    void theCornerOfTheTolerancesIsThatOfTheChangedVehicle() {
        String tour = BuildText.of(Example.TOUR_BOARD).text();
        BuildText changed = BuildText.of(Example.TOUR_BOARD);
        changed.replace("use", "charge_from", "charge_from = \"97 %\"");
        changed.replace("settings", "motor_brake_current", "motor_brake_current = \"29 A\"");
        String[] json = {"--format", "json"};
        String[] asked = {"--with", "charge_from=97%", "--with", "motor_brake_current=29A"};
        Map<String, Object> typed =
                JsonMaps.read(run("worksheet", builds.put("tour", tour), and(json, asked)).out());
        Map<String, Object> said = sheet(builds.put("changed", changed.text()));
        assertThat(JsonMaps.object(typed, "tolerances"))
                .isEqualTo(JsonMaps.object(said, "tolerances"));
        assertThat(typed.get("verdict")).isEqualTo(said.get("verdict"));
    }

    @Test
    void aTypedValueHasNoToleranceAnyMore() {
        BuildText board = BuildText.of(Example.TRAIL_BOARD);
        board.replace("use", "charge_from", "charge_from = \"85 % ± 5 %\"");
        String doubtful = builds.put("doubtful", board.text());
        assertThat(sheet(doubtful)).containsKey("tolerances");
        assertThat(
                        JsonMaps.read(
                                run(
                                                "worksheet",
                                                doubtful,
                                                List.of(
                                                        "--with",
                                                        "charge_from=85%",
                                                        "--format",
                                                        "json"))
                                        .out()))
                .doesNotContainKey("tolerances");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "use.charge_form=90% | use.charge_form | use.charge_from",
                "charge_form=90% | charge_form | use.charge_from",
                "settings.motor_brake_curent=9A | motor_brake_curent | motor_brake_current",
                "pack.temperature=5°C | no setting and no key of [use] | use.pack_temperature",
                "use.charge_from=90A | use.charge_from | --with use.charge_from=100%",
                "charge_from=101% | use.charge_from | 1 to 100 %",
                "use.pack_temperature=5°C | use.pack_temperature | pair",
                "speed_max=20 | use.speed_max | --with use.speed_max=25km/h",
            })
    void refusesAChangeThatItCannotRead(String change, String named, String helped) {
        for (String command : List.of("worksheet", "check", "compare")) {
            CommandRun run = run(command, rainy, List.of("--with", change));
            assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
            assertThat(run.err()).contains("--with", named, helped).doesNotContain("in quotes");
        }
    }

    @Test
    void aKeyGivenUnderBothItsNamesIsGivenTwice() {
        CommandRun run =
                run(
                        "check",
                        rainy,
                        List.of("--with", "charge_from=85%", "--with", "use.charge_from=90%"));
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("use.charge_from: this is given twice");
    }

    @Test
    void whatDoesNotGoWithTheFileIsToldUnderTheKeyThatWasTyped() {
        CommandRun run =
                run(
                        "solve",
                        rainy,
                        and(ASKED, "--for", "motor_brake_current", "--with", "charge_to=92%"));
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err())
                .contains("1 problem", "  use.charge_to: ", "0.92", "0.9", "--with use.charge_to=");
        CommandRun low = run("worksheet", rainy, List.of("--with", "use.charge_from=5%"));
        assertThat(low.err())
                .contains("1 problem", "  use.charge_from: ", "--with use.charge_from=")
                .doesNotContain("line ");
    }

    @ParameterizedTest
    @CsvSource({
        "motor_brake_current, motor_brake_current=20A",
        "charge_from, use.charge_from=90%",
        "speed_cap, speed_max=20km/h"
    })
    void whatIsSolvedForCannotBeGivenToo(String key, String change) {
        CommandRun run = run("solve", rainy, List.of("--for", key, "--with", change));
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("--with", "--for");
    }

    @Test
    void whatVariesCannotBeGivenToo() {
        CommandRun run =
                run(
                        "solve",
                        rainy,
                        and(
                                ASKED,
                                "--for",
                                "motor_brake_current",
                                "--against",
                                "charge_from=80%..100%/3"));
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("--with gives use.charge_from", "--against");
    }

    @ParameterizedTest
    @ValueSource(strings = {"worksheet", "check", "compare", "solve", "explain"})
    void everyCommandTellsTheProposalsThatThereAre(String command) {
        List<String> options = new ArrayList<>(List.of("--proposal", "snow"));
        if (command.equals("solve")) {
            options.addAll(List.of("--for", "motor_brake_current"));
        } else if (command.equals("explain")) {
            options.add("range");
        }
        CommandRun run = run(command, rainy, options);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("\"snow\"").contains("firmer-brake, ", ", rain");
    }

    /** A taper that the file sets is taken away by a word, in a proposal as on the command line. */
    @Test
    void aTaperMayBeSaidNotToBeSet() {
        BuildText bare = BuildText.of(Example.TRAIL_BOARD);
        bare.remove("settings", "low_voltage_taper");
        String without = builds.put("bare", bare.text());
        String proposing =
                builds.put(
                        "proposing",
                        BuildText.of(Example.TRAIL_BOARD).text()
                                + "\n[proposals.bare]\nlow_voltage_taper = \"none\"\n");
        Map<String, Object> expected = recommended(json("worksheet", without));
        assertThat(
                        recommended(
                                json(
                                        "worksheet",
                                        Example.TRAIL_BOARD.path(),
                                        "--with",
                                        "low_voltage_taper=none")))
                .isEqualTo(expected);
        assertThat(recommended(json("worksheet", proposing, "--proposal", "bare")))
                .isEqualTo(expected);
        assertThat(
                        CommandRun.of(
                                        "worksheet",
                                        Example.TRAIL_BOARD.path(),
                                        "--with",
                                        "speed_cap=none")
                                .status())
                .isEqualTo(2);
    }

    private static Map<String, Object> json(String... arguments) {
        List<String> all = new ArrayList<>(List.of(arguments));
        all.addAll(List.of("--format", "json"));
        CommandRun run = CommandRun.of(all.toArray(String[]::new));
        assertThat(run.status()).as(run.err()).isIn(0, 1);
        return JsonMaps.read(run.out());
    }

    /** All that does not tell where the values came from. */
    private static Map<String, Object> recommended(Map<String, Object> sheet) {
        Map<String, Object> told = new TreeMap<>(sheet);
        told.keySet().removeAll(List.of("changes", "inputs", "title"));
        return told;
    }
}
