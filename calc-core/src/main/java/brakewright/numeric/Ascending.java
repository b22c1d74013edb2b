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
     * @param some ascending, each once
     * @param more in any order, some of them several times
     * @return both, ascending, each once
     */
    public static double[] both(double[] some, double[] more) {
        double[] others = of(more);
        double[] all = new double[some.length + others.length];
        int count = 0;
        int other = 0;
        for (double number : some) {
            while (other < others.length && Double.compare(others[other], number) < 0) {
                all[count++] = others[other++];
            }
            if (other < others.length && Double.compare(others[other], number) == 0) {
                other++;
            }
            all[count++] = number;
        }
        while (other < others.length) {
            all[count++] = others[other++];
        }
        return Arrays.copyOf(all, count);
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
