package brakewright.operation;

import brakewright.limit.Limits;
import brakewright.numeric.Ascending;
import brakewright.spec.Build;
import java.util.List;

/**
 * What flows into and out of the packs over the charge in use, braking and driving in full or in
 * part at any speed in use, at each temperature that the cells may have.
 */
public final class Flows {

    private final double[] charges;
    private final List<Flow> each;

    private Flows(double[] charges, List<Flow> each) {
        this.charges = charges;
        this.each = each;
    }

    static Flows of(Build build, Limits limits, Operation operation, double[] points) {
        List<Flow> each = Flow.each(build, limits, operation, points);
        return new Flows(Ascending.both(points, Bends.of(limits, operation, points, each)), each);
    }

    /**
     * Returns the charge states at which what flows may turn.
     *
     * @return ascending, not to be written to [1]
     */
    public double[] charges() {
        return charges;
    }

    /**
     * Returns the current into the packs.
     *
     * @param temperature place of the cell temperature among {@link Build#cellTemperatures()}
     * @return at each of the charge states, not negative [A]
     */
    public double[] returned(int temperature) {
        return each.get(temperature).returned(charges);
    }

    /**
     * Returns the current out of the packs.
     *
     * @param temperature place of the cell temperature among {@link Build#cellTemperatures()}
     * @return at each of the charge states, not negative, infinite where the packs cannot give so
     *     much [A]
     */
    public double[] drawn(int temperature) {
        return each.get(temperature).drawn(charges);
    }
}
