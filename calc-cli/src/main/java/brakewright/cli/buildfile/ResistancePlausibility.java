package brakewright.cli.buildfile;

import brakewright.spec.Input;
import brakewright.tables.ReferenceTables;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Whether resistances let flow what moves a vehicle: milliohms written as ohms do not. */
final class ResistancePlausibility {

    /**
     * What all motors together must be able to turn at the full pack [W]. A voltage U behind a
     * resistance R gives at most {@code U²/(4R)}.
     *
     * <p>Source of the formula: maximum power transfer. Assumption: the bound is our own choice;
     * less than this carries nobody up a kerb.
     */
    private static final double LEAST_POWER = 150.0;

    /** Part of its full voltage that a cell may lose at its rated current; our own choice [1]. */
    private static final double MOST_LOST = 0.5;

    private final Given given;
    private final ReferenceTables tables;
    private final List<Problem> problems;

    ResistancePlausibility(Given given, ReferenceTables tables, List<Problem> problems) {
        this.given = given;
        this.tables = tables;
        this.problems = problems;
    }

    void check() {
        checkMotor();
        given.packs().forEach(this::checkCell);
    }

    private void checkMotor() {
        Values values = new Values(given.values());
        OptionalDouble volts = given.fullVoltage(tables);
        if (!values.hasAll(List.of(Input.MOTOR_RESISTANCE, Input.DRIVE_MOTORS))
                || volts.isEmpty()) {
            return;
        }
        double full = volts.getAsDouble();
        double resistance = values.number(Input.MOTOR_RESISTANCE);
        double power = values.number(Input.DRIVE_MOTORS) * full * full / (4.0 * resistance);
        if (power < LEAST_POWER) {
            String key = Input.MOTOR_RESISTANCE.key();
            problems.add(
                    new Problem(
                            given.line(key),
                            key,
                            String.format(
                                    Locale.ROOT,
                                    "%s Ω at %s V lets all motors together turn at most %s W,"
                                            + " outside what is plausible (from 150 W on, a bound of"
                                            + " our own)",
                                    Plain.number(resistance),
                                    Plain.number(full),
                                    Plain.number(Math.rint(power))),
                            "the resistance between two of the three leads, often some ten"
                                    + " milliohms, for example resistance = \"68 mΩ\""));
        }
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
                            "the resistance of one cell in a pulse of 10 s, for example resistance ="
                                    + " \"25 mΩ\""));
        }
    }
}
