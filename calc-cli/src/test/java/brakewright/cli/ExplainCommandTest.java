package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.limit.ConstraintId;
import brakewright.limit.LimitId;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class ExplainCommandTest {

    private static final Set<LimitId> TAPERS =
            Set.of(LimitId.LOW_VOLTAGE_TAPER, LimitId.HIGH_VOLTAGE_TAPER);

    static Stream<Arguments> everyLimitOfEveryExample() {
        return Arrays.stream(Example.values())
                .flatMap(
                        example ->
                                Arrays.stream(LimitId.values())
                                        .map(limit -> Arguments.of(example, limit)));
    }

    private static CommandRun explain(Example example, LimitId limit, String... options) {
        return Answers.of(
                Stream.concat(
                                Stream.of("explain", example.path(), limit.key()),
                                Arrays.stream(options))
                        .toArray(String[]::new));
    }

    /** The lines that start a constraint: its name, its limit, whether it binds. */
    private static List<String> constraintLines(CommandRun run) {
        Set<String> ids =
                Arrays.stream(ConstraintId.values())
                        .map(ConstraintId::key)
                        .collect(Collectors.toSet());
        return run.outLines().stream()
                .filter(line -> line.startsWith("  ") && !line.startsWith("   "))
                .filter(line -> ids.contains(line.strip().split(" ")[0]))
                .toList();
    }

    /** A taper has two numbers, so two constraints bind: one its end, one its width. */
    @ParameterizedTest
    @MethodSource("everyLimitOfEveryExample")
    void marksWhatBinds(Example example, LimitId limit) {
        CommandRun run = explain(example, limit);
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(constraintLines(run).stream().filter(line -> line.endsWith("<- binds")))
                .hasSize(TAPERS.contains(limit) ? 2 : 1);
        assertThat(run.out().split("<- binds", -1)).hasSize(TAPERS.contains(limit) ? 3 : 2);
    }

    @ParameterizedTest
    @MethodSource("everyLimitOfEveryExample")
    void showsFormulaAndSourceOfEachConstraint(Example example, LimitId limit) {
        CommandRun run = explain(example, limit);
        int constraints = constraintLines(run).size();
        assertThat(constraints).isPositive();
        assertThat(run.outLines().stream().filter(line -> line.startsWith("    = ")))
                .hasSize(constraints);
        assertThat(run.outLines().stream().filter(line -> line.matches("    Formula: \\S.*")))
                .hasSize(constraints);
    }

    @ParameterizedTest
    @MethodSource("everyLimitOfEveryExample")
    void keepsLinesWithinAHundredColumns(Example example, LimitId limit) {
        assertThat(explain(example, limit).outLines())
                .allSatisfy(line -> assertThat(line.length()).as(line).isLessThan(101));
    }

    @ParameterizedTest
    @MethodSource("everyLimitOfEveryExample")
    void plainIsPureAsciiWithEveryLetterKnown(Example example, LimitId limit) {
        assertThat(explain(example, limit, "--plain").out())
                .matches("[\\n\\x20-\\x7e]*")
                .doesNotContain("?");
    }

    @Test
    void saysWhereTheLimitsAreListedWhereItDoesNotKnowOne() {
        CommandRun run = Answers.of("explain", Example.TRIKE.path(), "no-such-limit");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err())
                .startsWith(
                        "\"no-such-limit\" is no limit and no result."
                                + " All of them: brakewright explain --help");
    }

    @Test
    void takesUnderscoresForHyphens() {
        assertThat(Answers.of("explain", Example.TRIKE.path(), "speed_cap"))
                .isEqualTo(Answers.of("explain", Example.TRIKE.path(), "speed-cap"));
    }

    @Test
    void namesAFileThatIsNotThere() {
        CommandRun run = Answers.of("explain", "no-such-build.toml", "speed-cap");
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("no-such-build.toml");
    }

    @Test
    void asksForALimit() {
        CommandRun run = Answers.of("explain", Example.TRIKE.path());
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("LIMIT");
    }
}
