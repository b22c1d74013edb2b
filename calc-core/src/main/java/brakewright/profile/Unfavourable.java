package brakewright.profile;

import brakewright.numeric.Rounding;
import brakewright.review.Evaluation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.Function;

/**
 * Solves for a value at the unfavourable side of every tolerance.
 *
 * <p>It answers with a few places within the tolerances, then looks for a worse one at the answer,
 * until there is none. What some places forbid, all forbid; so what all permit at the answer of
 * some is the answer of all, and the long search is made a few times instead of at every step.
 */
public final class Unfavourable {

    /** Assumption: our own choice; two or three rounds are the rule. */
    private static final int MOST_ROUNDS = 12;

    /** Judges a vehicle by what is uncertain of it and by the value that is solved for. */
    @FunctionalInterface
    public interface Judge {
        /**
         * Judges.
         *
         * @param values of the uncertain inputs, in their order
         * @param asked the value that is solved for
         * @return the verdict
         */
        Evaluation of(double[] values, double asked);
    }

    private final List<Uncertain> inputs;
    private final Judge judge;

    private Unfavourable(List<Uncertain> inputs, Judge judge) {
        this.inputs = inputs;
        this.judge = judge;
    }

    /**
     * Solves.
     *
     * @param inputs that are not known exactly; may be none
     * @param judge of the vehicle
     * @param solver finds the value for a verdict over it, as one of {@link Solver}
     * @return the solution, whose verdicts are those of the worst place found
     */
    public static Solution solve(
            List<Uncertain> inputs,
            Judge judge,
            Function<DoubleFunction<Evaluation>, Solution> solver) {
        return new Unfavourable(inputs, judge).solve(solver);
    }

    private Solution solve(Function<DoubleFunction<Evaluation>, Solution> solver) {
        CornerSearch search = new CornerSearch(inputs);
        List<double[]> places = new ArrayList<>(List.of(search.nominal()));
        for (int round = 0; !inputs.isEmpty() && round < MOST_ROUNDS; round++) {
            Solution answer = solver.apply(asked -> worstOf(places, asked));
            double[] worst = search.greatest(values -> judge.of(values, answer.value()).severity());
            if (judge.of(worst, answer.value()).severity()
                    <= answer.there().severity() + Rounding.OF_A_RESULT) {
                return answer;
            }
            places.add(worst);
        }
        return solver.apply(asked -> searched(search, asked));
    }

    private Evaluation worstOf(List<double[]> places, double asked) {
        return places.stream()
                .map(values -> judge.of(values, asked))
                .max(Comparator.comparingDouble(Evaluation::severity))
                .orElseThrow();
    }

    private Evaluation searched(CornerSearch search, double asked) {
        return judge.of(search.greatest(values -> judge.of(values, asked).severity()), asked);
    }
}
