package brakewright.numeric;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * How many standard errors to either side hold the truth in 95 of 100 cases: 1.96 for many events,
 * 4.30 for three.
 *
 * <p>Source: Student, Biometrika 6 (1908); quantiles from Apache Commons Math 3.6.1.
 */
public final class Student {

    private static final double UPPER = 0.975;

    private Student() {}

    /**
     * Returns the factor.
     *
     * @param free how many events there are beyond the values that are found, at least 1
     * @return standard errors to either side
     */
    public static double factor(int free) {
        return new TDistribution(free).inverseCumulativeProbability(UPPER);
    }
}
