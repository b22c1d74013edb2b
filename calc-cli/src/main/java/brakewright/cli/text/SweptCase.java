package brakewright.cli.text;

import brakewright.review.Evaluation;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What one case of a sweep came to.
 *
 * @param evaluation the verdict in numbers
 * @param reported the results that were asked for besides, in that order; empty where there is none
 */
public record SweptCase(Evaluation evaluation, List<OptionalDouble> reported) {

    /** Copies the list. */
    public SweptCase {
        reported = List.copyOf(reported);
    }
}
