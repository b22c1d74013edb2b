package brakewright.powertrain;

import java.util.function.DoubleUnaryOperator;

/** What a pack that gives little leaves of a current, sought by halving instead of solved. */
public final class WeakPack {

    /** All the digits there are. */
    private static final int HALVINGS = 60;

    private WeakPack() {}

    /** The greatest power that leaves the pack, U²/(4R) [W]. */
    public static double greatestPower(PackState pack) {
        return 0.25 * pack.voltage() * pack.voltage() / pack.resistance();
    }

    /**
     * The greatest current up to one asked for that draws no more than there is [A].
     *
     * @param drawn power over current, rising wherever it is more than there is [W]
     */
    public static double supplied(double asked, double most, DoubleUnaryOperator drawn) {
        if (drawn.applyAsDouble(asked) <= most) {
            return asked;
        }
        double low = 0.0;
        double high = asked;
        for (int halving = 0; halving < HALVINGS; halving++) {
            double middle = 0.5 * (low + high);
            if (drawn.applyAsDouble(middle) <= most) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
