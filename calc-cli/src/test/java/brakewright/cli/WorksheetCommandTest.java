package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class WorksheetCommandTest {

    @Test
    void withoutArgumentsShowsTheBuiltInExample() {
        CommandRun run = Answers.of("worksheet");
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.outLines().get(0)).contains("the built-in example");
        assertThat(run.out().substring(run.out().indexOf('\n') + 1))
                .isEqualTo(Answers.of("worksheet", Example.TRAIL_BOARD.path()).out());
    }

    @Test
    void saysVerdictChargeBoundAndSpeedInTheFirstFiveLines() {
        List<String> first = Answers.of("worksheet").outLines().subList(0, 5);
        assertThat(String.join("\n", first))
                .containsPattern("(?i)pack and parts: *conditional")
                .containsPattern("(below|above) [0-9.]+ % charge")
                .containsPattern("[0-9.]+ km/h");
    }

    @ParameterizedTest
    @EnumSource
    void givesTheExamplesTheirVerdicts(Example example) {
        CommandRun run = Answers.of("worksheet", example.path());
        assertThat(run.status()).isEqualTo(example.status());
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains(
                        "Pack and parts: "
                                + example.verdict().replace('-', ' ').toUpperCase(Locale.ROOT));
    }

    @ParameterizedTest
    @CsvSource({"TRAIL_BOARD, 1", "SCOOTER, 1", "TRIKE, 0"})
    void strictCountsAConditionalVerdictAsOutside(Example example, int status) {
        CommandRun strict = Answers.of("worksheet", example.path(), "--strict");
        assertThat(strict.status()).isEqualTo(status);
        assertThat(strict.out()).isEqualTo(Answers.of("worksheet", example.path()).out());
    }

    @ParameterizedTest
    @CsvSource({
        "TRAIL_BOARD, si",
        "TRAIL_BOARD, imperial",
        "SCOOTER, si",
        "SCOOTER, imperial",
        "TRIKE, si",
        "TRIKE, imperial"
    })
    void keepsLinesWithinAHundredColumns(Example example, String units) {
        CommandRun run = Answers.of("worksheet", example.path(), "--units", units, "--show", "all");
        assertThat(run.outLines()).allSatisfy(line -> assertThat(line.length()).isLessThan(101));
    }

    @ParameterizedTest
    @EnumSource
    void plainIsPureAsciiWithEveryLetterKnown(Example example) {
        CommandRun run = Answers.of("worksheet", example.path(), "--plain", "--show", "all");
        assertThat(run.out()).matches("[\\n\\x20-\\x7e]*").doesNotContain("?");
    }

    @ParameterizedTest
    @EnumSource
    void plainKeepsLinesWithinAHundredColumns(Example example) {
        CommandRun run = Answers.of("worksheet", example.path(), "--plain", "--show", "all");
        assertThat(run.outLines()).allSatisfy(line -> assertThat(line.length()).isLessThan(101));
    }

    @ParameterizedTest
    @EnumSource
    void hasNoColourWhereThereIsNoTerminal(Example example) {
        assertThat(Answers.of("worksheet", example.path()).out()).doesNotContain("\u001b");
    }

    @ParameterizedTest
    @EnumSource
    void imperialShowsMilesAndFeetOnly(Example example) {
        String imperial =
                Answers.of("worksheet", example.path(), "--units", "imperial", "--show", "all")
                        .out();
        assertThat(imperial).contains("mi/h").doesNotContain("km/h");
        assertThat(Answers.of("worksheet", example.path()).out())
                .contains("km/h")
                .doesNotContain("mi/h");
    }

    @ParameterizedTest
    @EnumSource
    void jsonIsTheSameInAnyUnits(Example example) {
        assertThat(example.json("--units", "imperial")).isEqualTo(example.json());
    }

    @ParameterizedTest
    @EnumSource
    void saysTheSameTwice(Example example) {
        assertThat(CommandRun.of("worksheet", example.path()))
                .isEqualTo(Answers.of("worksheet", example.path()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"--format=xml", "--units=nautical", "--no-such-option", "a\0b"})
    void refusesArgumentsItDoesNotKnow(String argument) {
        CommandRun run = Answers.of("worksheet", argument);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isNotBlank().doesNotContain("\tat ");
    }

    @Test
    void refusesAFileThatIsNotThere() {
        CommandRun run = Answers.of("worksheet", "no-such-build.toml");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("no-such-build.toml");
    }

    @Test
    void refusesAFolder() {
        CommandRun run = Answers.of("worksheet", "examples");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("examples");
    }

    @Test
    void asksForACommand() {
        CommandRun run = Answers.of();
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("worksheet", "explain");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "--version"})
    void answersOnStandardOutput(String option) {
        CommandRun run = Answers.of(option);
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("brakewright");
    }

    @Test
    void everyCommandTellsTheVersion() {
        for (String command : Main.COMMANDS) {
            if (!command.equals("help")) {
                assertThat(Answers.of(command, "--version"))
                        .as(command)
                        .isEqualTo(Answers.of("--version"));
            }
        }
    }

    /**
     * The cell resistance is that of two cells of its kind, and the ceiling of the safe charge
     * stands on it.
     */
    @Test
    void tellsWhatToMeasureFirst() {
        CommandRun text = Answers.of("worksheet", Example.TRAIL_BOARD.path(), "--doubts");
        assertThat(text.out().replaceAll("\\s+", " "))
                .contains("WHAT TO MEASURE FIRST")
                .contains("pack.cell.resistance 0.03213 Ω .. 0.04347 Ω published")
                .contains("Stated tolerances alone decide the verdict above.");
        Map<String, Object> sheet =
                JsonMaps.read(
                        Answers.of(
                                        "worksheet",
                                        Example.TRAIL_BOARD.path(),
                                        "--doubts",
                                        "--format",
                                        "json")
                                .out());
        Map<String, Object> doubts = JsonMaps.object(sheet, "doubts");
        Map<String, Object> first = JsonMaps.objects(doubts, "measure_first").get(0);
        assertThat(first).containsEntry("key", "pack.cell.resistance");
        double high = JsonMaps.number(first, "high");
        assertThat(high).isCloseTo(1.15 * JsonMaps.number(first, "value"), within(1e-12));
        assertThat(JsonMaps.text(sheet, "verdict"))
                .isEqualTo(JsonMaps.text(JsonMaps.read(Example.TRAIL_BOARD.json()), "verdict"));
    }

    @Test
    void whereAToleranceIsStatedItTellsWhatElseToMeasure() {
        assertThat(Answers.of("worksheet", Example.TOUR_BOARD.path(), "--show", "all").out())
                .contains("WHAT TO MEASURE FIRST");
        assertThat(Answers.of("worksheet", Example.TRAIL_BOARD.path(), "--show", "all").out())
                .doesNotContain("WHAT TO MEASURE FIRST");
    }
}
