package brakewright.fitting;

import brakewright.recording.Piece;
import brakewright.recording.Quantity;
import brakewright.recording.Recording;
import brakewright.recording.StepResistance;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * The resistance of the pack by steps of ten seconds, while its cells were about as warm.
 *
 * @param fromC the lower end [°C]
 * @param toC the upper end [°C]
 * @param found resistance, doubt and events
 */
public record WarmResistance(double fromC, double toC, Fit.Found found) {

    /** Assumption: our own choice; within, the resistance of cells changes by about a tenth [K]. */
    private static final double BAND = 5.0;

    /** From cold to warm; empty where the recording carries fewer than two. */
    static List<WarmResistance> all(Recording recording) {
        List<WarmResistance> all = new ArrayList<>();
        for (long band : bands(recording)) {
            Fit fit =
                    Fits.resistance(
                            Fitted.PULL_RESISTANCE,
                            StepResistance.of(within(recording, band), StepResistance.PULL));
            if (fit instanceof Fit.Found found) {
                all.add(new WarmResistance(band * BAND, (band + 1.0) * BAND, found));
            }
        }
        return all.size() < 2 ? List.of() : all;
    }

    private static TreeSet<Long> bands(Recording recording) {
        TreeSet<Long> bands = new TreeSet<>();
        for (Piece piece : recording.pieces()) {
            for (int row = 0; row < piece.rows(); row++) {
                double cells = piece.value(Quantity.PACK_TEMPERATURE, row);
                if (!Double.isNaN(cells)) {
                    bands.add(band(cells));
                }
            }
        }
        return bands;
    }

    private static long band(double cellsC) {
        return (long) Math.floor(cellsC / BAND);
    }

    /** Rows at another temperature lose their voltage, so that no step ends in one. */
    private static Recording within(Recording recording, long band) {
        List<Piece> pieces = new ArrayList<>();
        for (Piece piece : recording.pieces()) {
            double[] cells = piece.column(Quantity.PACK_TEMPERATURE);
            double[] volts = piece.column(Quantity.PACK_VOLTAGE);
            for (int row = 0; row < volts.length; row++) {
                boolean isWithin = !Double.isNaN(cells[row]) && band(cells[row]) == band;
                volts[row] = isWithin ? volts[row] : Double.NaN;
            }
            pieces.add(piece.with(Quantity.PACK_VOLTAGE, volts));
        }
        return new Recording(pieces, recording.gaps(), recording.longestStep());
    }
}
