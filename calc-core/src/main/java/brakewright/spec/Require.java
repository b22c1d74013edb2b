package brakewright.spec;

import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Checks of numbers that come from outside, in one place so that every message reads alike.
 *
 * <p>Each check is written so that NaN fails it, and names the quantity, the permitted range and
 * the value that was given.
 */
public final class Require {

    private Require() {}

    /**
     * Requires a finite value above zero.
     *
     * @param name what the value is, as a person would call it
     * @param value the value
     * @param unit its unit, for the message; empty for a ratio
     * @return the value
     * @throws IllegalArgumentException if the value is zero, negative, infinite or NaN
     */
    public static double positive(String name, double value, Unit unit) {
        if (!(value > 0.0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "%s must be positive, was %s%s",
                            name,
                            value,
                            behind(unit)));
        }
        return value;
    }

    /**
     * Requires a finite value above zero, where there is one.
     *
     * @param name what the value is, as a person would call it
     * @param value the value; may be empty
     * @param unit its unit, for the message; empty for a ratio
     * @throws IllegalArgumentException if there is a value and it is zero, negative, infinite or
     *     NaN
     */
    public static void positive(String name, OptionalDouble value, Unit unit) {
        if (value.isPresent()) {
            positive(name, value.getAsDouble(), unit);
        }
    }

    /**
     * Requires a finite value of zero or more.
     *
     * @param name what the value is
     * @param value the value
     * @param unit its unit, for the message; empty for a ratio
     * @return the value
     * @throws IllegalArgumentException if the value is negative, infinite or NaN
     */
    public static double notNegative(String name, double value, Unit unit) {
        if (!(value >= 0.0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "%s must not be negative, was %s%s",
                            name,
                            value,
                            behind(unit)));
        }
        return value;
    }

    /**
     * Requires a finite value of zero or more, where there is one.
     *
     * @param name what the value is, as a person would call it
     * @param value the value; may be empty
     * @param unit its unit, for the message; empty for a ratio
     * @throws IllegalArgumentException if there is a value and it is negative, infinite or NaN
     */
    public static void notNegative(String name, OptionalDouble value, Unit unit) {
        if (value.isPresent()) {
            notNegative(name, value.getAsDouble(), unit);
        }
    }

    /**
     * Requires a number, of any size, that may be infinite.
     *
     * @param name what the value is
     * @param value the value
     * @param unit its unit, for the message; empty for a ratio
     * @return the value
     * @throws IllegalArgumentException if the value is NaN
     */
    public static double number(String name, double value, Unit unit) {
        if (Double.isNaN(value)) {
            throw notANumber(name, unit);
        }
        return value;
    }

    /** Apart, as the check stands where a curve is read: so small a method costs no call. */
    private static IllegalArgumentException notANumber(String name, Unit unit) {
        return new IllegalArgumentException(name + " must be a number, was NaN" + behind(unit));
    }

    /**
     * Requires a value within a closed range.
     *
     * @param name what the value is
     * @param value the value
     * @param low the lowest permitted value
     * @param high the highest permitted value
     * @param unit its unit, for the message; empty for a ratio
     * @return the value
     * @throws IllegalArgumentException if the value is outside the range or NaN
     */
    public static double within(String name, double value, double low, double high, Unit unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "%s must be from %s to %s%s, was %s",
                            name,
                            low,
                            high,
                            behind(unit),
                            value));
        }
        return value;
    }

    /**
     * Requires a count of at least one.
     *
     * @param name what is counted
     * @param value the count
     * @return the count
     * @throws IllegalArgumentException if the count is below one
     */
    public static int atLeastOne(String name, int value) {
        if (value < 1) {
            throw new IllegalArgumentException(name + " must be at least 1, was " + value);
        }
        return value;
    }

    /**
     * Requires two values in ascending order.
     *
     * @param name what the pair is
     * @param low the value that must be the lower one
     * @param high the value that must be the higher one
     * @param unit their unit, for the message
     * @throws IllegalArgumentException if {@code low} is not below {@code high}, or either is
     *     infinite or NaN
     */
    public static void ascending(String name, double low, double high, Unit unit) {
        if (!(low < high) || Double.isInfinite(low) || Double.isInfinite(high)) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "%s must ascend, was %s to %s%s",
                            name,
                            low,
                            high,
                            behind(unit)));
        }
    }

    private static String behind(Unit unit) {
        return unit.text().isEmpty() ? "" : " " + unit.text();
    }
}
