package brakewright.cli.recording;

import brakewright.recording.Quantity;
import java.util.Optional;

/**
 * What a column of a file was taken for, and why.
 *
 * @param heading as it stands in the file
 * @param quantity which; empty where it is not used
 * @param unit in which its numbers are written; empty where it is not used
 * @param why a clause
 */
public record ColumnNote(String heading, Optional<Quantity> quantity, String unit, String why) {

    static ColumnNote unused(String heading) {
        return new ColumnNote(heading, Optional.empty(), "", "no name that is known");
    }
}
