package brakewright.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;

@Tag("law")
class LeastSquaresProperties {

    private static final double ROUNDING = 1e-9;

    @Property(tries = 50)
    void whatColumnsMakeUpForWholeIsFoundWithoutDoubt(@ForAll long seed) {
        Random random = new Random(seed);
        double[][] columns = new double[20][];
        double[] values = new double[20];
        for (int row = 0; row < 20; row++) {
            columns[row] = new double[] {1e4 * random.nextGaussian(), random.nextGaussian(), 1.0};
            values[row] = 0.02 * columns[row][0] - 3.0 * columns[row][1] + 7.0;
        }
        LeastSquares found = LeastSquares.of(columns, values).orElseThrow();
        assertThat(found.coefficients())
                .containsExactly(new double[] {0.02, -3.0, 7.0}, within(ROUNDING));
        assertThat(found.errors()).containsExactly(new double[3], within(ROUNDING));
    }

    /** Of a mean: the scatter over the root of the number, with n − 1. */
    @Property(tries = 50)
    void theErrorOfAMeanIsTheUsualOne(@ForAll long seed) {
        Random random = new Random(seed);
        double[][] columns = new double[15][];
        double[] values = new double[15];
        double sum = 0.0;
        for (int row = 0; row < 15; row++) {
            columns[row] = new double[] {1.0};
            values[row] = random.nextGaussian();
            sum += values[row];
        }
        double mean = sum / 15.0;
        double squares = 0.0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        LeastSquares found = LeastSquares.of(columns, values).orElseThrow();
        assertThat(found.coefficients()[0]).isCloseTo(mean, within(ROUNDING));
        assertThat(found.errors()[0]).isCloseTo(Math.sqrt(squares / 14.0 / 15.0), within(ROUNDING));
    }

    /** Published in every table of Student's t at 0.975: 12.706, 4.303 and 2.228. */
    @Example
    void fewEventsLeaveMoreDoubt() {
        assertThat(Student.factor(1)).isCloseTo(12.706, within(5e-4));
        assertThat(Student.factor(2)).isCloseTo(4.303, within(5e-4));
        assertThat(Student.factor(10)).isCloseTo(2.228, within(5e-4));
    }

    @Example
    void columnsThatAreAlikeTellNothingApart() {
        double[][] columns = {{1, 2}, {2, 4}, {3, 6}, {5, 10}};
        assertThat(LeastSquares.of(columns, new double[] {1, 2, 3, 4})).isEmpty();
        double[][] none = {{0, 2}, {0, 4}, {0, 5}};
        assertThat(LeastSquares.of(none, new double[] {1, 2, 3})).isEmpty();
    }
}
