package brakewright.live;

import brakewright.limit.PackConstraint;
import brakewright.limit.PackLimit;
import java.util.List;

/**
 * What the packs bear of a current one way: plain ratings, and voltages that the current shifts.
 */
final class Bounds {

    private final double[][] dividends;
    private final Table[] divisors;
    private final Table rated;

    Bounds(PackLimit limit, Axis charges, Axis temperatures) {
        List<PackConstraint> varying =
                limit.constraints().stream().filter(PackConstraint::variesWithCharge).toList();
        List<PackConstraint> ratings =
                limit.constraints().stream().filter(each -> !isOfVoltage(each)).toList();
        this.dividends =
                varying.stream()
                        .map(each -> charges.read(each::dividendAt))
                        .toArray(double[][]::new);
        this.divisors =
                varying.stream()
                        .map(each -> new Table(charges, temperatures, each::divisorAt))
                        .toArray(Table[]::new);
        this.rated =
                new Table(
                        charges,
                        temperatures,
                        (charge, cellsC) ->
                                ratings.stream()
                                        .mapToDouble(each -> each.limitAt(charge, cellsC))
                                        .min()
                                        .orElse(Double.MAX_VALUE));
    }

    private static boolean isOfVoltage(PackConstraint each) {
        return each.headroomAt(0.0) < Double.POSITIVE_INFINITY;
    }

    /** The least that any of them permits [A]. */
    double permitted(double charge, double temperature) {
        double least = rated.at(charge, temperature);
        for (int k = 0; k < dividends.length; k++) {
            double permitted = Lines.at(dividends[k], charge) / divisors[k].at(charge, temperature);
            least = Math.min(least, Math.max(0.0, permitted));
        }
        return least;
    }

    /** What is permitted by all that is no condition on a voltage [A]. */
    double rated(double charge, double temperature) {
        return rated.at(charge, temperature);
    }
}
