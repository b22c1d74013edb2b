package brakewright.buildfile;

import brakewright.assembly.SettingsAssembler;
import brakewright.assembly.Value;
import brakewright.assembly.Values;
import brakewright.buildfile.internal.Plain;
import brakewright.spec.Input;
import brakewright.spec.Require;
import brakewright.tables.ReferenceTables;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Whether values that a file gives go together, as far as that can be told before anything is
 * filled in: so that it is told together with everything else that is wrong.
 */
final class Consistency {

    private final Given given;
    private final ReferenceTables tables;
    private final List<Problem> problems;

    Consistency(Given given, ReferenceTables tables, List<Problem> problems) {
        this.given = given;
        this.tables = tables;
        this.problems = problems;
    }

    void check() {
        ascending(
                "charge states in use",
                Input.USE_CHARGE_TO,
                Input.USE_CHARGE_FROM,
                given.values(),
                Input.USE_CHARGE_TO.key());
        for (GivenPack pack : given.packs()) {
            ascending(
                    "cell voltage limits",
                    Input.CELL_VOLTAGE_MIN,
                    Input.CELL_VOLTAGE_MAX,
                    pack.values(),
                    pack.key(Input.CELL_VOLTAGE_MIN));
        }
        temperatures();
        measured();
        new PackConsistency(given, tables, problems).check();
        new SpeedPlausibility(given, tables, problems).check();
        new CellPlausibility(given, tables, problems).check();
        problems.addAll(ofSettings(given));
    }

    /** Tells what does not go together. */
    static List<Problem> of(Given given, ReferenceTables tables) {
        List<Problem> problems = new ArrayList<>();
        new Consistency(given, tables, problems).check();
        return problems;
    }

    /** Tells how settings contradict each other: a taper that runs the wrong way. */
    static List<Problem> ofSettings(Given given) {
        List<Problem> problems = new ArrayList<>();
        new SettingsAssembler(new Values(given.values()), new NotedAttempts(given, problems))
                .assemble();
        return problems;
    }

    /** Says what belongs behind a key of the file. */
    static String expected(String key, Spelling spelling) {
        if (key.equals(PackPlace.SEVERAL)) {
            return "packs that can be full or empty together, or "
                    + spelling.within(Input.PACKS_JOINING.key(), "\"series\"");
        }
        return Input.ofKey(PackPlace.schemaKey(key))
                .map(Schema::of)
                .map(
                        entry ->
                                entry.kind().expected()
                                        + ", one that goes with the others, for example "
                                        + spelling.example(entry, key))
                .orElse("");
    }

    private void ascending(
            String name, Input low, Input high, Map<Input, Value> values, String blamed) {
        if (values.get(low) instanceof Value.Number lower
                && values.get(high) instanceof Value.Number upper) {
            attempt(
                    blamed,
                    () ->
                            Require.ascending(
                                    name,
                                    lower.quantity().value(),
                                    upper.quantity().value(),
                                    low.unit()));
        }
    }

    /** A speed is told only of a consumption. */
    private void measured() {
        String speed = Input.USE_MEASURED_SPEED.key();
        String consumption = Input.USE_MEASURED_CONSUMPTION.key();
        if (given.values().containsKey(Input.USE_MEASURED_SPEED)
                && !given.values().containsKey(Input.USE_MEASURED_CONSUMPTION)
                && !given.lines().containsKey(consumption)) {
            problems.add(
                    new Problem(
                            given.line(speed),
                            speed,
                            "this has no effect without " + consumption,
                            "what was used at that speed too, for example "
                                    + given.spelling().example(Input.USE_MEASURED_CONSUMPTION)));
        }
    }

    /** A pack whose temperature is not told has that of the air. */
    private void temperatures() {
        OptionalDouble first = OptionalDouble.empty();
        for (GivenPack pack : given.packs()) {
            OptionalDouble own = temperature(pack);
            if (own.isEmpty()) {
                continue;
            }
            if (first.isPresent() && own.getAsDouble() != first.getAsDouble()) {
                String key = blamedForTemperature(pack);
                problems.add(
                        new Problem(
                                given.line(key),
                                key,
                                "the cells of all packs must have one temperature, was "
                                        + Plain.number(own.getAsDouble())
                                        + " beside "
                                        + Plain.number(first.getAsDouble())
                                        + " degC",
                                expected(key, given.spelling())));
                return;
            }
            first = own;
        }
    }

    /** The temperature of a pack that differs; that of the first where the other tells none. */
    private String blamedForTemperature(GivenPack pack) {
        return (pack.values().containsKey(Input.PACK_TEMPERATURE) ? pack : given.packs().get(0))
                .key(Input.PACK_TEMPERATURE);
    }

    private OptionalDouble temperature(GivenPack pack) {
        if (pack.values().get(Input.PACK_TEMPERATURE) instanceof Value.Number own) {
            return OptionalDouble.of(own.quantity().value());
        }
        boolean isUnreadable =
                given.lines().containsKey(pack.key(Input.PACK_TEMPERATURE))
                        || given.lines().containsKey(Input.USE_AMBIENT.key());
        if (given.values().get(Input.USE_AMBIENT) instanceof Value.Number air) {
            return OptionalDouble.of(air.quantity().value());
        }
        return isUnreadable
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        tables.defaultFor(Input.USE_AMBIENT.key(), Map.of()).orElseThrow().value());
    }

    private void attempt(String key, Runnable check) {
        try {
            check.run();
        } catch (IllegalArgumentException wrong) {
            problems.add(
                    new Problem(
                            given.line(key),
                            key,
                            String.valueOf(wrong.getMessage()),
                            expected(key, given.spelling())));
        }
    }
}
