package brakewright.cli.text;

import brakewright.spec.Use;
import java.util.TreeSet;

/** Chooses the charge states that stand beside a table. */
final class ShownCharges {

    private static final double[] TENS = {0.0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1.0};

    /** Charge states are written to a tenth of a per cent. */
    private static final double ALIKE = 5e-4;

    private ShownCharges() {}

    /**
     * Returns every ten per cent in use, and both ends of it.
     *
     * @param use the use
     * @return the charge states, descending [1]
     */
    static double[] tens(Use use) {
        return with(use, TENS);
    }

    /**
     * Returns both ends of the charge in use, and some charge states between.
     *
     * @param use the use
     * @param between those that are wanted besides, where they are in use [1]
     * @return the charge states, descending; of two that would be written alike only one [1]
     */
    static double[] with(Use use, double... between) {
        TreeSet<Double> charges = new TreeSet<>();
        for (double charge : between) {
            if (charge > use.chargeTo() + ALIKE && charge < use.chargeFrom() - ALIKE) {
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
        return new double[] {use.chargeFrom(), use.middleCharge(), use.chargeTo()};
    }

    private static double[] descending(TreeSet<Double> charges) {
        return charges.descendingSet().stream().mapToDouble(Double::doubleValue).toArray();
    }
}
