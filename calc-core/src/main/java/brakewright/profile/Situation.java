package brakewright.profile;

import brakewright.review.BrakeVerdict;
import brakewright.review.Evaluation;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.spec.Use;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/**
 * A vehicle in its use, for which settings are looked for: what it is with given settings, at
 * nominal inputs and at the unfavourable side of every stated tolerance.
 */
public final class Situation {

    /** Makes the vehicle from the values of what is uncertain and from settings. */
    @FunctionalInterface
    public interface Variety {
        /**
         * Makes the vehicle.
         *
         * @param values of the uncertain inputs, in their order
         * @param settings all settings; what is not given in them is not set
         * @return the vehicle
         */
        Build with(double[] values, Settings settings);
    }

    private final List<Uncertain> inputs;
    private final Variety variety;
    private final UnaryOperator<Use> part;

    private Situation(List<Uncertain> inputs, Variety variety, UnaryOperator<Use> part) {
        this.inputs = List.copyOf(inputs);
        this.variety = variety;
        this.part = part;
    }

    /**
     * A vehicle that is known exactly.
     *
     * @param build the vehicle
     * @return its situation
     */
    public static Situation of(Build build) {
        return of(List.of(), (values, settings) -> build.withSettings(settings));
    }

    /**
     * A vehicle with uncertain inputs.
     *
     * @param inputs that are not known exactly
     * @param variety makes the vehicle
     * @return its situation
     */
    public static Situation of(List<Uncertain> inputs, Variety variety) {
        return new Situation(inputs, variety, UnaryOperator.identity());
    }

    /**
     * Narrows the use.
     *
     * @param narrower makes a part of the use from the whole
     * @return the same vehicle in that part of its use
     */
    public Situation in(UnaryOperator<Use> narrower) {
        return new Situation(inputs, variety, use -> narrower.apply(part.apply(use)));
    }

    /**
     * Whether nothing is uncertain: then there is one place within the tolerances, of no values.
     */
    boolean isExact() {
        return inputs.isEmpty();
    }

    /**
     * Makes the vehicle at nominal inputs.
     *
     * @param settings all settings
     * @return the vehicle
     */
    public Build nominal(Settings settings) {
        return with(new CornerSearch(inputs).nominal(), settings);
    }

    /**
     * Finds the vehicle where a measure is greatest within the tolerances.
     *
     * @param settings all settings
     * @param measure of a vehicle
     * @return the vehicle there; the nominal one where nothing is uncertain
     */
    public Build worst(Settings settings, ToDoubleFunction<Build> measure) {
        return inputs.isEmpty() ? nominal(settings) : with(worstPlace(settings, measure), settings);
    }

    /**
     * Judges the brake.
     *
     * @param settings all settings
     * @return the verdict at the unfavourable side of the tolerances
     */
    public BrakeVerdict brake(Settings settings) {
        return BrakeVerdict.of(worst(settings, build -> BrakeVerdict.of(build).badness()));
    }

    /**
     * Judges the brake on a wet road.
     *
     * @param settings all settings
     * @return the verdict at the unfavourable side of the tolerances
     */
    public BrakeVerdict brakeOnWetRoad(Settings settings) {
        return BrakeVerdict.of(
                worst(settings, build -> BrakeVerdict.of(build.onWetRoad()).badness()).onWetRoad());
    }

    /**
     * Returns the greatest value of a measure within the tolerances.
     *
     * @param settings all settings
     * @param measure of a vehicle
     * @return the value
     */
    double greatest(Settings settings, ToDoubleFunction<Build> measure) {
        return measure.applyAsDouble(worst(settings, measure));
    }

    /**
     * Returns the least value of a measure within the tolerances.
     *
     * @param settings all settings
     * @param measure of a vehicle
     * @return the value
     */
    double least(Settings settings, ToDoubleFunction<Build> measure) {
        return -greatest(settings, build -> -measure.applyAsDouble(build));
    }

    /** The first positive value of a measure at some places within the tolerances; 0 for none. */
    double positive(Settings settings, ToDoubleFunction<Build> measure, List<double[]> places) {
        for (double[] values : places) {
            double value = measure.applyAsDouble(with(values, settings));
            if (value > 0.0) {
                return value;
            }
        }
        return 0.0;
    }

    /** Finds the place within the tolerances where a measure is greatest, if it is positive. */
    Optional<double[]> positive(Settings settings, ToDoubleFunction<Build> measure) {
        return Optional.of(worstPlace(settings, measure))
                .filter(values -> measure.applyAsDouble(with(values, settings)) > 0.0);
    }

    /**
     * Finds the highest value that is within limits at the unfavourable side of the tolerances.
     *
     * @param setting the settings with a value
     * @param judge of a vehicle
     * @param low the lowest value asked about
     * @param high the highest value asked about
     * @return the solution, lower values being taken as milder
     */
    Solution highest(
            DoubleFunction<Settings> setting,
            Function<Build, Evaluation> judge,
            double low,
            double high) {
        return Unfavourable.solve(
                inputs,
                (values, asked) -> judge.apply(with(values, setting.apply(asked))),
                verdict -> Solver.highest(verdict, low, high));
    }

    private double[] worstPlace(Settings settings, ToDoubleFunction<Build> measure) {
        return new CornerSearch(inputs)
                .greatest(values -> measure.applyAsDouble(with(values, settings)));
    }

    private Build with(double[] values, Settings settings) {
        Build build = variety.with(values.clone(), settings);
        return build.withUse(part.apply(build.use()));
    }
}
