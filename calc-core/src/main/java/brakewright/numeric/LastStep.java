package brakewright.numeric;

import java.util.function.IntPredicate;

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
}
