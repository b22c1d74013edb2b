package brakewright.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What a person enters is rounded to the side of less, and never to nothing. */
class EntryTest {

    private static final double KMH = 1.0 / 3.6;

    @Test
    void aSpeedIsRoundedDownToWholeKilometresAnHour() {
        assertThat(Entry.METRIC.speedDown(32.9 * KMH)).isCloseTo(32.0 * KMH, within(1e-12));
        assertThat(Entry.METRIC.speedDown(32.0 * KMH)).isCloseTo(32.0 * KMH, within(1e-12));
    }

    @Test
    void aSpeedBelowAStepIsRoundedMoreFinely() {
        assertThat(Entry.METRIC.speedDown(0.57 * KMH)).isCloseTo(0.5 * KMH, within(1e-12));
        assertThat(Entry.METRIC.speedDown(0.0578 * KMH)).isCloseTo(0.05 * KMH, within(1e-12));
        assertThat(Entry.IMPERIAL.speedDown(1e-4)).isPositive().isLessThanOrEqualTo(1e-4);
    }
}
