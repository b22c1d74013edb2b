package brakewright.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** What counts as one hard stop or pull. */
class HardChangeTest {

    private static final double STEP = 0.5;

    /** 10 m/s for 5 s, then a stop at rates of 1.2, 0.9, 1.2 ... m/s², a second each. */
    @Test
    void aStopWhoseRateWaversAboutTheBoundIsOne() {
        List<HardChange> stops =
                stops(
                        time -> {
                            double braked = Math.max(0.0, time - 5.0);
                            double whole = Math.floor(braked);
                            double pairs = Math.floor(whole / 2.0);
                            double odd = whole - 2.0 * pairs;
                            double rate = odd == 0.0 ? 1.2 : 0.9;
                            double lost = 2.1 * pairs + 1.2 * odd + rate * (braked - whole);
                            return Math.max(0.0, 10.0 - lost);
                        });
        assertThat(stops).hasSize(1);
        HardChange stop = stops.get(0);
        assertThat(stop.begin().value()).isCloseTo(10.0, within(0.6));
        assertThat(stop.to()).isCloseTo(0.0, within(0.5));
        assertThat(stop.mean()).isCloseTo(1.05, within(0.1));
        assertThat(stop.highest()).isCloseTo(1.2, within(0.01));
    }

    @Test
    void slowingGentlyThroughoutIsNone() {
        assertThat(stops(time -> Math.max(0.0, 10.0 - 0.95 * time))).isEmpty();
    }

    /** At 6 m/s, down to a stand within 3 s, ridden on at 6 m/s from 10 s on, and down again. */
    @Test
    void twoStopsAreTwo() {
        assertThat(stops(time -> Math.max(0.0, 6.0 - 2.0 * (time < 10.0 ? time : time - 10.0))))
                .hasSize(2);
    }

    private static List<HardChange> stops(DoubleUnaryOperator speed) {
        int rows = 61;
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        columns.put(
                Quantity.TIME, IntStream.range(0, rows).mapToDouble(row -> STEP * row).toArray());
        columns.put(
                Quantity.WHEEL_SPEED,
                IntStream.range(0, rows)
                        .mapToDouble(row -> speed.applyAsDouble(STEP * row))
                        .toArray());
        Piece piece = Piece.of("ride.csv", IntStream.range(2, rows + 2).toArray(), columns);
        return HardChange.all(
                new Recording(List.of(piece), List.of(), 5.0), Quantity.WHEEL_SPEED, -1);
    }
}
