package brakewright.profile;

import brakewright.review.Evaluation;

/** The answer to a question for a value that just keeps a vehicle within limits. */
public sealed interface Solution {

    /**
     * Returns the value that the answer is about.
     *
     * @return the highest or smallest that does, the last of them, or the nearest to doing
     */
    double value();

    /**
     * Returns the verdict at that value.
     *
     * @return within limits where there is a value that is
     */
    Evaluation there();

    /**
     * A value that just does.
     *
     * @param value the value
     * @param there the verdict at it, within limits
     * @param beyond the verdict just beyond it
     */
    record Found(double value, Evaluation there, Evaluation beyond) implements Solution {}

    /**
     * Every value asked about does.
     *
     * @param value the last of them
     * @param there the verdict at it
     */
    record All(double value, Evaluation there) implements Solution {}

    /**
     * No value asked about does.
     *
     * @param value the value asked about that comes nearest
     * @param there the verdict at it, which says why
     */
    record None(double value, Evaluation there) implements Solution {}
}
