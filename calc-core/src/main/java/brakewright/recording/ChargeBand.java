package brakewright.recording;

import java.util.ArrayList;
import java.util.List;

/**
 * How fast it still was at a charge.
 *
 * @param from the lower end [1]
 * @param to the upper end [1]
 * @param held the highest speed that was held there [m/s]
 */
public record ChargeBand(double from, double to, double held) {

    private static final int BANDS = 10;

    /** From full to empty, bands without a held speed left out. */
    static List<ChargeBand> all(Speeds.Settled settled, double hold) {
        double[] highest = new double[BANDS];
        Held.each(
                settled.recording(),
                settled.quantity(),
                hold,
                (piece, row, speed) -> {
                    double charge = piece.value(Quantity.CHARGE, row);
                    if (!Double.isNaN(charge)) {
                        int band =
                                (int)
                                        Math.max(
                                                0.0,
                                                Math.min(BANDS - 1.0, Math.floor(charge * BANDS)));
                        highest[band] = Math.max(highest[band], speed);
                    }
                });
        List<ChargeBand> bands = new ArrayList<>();
        for (int band = BANDS - 1; band >= 0; band--) {
            if (highest[band] > 0.0) {
                bands.add(
                        new ChargeBand((double) band / BANDS, (band + 1.0) / BANDS, highest[band]));
            }
        }
        return bands;
    }
}
