package brakewright.operation;

import brakewright.battery.AlongCharge;
import brakewright.limit.Limits;
import brakewright.numeric.Ascending;
import brakewright.spec.Build;
import java.util.List;

/**
 * What flows into and out of the packs over the charge in use, braking and driving in full or in
 * part at any speed in use, at each temperature that the cells may have.
 */
public final class Flows {

    private final AlongCharge givers;
    private final AlongCharge takers;
    private final List<Flow> each;

    private Flows(AlongCharge givers, AlongCharge takers, List<Flow> each) {
        this.givers = givers;
        this.takers = takers;
        this.each = each;
    }

    static Flows of(Build build, Limits limits, Operation operation, double[] points) {
        AlongCharge givers = limits.battery().along(points);
        AlongCharge takers = limits.battery().into().along(points);
        List<Flow> each = Flow.each(build, operation, givers, takers);
        double[] all = Ascending.both(points, Bends.of(limits, operation, points, each));
        return new Flows(givers.along(all), takers.along(all), each);
    }

    /**
     * Returns the charge states at which what flows may turn.
     *
     * @return ascending, not to be written to [1]
     */
    public double[] charges() {
        return givers.charges();
    }

    /**
     * Returns the packs at these charge states while they are drawn from.
     *
     * @return what they are there
     */
    public AlongCharge givers() {
        return givers;
    }

    /**
     * Returns the same packs while they are charged.
     *
     * @return what they are there
     */
    public AlongCharge takers() {
        return takers;
    }

    /**
     * Returns the current into the packs.
     *
     * @param temperature place of the cell temperature among {@link Build#cellTemperatures()}
     * @return at each of the charge states, not negative [A]
     */
    public double[] returned(int temperature) {
        return each.get(temperature).returned(charges());
    }

    /**
     * Returns the current out of the packs.
     *
     * @param temperature place of the cell temperature among {@link Build#cellTemperatures()}
     * @return at each of the charge states, not negative, infinite where the packs cannot give so
     *     much [A]
     */
    public double[] drawn(int temperature) {
        return each.get(temperature).drawn(charges());
    }
}
