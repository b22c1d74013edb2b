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

    /**
     * Returns this set of controllers with more or fewer of them.
     *
     * @param replacement how many, at least one
     * @return a changed copy
     */
    public Controllers withCount(int replacement) {
        Copy copy = new Copy(this);
        copy.count = replacement;
        return copy.made();
    }

    /**
     * Returns this set of controllers with another meaning of the motor current.
     *
     * @param replacement what an ampere is
     * @return a changed copy
     */
    public Controllers withBasis(CurrentBasis replacement) {
        Copy copy = new Copy(this);
        copy.basis = replacement;
        return copy.made();
    }

    /**
     * Returns this set of controllers with another rating of the motor current.
     *
     * @param replacement of a motor, in the basis [A], positive
     * @return a changed copy
     */
    public Controllers withMotorCurrentRating(double replacement) {
        Copy copy = new Copy(this);
        copy.motorCurrentRating = replacement;
        return copy.made();
    }

    /**
     * Returns this set of controllers with another voltage rating.
     *
     * @param replacement highest supply voltage [V], positive
     * @return a changed copy
     */
    public Controllers withVoltageRating(double replacement) {
        Copy copy = new Copy(this);
        copy.voltageRating = replacement;
        return copy.made();
    }

    /**
     * Returns this set of controllers with another efficiency.
     *
     * @param replacement power out over power in [1], above 0 to 1
     * @return a changed copy
     */
    public Controllers withEfficiency(double replacement) {
        Copy copy = new Copy(this);
        copy.efficiency = replacement;
        return copy.made();
    }

    /**
     * Returns this set of controllers with another capacitance.
     *
     * @param replacement across the supply terminals of one [F]; empty where unknown
     * @return a changed copy
     */
    public Controllers withBusCapacitance(OptionalDouble replacement) {
        Copy copy = new Copy(this);
        copy.busCapacitance = replacement;
        return copy.made();
    }

    /**
     * Returns this set of controllers with a quicker or later regen limiter.
     *
     * @param replacement how long it takes to act [s], not negative
     * @return a changed copy
     */
    public Controllers withRegenResponse(double replacement) {
        Copy copy = new Copy(this);
        copy.regenResponse = replacement;
        return copy.made();
    }

    /**
     * Returns this set of controllers with a brake that ends elsewhere.
     *
     * @param replacement the speed below which there is none [m/s], not negative
     * @return a changed copy
     */
    public Controllers withBrakeEndsBelow(double replacement) {
        Copy copy = new Copy(this);
        copy.brakeEndsBelow = replacement;
        return copy.made();
    }

    /** What a changed copy is made of: the one place that lists all components. */
    private static final class Copy {

        private int count;
        private CurrentBasis basis;
        private double motorCurrentRating;
        private final double packCurrentRating;
        private double voltageRating;
        private double efficiency;
        private OptionalDouble busCapacitance;
        private double regenResponse;
        private double brakeEndsBelow;

        Copy(Controllers from) {
            this.count = from.count;
            this.basis = from.basis;
            this.motorCurrentRating = from.motorCurrentRating;
            this.packCurrentRating = from.packCurrentRating;
            this.voltageRating = from.voltageRating;
            this.efficiency = from.efficiency;
            this.busCapacitance = from.busCapacitance;
            this.regenResponse = from.regenResponse;
            this.brakeEndsBelow = from.brakeEndsBelow;
        }

        Controllers made() {
            return new Controllers(
                    count,
                    basis,
                    motorCurrentRating,
                    packCurrentRating,
                    voltageRating,
                    efficiency,
                    busCapacitance,
                    regenResponse,
                    brakeEndsBelow);
        }
    }
}
