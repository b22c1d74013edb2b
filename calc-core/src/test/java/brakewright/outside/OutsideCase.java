package brakewright.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.opentest4j.TestAbortedException;

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

    /**
     * Skips the check where a file that is no part of the project is missing, and says so where a
     * quiet build shows it, too.
     *
     * @param file that the check reads
     */
    void needs(Path file) {
        if (!Files.exists(file)) {
            System.out.println("NOT CHECKED: " + row.id() + ", there is no " + file);
            log.withdraw(row);
            throw new TestAbortedException("there is no " + file);
        }
    }

    @Override
    public String toString() {
        return row.id() + " " + row.expected() + " " + row.unit() + " (" + row.inputs() + ")";
    }
}
