package brakewright.cli.history;

import java.util.Optional;

/**
 * One thing that differs between two worksheets.
 *
 * @param <K> what tells it apart
 * @param what differs
 * @param before number or word in the earlier one; empty where it did not stand there
 * @param after in the later one, likewise
 */
public record Change<K>(K what, Optional<Object> before, Optional<Object> after) {

    /** Numbers closer than that are the same, worked out by another edition [1]. */
    private static final double ALIKE = 1e-6;

    /** Whether it is one. */
    boolean isOne() {
        if (before.isPresent()
                && after.isPresent()
                && before.get() instanceof Double one
                && after.get() instanceof Double other) {
            return Math.abs(one - other) > ALIKE * Math.max(Math.abs(one), Math.abs(other));
        }
        return !before.equals(after);
    }
}
