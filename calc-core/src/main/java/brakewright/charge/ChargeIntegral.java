package brakewright.charge;

import brakewright.battery.BatteryModel;
import brakewright.numeric.GaussRule;
import brakewright.numeric.Pieces;
import brakewright.powertrain.Spending;
import java.util.function.DoubleFunction;

/**
 * Adds up a ride while the charge falls: {@code dt = 3600·Q·ds/I(s)}. Between the knots of the
 * pack's curves everything is smooth, so a Gauss-Legendre rule on each piece leaves no error that
 * counts.
 *
 * <p>Assumption: every coulomb that goes in comes out again, and the pack holds as many at any
 * current and temperature; a cold pack gives less than this only through its resistance.
 */
public final class ChargeIntegral {

    private static final GaussRule RULE = GaussRule.of(5);

    private final double coulombs;
    private final double[] knots;

    /**
     * Prepares a ride whose moments run smoothly wherever the packs do.
     *
     * @param model the packs
     */
    public ChargeIntegral(BatteryModel model) {
        this(model, 1);
    }

    /**
     * Prepares a ride on which more changes than the packs.
     *
     * @param model the packs
     * @param pieces so many between two of their knots are integrated each by itself
     */
    public ChargeIntegral(BatteryModel model, int pieces) {
        this.coulombs = 3600.0 * model.capacityAh();
        double[] wide = model.knots();
        this.knots = new double[(wide.length - 1) * pieces + 1];
        for (int i = 0; i + 1 < wide.length; i++) {
            for (int piece = 0; piece < pieces; piece++) {
                knots[i * pieces + piece] = wide[i] + (wide[i + 1] - wide[i]) * piece / pieces;
            }
        }
        knots[knots.length - 1] = 1.0;
    }

    /**
     * How a ride goes at one charge state.
     *
     * @param packCurrent out of the pack [A], positive
     * @param speed [m/s]
     * @param spending of power [W]
     */
    public record Moment(double packCurrent, double speed, Spending spending) {

        /**
         * A moment of which nobody asks where the power goes.
         *
         * @param packCurrent out of the pack [A], positive
         * @param speed [m/s]
         */
        public Moment(double packCurrent, double speed) {
            this(packCurrent, speed, Spending.NONE);
        }
    }

    /**
     * What has added up.
     *
     * @param time [s]
     * @param distance [m]
     * @param spent energy [J]
     */
    public record Sum(double time, double distance, Spending spent) {

        /** Before anything has. */
        public static final Sum NOTHING = new Sum(0.0, 0.0, Spending.NONE);

        private Sum plus(Moment moment, double duration) {
            return new Sum(
                    time + duration,
                    distance + moment.speed() * duration,
                    spent.plus(moment.spending(), duration));
        }

        /**
         * Adds what comes after.
         *
         * @param other the other part
         * @return both together
         */
        public Sum plus(Sum other) {
            return new Sum(
                    time + other.time, distance + other.distance, spent.plus(other.spent, 1.0));
        }
    }

    /**
     * Returns the charge from full to empty.
     *
     * @return the charge [C]
     */
    public double coulombs() {
        return coulombs;
    }

    /**
     * Adds up from a charge state down to another.
     *
     * @param from where the ride begins [1]
     * @param to where it ends [1], not above {@code from}
     * @param moment how it goes at a charge state
     * @return the sum
     */
    public Sum over(double from, double to, DoubleFunction<Moment> moment) {
        double[] ends = Pieces.of(knots, to, from);
        Sum sum = Sum.NOTHING;
        for (int i = ends.length - 1; i > 0; i--) {
            sum = sum.plus(piece(ends[i], ends[i - 1], moment));
        }
        return sum;
    }

    private Sum piece(double upper, double lower, DoubleFunction<Moment> moment) {
        Sum sum = Sum.NOTHING;
        for (int node = 0; node < RULE.nodes(); node++) {
            double charge = RULE.point(node, lower, upper);
            Moment here = moment.apply(charge);
            double duration = RULE.weight(node, lower, upper) * coulombs / here.packCurrent();
            sum = sum.plus(here, duration);
        }
        return sum;
    }
}
