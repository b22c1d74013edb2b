package brakewright.profile;

import java.util.OptionalDouble;

/**
 * One row of a comparison.
 *
 * @param quantity what is compared
 * @param speed at which [m/s]; empty where it belongs to no speed
 */
public record Measure(Quantity quantity, OptionalDouble speed) {

    static Measure of(Quantity quantity) {
        return new Measure(quantity, OptionalDouble.empty());
    }

    static Measure at(Quantity quantity, double speed) {
        return new Measure(quantity, OptionalDouble.of(speed));
    }
}
