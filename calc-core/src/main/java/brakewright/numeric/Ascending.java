package brakewright.numeric;

import java.util.Arrays;

/** Numbers in ascending order, each once. */
public final class Ascending {

    private Ascending() {}

    /**
     * Puts numbers in order.
     *
     * @param numbers in any order, some of them several times
     * @return the same, ascending, each once
     */
    public static double[] of(double... numbers) {
        double[] sorted = numbers.clone();
        Arrays.sort(sorted);
        int count = 0;
        for (double number : sorted) {
            if (count == 0 || Double.compare(number, sorted[count - 1]) != 0) {
                sorted[count++] = number;
            }
        }
        return Arrays.copyOf(sorted, count);
    }

    /**
     * Puts numbers of two lists in order.
     *
     * @param some in any order
     * @param more in any order
     * @return both, ascending, each once
     */
    public static double[] both(double[] some, double[] more) {
        double[] all = Arrays.copyOf(some, some.length + more.length);
        System.arraycopy(more, 0, all, some.length, more.length);
        return of(all);
    }

    /**
     * Leaves out what is not between two bounds.
     *
     * @param numbers in any order
     * @param low the lower bound
     * @param high the upper bound
     * @return those above the lower bound and below the upper one, in the same order
     */
    public static double[] between(double[] numbers, double low, double high) {
        double[] left = new double[numbers.length];
        int count = 0;
        for (double number : numbers) {
            if (number > low && number < high) {
                left[count++] = number;
            }
        }
        return Arrays.copyOf(left, count);
    }
}
