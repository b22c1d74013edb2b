package brakewright.profile;

import brakewright.numeric.SobolPoints;
import brakewright.review.Evaluation;
import brakewright.spec.Require;
import java.util.List;

/**
 * In which share of cases a vehicle is within limits, every input being equally likely anywhere
 * within its tolerance.
 *
 * <p>The cases are points of a Sobol sequence shifted by a random vector, so that the same seed
 * gives the same shares.
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
        SobolPoints sequence = new SobolPoints(dimension, seed);
        int[] counts = new int[3];
        double[] values = new double[dimension];
        for (int point = 0; point < points; point++) {
            double[] share = sequence.next();
            for (int i = 0; i < dimension; i++) {
                values[i] = inputs.get(i).at(share[i]);
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
