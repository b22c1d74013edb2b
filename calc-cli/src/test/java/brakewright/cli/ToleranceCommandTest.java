package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Build files whose values carry tolerances, through the command line. */
class ToleranceCommandTest {

    @TempDir Path folder = Path.of("");

    private BuildFolder builds = new BuildFolder(folder);

    @BeforeEach
    void openFolder() {
        builds = new BuildFolder(folder);
    }

    private static CommandRun worksheet(String build, String... options) {
        return CommandRun.of(
                Stream.concat(Stream.of("worksheet", build), Stream.of(options))
                        .toArray(String[]::new));
    }

    private static Map<String, Object> json(String build, String... options) {
        CommandRun run =
                worksheet(
                        build,
                        Stream.concat(Stream.of("--format", "json"), Stream.of(options))
                                .toArray(String[]::new));
        assertThat(run.err()).isEmpty();
        return JsonMaps.read(run.out());
    }

    /** The tyres hold 32.66 A at nominal inputs and 31.55 A at the unfavourable corner. */
    private String outsideAtTheCorner() {
        return builds.tourBoard(
                "corner", "motor_brake_current = \"26 A\"", "motor_brake_current = \"32 A\"");
    }

    private static String with(String table, String key, String value) {
        BuildText board = BuildFolder.exactBoard();
        board.replace(table, key, key + " = " + value);
        return board.text();
    }

    /** Each screen says which of its numbers are nominal; without tolerances all are. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "worksheet BUILD",
                "worksheet BUILD --show pack",
                "worksheet BUILD --show all",
                "check BUILD --with motor_brake_current=27A",
                "check BUILD --with motor_brake_current=27A --show pack",
                "explain BUILD motor-brake-current",
                "explain BUILD pack-regen-current",
                "explain BUILD range"
            })
    void everyScreenTellsNominalValuesApart(String command) {
        assertThat(words(told(command, BuildFolder.TOUR_BOARD)))
                .containsIgnoringCase("at nominal values");
        assertThat(words(told(command, Example.TRIKE.path()))).doesNotContain("nominal values");
    }

    private static String told(String command, String build) {
        return Answers.of(command.replace("BUILD", build).split(" ")).out();
    }

    private static String words(String out) {
        return out.replaceAll("\\s+", " ");
    }

    /** What the brake lacks stands beside it; it is no warning of another kind. */
    @Test
    void aWeakBrakeIsNoWarningOfAnotherKind() {
        assertThat(words(told("compare BUILD", BuildFolder.TOUR_BOARD)))
                .contains("weak at 92 %")
                .doesNotContain("of another kind");
    }

    @Test
    void theVerdictAndTheStatusAreThoseOfTheUnfavourableCorner() {
        String path = outsideAtTheCorner();
        CommandRun run = worksheet(path);
        assertThat(run).isEqualTo(new CommandRun(1, run.out(), ""));
        assertThat(run.outLines().get(1))
                .contains("OUTSIDE LIMITS")
                .contains("unfavourable corner");
        Map<String, Object> json = json(path);
        assertThat(JsonMaps.text(json, "verdict")).isEqualTo("outside-limits");
        assertThat(JsonMaps.text(JsonMaps.object(json, "tolerances"), "verdict_nominal"))
                .isEqualTo("within-limits");
        assertThat(CommandRun.of("check", path, "--with", "motor_brake_current=32A").status())
                .isEqualTo(1);
        assertThat(CommandRun.of("check", path, "--with", "motor_brake_current=31A").status())
                .isZero();
    }

    @Test
    void theCornerWrittenIntoTheFileHasTheSameVerdict() {
        Map<String, Object> tolerances =
                JsonMaps.object(
                        JsonMaps.read(
                                CommandRun.worksheet(
                                                with("motor", "resistance", "\"68 mΩ ± 10 %\""),
                                                "--format",
                                                "json")
                                        .out()),
                        "tolerances");
        Map<String, Object> worst = JsonMaps.object(tolerances, "worst");
        Map<String, Object> resistance = JsonMaps.objects(worst, "values").get(0);
        assertThat(JsonMaps.text(resistance, "key")).isEqualTo("motor.resistance");
        assertThat(JsonMaps.number(resistance, "value")).isCloseTo(0.0748, within(1e-12));
        CommandRun at =
                CommandRun.worksheet(
                        with("motor", "resistance", "\"74.8 mΩ\""), "--format", "json");
        assertThat(at.status()).isZero();
        assertThat(JsonMaps.text(JsonMaps.read(at.out()), "verdict")).isEqualTo("conditional");
    }

    @Test
    void tellsEveryInputWithItsRange() {
        Map<String, Object> tolerances =
                JsonMaps.object(JsonMaps.read(Example.TOUR_BOARD.json()), "tolerances");
        assertThat(tolerances)
                .containsOnlyKeys(
                        "verdict_nominal", "verdict_best", "worst", "best", "results", "inputs");
        List<Map<String, Object>> inputs = JsonMaps.objects(tolerances, "inputs");
        assertThat(inputs.stream().map(each -> JsonMaps.text(each, "key")))
                .containsExactlyInAnyOrder(
                        "rider.mass",
                        "vehicle.rolling_resistance",
                        "vehicle.drag_area",
                        "motor.resistance");
        for (Map<String, Object> input : inputs) {
            assertThat(input)
                    .containsOnlyKeys(
                            "key",
                            "unit",
                            "nominal",
                            "low",
                            "high",
                            "severity_at_low",
                            "severity_at_high",
                            "safe_charge_at_low",
                            "safe_charge_at_high",
                            "decides");
            assertThat(JsonMaps.number(input, "low")).isLessThan(JsonMaps.number(input, "nominal"));
            assertThat(JsonMaps.number(input, "high"))
                    .isGreaterThan(JsonMaps.number(input, "nominal"));
        }
    }

    @Test
    void nominalResultsLieBetweenTheWorstAndTheBest() {
        Map<String, Object> tolerances =
                JsonMaps.object(JsonMaps.read(Example.TOUR_BOARD.json()), "tolerances");
        List<Map<String, Object>> results = JsonMaps.objects(tolerances, "results");
        assertThat(results).hasSizeGreaterThan(8);
        for (Map<String, Object> result : results) {
            double worst = JsonMaps.number(result, "worst");
            double best = JsonMaps.number(result, "best");
            assertThat(JsonMaps.number(result, "nominal"))
                    .as("%s", result)
                    .isBetween(Math.min(worst, best), Math.max(worst, best));
        }
    }

    @Test
    void theSameSeedCountsTheSameCases() {
        String path = outsideAtTheCorner();
        Map<String, Object> one = cases(path, "--seed", "1");
        assertThat(cases(path)).as("without a seed").isEqualTo(one);
        assertThat(cases(path, "--seed", "1")).isEqualTo(one);
        Map<String, Object> other = cases(path, "--seed", "2");
        assertThat(shares(other)).isNotEqualTo(shares(one));
        assertThat(shares(one).stream().mapToDouble(Double::doubleValue).sum())
                .isCloseTo(1.0, within(1e-12));
        assertThat(JsonMaps.number(one, "points")).isEqualTo(77.0);
        assertThat(JsonMaps.number(one, "within")).isStrictlyBetween(0.0, 1.0);
    }

    private static Map<String, Object> cases(String path, String... options) {
        String[] all =
                Stream.concat(Stream.of("--cases", "77"), Stream.of(options))
                        .toArray(String[]::new);
        return JsonMaps.object(json(path, all), "tolerances", "cases");
    }

    private static List<Double> shares(Map<String, Object> cases) {
        return Stream.of("within", "conditional", "outside")
                .map(name -> JsonMaps.number(cases, name))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "64", "1000000"})
    void refusesToCountCasesOfAnExactFile(String count) {
        CommandRun run = worksheet(Example.TRIKE.path(), "--cases", count);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("--cases", "±");
    }

    @ParameterizedTest
    @CsvSource({
        "--cases,-1",
        "--cases,0",
        "--cases,1000001",
        "--cases,x",
        "--cases,1e3",
        "--seed,x",
        "--seed,''"
    })
    void refusesOddNumbersOfCasesAndSeeds(String option, String value) {
        CommandRun run = worksheet(BuildFolder.TOUR_BOARD, option, value);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains(option);
    }

    @Test
    void noCasesAndNoTolerancesLeaveTheOutputAsItWas() {
        CommandRun plain = Answers.of("worksheet", Example.TRIKE.path());
        assertThat(worksheet(Example.TRIKE.path(), "--seed", "9")).isEqualTo(plain);
        assertThat(plain.out()).doesNotContain("NOT KNOWN EXACTLY", "corner");
        assertThat(JsonMaps.read(Example.TRIKE.json())).doesNotContainKey("tolerances");
        String exact = BuildFolder.exactBoard().text();
        CommandRun none = CommandRun.worksheet(exact.replace("\"68 mΩ\"", "\"68 mΩ ± 0 %\""));
        assertThat(none).isEqualTo(CommandRun.worksheet(exact));
    }

    @Test
    void bothValuesOfAPairCount() {
        BuildText trike = BuildText.of(Example.TRIKE);
        trike.replace(
                "use", "pack_temperature", "pack_temperature = [\"12 °C ± 2 K\", \"32 °C ± 1 K\"]");
        trike.replace(
                "settings",
                "high_voltage_taper",
                "high_voltage_taper = [\"56.5 V ± 0.1 V\", \"58 V ± 0.1 V\"]");
        Map<String, Object> tolerances =
                JsonMaps.object(json(builds.put("pairs", trike)), "tolerances");
        List<Map<String, Object>> inputs = JsonMaps.objects(tolerances, "inputs");
        assertThat(inputs.stream().map(each -> JsonMaps.text(each, "key")))
                .containsExactlyInAnyOrder(
                        "use.pack_temperature (first)",
                        "use.pack_temperature (second)",
                        "settings.high_voltage_taper (first)",
                        "settings.high_voltage_taper (second)");
        assertThat(inputs)
                .anySatisfy(
                        each -> {
                            assertThat(JsonMaps.number(each, "low")).isEqualTo(10.0);
                            assertThat(JsonMaps.number(each, "high")).isEqualTo(14.0);
                        });
    }

    @Test
    void valuesOfOneOfSeveralPacksCount() {
        String path =
                builds.tourBoard("second", "to_air = \"1.8 K/W\"", "to_air = \"1.8 K/W ± 20 %\"");
        Map<String, Object> tolerances = JsonMaps.object(json(path), "tolerances");
        assertThat(
                        JsonMaps.objects(tolerances, "inputs").stream()
                                .filter(each -> JsonMaps.text(each, "key").equals("packs.2.to_air"))
                                .map(each -> JsonMaps.number(each, "low")))
                .singleElement()
                .satisfies(low -> assertThat(low).isCloseTo(1.44, within(1e-12)));
    }

    /** The share of charge ends at 1, an efficiency too. */
    @ParameterizedTest
    @CsvSource({
        "use, charge_from, '\"98 % ± 20 %\"', use.charge_from",
        "drive, efficiency, '\"94 % ± 50 %\"', drive.efficiency"
    })
    void whatReachesImpossibleValuesIsCutToWhatIsPossible(
            String table, String key, String value, String name) {
        Map<String, Object> tolerances =
                JsonMaps.object(json(builds.put("cut", with(table, key, value))), "tolerances");
        assertThat(JsonMaps.objects(tolerances, "inputs"))
                .singleElement()
                .satisfies(
                        input -> {
                            assertThat(JsonMaps.text(input, "key")).isEqualTo(name);
                            assertThat(JsonMaps.number(input, "high")).isEqualTo(1.0);
                        });
    }

    @Test
    void anEndlessToleranceIsCutToWhatIsPossible() {
        CommandRun run = CommandRun.worksheet(with("motor", "resistance", "\"68 mΩ ± 1e300 Ω\""));
        assertThat(run.status()).isLessThan(2);
        assertThat(run.err()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'\"68 mΩ ± \"', number with a unit",
        "'\"68 mΩ ± -5 %\"', tolerance",
        "'\"68 mΩ ± 100 %\"', tolerance",
        "'\"68 mΩ ± 5 V\"', voltage",
        "'\"68 mΩ ± ± 5 %\"', number with a unit",
        "'\"68 mΩ ± 5\"', number with a unit",
        "'\"68 mΩ ± x %\"', number with a unit",
        "'\"± 5 %\"', number with a unit"
    })
    void refusesAToleranceThatIsNone(String value, String told) {
        CommandRun run = CommandRun.worksheet(with("motor", "resistance", value));
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("motor.resistance", told);
    }

    @Test
    void refusesTolerancesThatCross() {
        CommandRun run =
                CommandRun.worksheet(
                        with("use", "pack_temperature", "[\"19 °C ± 3 K\", \"20 °C ± 4 K\"]"));
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("tolerances reach", "use.pack_temperature");
    }

    @Test
    void readsTheToleranceInPlainLetters() {
        CommandRun plain = CommandRun.worksheet(with("motor", "resistance", "\"68 mohm +- 10 %\""));
        CommandRun sign = CommandRun.worksheet(with("motor", "resistance", "\"68 mΩ ± 10 %\""));
        assertThat(plain).isEqualTo(sign);
    }

    @Test
    void fortyTolerancesAreWorkedOut() {
        String text =
                BuildFolder.exactBoard()
                        .text()
                        .replaceAll(
                                "= \"([0-9.]+) (kg|m|mm|m²|rpm/V|mΩ|µH|K/W|J/K|km/h|s)\"",
                                "= \"$1 $2 ± 1 %\"");
        CommandRun run = CommandRun.worksheet(text, "--format", "json", "--cases", "16");
        assertThat(run.status()).isLessThan(2);
        assertThat(
                        JsonMaps.objects(
                                JsonMaps.object(JsonMaps.read(run.out()), "tolerances"), "inputs"))
                .hasSizeGreaterThan(15);
    }

    /** At 1 % of it the trip would open below the emptiest cell. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "worksheet",
                "propose",
                "compare --with pack_regen_current=2A",
                "check --with pack_regen_current=2A",
                "solve --for motor_brake_current"
            })
    void tolerancesThatReachTheImpossibleAreRefusedByEveryCommand(String words) {
        BuildText file = BuildText.of(Example.TRAIL_BOARD);
        file.replace(
                "pack.protection",
                "cell_overvoltage_trip",
                "cell_overvoltage_trip = \"5.1 V ± 99 %\"");
        List<String> all = new ArrayList<>(List.of(words.split(" ")));
        all.add(1, builds.put("wide", file.text()));
        CommandRun run = CommandRun.of(all.toArray(String[]::new));
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("cell_overvoltage_trip: 1 V is not above", "for example");
    }
}
