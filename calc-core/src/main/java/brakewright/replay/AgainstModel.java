package brakewright.replay;

import brakewright.profile.Uncertain;
import brakewright.profile.Variation;
import brakewright.recording.Ride;
import brakewright.recording.Stretch;
import brakewright.spec.Build;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A recorded ride held against the model: its own speed and height are driven through the same
 * stepping as a route, and what that takes stands beside what was measured.
 *
 * <p>How far tolerances reach is the sum of what each input does by itself, to either side: what
 * two do together beyond that is left out.
 *
 * @param figures measured and predicted; those that the model says nothing of are left out
 * @param seconds how much of the ride was driven [s]
 * @param pullTooWeak how long the vehicle as described could not have pulled as recorded [s]
 * @param brakesTooWeak likewise braked [s]
 * @param currentOff the root of the mean square by which the current is off, in stretches of a
 *     second [A]; empty where none was recorded
 * @param voltageOff likewise the voltage [V]
 * @param isHeightKnown whether a height was recorded; else the road counts as level
 * @param isChargeKnown whether a charge was recorded; else the ride begins at the fullest in use
 * @param course measured and predicted current and voltage, stretch by stretch where they were
 *     recorded
 */
public record AgainstModel(
        List<Compared> figures,
        double seconds,
        double pullTooWeak,
        double brakesTooWeak,
        OptionalDouble currentOff,
        OptionalDouble voltageOff,
        boolean isHeightKnown,
        boolean isChargeKnown,
        List<Traced> course) {

    /** Copies the lists. */
    public AgainstModel {
        figures = List.copyOf(figures);
        course = List.copyOf(course);
    }

    /**
     * Holds a ride against a vehicle all of whose values are exact.
     *
     * @param build the vehicle
     * @param ride on it
     * @return both side by side; empty where no second of the ride can be driven
     */
    public static Optional<AgainstModel> of(Build build, Ride ride) {
        return of(build, ride, List.of(), values -> build);
    }

    /**
     * Holds a ride against a vehicle.
     *
     * @param build the vehicle at its nominal values
     * @param ride on it
     * @param inputs of it that are not known exactly
     * @param variation makes the vehicle from their values
     * @return both side by side; empty where no second of the ride can be driven
     */
    public static Optional<AgainstModel> of(
            Build build, Ride ride, List<Uncertain> inputs, Variation variation) {
        List<Stretch> stretches = Stretch.all(ride);
        if (stretches.isEmpty()) {
            return Optional.empty();
        }
        Retrace nominal = new Retrace(build, ride, stretches);
        double[] low = new double[Figure.values().length];
        double[] high = new double[Figure.values().length];
        for (int input = 0; input < inputs.size(); input++) {
            Retrace atLow = new Retrace(alone(inputs, input, true, variation), ride, stretches);
            Retrace atHigh = new Retrace(alone(inputs, input, false, variation), ride, stretches);
            for (Figure figure : Figure.values()) {
                double one = change(nominal, atLow, figure);
                double other = change(nominal, atHigh, figure);
                low[figure.ordinal()] += Math.min(0.0, Math.min(one, other));
                high[figure.ordinal()] += Math.max(0.0, Math.max(one, other));
            }
        }
        List<Compared> figures = new ArrayList<>();
        for (Figure figure : Figure.values()) {
            nominal.predicted(figure)
                    .ifPresent(
                            own ->
                                    figures.add(
                                            new Compared(
                                                    figure,
                                                    nominal.measured(figure),
                                                    own,
                                                    own + low[figure.ordinal()],
                                                    own + high[figure.ordinal()])));
        }
        return Optional.of(
                new AgainstModel(
                        figures,
                        nominal.seconds(),
                        nominal.pullTooWeak(),
                        nominal.brakesTooWeak(),
                        nominal.currentOff(),
                        nominal.voltageOff(),
                        nominal.isHeightKnown(),
                        nominal.isChargeKnown(),
                        nominal.course()));
    }

    private static Build alone(
            List<Uncertain> inputs, int which, boolean isLow, Variation variation) {
        double[] values = inputs.stream().mapToDouble(Uncertain::nominal).toArray();
        values[which] = isLow ? inputs.get(which).low() : inputs.get(which).high();
        return variation.with(values);
    }

    private static double change(Retrace nominal, Retrace other, Figure figure) {
        OptionalDouble from = nominal.predicted(figure);
        OptionalDouble to = other.predicted(figure);
        return from.isPresent() && to.isPresent() ? to.getAsDouble() - from.getAsDouble() : 0.0;
    }
}
