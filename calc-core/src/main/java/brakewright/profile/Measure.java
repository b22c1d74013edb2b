package brakewright.profile;

import brakewright.spec.Require;
import brakewright.spec.Unit;
import java.util.OptionalDouble;

/**
 * One row of a comparison.
 *
 * @param quantity what is compared
 * @param speed at which [m/s]; empty where it belongs to no speed, or to each profile's own
 */
public record Measure(Quantity quantity, OptionalDouble speed) {

    /**
     * A row that belongs to no speed, or to each profile's own: its top speed in use, or that at
     * which it cruises.
     *
     * @param quantity what is compared
     * @return the row
     */
    public static Measure of(Quantity quantity) {
        return new Measure(quantity, OptionalDouble.empty());
    }

    /**
     * A row at one speed for all profiles.
     *
     * @param quantity what is compared, one that belongs to a speed
     * @param speed [m/s], positive
     * @return the row
     * @throws IllegalArgumentException if the quantity belongs to no speed, or that is not positive
     */
    public static Measure at(Quantity quantity, double speed) {
        if (!quantity.belongsToASpeed()) {
            throw new IllegalArgumentException(quantity.key() + " belongs to no speed");
        }
        return new Measure(
                quantity,
                OptionalDouble.of(Require.positive("speed", speed, Unit.METRE_PER_SECOND)));
    }

    /**
     * Returns whether each profile is measured at a speed of its own.
     *
     * @return true for what belongs to a speed and has none here
     */
    public boolean isAtOwnSpeed() {
        return quantity.belongsToASpeed() && speed.isEmpty();
    }
}
