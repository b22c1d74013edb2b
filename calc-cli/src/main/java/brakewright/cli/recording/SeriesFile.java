package brakewright.cli.recording;

import brakewright.recording.Piece;
import brakewright.recording.Quantity;
import brakewright.recording.Recording;
import brakewright.replay.RidePoint;
import brakewright.replay.RouteRide;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;

/** Writes a cleaned and joined recording as comma-separated values, which this program reads. */
public final class SeriesFile {

    /** Rows of a predicted ride lie no farther apart [s]. */
    private static final double SPACING = 0.5;

    private SeriesFile() {}

    /**
     * Writes a recording.
     *
     * @param recording its pieces are numbered in a column, so that gaps stay gaps
     * @param out where to, not closed
     * @throws IOException if it cannot be written
     */
    public static void write(Recording recording, Writer out) throws IOException {
        List<Quantity> quantities = new ArrayList<>(recording.quantities());
        CsvWriter csv = CsvWriter.builder().build(out);
        List<String> row = new ArrayList<>();
        row.add("piece");
        quantities.forEach(quantity -> row.add(heading(quantity)));
        csv.writeRecord(row);
        int number = 0;
        for (Piece piece : recording.pieces()) {
            number++;
            for (int i = 0; i < piece.rows(); i++) {
                row.clear();
                row.add(String.valueOf(number));
                for (Quantity quantity : quantities) {
                    double value = piece.value(quantity, i);
                    row.add(Double.isNaN(value) ? "" : String.valueOf(value));
                }
                csv.writeRecord(row);
            }
        }
        csv.flush();
    }

    /**
     * Writes a predicted ride, as a recorder without a fault would have.
     *
     * @param ride its moments become rows, straight between them where they lie far apart; currents
     *     and voltages are those since the one before
     * @param out where to, not closed
     * @throws IOException if it cannot be written
     */
    public static void write(RouteRide ride, Writer out) throws IOException {
        List<Quantity> quantities =
                new ArrayList<>(
                        List.of(
                                Quantity.TIME,
                                Quantity.WHEEL_SPEED,
                                Quantity.DISTANCE,
                                Quantity.ALTITUDE,
                                Quantity.PACK_VOLTAGE,
                                Quantity.PACK_CURRENT,
                                Quantity.MOTOR_CURRENT,
                                Quantity.CHARGE));
        if (ride.isCellHeatKnown()) {
            quantities.add(Quantity.PACK_TEMPERATURE);
        }
        if (ride.isWindingHeatKnown()) {
            quantities.add(Quantity.MOTOR_TEMPERATURE);
        }
        CsvWriter csv = CsvWriter.builder().build(out);
        csv.writeRecord(quantities.stream().map(SeriesFile::heading).toList());
        RidePoint before = ride.course().get(0);
        row(csv, quantities, before, before, 1.0);
        for (RidePoint point : ride.course()) {
            int parts = (int) Math.ceil((point.state().time() - before.state().time()) / SPACING);
            for (int part = 1; part <= parts; part++) {
                row(csv, quantities, before, point, (double) part / parts);
            }
            before = point;
        }
        csv.flush();
    }

    private static void row(
            CsvWriter csv,
            List<Quantity> quantities,
            RidePoint before,
            RidePoint behind,
            double share) {
        List<String> fields = new ArrayList<>();
        for (Quantity quantity : quantities) {
            double begin = value(before, quantity);
            double end = value(behind, quantity);
            boolean isFlow =
                    quantity == Quantity.PACK_VOLTAGE
                            || quantity == Quantity.PACK_CURRENT
                            || quantity == Quantity.MOTOR_CURRENT;
            fields.add(
                    String.valueOf(isFlow || share == 1.0 ? end : begin + share * (end - begin)));
        }
        csv.writeRecord(fields);
    }

    private static double value(RidePoint point, Quantity quantity) {
        return switch (quantity) {
            case TIME -> point.state().time();
            case WHEEL_SPEED -> point.state().speed();
            case DISTANCE -> point.state().distance();
            case ALTITUDE -> point.height();
            case PACK_VOLTAGE -> point.packVoltage();
            case PACK_CURRENT -> point.packCurrent();
            case MOTOR_CURRENT -> point.motorCurrent();
            case CHARGE -> point.state().charge();
            case PACK_TEMPERATURE -> point.state().cellsC();
            case MOTOR_TEMPERATURE -> point.state().windingC();
            case SATELLITE_SPEED, LATITUDE, LONGITUDE, WIND_SPEED -> Double.NaN;
        };
    }

    private static String heading(Quantity quantity) {
        String unit =
                switch (quantity) {
                    case CHARGE -> "fraction";
                    case LATITUDE, LONGITUDE -> "deg";
                    default -> quantity.unit().plain();
                };
        return quantity.key() + " [" + unit + "]";
    }
}
