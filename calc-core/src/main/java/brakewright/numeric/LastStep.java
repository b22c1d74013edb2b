package brakewright.numeric;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;

/** Finds the last of numbered steps that something permits, where later ones are no milder. */
public final class LastStep {

    private LastStep() {}

    /**
     * Halves the steps between one that is taken as permitted and one that is tried first.
     *
     * @param first the lowest step, not asked about
     * @param last the highest step, not below the first
     * @param permits whether a step is permitted; once it is not, no later one is
     * @return the highest permitted step; the first where no later one is permitted
     */
    public static int of(int first, int last, IntPredicate permits) {
        if (last == first || permits.test(last)) {
            return last;
        }
        int low = first;
        int high = last;
        while (high - low > 1) {
            int middle = low + (high - low) / 2;
            if (permits.test(middle)) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /**
     * Finds the last of ascending values that something permits, where it is known by what share of
     * itself a value is too much. What is left of the value without that share is tried next, and
     * after what is permitted the value after it; every third time the values between are halved,
     * for a share that misleads.
     *
     * @param values ascending, the first of which is taken as permitted
     * @param last of them that is tried first
     * @param excess by what share of itself a value of a number exceeds what is permitted [1], not
     *     positive where it does not; once it is positive, it is for all later ones
     * @return the number of the highest permitted value; 0 where no later one is permitted
     */
    public static int ofShares(double[] values, int last, IntToDoubleFunction excess) {
        double share = last == 0 ? 0.0 : excess.applyAsDouble(last);
        if (!(share > 0.0)) {
            return last;
        }
        int low = 0;
        int high = last;
        int next = notAbove(values, values[last] * (1.0 - share));
        for (int turn = 1; high - low > 1; turn++) {
            int tried =
                    turn % 3 == 0
                            ? low + (high - low) / 2
                            : Math.max(low + 1, Math.min(high - 1, next));
            share = excess.applyAsDouble(tried);
            if (share > 0.0) {
                high = tried;
                next = notAbove(values, values[tried] * (1.0 - share));
            } else {
                low = tried;
                next = tried + 1;
            }
        }
        return low;
    }

    /** The value that is exactly at the bound, but for rounding, counts as not above it. */
    private static int notAbove(double[] values, double bound) {
        int place = Arrays.binarySearch(values, (1.0 + Rounding.OF_A_FORMULA) * bound);
        return place >= 0 ? place : -place - 2;
    }
}
