package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CheckCommandTest {

    @TempDir Path folder = Path.of("");

    private static final String HARDER = "motor_brake_current=38A";
    private static final Pattern USELESS_ABOVE =
            Pattern.compile("Above (\\d+(?:\\.\\d+)?) km/h\\s[^.]*useless");

    /** In full, where it is text. */
    private static CommandRun check(String... options) {
        return Answers.of(
                Stream.of(
                                Stream.of("check", Example.TRAIL_BOARD.path()),
                                Arrays.stream(options),
                                Arrays.asList(options).contains("--format")
                                        ? Stream.<String>of()
                                        : Stream.of("--show", "all"))
                        .flatMap(each -> each)
                        .toArray(String[]::new));
    }

    /** The text with every run of blanks as one, so that a broken line does not matter. */
    private static String flowing(CommandRun run) {
        return run.out().replaceAll("\\s+", " ");
    }

    @Test
    void answersFirst() {
        CommandRun run = check("--with", HARDER);
        assertThat(run).isEqualTo(new CommandRun(0, run.out(), ""));
        assertThat(run.outLines().subList(0, 3)).anyMatch(line -> line.startsWith("Answer: "));
    }

    @Test
    void saysWhatTheRaiseBuysAndWhereItIsUseless() {
        String text = flowing(check("--with", HARDER));
        assertThat(text).containsPattern("\\d+\\.\\d+ m\\b");
        Matcher useless = USELESS_ABOVE.matcher(text);
        assertThat(useless.find()).as(text).isTrue();
        assertThat(Double.parseDouble(useless.group(1))).isBetween(5.0, 32.0);
    }

    @Test
    void whatIsNotRaisedIsNotUseless() {
        assertThat(flowing(check("--with", "motor_brake_current=25A"))).doesNotContain("useless");
        assertThat(flowing(check("--with", "motor_brake_current=30A"))).doesNotContain("useless");
    }

    @Test
    void refusesWhatIsOutsideTheLimits() {
        CommandRun run = check("--with", "motor_brake_current=60A");
        assertThat(run).isEqualTo(new CommandRun(1, run.out(), ""));
        assertThat(run.outLines().subList(0, 3)).anyMatch(line -> line.contains("NOT SAFE"));
    }

    @Test
    void isStrictWhereAsked() {
        CommandRun run = check("--with", HARDER, "--strict");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out()).isEqualTo(check("--with", HARDER).out());
    }

    @Test
    void takesAProposalOfTheFile() {
        CommandRun run = check("--proposal", "firmer-brake");
        assertThat(run.err()).isEmpty();
        assertThat(run)
                .isEqualTo(check("--with", "motor_brake_current=42A"))
                .isNotEqualTo(check("--with", HARDER));
    }

    @Test
    void settingsOnTheCommandLineGoBeforeThoseOfAProposal() {
        assertThat(check("--proposal", "firmer-brake", "--with", HARDER))
                .isEqualTo(check("--with", HARDER));
        assertThat(check("--proposal", "firmer-brake", "--with", "pack_regen_current=12A"))
                .isEqualTo(check("--proposal", "firmer-brake-more-regen"));
    }

    @Test
    void takesSeveralSettingsTogether() {
        CommandRun run = check("--with", HARDER, "--with", "pack_regen_current=9A");
        assertThat(run.status()).isIn(0, 1);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("38.0 A").contains("9.0 A");
        assertThat(run).isNotEqualTo(check("--with", HARDER));
        assertThat(run).isEqualTo(check("--with", "pack_regen_current=9A", "--with", HARDER));
    }

    @Test
    void takesAPairOfVoltages() {
        CommandRun run = check("--with", "high_voltage_taper=39.7V,42V");
        assertThat(run.status()).isIn(0, 1);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("39.7").contains("42");
    }

    /** What check and solve say of the highest values over the whole charge is the same. */
    @ParameterizedTest
    @EnumSource
    void agreesWithSolve(Example example) {
        Map<String, Object> highest =
                JsonMaps.object(json(example.path(), "motor_brake_current=20A"), "highest");
        for (String key : List.of("motor_brake_current", "pack_regen_current")) {
            Map<String, Object> own = JsonMaps.object(JsonMaps.object(highest, key), "throughout");
            String path =
                    key.equals("pack_regen_current")
                            ? with(example, "motor_brake_current", "20 A")
                            : example.path();
            Map<String, Object> answers =
                    JsonMaps.read(
                            CommandRun.of("solve", path, "--for", key, "--format", "json").out());
            Map<String, Object> solved =
                    JsonMaps.object(
                            answers,
                            answers.containsKey("unfavourable") ? "unfavourable" : "nominal");
            assertThat(JsonMaps.text(own, "answer")).isEqualTo(JsonMaps.text(solved, "answer"));
            assertThat(JsonMaps.text(own, "bound_by")).isEqualTo(JsonMaps.text(solved, "bound_by"));
            if (solved.containsKey("value")) {
                assertThat(JsonMaps.number(own, "value_A"))
                        .isCloseTo(JsonMaps.number(solved, "value"), within(1e-6));
            }
        }
    }

    private static Map<String, Object> json(String build, String change) {
        CommandRun run = CommandRun.of("check", build, "--with", change, "--format", "json");
        assertThat(run.err()).isEmpty();
        return JsonMaps.read(run.out());
    }

    private String with(Example example, String key, String value) {
        BuildText text = BuildText.of(example);
        text.replace("settings", key, key + " = \"" + value + "\"");
        return new BuildFolder(folder).put("changed", text);
    }

    /** Solved again in a file whose fullest charge is the one to which the present is safe. */
    @Test
    void theHighestValueWhereThePresentIsSafeIsThatOfAFileUsedOnlySoFar() {
        BuildText board = BuildFolder.exactBoard();
        String path = new BuildFolder(folder).put("exact", board);
        Map<String, Object> brake =
                JsonMaps.object(
                        JsonMaps.object(json(path, HARDER), "highest"), "motor_brake_current");
        Map<String, Object> part = JsonMaps.object(brake, "present_is_safe");
        board.replace(
                "use", "charge_from", "charge_from = " + JsonMaps.number(part, "charge_from"));
        String less = new BuildFolder(folder).put("less", board);
        Map<String, Object> solved =
                JsonMaps.object(
                        JsonMaps.read(
                                CommandRun.of(
                                                "solve",
                                                less,
                                                "--for",
                                                "motor_brake_current",
                                                "--format",
                                                "json")
                                        .out()),
                        "nominal");
        assertThat(JsonMaps.number(JsonMaps.object(brake, "where_present_is_safe"), "value_A"))
                .isCloseTo(JsonMaps.number(solved, "value"), within(1e-6))
                .isGreaterThan(JsonMaps.number(JsonMaps.object(brake, "throughout"), "value_A"));
    }

    @Test
    void tellsBothHighestValuesAndWhatTheMotorAloneBears() {
        String text = flowing(check("--with", HARDER));
        assertThat(text)
                .containsPattern(
                        "Used up to [0-9.]+ % charge, where the present settings are safe, the"
                                + " highest motor brake current within all limits is [0-9.]+ A")
                .contains("over the whole charge in use it is")
                .contains("Motor, controller, tyres and rider alone would bear");
    }

    @Test
    void eachIsToldFromItsOwnHighestSpeed() {
        String text = flowing(check("--with", "speed_cap=40km/h"));
        assertThat(text)
                .contains("From its own highest speed, 40.0 km/h, the proposal stops within")
                .contains("from 32.0 km/h it now stops within")
                .doesNotContain("by 0.0 m");
    }

    @Test
    void aChangeThatBuysNothingLeavesTheStopAsItIs() {
        assertThat(flowing(check("--with", "motor_drive_current=47A")))
                .contains("leaves the stop at")
                .doesNotContain("by 0.0 m");
    }

    @Test
    void looksAtColdCellsWetRoadsAndAPackThatRefuses() {
        String text = flowing(check("--with", HARDER));
        assertThat(text)
                .contains("into the pack, cells at 20 °C", "into the pack, cells at 12 °C")
                .contains("dry, dry, wet, wet,")
                .contains("full: at 100 %", "cold: cells at 12 °C", "tripped: no electric brake");
    }

    @Test
    void theFirstStopIsToldWithItsProtectionOpenedToo() {
        assertThat(flowing(check("--with", HARDER)))
                .contains("stop with it opened", "stop if nothing opens");
        Map<String, Object> json = json(Example.TRAIL_BOARD.path(), HARDER);
        Map<String, Object> first =
                JsonMaps.objects(JsonMaps.object(json, "first_stop"), "proposed").get(0);
        double opened = JsonMaps.number(JsonMaps.object(first, "opened"), "distance_m");
        assertThat(opened).isGreaterThan(2.0 * JsonMaps.number(first, "distance_m"));
    }

    @Test
    void theTaperIsPartOfWhatIsSent() {
        CommandRun run = check("--with", "high_voltage_taper=38V,41V");
        Map<String, Object> json = json(Example.TRAIL_BOARD.path(), "high_voltage_taper=38V,41V");
        assertThat(run.err()).isEmpty();
        Map<String, Object> first =
                JsonMaps.objects(JsonMaps.object(json, "first_stop"), "proposed").get(0);
        assertThat(JsonMaps.number(first, "pack_current_A")).isZero();
        List<String> lines = run.outLines();
        int row = 0;
        while (!lines.get(row).contains("100 %  present asked")) {
            row++;
        }
        assertThat(lines.get(row + 3)).contains("proposed sent").doesNotContain("!");
    }

    @Test
    void aWindingThatIsNotKnownIsNotSaidToLastForEver() {
        BuildText board = BuildText.of(Example.TRAIL_BOARD);
        board.remove("motor", "winding_to_case");
        CommandRun run =
                CommandRun.of(
                        "check",
                        new BuildFolder(folder).put("unknown", board),
                        "--with",
                        HARDER,
                        "--show",
                        "all");
        assertThat(run.out()).contains("not known").doesNotContain("never  ");
    }

    @Test
    void jsonHoldsWhatTheTextTells() {
        Map<String, Object> json = json(Example.TRAIL_BOARD.path(), HARDER);
        assertThat(json)
                .containsEntry("schema", "brakewright.check/1")
                .containsKeys("verdict", "present", "proposed", "stops", "findings");
        Map<String, Object> stops = JsonMaps.object(json, "stops");
        List<Map<String, Object>> dry = JsonMaps.objects(JsonMaps.object(stops, "dry"), "proposed");
        List<Map<String, Object>> wet = JsonMaps.objects(JsonMaps.object(stops, "wet"), "proposed");
        assertThat(dry).hasSameSizeAs(wet);
        for (int i = 0; i < dry.size(); i++) {
            assertThat(JsonMaps.number(wet.get(i), "distance_m"))
                    .isGreaterThanOrEqualTo(JsonMaps.number(dry.get(i), "distance_m") - 1e-9);
        }
        assertThat(
                        JsonMaps.number(
                                JsonMaps.object(JsonMaps.object(json, "proposed"), "settings"),
                                "motor_brake_current_A"))
                .isEqualTo(38.0);
    }

    @ParameterizedTest
    @EnumSource
    void keepsLinesWithinAHundredColumns(Example example) {
        for (String change : List.of(HARDER, "high_voltage_taper=39.7V,42V", "speed_cap=20km/h")) {
            for (String units : List.of("si", "imperial")) {
                CommandRun run =
                        CommandRun.of(
                                "check",
                                example.path(),
                                "--with",
                                change,
                                "--units",
                                units,
                                "--show",
                                "all");
                assertThat(run.status()).as(run.err()).isIn(0, 1);
                assertThat(run.outLines())
                        .isNotEmpty()
                        .allSatisfy(line -> assertThat(line.length()).as(line).isLessThan(101));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void plainIsPureAsciiWithEveryLetterKnown(Example example) {
        assertThat(
                        CommandRun.of(
                                        "check",
                                        example.path(),
                                        "--with",
                                        HARDER,
                                        "--plain",
                                        "--show",
                                        "all")
                                .out())
                .matches("[\\n\\x20-\\x7e]+")
                .doesNotContain("?");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "motor_brake_curent=38A | motor_brake_curent | motor_brake_current",
                "no_such_setting=1A | no_such_setting | motor_brake_current",
                "motor_brake_current=38V | motor_brake_current | A",
                "motor_brake_current=38 | motor_brake_current | A",
                "motor_brake_current= | motor_brake_current | A",
                "motor_brake_current | motor_brake_current | A",
                "motor_brake_current=-5A | motor_brake_current | A",
                "motor_brake_current=NaN A | motor_brake_current | A",
                "high_voltage_taper=42V | high_voltage_taper | pair",
                "high_voltage_taper=42V,39.7V | high_voltage_taper | V",
                "low_voltage_taper=29V,35V | low_voltage_taper | V",
                "=38A | setting | motor_brake_current",
                "motor_brake_current=4,2A | comma | point",
                "motor_brake_current=38A±5% | tolerance | --with motor_brake_current=30A",
                "low_voltage_taper=39,5V,42V | no pair of values | decimals take a point",
                "low_voltage_taper=29V,35V | low_voltage_taper: | --with low_voltage_taper=33V,30V",
                "speed_cap=999km/h | \"999km/h\" is outside | 0.36 to 360 km/h",
            })
    void refusesAChangeThatItCannotRead(String change, String named, String helped) {
        CommandRun run = check("--with", change);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("--with").contains(named).contains(helped);
        assertThat(run.err()).doesNotContain("proposals.").doesNotContain("in quotes");
    }

    @Test
    void refusesASettingThatIsGivenTwice() {
        CommandRun run = check("--with", "speed_cap=20km/h", "--with", "speed_cap=25km/h");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("1 problem").contains("speed_cap: this is given twice");
    }

    @Test
    void complainsOfAllChangesAtOnce() {
        CommandRun run =
                check("--with", "motor_brake_curent=38A", "--with", "pack_regen_current=9V");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err())
                .contains("2 problems")
                .contains("motor_brake_curent")
                .contains("pack_regen_current");
    }

    @Test
    void listsTheProposalsWhereItDoesNotKnowOne() {
        CommandRun run = check("--proposal", "no-such-proposal");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err())
                .contains("no-such-proposal")
                .contains("firmer-brake", "firmer-brake-more-regen");
    }

    @Test
    void asksForSomethingToCheck() {
        CommandRun run = check();
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("--with").contains("--proposal");
    }

    @Test
    void namesAFileThatIsNotThere() {
        CommandRun run = CommandRun.of("check", "no-such-build.toml", "--with", HARDER);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("no-such-build.toml");
    }

    /** What the text tells of currents, the rider, heat and the slope stands in JSON, too. */
    @Test
    void jsonTellsCurrentsFeelHeatAndDescent() {
        String[] asked = {"check", Example.TRAIL_BOARD.path(), "--with", "motor_brake_current=42A"};
        String text = check("--with", "motor_brake_current=42A").out();
        Map<String, Object> json =
                JsonMaps.read(
                        CommandRun.of(
                                        Stream.concat(
                                                        Stream.of(asked),
                                                        Stream.of("--format", "json"))
                                                .toArray(String[]::new))
                                .out());
        List<Map<String, Object>> currents = JsonMaps.objects(json, "pack_current_by_charge");
        Map<String, Object> full =
                currents.stream()
                        .filter(row -> JsonMaps.number(row, "charge") == 1.0)
                        .findFirst()
                        .orElseThrow();
        Map<String, Object> sent = JsonMaps.object(full, "proposed");
        assertThat(JsonMaps.number(sent, "current_A")).isCloseTo(11.0, within(1e-9));
        assertThat(JsonMaps.number(sent, "cell_current_A")).isCloseTo(2.75, within(1e-9));
        assertThat(text)
                .contains("into each cell", "2.8 A")
                .contains(
                        String.format(
                                Locale.ROOT, "%.2f V", JsonMaps.number(sent, "cell_voltage_V")));
        Map<String, Object> feel = JsonMaps.object(json, "feel_g");
        assertThat(text)
                .contains(
                        String.format(
                                Locale.ROOT,
                                "%.2f g",
                                JsonMaps.number(JsonMaps.object(feel, "proposed"), "felt")));
        List<Map<String, Object>> stops =
                JsonMaps.objects(JsonMaps.object(json, "winding_after_stops"), "proposed");
        assertThat(text)
                .contains(
                        String.format(
                                Locale.ROOT,
                                "%.0f °C",
                                JsonMaps.number(stops.get(1), "winding_C")));
        assertThat(JsonMaps.text(JsonMaps.object(json, "steepest_descent", "proposed"), "held"))
                .isEqualTo("no");
    }

    /** Below some charge one limit holds, but another is exceeded at every charge. */
    @Test
    void nothingIsCalledSafeBesideWhatIsExceededWhateverTheCharge() {
        String page =
                CommandRun.of(
                                "check",
                                "examples/vineyard-trail-board.toml",
                                "--with",
                                "motor_brake_current=38A",
                                "--with",
                                "pack_regen_current=20A")
                        .out();
        assertThat(page).contains("Exceeded", "Besides, brake only below");
        assertThat(page.substring(0, page.indexOf("\n\n", page.indexOf("Answer"))))
                .doesNotContain("is safe");
    }

    /** Packs that follow one that opens are no matter of either verdict. */
    @Test
    void aDangerOfAnotherKindIsNamedWhereTheSetIsRecommended() {
        String board = "examples/salt-flat-tour-board.toml";
        assertThat(Answers.of("worksheet", board).out().replaceAll("\\s+", " "))
                .contains("A danger of another kind is left, which check tells.");
        assertThat(Answers.of("propose", board).out().replaceAll("\\s+", " "))
                .contains("A danger of another kind is left, which check tells.");
        assertThat(Answers.of("worksheet", "examples/vineyard-trail-board.toml").out())
                .doesNotContain("another kind");
    }

    /** Cells that may neither give nor take anything are within limits, and of no use. */
    @Test
    void aSetThatDoesNotDriveSaysSo(@TempDir Path folder) throws IOException {
        Path frozen =
                Files.writeString(
                        folder.resolve("frozen.toml"),
                        Files.readString(Path.of("examples", "vineyard-trail-board.toml"))
                                .replace("[\"12 °C\", \"38 °C\"]", "[\"-25 °C\", \"-22 °C\"]")
                                .replace("ambient = \"20 °C\"", "ambient = \"-22 °C\""));
        assertThat(CommandRun.of("worksheet", frozen.toString()).out().replaceAll("\\s+", " "))
                .contains("It does not drive: no current may leave the pack.");
    }

    /** Slow and with much current the brake takes power, and joints of 5 Ω let through little. */
    @Test
    void aBrakeThatWantsMoreThanThePackHasIsToldSo(@TempDir Path folder) throws IOException {
        Path weak =
                Files.writeString(
                        folder.resolve("weak.toml"),
                        Files.readString(Path.of("examples", "vineyard-trail-board.toml"))
                                .replaceFirst(
                                        "\\[pack\\]", "[pack]\njoint_resistance = \"5.0 ohm\""));
        CommandRun run =
                CommandRun.of(
                        "check",
                        weak.toString(),
                        "--show",
                        "brake,heat",
                        "--with",
                        "speed_cap=100.0m/s",
                        "--with",
                        "motor_brake_current=4521A");
        assertThat(run.err()).doesNotContain("fault");
        assertThat(run.out()).contains("too much");
    }
}
