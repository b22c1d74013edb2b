package brakewright.outside;

import static org.assertj.core.api.Assertions.assertThat;

/**
 * One row of a table, on its way through a check.
 *
 * @param row the expected value
 * @param log where the result is written
 */
record OutsideCase(OutsideRow row, OutsideLog log) {

    /**
     * Returns an input.
     *
     * @param name as the row names it
     * @return its number, in the unit that the row prints
     */
    double in(String name) {
        return row.input(name);
    }

    /**
     * Records what the model gives and requires it to lie within the tolerance.
     *
     * @param got the model's value, in the unit of the row
     */
    void agreesWith(double got) {
        log.record(row, got);
        assertThat(got)
                .as("%s, %s [%s]", row.id(), row.quantity(), row.unit())
                .isBetween(row.lowest(), row.highest());
    }

    @Override
    public String toString() {
        return row.id() + " " + row.expected() + " " + row.unit() + " (" + row.inputs() + ")";
    }
}
