package brakewright.profile;

import java.util.OptionalDouble;

/**
 * What one profile has in a row.
 *
 * @param value in the unit of the quantity; empty where it is not set or not computed
 * @param boundBy what holds it down, by name; empty where nothing in particular
 * @param charge the charge state it belongs to [1]; empty where to none
 */
public record Reading(OptionalDouble value, String boundBy, OptionalDouble charge) {

    /** Nothing is known. */
    static final Reading NONE = new Reading(OptionalDouble.empty(), "", OptionalDouble.empty());

    static Reading of(double value) {
        return of(OptionalDouble.of(value));
    }

    static Reading of(OptionalDouble value) {
        return new Reading(value, "", OptionalDouble.empty());
    }

    static Reading of(double value, String boundBy) {
        return new Reading(OptionalDouble.of(value), boundBy, OptionalDouble.empty());
    }

    static Reading at(double value, double charge) {
        return new Reading(OptionalDouble.of(value), "", OptionalDouble.of(charge));
    }
}
