package brakewright.recording;

import brakewright.spec.Battery;
import brakewright.spec.Cell;
import brakewright.spec.Joining;
import brakewright.spec.Pack;
import java.util.function.ToDoubleFunction;

/** The pack's voltage held against the cells it is made of. */
public final class CellVolts {

    /**
     * Assumption: our own choice; a cell in use is neither below half its cut-off nor that far
     * above its charging limit. What lies between is a ride that went wrong, and is kept.
     */
    private static final double LEAST_SHARE = 0.5;

    private static final double MOST_SHARE = 1.15;

    private CellVolts() {}

    /**
     * Leaves out voltages that so many cells in series cannot have.
     *
     * @param recording as it was read
     * @param battery the packs of the vehicle
     * @param repairs to which every field is added
     * @return the recording without them
     */
    public static Recording leftOut(Recording recording, Battery battery, Repairs repairs) {
        double least = LEAST_SHARE * summed(battery, pack -> volts(pack, Cell::voltageMin));
        double most = MOST_SHARE * summed(battery, pack -> volts(pack, Cell::voltageMax));
        return recording.each(piece -> within(piece, least, most, repairs));
    }

    /** How many cells are in series from end to end; in parallel those of the first pack. */
    static double cells(Battery battery) {
        return battery.joining() == Joining.PARALLEL
                ? battery.packs().get(0).series()
                : battery.packs().stream().mapToInt(Pack::series).sum();
    }

    private static double volts(Pack pack, ToDoubleFunction<Cell> ofCell) {
        return pack.series() * ofCell.applyAsDouble(pack.cell());
    }

    private static double summed(Battery battery, ToDoubleFunction<Pack> ofPack) {
        return battery.joining() == Joining.PARALLEL
                ? ofPack.applyAsDouble(battery.packs().get(0))
                : battery.packs().stream().mapToDouble(ofPack).sum();
    }

    private static Piece within(Piece piece, double least, double most, Repairs repairs) {
        if (!piece.has(Quantity.PACK_VOLTAGE)) {
            return piece;
        }
        double[] volts = piece.column(Quantity.PACK_VOLTAGE);
        boolean isChanged = false;
        for (int row = 0; row < volts.length; row++) {
            if (volts[row] < least || volts[row] > most) {
                repairs.field(
                        Repair.Rule.VOLTS_BEYOND_CELLS, Quantity.PACK_VOLTAGE, piece.place(row));
                volts[row] = Double.NaN;
                isChanged = true;
            }
        }
        return isChanged ? piece.with(Quantity.PACK_VOLTAGE, volts) : piece;
    }
}
