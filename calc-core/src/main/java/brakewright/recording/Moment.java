package brakewright.recording;

import java.util.OptionalDouble;

/**
 * A value at a moment of the ride.
 *
 * @param value in the unit of its quantity
 * @param time by the clock of its piece [s]
 * @param place where its row stands
 * @param charge there [1]; empty where unknown
 * @param speed there [m/s]; empty where unknown
 */
public record Moment(
        double value, double time, Place place, OptionalDouble charge, OptionalDouble speed) {

    static Moment of(double value, Piece piece, int row, Quantity speed) {
        return new Moment(
                value,
                piece.time(row),
                piece.place(row),
                present(piece.value(Quantity.CHARGE, row)),
                present(piece.value(speed, row)));
    }

    static OptionalDouble present(double value) {
        return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
