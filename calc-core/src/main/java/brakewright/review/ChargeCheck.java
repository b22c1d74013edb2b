package brakewright.review;

import brakewright.charge.ChargeSearch;
import brakewright.limit.Severity;
import brakewright.spec.Unit;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * A value held against its limit over the charge in use. Both are known at the charge states where
 * something may turn, and can be asked for in between.
 */
final class ChargeCheck extends Check {

    /** From which end of the charge in use it is looked at. */
    enum Harm {
        /** A fuller pack is worse. */
        FULL,
        /** An emptier pack is worse. */
        EMPTY
    }

    /** What is held against what, between the charge states looked at anyway. */
    record Course(DoubleUnaryOperator value, DoubleUnaryOperator limit) {

        double excess(double charge) {
            return Severity.excess(value.applyAsDouble(charge), limit.applyAsDouble(charge));
        }
    }

    /** How the excess is told, once it is known where it begins. */
    interface Telling {
        Finding of(ChargeCheck check);
    }

    private final ChargeSearch search;
    private final double[] values;
    private final double[] limits;
    private final Course course;
    private final Harm harm;
    private final BooleanSupplier mended;
    private final Telling telling;
    private final double severity;
    private final int severest;
    private @Nullable Double begins;

    ChargeCheck(
            Held held,
            ChargeSearch search,
            double[] values,
            double[] limits,
            Course course,
            Harm harm,
            BooleanSupplier mended,
            Telling telling) {
        super(held);
        this.search = search;
        this.values = values;
        this.limits = limits;
        this.course = course;
        this.harm = harm;
        this.mended = mended;
        this.telling = telling;
        int worst = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < values.length; i++) {
            double here = Severity.of(values[i], limits[i]);
            if (here > most) {
                most = here;
                worst = i;
            }
        }
        this.severity = most;
        this.severest = worst;
    }

    @Override
    double severity() {
        return severity;
    }

    @Override
    OptionalDouble charge() {
        return OptionalDouble.of(search.charges()[severest]);
    }

    /** Exceeded at the harmless end of the charge in use, and with no cells in use any better. */
    @Override
    boolean isNever() {
        return isEverywhere() && !mended.getAsBoolean();
    }

    /** Exceeded even at the harmless end of the charge in use. */
    boolean isEverywhere() {
        int harmless = harm == Harm.FULL ? 0 : values.length - 1;
        return Severity.excess(values[harmless], limits[harmless]) > 0.0;
    }

    @Override
    boolean isNoWorseThan(Check other) {
        return other instanceof ChargeCheck charge
                && charge.isExceeded()
                && (harm == Harm.FULL ? charge.begins() <= begins() : charge.begins() >= begins());
    }

    @Override
    Finding finding() {
        return telling.of(this);
    }

    /** A finding of what is asked and permitted where most is too much, and from where on. */
    Finding.Builder told() {
        return held().finding()
                .valued(value(), limit(), Unit.AMPERE)
                .atCharge(begins())
                .worstAt(mostAt())
                .atTemperature(held().cellsC());
    }

    /** Where the excess begins; the harmless end where it does there already [1]. */
    double begins() {
        if (begins == null) {
            begins =
                    search.firstExcess(values, limits, course::excess, harm == Harm.FULL)
                            .orElseThrow();
        }
        return begins;
    }

    /** Where most is too much: the place that is told [1]. */
    double mostAt() {
        return search.charges()[most()];
    }

    /** What is asked there. */
    double value() {
        return values[most()];
    }

    /** What is permitted there. */
    double limit() {
        return limits[most()];
    }

    /** Of equal ones that nearest to the harmful end. */
    private int most() {
        int worst = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < values.length; i++) {
            double here = Severity.excess(values[i], limits[i]);
            if (here > most || here == most && harm == Harm.FULL) {
                most = here;
                worst = i;
            }
        }
        return worst;
    }
}
