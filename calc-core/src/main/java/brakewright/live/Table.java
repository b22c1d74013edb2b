package brakewright.live;

import java.util.function.DoubleBinaryOperator;

/** A quantity over charge state and cell temperature, read by straight lines along both. */
final class Table {

    private final double[] values;
    private final int columns;

    Table(Axis charges, Axis temperatures, DoubleBinaryOperator quantity) {
        this.columns = temperatures.size();
        this.values = new double[charges.size() * columns];
        for (int row = 0; row < charges.size(); row++) {
            for (int column = 0; column < columns; column++) {
                values[row * columns + column] =
                        quantity.applyAsDouble(charges.place(row), temperatures.place(column));
            }
        }
    }

    /** Exactly what was given where both ranks are whole. */
    double at(double row, double column) {
        int above = (int) row;
        int left = (int) column;
        int place = above * columns + left;
        double low = Lines.between(values, place, 1, column - left);
        double down = row - above;
        return down == 0.0
                ? low
                : low + down * (Lines.between(values, place + columns, 1, column - left) - low);
    }
}
