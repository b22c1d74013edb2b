package brakewright.cli.buildfile;

import brakewright.spec.Input;
import brakewright.spec.Require;
import brakewright.spec.Taper;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether values that a file gives go together, as far as that can be told before anything is
 * filled in: so that it is told together with everything else that is wrong.
 */
final class Consistency {

    private final Given given;
    private final List<Problem> problems;

    Consistency(Given given, List<Problem> problems) {
        this.given = given;
        this.problems = problems;
    }

    void check() {
        ascending("charge states in use", Input.USE_CHARGE_TO, Input.USE_CHARGE_FROM);
        ascending("cell voltage limits", Input.CELL_VOLTAGE_MIN, Input.CELL_VOLTAGE_MAX);
        tapers("settings", given.values());
        given.proposals().forEach((name, values) -> tapers("proposals." + name, values));
    }

    /** Says what belongs behind a key. */
    static String expected(String key) {
        String setting = "settings." + key.substring(key.lastIndexOf('.') + 1);
        Optional<Input> input = Input.ofKey(key).or(() -> Input.ofKey(setting));
        return input.map(Schema::of)
                .map(
                        entry ->
                                entry.kind().expected()
                                        + " that goes with the others, for example "
                                        + ValueReader.example(entry))
                .orElse("");
    }

    private void ascending(String name, Input low, Input high) {
        if (given.values().get(low) instanceof Value.Number lower
                && given.values().get(high) instanceof Value.Number upper) {
            attempt(
                    low.key(),
                    () ->
                            Require.ascending(
                                    name,
                                    lower.quantity().value(),
                                    upper.quantity().value(),
                                    low.unit().equals("1") ? "" : low.unit()));
        }
    }

    private void tapers(String table, Map<Input, Value> values) {
        if (values.get(Input.SETTINGS_LOW_VOLTAGE_TAPER) instanceof Value.Pair pair) {
            attempt(
                    table + ".low_voltage_taper",
                    () -> {
                        Taper taper = new Taper(pair.first(), pair.second());
                        Require.ascending(
                                "low-voltage taper, end to begin",
                                taper.ends(),
                                taper.begins(),
                                "V");
                    });
        }
        if (values.get(Input.SETTINGS_HIGH_VOLTAGE_TAPER) instanceof Value.Pair pair) {
            attempt(
                    table + ".high_voltage_taper",
                    () -> {
                        Taper taper = new Taper(pair.first(), pair.second());
                        Require.ascending(
                                "high-voltage taper, begin to end",
                                taper.begins(),
                                taper.ends(),
                                "V");
                    });
        }
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
                            expected(key)));
        }
    }
}
