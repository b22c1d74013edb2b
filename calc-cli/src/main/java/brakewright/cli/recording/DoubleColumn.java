package brakewright.cli.recording;

import java.util.Arrays;

/** Numbers of which it is not known how many will come. */
final class DoubleColumn {

    private double[] values = new double[1024];
    private int count;

    void add(double value) {
        if (count == values.length) {
            values = Arrays.copyOf(values, 2 * count + 1);
        }
        values[count++] = value;
    }

    /** Gives them away, without holding them twice. */
    double[] all() {
        values = Arrays.copyOf(values, count);
        return values;
    }
}
