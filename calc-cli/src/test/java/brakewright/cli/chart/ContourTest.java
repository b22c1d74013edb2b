package brakewright.cli.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class ContourTest {

    private static final double[] PLACES =
            IntStream.rangeClosed(-20, 20).mapToDouble(i -> i / 10.0).toArray();

    /**
     * Of a disc, whose area is known; a chord lies within it by at most a quarter of a cell's width
     * squared.
     */
    @Test
    void enclosesADisc() {
        double[][] values = field((x, y) -> 1.0 - x * x - y * y);
        List<List<double[]>> areas = new Contour(PLACES, PLACES, values, 0.0).areas();
        assertThat(areas).hasSize(1);
        assertThat(area(areas.get(0))).isCloseTo(Math.PI, within(0.02));
        for (double[] point : areas.get(0)) {
            assertThat(Math.hypot(point[0], point[1])).isCloseTo(1.0, within(0.0025));
        }
    }

    @Test
    void aHoleIsWoundTheOtherWay() {
        double[][] values = field((x, y) -> (1.6 - Math.hypot(x, y)) * (Math.hypot(x, y) - 0.7));
        List<List<double[]>> areas = new Contour(PLACES, PLACES, values, 0.0).areas();
        assertThat(areas).hasSize(2);
        assertThat(areas.stream().mapToDouble(ContourTest::area).sum())
                .isCloseTo(Math.PI * (1.6 * 1.6 - 0.7 * 0.7), within(0.06));
    }

    @Test
    void whatReachesTheEdgeClosesThereAndItsLineDoesNotRunAlongIt() {
        double[][] values = field((x, y) -> x);
        Contour half = new Contour(PLACES, PLACES, values, 0.05);
        assertThat(area(half.areas().get(0))).isCloseTo(1.95 * 4.0, within(1e-9));
        assertThat(half.lines()).hasSize(1);
        assertThat(half.lines().get(0))
                .allSatisfy(point -> assertThat(point[0]).isCloseTo(0.05, within(1e-9)));
    }

    @Test
    void everywhereAndNowhere() {
        double[][] values = field((x, y) -> 1.0);
        assertThat(area(new Contour(PLACES, PLACES, values, 0.0).areas().get(0)))
                .isCloseTo(16.0, within(1e-9));
        assertThat(new Contour(PLACES, PLACES, values, 0.0).lines()).isEmpty();
        assertThat(new Contour(PLACES, PLACES, values, 2.0).areas()).isEmpty();
        assertThat(new Contour(PLACES, PLACES, field((x, y) -> Double.NaN), 0.0).areas()).isEmpty();
    }

    /** Every node that is at least the value lies within, every other one does not. */
    @Property(tries = 60)
    void enclosesExactlyTheNodesThatReachTheValue(
            @ForAll @Size(25) List<@DoubleRange(min = -1.0, max = 1.0) Double> numbers) {
        double[] places = {0.0, 1.0, 2.0, 3.0, 4.0};
        double[][] values = new double[5][5];
        for (int i = 0; i < 25; i++) {
            values[i / 5][i % 5] = numbers.get(i) == 0.0 ? 0.1 : numbers.get(i);
        }
        List<List<double[]>> areas = new Contour(places, places, values, 0.0).areas();
        for (int row = 1; row < 4; row++) {
            for (int column = 1; column < 4; column++) {
                if (Math.abs(values[row][column]) > 1e-6) {
                    assertThat(isWithin(areas, column, row)).isEqualTo(values[row][column] > 0.0);
                }
            }
        }
    }

    private interface Height {
        double at(double x, double y);
    }

    private static double[][] field(Height height) {
        double[][] values = new double[PLACES.length][PLACES.length];
        for (int row = 0; row < PLACES.length; row++) {
            for (int column = 0; column < PLACES.length; column++) {
                values[row][column] = height.at(PLACES[column], PLACES[row]);
            }
        }
        return values;
    }

    /** Positive where it runs against the clock. */
    private static double area(List<double[]> course) {
        double twice = 0.0;
        for (int i = 0; i < course.size(); i++) {
            double[] from = course.get(i);
            double[] to = course.get((i + 1) % course.size());
            twice += from[0] * to[1] - to[0] * from[1];
        }
        return twice / 2.0;
    }

    private static boolean isWithin(List<List<double[]>> areas, double x, double y) {
        boolean within = false;
        for (List<double[]> course : areas) {
            for (int i = 0; i < course.size(); i++) {
                double[] from = course.get(i);
                double[] to = course.get((i + 1) % course.size());
                if ((from[1] > y) != (to[1] > y)
                        && x < from[0] + (y - from[1]) / (to[1] - from[1]) * (to[0] - from[0])) {
                    within = !within;
                }
            }
        }
        return within;
    }
}
