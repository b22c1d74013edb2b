package brakewright.profile;

import brakewright.review.Evaluation;
import brakewright.spec.Require;
import java.util.List;
import org.apache.commons.math3.random.MersenneTwister;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * In which share of cases a vehicle is within limits, every input being equally likely anywhere
 * within its tolerance.
 *
 * <p>The cases are points of a Sobol sequence, shifted as a whole by a random vector from the seed
 * (a Cranley-Patterson rotation), so that the same seed gives the same shares.
 *
 * <p>Source: Joe and Kuo, SIAM J. Sci. Comput. 30(5):2635–2654 (2008); Cranley and Patterson, SIAM
 * J. Numer. Anal. 13(6):904–914 (1976).
 *
 * @param points how many cases
 * @param seed of the shift
 * @param within share of cases within limits [1]
 * @param conditional share of cases that are so under a condition [1]
 * @param outside share of cases outside limits [1]
 */
public record Distribution(
        int points, long seed, double within, double conditional, double outside) {

    /**
     * Counts cases.
     *
     * @param inputs that are not known exactly, one to 1000 of them
     * @param variation makes the vehicle from their values
     * @param points how many cases, at least one
     * @param seed of the shift
     * @return the shares
     * @throws IllegalArgumentException if a number is outside its range
     */
    public static Distribution of(
            List<Uncertain> inputs, Variation variation, int points, long seed) {
        Require.atLeastOne("uncertain inputs", inputs.size());
        Require.atLeastOne("points", points);
        int dimension = inputs.size();
        SobolSequenceGenerator sequence = new SobolSequenceGenerator(dimension);
        MersenneTwister random = new MersenneTwister(seed);
        double[] shift = new double[dimension];
        for (int i = 0; i < dimension; i++) {
            shift[i] = random.nextDouble();
        }
        int[] counts = new int[3];
        double[] values = new double[dimension];
        for (int point = 0; point < points; point++) {
            double[] share = sequence.nextVector();
            for (int i = 0; i < dimension; i++) {
                values[i] = inputs.get(i).at((share[i] + shift[i]) % 1.0);
            }
            counts[Evaluation.of(variation.with(values.clone())).outcome().ordinal()]++;
        }
        return new Distribution(
                points,
                seed,
                (double) counts[0] / points,
                (double) counts[1] / points,
                (double) counts[2] / points);
    }
}
