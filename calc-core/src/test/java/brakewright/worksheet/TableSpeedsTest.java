package brakewright.worksheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class TableSpeedsTest {

    private static final double KMH = 1.0 / 3.6;

    @Test
    void runInStepsOfFiveKilometresAnHour() {
        assertThat(TableSpeeds.upTo(25.0 * KMH))
                .usingComparatorForType((a, b) -> Math.abs(a - b) < 1e-12 ? 0 : 1, Double.class)
                .isEqualTo(List.of(10.0 * KMH, 15.0 * KMH, 20.0 * KMH, 25.0 * KMH));
        assertThat(TableSpeeds.upTo(5.0 * KMH)).isEmpty();
    }

    @Test
    void areNoMoreThanAReaderFollowsHoweverFastTheVehicle() {
        for (double top : new double[] {125.0, 126.0, 130.0, 360.0, 5000.0}) {
            List<Double> speeds = TableSpeeds.upTo(top * KMH);
            assertThat(speeds).hasSizeBetween(12, 25).isSorted();
            double step = (speeds.get(1) - speeds.get(0)) / KMH;
            assertThat(step / 5.0).isCloseTo(Math.rint(step / 5.0), within(1e-9));
            assertThat(speeds.get(speeds.size() - 1)).isGreaterThan(top * KMH - step * KMH - 1e-9);
        }
    }
}
