package brakewright.worksheet;

import brakewright.spec.Use;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.DoubleStream;

/**
 * The charge states at which one rides, and for which stops, gains and maps are told: the fullest
 * in use, 80 and 50 %, so far as they are in use. Where braking is safe at none of them, the charge
 * up to which it is safe stands beside them.
 *
 * @param charges the charge states, descending [1]
 * @param lowest the lowest charge state in use [1]
 * @param safeCharge the charge state up to which braking is safe for the packs; 0 where it is at
 *     none in use [1]
 */
public record RiddenCharges(List<Double> charges, double lowest, double safeCharge) {

    /** Our own choice: the upper middle of a ride, and its middle. */
    private static final double[] BETWEEN = {0.8, 0.5};

    /** Charge states that are closer are written alike [1]. */
    private static final double ALIKE = 5e-4;

    /** Copies the charge states. */
    public RiddenCharges {
        charges = List.copyOf(charges);
    }

    static RiddenCharges of(Use use, double safeCharge) {
        TreeSet<Double> charges = new TreeSet<>();
        charges.add(use.chargeFrom());
        for (double charge : BETWEEN) {
            if (charge > use.chargeTo() + ALIKE && charge < use.chargeFrom() - ALIKE) {
                charges.add(charge);
            }
        }
        if (charges.size() == 1) {
            charges.add(use.middleCharge());
        }
        if (safeCharge > use.chargeTo() && safeCharge < charges.first()) {
            charges.add(safeCharge);
        }
        return new RiddenCharges(List.copyOf(charges.descendingSet()), use.chargeTo(), safeCharge);
    }

    /**
     * Returns the charge states of a map: those ridden, and the lowest in use.
     *
     * @return the charge states, descending [1]
     */
    public double[] mapped() {
        return DoubleStream.concat(
                        charges.stream().mapToDouble(Double::doubleValue), DoubleStream.of(lowest))
                .distinct()
                .toArray();
    }

    /**
     * Returns whether braking is safe for the packs at a charge state, cold and warm.
     *
     * @param charge the charge state [1]
     * @return true where it is
     */
    public boolean isSafe(double charge) {
        return charge <= safeCharge + ALIKE;
    }

    /**
     * Returns the charge state that stands for the ride.
     *
     * @return the highest of them at which braking is safe; empty where it is at none
     */
    public OptionalDouble highestSafe() {
        return charges.stream().filter(this::isSafe).mapToDouble(Double::doubleValue).findFirst();
    }
}
