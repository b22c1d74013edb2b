package brakewright.cli.report;

import brakewright.cli.words.UnitSystem;
import java.util.Arrays;

/** The charges and speeds at which a picture is drawn. */
final class Places {

    private static final int SPEEDS = 40;
    private static final int CHARGES = 30;

    private Places() {}

    /** From standstill to the highest [m/s]. */
    static double[] speeds(double top) {
        return between(0.0, top, SPEEDS);
    }

    /** From one charge to another, ascending [1]. */
    static double[] charges(double low, double high) {
        return between(low, high, CHARGES);
    }

    static double[] shown(UnitSystem units, double[] speeds) {
        return Arrays.stream(speeds).map(units::speed).toArray();
    }

    static double[] percent(double[] charges) {
        return Arrays.stream(charges).map(charge -> 100.0 * charge).toArray();
    }

    private static double[] between(double low, double high, int steps) {
        double[] places = new double[steps + 1];
        for (int step = 0; step <= steps; step++) {
            places[step] = low + (high - low) * step / steps;
        }
        return places;
    }
}
