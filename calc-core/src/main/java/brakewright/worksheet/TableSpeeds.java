package brakewright.worksheet;

import brakewright.numeric.Rounding;
import java.util.ArrayList;
import java.util.List;

/**
 * The speeds of a table: 10 km/h and every 5 km/h above. For a vehicle so fast that this would be
 * more rows than a reader follows, the step is doubled as often as it needs.
 */
final class TableSpeeds {

    private static final double FIRST = 10.0 / 3.6;
    private static final double STEP = 5.0 / 3.6;

    /**
     * Assumption: our own choice; up to 125 km/h, beyond which hardly a vehicle of the class is
     * made.
     */
    private static final int MOST_ROWS = 24;

    private TableSpeeds() {}

    /**
     * Returns the speeds.
     *
     * @param top the highest that is asked about [m/s]
     * @return ascending, none above it [m/s]
     */
    static List<Double> upTo(double top) {
        double step = STEP;
        while (FIRST + MOST_ROWS * step < top) {
            step *= 2.0;
        }
        List<Double> speeds = new ArrayList<>();
        for (int row = 0; FIRST + row * step <= top + Rounding.OF_A_RESULT; row++) {
            speeds.add(FIRST + row * step);
        }
        return speeds;
    }
}
