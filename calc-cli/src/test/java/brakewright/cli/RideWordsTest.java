package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.cli.words.RideWord;
import brakewright.fitting.Fitted;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The words that explain what a recorded ride tells. */
class RideWordsTest {

    @Test
    void everyWordIsOfferedAndExplained() {
        String help = CommandRun.of("explain", "--help").out().replaceAll("\\s+", " ");
        for (RideWord word : RideWord.values()) {
            CommandRun run = CommandRun.of("explain", Example.TRAIL_BOARD.path(), word.key());

            assertThat(run.status()).isZero();
            assertThat(run.out().lines()).hasSizeGreaterThanOrEqualTo(4);
            assertThat(help).contains(word.key());
        }
    }

    /** Beside what is fitted there are six: of speeds, energy, changes, limits and the model. */
    @Test
    void everyFitHasAWordOfItsKind() {
        Set<RideWord> ofFits =
                Arrays.stream(Fitted.values())
                        .map(RideWord::of)
                        .collect(Collectors.toCollection(() -> EnumSet.noneOf(RideWord.class)));

        assertThat(RideWord.values()).hasSize(ofFits.size() + 6);
    }
}
