package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whatever is misspelt on the command line gets the nearest, in a line or two. */
class MisspeltTest {

    private static final String BOARD = Example.TRAIL_BOARD.path();

    @ParameterizedTest
    @CsvSource({
        "--fromat, did you mean --format?",
        "--shwo, did you mean --show?",
        "-format, did you mean --format?"
    })
    void anOptionGetsTheNearest(String option, String told) {
        CommandRun run = CommandRun.of("worksheet", BOARD, option);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("Unknown option \"" + option + "\"");
        assertThat(run.err()).contains(told).contains("brakewright worksheet --help");
        assertThat(run.err().lines()).hasSize(2);
    }

    @Test
    void anOptionLikeNoneGetsNoGuess() {
        assertThat(CommandRun.of("worksheet", BOARD, "--xylophones").err())
                .startsWith("Unknown option \"--xylophones\"" + System.lineSeparator());
    }

    @Test
    void anOptionWithAValueGetsTheNearest() {
        assertThat(CommandRun.of("worksheet", BOARD, "--shwo=brake").err())
                .startsWith("Unknown option \"--shwo=brake\"; did you mean --show?");
    }

    @Test
    void aCommandGetsTheNearest() {
        assertThat(CommandRun.of("wroksheet").err()).contains("worksheet");
    }

    @ParameterizedTest
    @CsvSource({
        "worksheet, htlm, '--format: \"htlm\" is none of text, json, html, markdown; did you mean html?'",
        "worksheet, pdf, '--format: \"pdf\" is none of text, json, html, markdown'",
        "explain, html, 'Unknown option \"--format\"'"
    })
    void aWordOfAnOptionGetsTheNearest(String command, String word, String told) {
        CommandRun run = CommandRun.of(command, BOARD, "--format", word);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith(told).doesNotContain("Invalid value");
    }

    @Test
    void aWordToExplainGetsTheNearestThree() {
        CommandRun run = CommandRun.of("explain", BOARD, "rnage");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err())
                .startsWith("\"rnage\" is no limit and no result; the nearest are range, sag and ")
                .contains("brakewright explain --help");
    }
}
