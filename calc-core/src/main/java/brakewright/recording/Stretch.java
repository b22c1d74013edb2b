package brakewright.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A second or so of a recorded ride, from a row that has a speed to another.
 *
 * <p>Assumption: our own choice; over less, a speed that is told coarsely makes a change of speed
 * of any size, and with it a force that never was.
 *
 * @param follows whether it begins where the one before it ended
 * @param seconds how long it lasts [s], positive
 * @param length how far it goes [m], not negative
 * @param from the speed at its beginning [m/s], not negative
 * @param to the speed at its end [m/s], not negative
 * @param slope rise over run [1]; 0 where no height was recorded
 * @param charge at its beginning [1]; NaN where none was recorded there
 * @param cellsC the temperature of the cells there [°C]; NaN likewise
 * @param drawn what flowed meanwhile; empty where current or voltage were not recorded all the time
 */
public record Stretch(
        boolean follows,
        double seconds,
        double length,
        double from,
        double to,
        double slope,
        double charge,
        double cellsC,
        Optional<Drawn> drawn) {

    private static final double LEAST = 1.0;

    /** A rounding error of times that are multiples of a spacing [s]. */
    private static final double ROUNDING = 1e-6;

    /**
     * What flowed out of the pack and into it.
     *
     * @param outCoulombs out of it [C]
     * @param backCoulombs into it [C]
     * @param outJoules out of it [J]
     * @param backJoules into it [J]
     * @param current the mean, positive out of it [A]
     * @param voltage the mean [V]
     */
    public record Drawn(
            double outCoulombs,
            double backCoulombs,
            double outJoules,
            double backJoules,
            double current,
            double voltage) {

        /** Fields may be missing for so little of a stretch. */
        private static final double WHOLE = 0.99;

        static Optional<Drawn> of(Piece piece, double longestStep, int begin, int end) {
            Integral charge = integral(piece, longestStep, Quantity.PACK_CURRENT, begin, end);
            Integral volts = integral(piece, longestStep, Quantity.PACK_VOLTAGE, begin, end);
            Integral energy =
                    Integral.of(
                            piece,
                            longestStep,
                            (its, row) ->
                                    its.value(Quantity.PACK_VOLTAGE, row)
                                            * its.value(Quantity.PACK_CURRENT, row),
                            begin,
                            end + 1);
            double seconds = energy.seconds();
            return seconds >= WHOLE * (piece.time(end) - piece.time(begin))
                    ? Optional.of(
                            new Drawn(
                                    charge.above(),
                                    charge.below(),
                                    energy.above(),
                                    energy.below(),
                                    charge.net() / charge.seconds(),
                                    volts.net() / volts.seconds()))
                    : Optional.empty();
        }

        private static Integral integral(
                Piece piece, double longestStep, Quantity quantity, int begin, int end) {
            return Integral.of(
                    piece, longestStep, (its, row) -> its.value(quantity, row), begin, end + 1);
        }
    }

    /**
     * Cuts a ride into them. What a gap leaves out is in none.
     *
     * @param ride that was recorded
     * @return in order; empty where no two rows with a speed are near enough to each other
     */
    public static List<Stretch> all(Ride ride) {
        List<Stretch> all = new ArrayList<>();
        for (Piece piece : ride.recording().pieces()) {
            add(piece, ride.recording().longestStep(), ride.speed(), all);
        }
        return all;
    }

    private static void add(Piece piece, double longestStep, Quantity speed, List<Stretch> all) {
        Climbs climbs = Climbs.of(piece, longestStep, speed);
        int begin = -1;
        int last = -1;
        boolean follows = false;
        for (int row = 0; row < piece.rows(); row++) {
            if (Double.isNaN(piece.value(speed, row))) {
                continue;
            }
            boolean isApart = last < 0 || piece.time(row) - piece.time(last) > longestStep;
            if (isApart) {
                begin = row;
                follows = false;
            } else if (piece.time(row) - piece.time(begin) >= LEAST - ROUNDING) {
                all.add(of(piece, longestStep, speed, begin, row, climbs, follows));
                begin = row;
                follows = true;
            }
            last = row;
        }
    }

    private static Stretch of(
            Piece piece,
            double longestStep,
            Quantity speed,
            int begin,
            int end,
            Climbs climbs,
            boolean follows) {
        Integral way =
                Integral.of(
                        piece,
                        longestStep,
                        (its, row) -> Math.abs(its.value(speed, row)),
                        begin,
                        end + 1);
        return new Stretch(
                follows,
                piece.time(end) - piece.time(begin),
                way.above(),
                Math.abs(piece.value(speed, begin)),
                Math.abs(piece.value(speed, end)),
                climbs.slope(begin, end),
                piece.value(Quantity.CHARGE, begin),
                piece.value(Quantity.PACK_TEMPERATURE, begin),
                Drawn.of(piece, longestStep, begin, end));
    }
}
