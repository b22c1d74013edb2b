package brakewright.recording;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A straight of half a kilometre, ridden to the north and perhaps back. */
@Tag("law")
class BothWaysTest {

    /** Metres on a degree of latitude, on a sphere. */
    private static final double DEGREE = 111_195.08;

    private static final int ROWS = 60;

    /** Rows a second apart. A speed below zero leads back; it turns where the sign does. */
    private static Pace pace(double aside, double... speeds) {
        Map<Quantity, double[]> columns = new EnumMap<>(Quantity.class);
        double[][] rows = new double[4][speeds.length * ROWS];
        double north = 0.0;
        for (int row = 0; row < rows[0].length; row++) {
            double speed = speeds[row / ROWS];
            rows[0][row] = row;
            rows[1][row] = Math.abs(speed);
            rows[2][row] = 45.0 + north / DEGREE;
            rows[3][row] = 7.0 + (speed < 0.0 ? aside / DEGREE / Math.cos(Math.PI / 4.0) : 0.0);
            north += speed;
        }
        columns.put(Quantity.TIME, rows[0]);
        columns.put(Quantity.WHEEL_SPEED, rows[1]);
        columns.put(Quantity.LATITUDE, rows[2]);
        columns.put(Quantity.LONGITUDE, rows[3]);
        int[] lines = IntStream.range(2, rows[0].length + 2).toArray();
        Recording recording =
                new Recording(List.of(Piece.of("ride.csv", lines, columns)), List.of(), 5.0);
        return Ride.of(recording, 3.0, 0.0, new Repairs()).orElseThrow().pace();
    }

    @Test
    void theMeanOfBothDirectionsIsTaken() {
        BothWays ways = pace(4.0, 9.0, -8.0).bothWays().orElseThrow();

        assertThat(ways.mean()).isCloseTo(8.5, within(1e-12));
        assertThat(ways.faster().value()).isEqualTo(9.0);
        assertThat(ways.slower().place().line()).isGreaterThan(ROWS + 1);
    }

    @Test
    void oneDirectionHasNone() {
        assertThat(pace(0.0, 9.0, 8.0).bothWays()).isEmpty();
    }

    @Test
    void anotherRoadIsNotTheSameStretch() {
        assertThat(pace(150.0, 9.0, -8.0).bothWays()).isEmpty();
    }

    /** Who rolled back in traffic did not ride in full. */
    @Test
    void halfTheSpeedBackIsNoTest() {
        assertThat(pace(0.0, 9.0, -4.5).bothWays()).isEmpty();
    }

    /** There 9 and back 8, then both ways at 7: the first pair is higher. */
    @Test
    void theBestPairIsTold() {
        assertThat(pace(0.0, 7.0, -7.0, 9.0, -8.0).bothWays().orElseThrow().mean())
                .isCloseTo(8.5, within(1e-12));
    }

    @Test
    void withoutPositionsThereIsNone() {
        Rows rows = Rows.ridden(60, 1L).without(Quantity.LATITUDE).without(Quantity.LONGITUDE);
        Recording recording = rows.recorded(new Repairs());

        assertThat(Ride.of(recording, 3.0, 0.0, new Repairs()).orElseThrow().pace().bothWays())
                .isEmpty();
    }
}
