package brakewright.profile;

import brakewright.review.BrakeVerdict;
import brakewright.worksheet.HeldBy;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one profile has in a row.
 *
 * @param value in the unit of the quantity; empty where it is not set or not computed
 * @param boundBy what holds it down; empty where nothing in particular
 * @param charge the charge state it belongs to [1]; empty where to none
 * @param speed the profile's own speed that it belongs to [m/s]; empty where all have one, or none
 * @param brake the verdict on a brake that the value belongs to; empty where it is of none
 */
public record Reading(
        OptionalDouble value,
        Optional<HeldBy> boundBy,
        OptionalDouble charge,
        OptionalDouble speed,
        Optional<BrakeVerdict.Word> brake) {

    /** Nothing is known. */
    static final Reading NONE = of(OptionalDouble.empty());

    static Reading of(double value) {
        return of(OptionalDouble.of(value));
    }

    static Reading of(OptionalDouble value) {
        return new Reading(
                value,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    static Reading of(double value, HeldBy boundBy) {
        return new Reading(
                OptionalDouble.of(value),
                Optional.of(boundBy),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                Optional.empty());
    }

    static Reading of(BrakeVerdict brake) {
        return new Reading(
                OptionalDouble.of(brake.deceleration()),
                Optional.empty(),
                OptionalDouble.of(brake.charge()),
                OptionalDouble.empty(),
                Optional.of(brake.word()));
    }

    static Reading at(double value, double charge) {
        return new Reading(
                OptionalDouble.of(value),
                Optional.empty(),
                OptionalDouble.of(charge),
                OptionalDouble.empty(),
                Optional.empty());
    }

    Reading atCharge(OptionalDouble where) {
        return new Reading(value, boundBy, where, speed, brake);
    }

    Reading atSpeed(double own) {
        return new Reading(value, boundBy, charge, OptionalDouble.of(own), brake);
    }
}
