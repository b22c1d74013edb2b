package brakewright.numeric;

import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Points that fill the unit cube evenly: a Sobol sequence, shifted as a whole by a random vector,
 * so that the same seed gives the same points.
 *
 * <p>Source: Joe and Kuo, SIAM J. Sci. Comput. 30(5):2635–2654 (2008), as implemented by Apache
 * Commons Math 3.6.1; the shift: Cranley and Patterson, SIAM J. Numer. Anal. 13(6):904–914 (1976).
 */
public final class SobolPoints {

    private final SobolSequenceGenerator sequence;
    private final double[] shift;

    /**
     * Begins a sequence.
     *
     * @param dimension of the cube, from 1 to 1000
     * @param seed of the shift
     */
    public SobolPoints(int dimension, long seed) {
        this.sequence = new SobolSequenceGenerator(dimension);
        MersenneTwister random = new MersenneTwister(seed);
        this.shift = new double[dimension];
        for (int i = 0; i < dimension; i++) {
            shift[i] = random.nextDouble();
        }
    }

    /**
     * Returns the next point.
     *
     * @return its coordinates, each from 0 to below 1
     */
    public double[] next() {
        double[] point = sequence.nextVector();
        for (int i = 0; i < point.length; i++) {
            point[i] = (point[i] + shift[i]) % 1.0;
        }
        return point;
    }
}
