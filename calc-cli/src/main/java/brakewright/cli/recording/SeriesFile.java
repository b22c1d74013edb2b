package brakewright.cli.recording;

import brakewright.recording.Piece;
import brakewright.recording.Quantity;
import brakewright.recording.Recording;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;

/** Writes a cleaned and joined recording as comma-separated values, which this program reads. */
public final class SeriesFile {

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
