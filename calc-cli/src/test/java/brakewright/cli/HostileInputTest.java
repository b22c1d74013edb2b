package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Nothing that a file or an option can say breaks the program: some cases, the same each time; an
 * exploring run looks at many more.
 */
class HostileInputTest {

    private static final long SEED = 20_261_101L;
    private static final int CASES = 150;

    /** So many of them with a recording or a route. */
    private static final int RIDES = Integer.getInteger("brakewright.fuzz.rides", 60);

    @TempDir Path folder = Path.of("");

    @Test
    void isAnsweredOrRefused() {
        for (int i = 0; i < CASES; i++) {
            HostileCase each = HostileCase.draw(SEED + i);
            HostileCase.Outcome outcome = each.run(folder);
            assertThat(outcome.fault()).as(each.told()).isEmpty();
        }
    }

    @Test
    void spoiledRecordingsAreAnsweredOrRefused() {
        int ridden = 0;
        for (long seed = SEED; ridden < RIDES; seed++) {
            HostileCase each = HostileCase.draw(seed);
            if (each.arguments().indexOf("ride") == 0) {
                ridden++;
                assertThat(each.run(folder).fault()).as(each.told()).isEmpty();
            }
        }
    }
}
