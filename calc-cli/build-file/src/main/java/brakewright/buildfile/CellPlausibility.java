package brakewright.buildfile;

import brakewright.assembly.Values;
import brakewright.buildfile.internal.Plain;
import brakewright.spec.Input;
import brakewright.tables.ReferenceTables;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Whether a cell can give what it is rated for: with milliohms written as ohms it cannot. */
final class CellPlausibility {

    /** Part of its full voltage that a cell may lose at its rated current; our own choice [1]. */
    private static final double MOST_LOST = 0.5;

    private final Given given;
    private final ReferenceTables tables;
    private final List<Problem> problems;

    CellPlausibility(Given given, ReferenceTables tables, List<Problem> problems) {
        this.given = given;
        this.tables = tables;
        this.problems = problems;
    }

    void check() {
        given.packs().forEach(this::checkCell);
    }

    private void checkCell(GivenPack pack) {
        OptionalDouble full = pack.ofCell(Input.CELL_VOLTAGE_MAX, "voltage_max", tables);
        OptionalDouble rated =
                pack.ofCell(Input.CELL_DISCHARGE_CURRENT, "discharge_current", tables);
        OptionalDouble resistance = new Values(pack.values()).optional(Input.CELL_RESISTANCE);
        if (full.isEmpty() || rated.isEmpty() || resistance.isEmpty()) {
            return;
        }
        double lost = resistance.getAsDouble() * rated.getAsDouble();
        if (lost > MOST_LOST * full.getAsDouble()) {
            String key = pack.key(Input.CELL_RESISTANCE);
            problems.add(
                    new Problem(
                            given.line(key),
                            key,
                            String.format(
                                    Locale.ROOT,
                                    "%s Ω at the rated %s A would cost %s of %s V, outside what is"
                                            + " plausible (to half of it, a bound of our own)",
                                    Plain.number(resistance.getAsDouble()),
                                    Plain.number(rated.getAsDouble()),
                                    Plain.number(lost),
                                    Plain.number(full.getAsDouble())),
                            "the resistance of one cell in a pulse of 10 s, for example "
                                    + given.spelling().pair(key, "\"25 mΩ\"")));
        }
    }
}
