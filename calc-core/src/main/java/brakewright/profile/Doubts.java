package brakewright.profile;

import brakewright.review.Evaluation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What values that were not measured could do to a verdict, each within its usual spread. They rank
 * what to measure first; they decide nothing.
 *
 * @param weighed those that move the verdict, what moves it most first
 * @param verdict at the unfavourable side of the weightiest of them together
 */
public record Doubts(List<Weighed> weighed, Evaluation verdict) {

    /** Less is no change that anyone would see in the order of verdicts [1]. */
    private static final double UNSEEN = 1e-4;

    /** Copies the list. */
    public Doubts {
        weighed = List.copyOf(weighed);
    }

    /**
     * What one value does by itself.
     *
     * @param place of the input in the list that was asked about, from 0
     * @param atLow the verdict at the lower end of its spread
     * @param atHigh the verdict at the upper end
     * @param weight how far it moves the verdict in the order of {@link Tolerances#badness}
     */
    public record Weighed(int place, Evaluation atLow, Evaluation atHigh, double weight) {}

    /**
     * Weighs doubts.
     *
     * @param inputs with their usual spreads
     * @param variation makes the vehicle from their values
     * @param together how many of the weightiest are put together for one verdict
     * @return the doubts
     */
    public static Doubts of(List<Uncertain> inputs, Variation variation, int together) {
        double[] nominal = new CornerSearch(inputs).nominal();
        Evaluation here = Evaluation.of(variation.with(nominal));
        List<Weighed> weighed = new ArrayList<>();
        for (int place = 0; place < inputs.size(); place++) {
            Evaluation low = alone(variation, nominal, place, inputs.get(place).low());
            Evaluation high = alone(variation, nominal, place, inputs.get(place).high());
            double weight = Math.max(moved(low, here), moved(high, here));
            if (weight > UNSEEN) {
                weighed.add(new Weighed(place, low, high, weight));
            }
        }
        weighed.sort(Comparator.comparingDouble(Weighed::weight).reversed());
        int[] places = weighed.stream().limit(together).mapToInt(Weighed::place).toArray();
        List<Uncertain> weightiest = new ArrayList<>();
        for (int place : places) {
            weightiest.add(inputs.get(place));
        }
        Variation some = values -> variation.with(with(nominal, places, values));
        double[] worst =
                new CornerSearch(weightiest)
                        .greatest(values -> Tolerances.badness(Evaluation.of(some.with(values))));
        return new Doubts(weighed, Evaluation.of(some.with(worst)));
    }

    private static Evaluation alone(
            Variation variation, double[] nominal, int place, double value) {
        return Evaluation.of(
                variation.with(with(nominal, new int[] {place}, new double[] {value})));
    }

    private static double[] with(double[] nominal, int[] places, double[] values) {
        double[] changed = nominal.clone();
        for (int i = 0; i < places.length; i++) {
            changed[places[i]] = values[i];
        }
        return changed;
    }

    private static double moved(Evaluation there, Evaluation here) {
        return Math.abs(Tolerances.badness(there) - Tolerances.badness(here));
    }
}
