package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.explain.ResultId;
import brakewright.limit.LimitId;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class ExplainResultTest {

    static Stream<Arguments> everyResultOfEveryExample() {
        return Arrays.stream(Example.values())
                .flatMap(
                        example ->
                                Arrays.stream(ResultId.values())
                                        .map(result -> Arguments.of(example, result)));
    }

    private static CommandRun explain(String file, String subject, String... options) {
        return Answers.of(
                Stream.concat(Stream.of("explain", file, subject), Arrays.stream(options))
                        .toArray(String[]::new));
    }

    private static long count(CommandRun run, String pattern) {
        return run.outLines().stream().filter(line -> line.matches(pattern)).count();
    }

    /** A step has a number, a formula and a source; a result that is not there has none of them. */
    @ParameterizedTest
    @MethodSource("everyResultOfEveryExample")
    void showsFormulaAndSourceOfEachStep(Example example, ResultId result) {
        CommandRun run = explain(example.path(), result.key());
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        long steps = count(run, " {1,2}\\d{1,2}  \\S.* = .*");
        assertThat(count(run, "     = \\S.*")).isEqualTo(steps);
        assertThat(count(run, "     Formula: \\S.*")).isEqualTo(steps);
        assertThat(run.out().contains("It holds for")).isEqualTo(steps > 0);
    }

    /** One number for one thing: as the sheet rounds it. */
    @ParameterizedTest
    @EnumSource(Example.class)
    void aRangeIsThatOfTheSheet(Example example) {
        String sheet = Answers.of("worksheet", example.path(), "--show", "range").out();
        Matcher cruise = Pattern.compile("cruise .* ([0-9.]+ km) ").matcher(sheet);
        Matcher town = Pattern.compile("every [0-9]+ m:\\s+([0-9.]+\\s+km)").matcher(sheet);
        assertThat(cruise.find() && town.find()).isTrue();
        assertThat(explain(example.path(), "range").out())
                .contains("Range: " + cruise.group(1) + ".", "it goes " + cruise.group(1) + ".");
        assertThat(explain(example.path(), "town-range").out())
                .contains("in town it goes " + town.group(1).replaceAll("\\s+", " ") + ".");
    }

    @ParameterizedTest
    @MethodSource("everyResultOfEveryExample")
    void keepsLinesWithinAHundredColumns(Example example, ResultId result) {
        for (String[] options : new String[][] {{}, {"--plain"}}) {
            assertThat(explain(example.path(), result.key(), options).outLines())
                    .allSatisfy(line -> assertThat(line.length()).as(line).isLessThan(101));
        }
    }

    @ParameterizedTest
    @MethodSource("everyResultOfEveryExample")
    void plainIsPureAsciiWithEveryLetterKnown(Example example, ResultId result) {
        assertThat(explain(example.path(), result.key(), "--plain").out())
                .matches("[\\n\\x20-\\x7e]*")
                .doesNotContain("?");
    }

    /** A step that is referred to has the symbol of the term that refers to it. */
    @ParameterizedTest
    @MethodSource("everyResultOfEveryExample")
    void refersToStepsOfTheSameSymbol(Example example, ResultId result) {
        List<String> lines = explain(example.path(), result.key()).outLines();
        Pattern reference = Pattern.compile("     (\\S+) .* step (\\d+)");
        for (String line : lines) {
            Matcher matcher = reference.matcher(line);
            if (matcher.matches()) {
                String head = String.format("%3s  ", matcher.group(2));
                Optional<String> step =
                        lines.stream().filter(each -> each.startsWith(head)).findFirst();
                assertThat(step.orElseThrow()).contains(" " + matcher.group(1) + " = ");
            }
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = ResultId.class,
            names = {"PACK_SHARING", "JOINING"})
    void saysSoWhereThereIsOnePack(ResultId result) {
        CommandRun run = explain(Example.TRIKE.path(), result.key());
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("There is one pack").doesNotContain("Formula");
    }

    @ParameterizedTest
    @EnumSource(ResultId.class)
    void explainsSeveralPacksToo(ResultId result, @TempDir Path folder) throws IOException {
        Path file = folder.resolve("two-packs.toml");
        Files.writeString(file, TwoPacks.file("").text());
        CommandRun run = CommandRun.of("explain", file.toString(), result.key());
        assertThat(run.status()).isZero();
        assertThat(run.outLines())
                .allSatisfy(line -> assertThat(line.length()).as(line).isLessThan(101));
        if (result == ResultId.PACK_SHARING || result == ResultId.JOINING) {
            assertThat(run.out()).contains("It holds for").contains("packs.series");
        }
    }

    @Test
    void namesTheNearestFirstWhereItDoesNotKnowOne() {
        CommandRun run = explain(Example.TRIKE.path(), "town_rang");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err())
                .contains("\"town_rang\" is no limit and no result; the nearest are town-range, ");
    }

    @Test
    void takesUnderscoresForHyphens() {
        assertThat(explain(Example.TRIKE.path(), "top_speed"))
                .isEqualTo(explain(Example.TRIKE.path(), "top-speed"));
    }

    @Test
    void helpListsEveryName() {
        String help = Answers.of("explain", "--help").out().replaceAll("\\s+", " ");
        assertThat(help)
                .contains(Arrays.stream(LimitId.values()).map(LimitId::key).toList())
                .contains(Arrays.stream(ResultId.values()).map(ResultId::key).toList());
    }

    /** What is explained is what the worksheet says. */
    @Test
    void theLastStepIsTheHeadline() {
        List<String> lines = explain(Example.TRAIL_BOARD.path(), "range").outLines();
        String headline =
                lines.stream().filter(line -> line.startsWith("Range: ")).findFirst().orElseThrow();
        String last =
                lines.stream().filter(line -> line.contains("  Range ")).findFirst().orElseThrow();
        assertThat(last).contains("(" + headline.replaceAll("Range: (.*)\\.", "$1") + ")");
    }
}
