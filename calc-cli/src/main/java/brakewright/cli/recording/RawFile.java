package brakewright.cli.recording;

import brakewright.recording.Quantity;
import java.util.List;
import java.util.Map;

/** The rows of a file as numbers; columns whose unit must still be found out are as written. */
record RawFile(
        String source,
        Layout layout,
        List<Taken> taken,
        int[] lines,
        Map<Quantity, double[]> columns,
        TimeFormat format,
        boolean isDated) {}
