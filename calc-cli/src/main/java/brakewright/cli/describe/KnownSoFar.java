package brakewright.cli.describe;

import brakewright.buildfile.BuildFileException;
import brakewright.buildfile.InputNumber;
import brakewright.buildfile.internal.NoLoadSpeed;
import brakewright.spec.Input;
import brakewright.tables.CellEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the answers so far come to: full voltage, capacity, gearing, a rough top speed. */
final class KnownSoFar {

    /** Assumption: our own choice, of nearly all cells but iron-phosphate ones [V]. */
    private static final double FULL_CELL = 4.2;

    private final Interview interview;

    KnownSoFar(Interview interview) {
        this.interview = interview;
    }

    /** Some words; empty where nothing is known yet. */
    List<String> told() {
        List<String> told = new ArrayList<>();
        fullVoltage().ifPresent(volts -> told.add(text("full pack %.1f V", volts)));
        capacity().ifPresent(ah -> told.add(text("%.1f Ah", ah)));
        reduction().ifPresent(turns -> told.add(text("gearing %.2f to 1", turns)));
        noLoadSpeed()
                .ifPresent(
                        speed -> told.add(text("at most some %.0f km/h, unloaded", 3.6 * speed)));
        return told;
    }

    private static String text(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }

    OptionalDouble fullVoltage() {
        OptionalDouble series = number(Input.PACK_SERIES);
        if (series.isEmpty() || !interview.given().containsKey("pack.cell")) {
            return OptionalDouble.empty();
        }
        double cell = cell().map(each -> each.figure("voltage_max").value()).orElse(FULL_CELL);
        return OptionalDouble.of(series.getAsDouble() * cell);
    }

    OptionalDouble capacity() {
        OptionalDouble label =
                interview
                        .known("label.pack_capacity")
                        .map(each -> LabelNumber.read(each.text(), "Ah"))
                        .orElse(OptionalDouble.empty());
        OptionalDouble parallel = number(Input.PACK_PARALLEL);
        if (label.isPresent() || parallel.isEmpty() || cell().isEmpty()) {
            return label;
        }
        return OptionalDouble.of(
                parallel.getAsDouble() * cell().orElseThrow().figure("capacity").value());
    }

    OptionalDouble reduction() {
        if (interview.known("label.drive").filter(each -> each.text().equals("hub")).isPresent()) {
            return OptionalDouble.of(1.0);
        }
        OptionalDouble motor = teeth("label.teeth_motor");
        OptionalDouble wheel = teeth("label.teeth_wheel");
        return motor.isPresent() && wheel.isPresent()
                ? OptionalDouble.of(wheel.getAsDouble() / motor.getAsDouble())
                : number(Input.DRIVE_REDUCTION);
    }

    private OptionalDouble teeth(String id) {
        return interview
                .known(id)
                .map(each -> LabelNumber.read(each.text(), ""))
                .orElse(OptionalDouble.empty());
    }

    private OptionalDouble noLoadSpeed() {
        OptionalDouble kv = number(Input.MOTOR_KV);
        OptionalDouble wheel = number(Input.VEHICLE_WHEEL_DIAMETER);
        OptionalDouble volts = fullVoltage();
        OptionalDouble turns = reduction();
        if (kv.isEmpty() || wheel.isEmpty() || volts.isEmpty() || turns.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(
                NoLoadSpeed.of(
                        volts.getAsDouble(),
                        kv.getAsDouble(),
                        turns.getAsDouble(),
                        wheel.getAsDouble()));
    }

    Optional<CellEntry> cell() {
        return interview.known("pack.cell").flatMap(each -> interview.tables().cell(each.text()));
    }

    /** Nominal, in the unit of calculations; empty where there is none yet. */
    OptionalDouble number(Input input) {
        Optional<Answer> answer = interview.known(input.key());
        if (answer.isEmpty()) {
            return OptionalDouble.empty();
        }
        String nominal = answer.get().text().replaceAll("(±|\\+-|\\+/-).*", "");
        try {
            return OptionalDouble.of(InputNumber.read(input.key(), input, nominal));
        } catch (BuildFileException wrong) {
            return OptionalDouble.empty();
        }
    }
}
