package brakewright.cli.recording;

import brakewright.recording.Quantity;
import java.util.Optional;

/** A column that is read; its scale is empty as long as it must still be found out. */
record Taken(Quantity quantity, int column, Optional<Scale> scale, String why) {}
