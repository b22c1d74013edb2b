package brakewright.spec;

import java.util.OptionalDouble;

/**
 * The motor controllers, all alike, sharing the motors and the pack evenly.
 *
 * @param count how many, at least one
 * @param basis what their motor current means
 * @param motorCurrentRating highest motor current of a motor, in that basis [A], positive
 * @param packCurrentRating highest pack current of one controller [A], positive
 * @param voltageRating highest supply voltage [V], positive
 * @param efficiency power out over power in, the same both ways [1], above 0 to 1
 * @param busCapacitance across the supply terminals of one controller [F]; empty where unknown
 * @param regenResponse how long the limiter of the pack regen current takes to act [s], not
 *     negative
 * @param brakeEndsBelow the speed below which they do not brake electrically [m/s], not negative
 */
public record Controllers(
        int count,
        CurrentBasis basis,
        double motorCurrentRating,
        double packCurrentRating,
        double voltageRating,
        double efficiency,
        OptionalDouble busCapacitance,
        double regenResponse,
        double brakeEndsBelow) {

    /**
     * Controllers that limit the pack regen current at once and brake down to a standstill.
     *
     * @param count how many, at least one
     * @param basis what their motor current means
     * @param motorCurrentRating highest motor current of a motor, in that basis [A], positive
     * @param packCurrentRating highest pack current of one controller [A], positive
     * @param voltageRating highest supply voltage [V], positive
     * @param efficiency power out over power in, the same both ways [1], above 0 to 1
     * @param busCapacitance across the supply terminals of one controller [F]; empty where unknown
     */
    public Controllers(
            int count,
            CurrentBasis basis,
            double motorCurrentRating,
            double packCurrentRating,
            double voltageRating,
            double efficiency,
            OptionalDouble busCapacitance) {
        this(
                count,
                basis,
                motorCurrentRating,
                packCurrentRating,
                voltageRating,
                efficiency,
                busCapacitance,
                0.0,
                0.0);
    }

    /**
     * Validates the controllers.
     *
     * @throws IllegalArgumentException if a number is outside its range
     */
    public Controllers {
        Require.atLeastOne("number of controllers", count);
        Require.positive("controller motor-current rating", motorCurrentRating, Unit.AMPERE);
        Require.positive("controller pack-current rating", packCurrentRating, Unit.AMPERE);
        Require.positive("controller voltage rating", voltageRating, Unit.VOLT);
        Require.positive("controller efficiency", efficiency, Unit.RATIO);
        Require.within("controller efficiency", efficiency, 0.0, 1.0, Unit.RATIO);
        Require.positive("bus capacitance", busCapacitance, Unit.FARAD);
        Require.notNegative("response of the regen limiter", regenResponse, Unit.SECOND);
        Require.notNegative("speed at which the brake ends", brakeEndsBelow, Unit.METRE_PER_SECOND);
    }

    /**
     * Returns the part of a pack current that each of them has.
     *
     * @param together the pack current of all controllers [A]
     * @return of one controller [A]
     */
    public double each(double together) {
        return together / count;
    }

    /**
     * Returns the pack current that a setting of each of them makes.
     *
     * @param each of one controller [A]; empty where none is set
     * @return of all controllers [A]; empty likewise
     */
    public OptionalDouble together(OptionalDouble each) {
        return each.isPresent()
                ? OptionalDouble.of(count * each.getAsDouble())
                : OptionalDouble.empty();
    }
}
