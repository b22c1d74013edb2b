package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CheckCommandTest {

    private static final String HARDER = "motor_brake_current=38A";
    private static final Pattern USELESS_ABOVE =
            Pattern.compile("Above (\\d+(?:\\.\\d+)?) km/h\\s[^.]*useless");

    private static CommandRun check(String... options) {
        return CommandRun.of(
                Stream.concat(
                                Stream.of("check", Example.TRAIL_BOARD.path()),
                                Arrays.stream(options))
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

    @ParameterizedTest
    @EnumSource
    void keepsLinesWithinAHundredColumns(Example example) {
        for (String change : List.of(HARDER, "high_voltage_taper=39.7V,42V", "speed_cap=20km/h")) {
            for (String units : List.of("si", "imperial")) {
                CommandRun run =
                        CommandRun.of("check", example.path(), "--with", change, "--units", units);
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
        assertThat(CommandRun.of("check", example.path(), "--with", HARDER, "--plain").out())
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
            })
    void refusesAChangeThatItCannotRead(String change, String named, String helped) {
        CommandRun run = check("--with", change);
        assertThat(run).isEqualTo(new CommandRun(2, "", run.err()));
        assertThat(run.err()).contains("--with").contains(named).contains(helped);
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
}
