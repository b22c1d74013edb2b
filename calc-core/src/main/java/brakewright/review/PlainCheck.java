package brakewright.review;

import brakewright.limit.Severity;
import brakewright.spec.Unit;
import java.util.OptionalDouble;
import java.util.function.Supplier;

/** A value held against a limit that is the same at every charge state. */
final class PlainCheck extends Check {

    private final double value;
    private final double limit;
    private final Unit unit;
    private final OptionalDouble charge;
    private final Supplier<Condition> condition;
    private final boolean never;

    private PlainCheck(
            Held held,
            double value,
            double limit,
            Unit unit,
            OptionalDouble charge,
            Supplier<Condition> condition,
            boolean never) {
        super(held);
        this.value = value;
        this.limit = limit;
        this.unit = unit;
        this.charge = charge;
        this.condition = condition;
        this.never = never;
    }

    /** Exceeded in all of the use, where it is. */
    static PlainCheck always(Held held, double value, double limit, Unit unit) {
        return new PlainCheck(
                held, value, limit, unit, OptionalDouble.empty(), Condition.Never::new, true);
    }

    /** The same, found at one charge state. */
    static PlainCheck at(double charge, Held held, double value, double limit, Unit unit) {
        return new PlainCheck(
                held, value, limit, unit, OptionalDouble.of(charge), Condition.Never::new, true);
    }

    /** Exceeded under a condition, where it is. */
    static PlainCheck unless(
            Supplier<Condition> condition, Held held, double value, double limit, Unit unit) {
        return new PlainCheck(held, value, limit, unit, OptionalDouble.empty(), condition, false);
    }

    @Override
    double severity() {
        return Severity.of(value, limit);
    }

    @Override
    OptionalDouble charge() {
        return charge;
    }

    @Override
    boolean isNever() {
        return never;
    }

    @Override
    boolean isNoWorseThan(Check other) {
        return other instanceof PlainCheck plain && plain.isExceeded() && limit >= plain.limit;
    }

    @Override
    Finding finding() {
        Finding.Builder finding =
                held().finding().valued(value, limit, unit).unless(condition.get());
        charge.ifPresent(finding::atCharge);
        return (never ? finding : finding.atTemperature(held().cellsC())).build();
    }
}
