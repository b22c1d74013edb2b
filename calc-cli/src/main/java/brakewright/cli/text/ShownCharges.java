package brakewright.cli.text;

import brakewright.spec.Use;
import java.util.TreeSet;

/** Chooses the charge states that stand beside a table. */
final class ShownCharges {

    private ShownCharges() {}

    /**
     * Returns every ten per cent in use, and both ends of it.
     *
     * @param use the use
     * @return the charge states, descending [1]
     */
    static double[] tens(Use use) {
        TreeSet<Double> charges = new TreeSet<>();
        for (int step = 0; step <= 10; step++) {
            double charge = step / 10.0;
            if (charge > use.chargeTo() && charge < use.chargeFrom()) {
                charges.add(charge);
            }
        }
        charges.add(use.chargeFrom());
        charges.add(use.chargeTo());
        return descending(charges);
    }

    /**
     * Returns both ends of the charge in use and its middle.
     *
     * @param use the use
     * @return the charge states, descending [1]
     */
    static double[] few(Use use) {
        return new double[] {
            use.chargeFrom(), 0.5 * (use.chargeFrom() + use.chargeTo()), use.chargeTo()
        };
    }

    private static double[] descending(TreeSet<Double> charges) {
        return charges.descendingSet().stream().mapToDouble(Double::doubleValue).toArray();
    }
}
