package brakewright.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A speed that swings, as wheels tell it five times a second and satellites once. */
@Tag("law")
class SatellitesTest {

    private static double speed(double time) {
        return 6.0 + 3.0 * Math.sin(time / 7.0);
    }

    private static Satellites received(double lag, double swing, int from, int to) {
        int rows = 1500;
        Random random = new Random(9L);
        double[][] columns = new double[3][rows];
        for (int row = 0; row < rows; row++) {
            double time = 0.2 * row;
            boolean isTold = row % 5 == 0 && (row < from || row >= to);
            columns[0][row] = time;
            columns[1][row] = 6.0 + swing * (speed(time) - 6.0);
            columns[2][row] =
                    isTold
                            ? 6.0 + swing * (speed(time - lag) - 6.0) + 0.1 * random.nextGaussian()
                            : Double.NaN;
        }
        Map<Quantity, double[]> named = new EnumMap<>(Quantity.class);
        named.put(Quantity.TIME, columns[0]);
        named.put(Quantity.WHEEL_SPEED, columns[1]);
        named.put(Quantity.SATELLITE_SPEED, columns[2]);
        Piece piece = Piece.of("ride.csv", IntStream.range(2, rows + 2).toArray(), named);
        return Satellites.of(new Recording(List.of(piece), List.of(), 30.0)).orElseThrow();
    }

    @Test
    void aLagIsFoundToATenthOfASecondOrTwo() {
        assertThat(received(1.3, 1.0, 0, 0).lag().orElseThrow()).isCloseTo(1.3, within(0.2));
        assertThat(received(0.0, 1.0, 0, 0).lag().orElseThrow()).isCloseTo(0.0, within(0.2));
    }

    @Test
    void anEvenSpeedTellsNoLag() {
        assertThat(received(1.3, 0.05, 0, 0).lag()).isEmpty();
    }

    /** From row 500 to row 600 there is nothing: 20 s and the step to the next. */
    @Test
    void dropOutsAreCountedWithTheirLength() {
        Satellites received = received(0.5, 1.0, 500, 600);

        assertThat(received.dropOuts()).isEqualTo(1);
        assertThat(received.longestDropOut()).isCloseTo(21.0, within(1e-9));
        assertThat(received(0.5, 1.0, 0, 0).dropOuts()).isZero();
    }
}
