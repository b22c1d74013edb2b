package brakewright.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A day's ride has many rows, and none needs more room than itself. */
@Tag("law")
class ManyRowsTest {

    private static final int ROWS = 60_000;

    /** What is known of the mean of evenly scattered values: their scatter over the root of n. */
    @Test
    void manyRowsFitIntoMemory() {
        Random random = new Random(3L);
        double[][] columns = new double[ROWS][];
        double[] values = new double[ROWS];
        for (int row = 0; row < ROWS; row++) {
            double size = random.nextDouble() - 0.5;
            columns[row] = new double[] {1.0, size};
            values[row] = 2.0 + 3.0 * size + random.nextGaussian();
        }
        LeastSquares solved = LeastSquares.of(columns, values).orElseThrow();

        assertThat(solved.coefficients()[0]).isCloseTo(2.0, within(4.0 / Math.sqrt(ROWS)));
        assertThat(solved.coefficients()[1])
                .isCloseTo(3.0, within(4.0 * Math.sqrt(12.0) / Math.sqrt(ROWS)));
        // the scatter of 60,000 normal values is 1 to half a per cent
        assertThat(solved.errors()[0] * Math.sqrt(ROWS)).isCloseTo(1.0, within(0.02));
        assertThat(solved.errors()[1] * Math.sqrt(ROWS / 12.0)).isCloseTo(1.0, within(0.02));
    }
}
