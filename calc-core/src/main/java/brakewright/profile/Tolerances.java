package brakewright.profile;

import brakewright.review.Evaluation;
import brakewright.review.Verdict;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * What tolerances of inputs make of a verdict and of the results.
 *
 * <p>The verdict is taken at the unfavourable corner: the values within the tolerances at which the
 * outcome is worst, and among those a sum in which the safe charge counts most and the severity of
 * the worst check less; {@link CornerSearch} tells how it is found. Of corners at which nothing is
 * left of either, the one counts at which all checks are exceeded most in the mean. Where the
 * outcome changes within the tolerances, the sum is the greatest to which moving one input at a
 * time leads. Every result is told at its own worst and best corner.
 *
 * @param inputs that are not known exactly
 * @param nominal the verdict at nominal values
 * @param worst the verdict at the unfavourable corner
 * @param best the verdict at the most favourable corner
 * @param spreads the results with their worst and best
 * @param influences what each input by itself does, the weightiest first
 */
public record Tolerances(
        List<Uncertain> inputs,
        Evaluation nominal,
        Corner worst,
        Corner best,
        List<Spread> spreads,
        List<Influence> influences) {

    private static final List<Quantity> RESULTS =
            List.of(
                    Quantity.SAFE_CHARGE,
                    Quantity.GREATEST_RETURN,
                    Quantity.GREATEST_DRAW,
                    Quantity.STOP_DRY,
                    Quantity.TOP_SPEED,
                    Quantity.TOP_SPEED_LASTING,
                    Quantity.LAUNCH,
                    Quantity.CLIMB,
                    Quantity.HOTTEST_WINDING,
                    Quantity.RANGE);

    /** The badness of what is outside of limits, safe at no charge, and by nothing permitted. */
    private static final double UTTER = 10.0 * Verdict.Outcome.OUTSIDE_LIMITS.ordinal() + 6.0;

    /** Copies the lists. */
    public Tolerances {
        inputs = List.copyOf(inputs);
        spreads = List.copyOf(spreads);
        influences = List.copyOf(influences);
    }

    /**
     * A place within the tolerances.
     *
     * @param values of the inputs, in their order
     * @param build the vehicle there
     * @param evaluation the verdict there
     */
    public record Corner(List<Double> values, Build build, Evaluation evaluation) {

        /** Copies the values. */
        public Corner {
            values = List.copyOf(values);
        }
    }

    /**
     * A result and how far it may be off.
     *
     * @param measure the result
     * @param nominal at nominal values; empty where not computed
     * @param worst the worst within the tolerances, the highest where neither way is worse
     * @param best the best likewise
     */
    public record Spread(
            Measure measure, OptionalDouble nominal, OptionalDouble worst, OptionalDouble best) {}

    /**
     * What one input does by itself, the others nominal.
     *
     * @param input the input
     * @param severityAtLow the severity with the input at its lowest [1]
     * @param severityAtHigh the severity with the input at its highest [1]
     * @param safeChargeAtLow the safe charge with the input at its lowest [1]
     * @param safeChargeAtHigh the safe charge with the input at its highest [1]
     * @param decides whether the verdict at the unfavourable corner would be better if this input
     *     were known to be nominal
     */
    public record Influence(
            Uncertain input,
            double severityAtLow,
            double severityAtHigh,
            double safeChargeAtLow,
            double safeChargeAtHigh,
            boolean decides) {

        /**
         * Returns how much the severity moves from the lowest to the highest of the input.
         *
         * @return the change [1]
         */
        public double severityChange() {
            return severityAtHigh - severityAtLow;
        }

        /**
         * Returns how much the answer moves over the range of the input.
         *
         * @return the change of severity and of the safe charge together [1]
         */
        public double weight() {
            return Math.abs(severityAtHigh - severityAtLow)
                    + Math.abs(safeChargeAtHigh - safeChargeAtLow);
        }
    }

    /**
     * Works out what tolerances do.
     *
     * @param inputs that are not known exactly
     * @param variation makes the vehicle from their values
     * @return the tolerances
     */
    public static Tolerances of(List<Uncertain> inputs, Variation variation) {
        return new Work(inputs, variation).tolerances();
    }

    /**
     * Finds the unfavourable corner alone.
     *
     * @param inputs that are not known exactly
     * @param variation makes the vehicle from their values
     * @return where the verdict is worst
     */
    public static Corner unfavourable(List<Uncertain> inputs, Variation variation) {
        Work work = new Work(inputs, variation);
        return work.corner(work.unfavourable());
    }

    /**
     * Puts verdicts in an order, the worse the greater: the outcome first, then a sum of what the
     * safe charge lacks (5 at most) and the severity (1 at most).
     *
     * @param evaluation a verdict
     * @return its place
     */
    public static double badness(Evaluation evaluation) {
        return 10.0 * evaluation.outcome().ordinal()
                + 5.0 * (1.0 - evaluation.safeCharge())
                + 0.5 * (1.0 + evaluation.severity());
    }

    private static final class Work {

        private final List<Uncertain> inputs;
        private final Variation variation;
        private final CornerSearch search;
        private final Map<List<Double>, ProfileResults> results = new HashMap<>();

        Work(List<Uncertain> inputs, Variation variation) {
            this.inputs = inputs;
            this.variation = variation;
            this.search = new CornerSearch(inputs);
        }

        Tolerances tolerances() {
            double[] nominal = search.nominal();
            Corner worst = corner(unfavourable());
            return new Tolerances(
                    inputs,
                    results(nominal).evaluation(),
                    worst,
                    corner(search.greatest(values -> -badness(values))),
                    spreads(nominal),
                    influences(worst));
        }

        private double[] unfavourable() {
            double[] worst = search.greatest(this::badness);
            return badness(worst) < UTTER
                    ? worst
                    : search.greatest(
                            values ->
                                    badness(values) < UTTER
                                            ? -UTTER
                                            : results(values).evaluation().meanSeverity());
        }

        private double badness(double[] values) {
            return Tolerances.badness(results(values).evaluation());
        }

        private ProfileResults results(double[] values) {
            return results.computeIfAbsent(
                    boxed(values), each -> new ProfileResults(variation.with(values.clone())));
        }

        private static List<Double> boxed(double[] values) {
            return Arrays.stream(values).boxed().toList();
        }

        private Corner corner(double[] values) {
            ProfileResults there = results(values);
            return new Corner(boxed(values), there.build(), there.evaluation());
        }

        private List<Spread> spreads(double[] nominal) {
            ProfileResults own = results(nominal);
            List<Spread> spreads = new ArrayList<>();
            for (Measure measure : Comparison.measures(List.of(own))) {
                if (RESULTS.contains(measure.quantity())) {
                    boolean more = measure.quantity().sense() == Quantity.Sense.HIGHER;
                    ToDoubleFunction<double[]> value =
                            values -> results(values).read(measure).value().orElse(Double.NaN);
                    spreads.add(
                            new Spread(
                                    measure,
                                    own.read(measure).value(),
                                    extreme(value, more ? -1.0 : 1.0),
                                    extreme(value, more ? 1.0 : -1.0)));
                }
            }
            return spreads;
        }

        /** The value where it is greatest, or least for a negative sign; empty where unknown. */
        private OptionalDouble extreme(ToDoubleFunction<double[]> value, double sign) {
            double[] at =
                    search.greatest(
                            values -> {
                                double found = sign * value.applyAsDouble(values);
                                return Double.isNaN(found) ? Double.NEGATIVE_INFINITY : found;
                            });
            double found = value.applyAsDouble(at);
            return Double.isNaN(found) ? OptionalDouble.empty() : OptionalDouble.of(found);
        }

        private List<Influence> influences(Corner worst) {
            List<Influence> influences = new ArrayList<>();
            for (int i = 0; i < inputs.size(); i++) {
                Evaluation low = alone(i, inputs.get(i).low());
                Evaluation high = alone(i, inputs.get(i).high());
                influences.add(
                        new Influence(
                                inputs.get(i),
                                low.severity(),
                                high.severity(),
                                low.safeCharge(),
                                high.safeCharge(),
                                decides(i, worst)));
            }
            influences.sort(
                    Comparator.comparing(Influence::decides)
                            .thenComparingDouble(Influence::weight)
                            .reversed());
            return influences;
        }

        private Evaluation alone(int index, double value) {
            double[] values = search.nominal();
            values[index] = value;
            return results(values).evaluation();
        }

        private boolean decides(int index, Corner worst) {
            double[] values = worst.values().stream().mapToDouble(Double::doubleValue).toArray();
            values[index] = inputs.get(index).nominal();
            Verdict.Outcome without = results(values).evaluation().outcome();
            return without.compareTo(worst.evaluation().outcome()) < 0;
        }
    }
}
