package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.cli.text.CheckSection;
import brakewright.cli.text.SheetSection;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The page, and the sections that are asked for by name. */
class ShowTest {

    private static final String HARDER = "motor_brake_current=38A";

    private static CommandRun worksheet(Example example, String... options) {
        return Answers.of(
                Stream.concat(Stream.of("worksheet", example.path()), Arrays.stream(options))
                        .toArray(String[]::new));
    }

    private static CommandRun check(String... options) {
        return Answers.of(
                Stream.concat(
                                Stream.of("check", Example.TRAIL_BOARD.path(), "--with", HARDER),
                                Arrays.stream(options))
                        .toArray(String[]::new));
    }

    /** The parts between blank lines, the title and what stands with it apart. */
    private static List<String> parts(CommandRun run) {
        List<String> parts = new ArrayList<>(List.of(run.out().strip().split("\n\n")));
        return parts.subList(1, parts.size());
    }

    @Test
    void everySectionOfTheWorksheetIsAPartOfAll() {
        String names =
                Arrays.stream(SheetSection.values())
                        .map(SheetSection::key)
                        .collect(Collectors.joining(","));
        CommandRun some = worksheet(Example.TOUR_BOARD, "--show", names);
        assertThat(some.err()).isEmpty();
        List<String> parts = parts(some);
        assertThat(parts).hasSizeGreaterThanOrEqualTo(SheetSection.values().length);
        assertThat(worksheet(Example.TOUR_BOARD, "--show", "all").out()).contains(parts);
    }

    @Test
    void everySectionOfACheckIsAPartOfAll() {
        String names =
                Arrays.stream(CheckSection.values())
                        .map(CheckSection::key)
                        .collect(Collectors.joining(","));
        List<String> parts = parts(check("--show", names));
        assertThat(parts).hasSizeGreaterThanOrEqualTo(CheckSection.values().length);
        assertThat(check("--show", "all").out()).contains(parts);
    }

    @Test
    void sectionsStandInTheOrderInWhichTheyAreAsked() {
        assertThat(worksheet(Example.TRIKE, "--show", "heat", "--show", "range,pack").out())
                .containsSubsequence("HEAT OF MOTOR", "RANGE", "THE PACK OVER ITS CHARGE")
                .doesNotContain("WHAT TO ENTER");
    }

    @Test
    void aSectionThatDoesNotApplySaysSoInOneLine() {
        List<String> parts = parts(worksheet(Example.TRIKE, "--show", "packs"));
        assertThat(parts).hasSize(1);
        assertThat(parts.get(0).lines()).hasSize(2);
        assertThat(parts.get(0)).contains("There is one pack");
    }

    @ParameterizedTest
    @CsvSource({"paks, packs", "first_stop, first-stop", "finding, findings", "al, all"})
    void aMisspeltSectionGetsTheNearest(String misspelt, String meant) {
        CommandRun run = worksheet(Example.TRIKE, "--show", misspelt);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("did you mean " + meant + "?");
    }

    @ParameterizedTest
    @ValueSource(strings = {"worksheet", "check"})
    void jsonHasNoSections(String command) {
        CommandRun run =
                Answers.of(
                        command,
                        Example.TRIKE.path(),
                        "--proposal=firmer",
                        "--format=json",
                        "--show=all");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("--show");
    }

    @Test
    void aCheckAnswersInTwelveLinesAndSaysWhatChangesOnOnePage() {
        for (String change : List.of(HARDER, "motor_brake_current=60A", "speed_cap=20km/h")) {
            for (int columns : new int[] {72, 100, 120}) {
                List<String> lines =
                        wide(columns, "check", Example.TRAIL_BOARD.path(), "--with", change);
                assertThat(lines)
                        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(columns));
                int answer = lines.indexOf("") + 1;
                int changes = lines.indexOf("WHAT CHANGES");
                assertThat(lines.get(answer)).startsWith("Answer: ").contains(" BRAKE ");
                assertThat(lines.subList(answer, changes))
                        .anyMatch(line -> line.startsWith("  Pack:"))
                        .anyMatch(line -> line.startsWith("  Parts:"))
                        .anyMatch(line -> line.startsWith("  Brake:"));
                if (columns >= 100) {
                    assertThat(changes - 1 - answer).isLessThanOrEqualTo(12);
                    assertThat(lines).hasSizeLessThanOrEqualTo(66);
                }
            }
        }
    }

    /** Where the verdict alone takes most of the twelve lines, too. */
    @ParameterizedTest
    @CsvSource({
        "examples/ferry-dock-scooter.toml, pack_regen_current=9A",
        "src/test/resources/brakewright/cli/vehicles/idle-near-empty.toml, motor_brake_current=30A"
    })
    void aCheckAlwaysSaysHowFarTheBrakeCurrentMayGo(String vehicle, String change) {
        List<String> lines = wide(100, "check", vehicle, "--with", change);
        int answer = lines.indexOf("") + 1;
        List<String> said = lines.subList(answer, lines.indexOf("WHAT CHANGES") - 1);
        assertThat(said).hasSizeLessThanOrEqualTo(12);
        assertThat(String.join(" ", said)).containsPattern("motor brake current could be \\d");
    }

    /** What the proposal adds is told, whatever its signal word. */
    @Test
    void aCheckTellsWhatIsNew() {
        assertThat(check().out()).containsPattern("CAUTION +New: On a wet road the wheels slide");
    }

    @Test
    void aSectionIsFoundHoweverItsLettersAreWritten() {
        assertThat(Answers.of("worksheet", "--show", "Range"))
                .isEqualTo(Answers.of("worksheet", "--show", "range"));
        assertThat(Answers.of("worksheet", "--show", "ALL"))
                .isEqualTo(Answers.of("worksheet", "--show", "all"));
    }

    /** The verdict above a section says of conditions once that there are some. */
    @Test
    void aConditionalVerdictIsNotToldTwice() {
        assertThat(Answers.of("worksheet", "--show", "range").outLines())
                .contains("Pack and parts: CONDITIONAL. Brake: WEAK.");
    }

    @Test
    void detailsFollowTheWidthToo() {
        for (int columns : new int[] {72, 80, 120}) {
            assertThat(
                            wide(
                                    columns,
                                    "worksheet",
                                    Example.TOUR_BOARD.path(),
                                    "--show",
                                    "pack,packs,drive,sag,range,heat,findings,assumed"))
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(columns))
                    .anySatisfy(line -> assertThat(line).contains("cell charge"));
        }
    }

    @ParameterizedTest
    @CsvSource({"80, 80", "500, 120", "20, 72", "0, 100", "wide, 100"})
    void theWidthIsTakenFromTheEnvironment(String told, int columns) {
        assertThat(
                        run(Width.ofTerminal(told), "worksheet", "--show", "findings").stream()
                                .mapToInt(String::length)
                                .max()
                                .orElseThrow())
                .isBetween(columns - 12, columns);
    }

    private static List<String> wide(int columns, String... arguments) {
        return run(Width.of(columns), arguments);
    }

    private static List<String> run(Width width, String... arguments) {
        StringWriter out = new StringWriter();
        PrintWriter printer = new PrintWriter(out);
        Main.run(width, printer, printer, arguments);
        return out.toString().lines().toList();
    }

    /** Every word that can be explained ends in a sentence that a rider understands. */
    @Test
    void anExplanationEndsInPlainWords() {
        for (String word :
                List.of(
                        "motor-brake-current",
                        "pack-regen-current",
                        "low-voltage-taper",
                        "launch",
                        "recovery",
                        "joining")) {
            List<String> lines = Answers.of("explain", Example.TOUR_BOARD.path(), word).outLines();
            String last = String.join(" ", lines.subList(lines.lastIndexOf("") + 1, lines.size()));
            assertThat(last)
                    .startsWith("In plain words: ")
                    .endsWith(".")
                    .containsPattern("\\d (A|V|km/h|s|min|%)")
                    .doesNotContain("m/s²", "=");
        }
    }
}
