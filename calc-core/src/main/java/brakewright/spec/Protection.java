package brakewright.spec;

import java.util.OptionalDouble;

/**
 * The values at which the pack's protection disconnects it. An empty value is one that is not
 * known, which is a reason for caution and not a permission.
 *
 * @param dischargeTrip pack current out [A], positive
 * @param chargeTrip pack current in [A], positive
 * @param cellOvervoltageTrip [V], positive
 * @param cellUndervoltageTrip [V], positive
 */
public record Protection(
        OptionalDouble dischargeTrip,
        OptionalDouble chargeTrip,
        OptionalDouble cellOvervoltageTrip,
        OptionalDouble cellUndervoltageTrip) {

    /** Nothing is known of the protection. */
    public static final Protection UNKNOWN =
            new Protection(
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty());

    /**
     * Validates the trips.
     *
     * @throws IllegalArgumentException if a number is not positive
     */
    public Protection {
        Require.positive("discharge trip", dischargeTrip, "A");
        Require.positive("charge trip", chargeTrip, "A");
        Require.positive("cell over-voltage trip", cellOvervoltageTrip, "V");
        Require.positive("cell under-voltage trip", cellUndervoltageTrip, "V");
    }
}
