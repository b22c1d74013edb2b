package brakewright.live;

import brakewright.limit.PackConstraint;
import brakewright.limit.PackLimit;
import java.util.List;
import java.util.stream.Stream;

/**
 * What the packs bear of a current one way: plain ratings, and voltages that the current shifts.
 */
final class Bounds {

    private final int ratings;
    private final double[][] dividends;
    private final Table[] divisors;
    private final Table plain;

    Bounds(PackLimit limit, Axis charges, Axis temperatures) {
        List<PackConstraint> falling =
                limit.constraints().stream()
                        .filter(each -> each.variesWithCharge() && !isOfVoltage(each))
                        .toList();
        List<PackConstraint> voltages =
                limit.constraints().stream().filter(Bounds::isOfVoltage).toList();
        List<PackConstraint> fixed =
                limit.constraints().stream().filter(each -> !each.variesWithCharge()).toList();
        List<PackConstraint> varying = Stream.concat(falling.stream(), voltages.stream()).toList();
        this.ratings = falling.size();
        this.dividends =
                varying.stream()
                        .map(each -> charges.read(each::dividendAt))
                        .toArray(double[][]::new);
        this.divisors =
                varying.stream()
                        .map(each -> new Table(charges, temperatures, each::divisorAt))
                        .toArray(Table[]::new);
        this.plain =
                new Table(
                        charges,
                        temperatures,
                        (charge, cellsC) ->
                                fixed.stream()
                                        .mapToDouble(each -> each.limitAt(charge, cellsC))
                                        .min()
                                        .orElse(Double.MAX_VALUE));
    }

    private static boolean isOfVoltage(PackConstraint each) {
        return each.headroomAt(0.0) < Double.POSITIVE_INFINITY;
    }

    /** The least that any of them permits [A]. */
    double permitted(double charge, double temperature) {
        return least(dividends.length, charge, temperature);
    }

    /** What is permitted by all that is no condition on a voltage [A]. */
    double rated(double charge, double temperature) {
        return least(ratings, charge, temperature);
    }

    /** Ratings that fall with the charge stand before the conditions on a voltage. */
    private double least(int varying, double charge, double temperature) {
        double least = plain.at(charge, temperature);
        for (int k = 0; k < varying; k++) {
            double permitted = Lines.at(dividends[k], charge) / divisors[k].at(charge, temperature);
            least = Math.min(least, Math.max(0.0, permitted));
        }
        return least;
    }
}
