package brakewright.review;

import java.util.OptionalDouble;

/**
 * One comparison that bears on a verdict: a value and what it may be at most, at one place or over
 * the charge in use.
 *
 * <p>Whoever judges folds the list of these, and nothing else: the verdict, how severe it is, the
 * findings, and whoever searches for a setting. What costs a search, as where an excess begins, is
 * worked out only when it is asked for.
 */
abstract sealed class Check permits PlainCheck, ChargeCheck, WarmthCheck {

    private final Held held;

    Check(Held held) {
        this.held = held;
    }

    /** What is held against what. */
    final Held held() {
        return held;
    }

    /** Of the worst place, from −1 to 1; positive where the limit is exceeded there [1]. */
    abstract double severity();

    /** The charge state of the worst place; empty where it does not depend on it [1]. */
    abstract OptionalDouble charge();

    final boolean isExceeded() {
        return severity() > 0.0;
    }

    /** Whether it is exceeded in all of the use; asked only where it is exceeded. */
    abstract boolean isNever();

    /** Whether it is exceeded no earlier than another one that is alike. */
    abstract boolean isNoWorseThan(Check other);

    /** Tells the excess; asked only where there is one. */
    abstract Finding finding();
}
