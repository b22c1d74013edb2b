package brakewright.buildfile;

import brakewright.assembly.Values;
import brakewright.buildfile.internal.NoLoadSpeed;
import brakewright.buildfile.internal.Plain;
import brakewright.spec.Input;
import brakewright.tables.ReferenceTables;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Whether motor, reduction and wheel give a speed that a small vehicle can have. */
final class SpeedPlausibility {

    /**
     * No-load speed at the full pack beyond which an input is taken to be a slip [m/s]; 300 km/h.
     *
     * <p>Assumption: our own choice; several times what any vehicle of this class is ridden at.
     */
    private static final double HIGHEST = 300.0 / 3.6;

    private final Given given;
    private final ReferenceTables tables;
    private final List<Problem> problems;

    SpeedPlausibility(Given given, ReferenceTables tables, List<Problem> problems) {
        this.given = given;
        this.tables = tables;
        this.problems = problems;
    }

    void check() {
        Values values = new Values(given.values());
        List<Input> needed =
                List.of(Input.MOTOR_KV, Input.DRIVE_REDUCTION, Input.VEHICLE_WHEEL_DIAMETER);
        OptionalDouble voltage = given.fullVoltage(tables);
        if (!values.hasAll(needed) || voltage.isEmpty()) {
            return;
        }
        double kv = values.number(Input.MOTOR_KV);
        double reduction = values.number(Input.DRIVE_REDUCTION);
        double wheel = values.number(Input.VEHICLE_WHEEL_DIAMETER);
        double speed = NoLoadSpeed.of(voltage.getAsDouble(), kv, reduction, wheel);
        if (speed > HIGHEST) {
            String key = Input.MOTOR_KV.key();
            problems.add(
                    new Problem(
                            given.line(key),
                            key,
                            String.format(
                                    Locale.ROOT,
                                    "%s rpm/V at %s V, with drive.reduction %s and"
                                            + " vehicle.wheel_diameter %s m, is a no-load speed of"
                                            + " %s km/h, outside what is plausible (to 300 km/h, a"
                                            + " bound of our own)",
                                    Plain.number(kv),
                                    Plain.number(voltage.getAsDouble()),
                                    Plain.number(reduction),
                                    Plain.number(wheel),
                                    Plain.number(Math.rint(3.6 * speed))),
                            "turns per minute and volt, with motor turns per wheel turn and the"
                                    + " diameter of a driven wheel, for example kv = \"170 rpm/V\""
                                    + " with reduction = 3.2 and wheel_diameter = \"200 mm\""));
        }
    }
}
