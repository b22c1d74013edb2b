package brakewright.cli.buildfile;

import brakewright.spec.Input;
import brakewright.spec.Settings;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Reads settings given one by one as {@code key=value}, without quotes. */
public final class SettingReader {

    private static final String SETTINGS = "settings.";

    private SettingReader() {}

    /**
     * Reads settings.
     *
     * @param changes each a settings key, an equals sign and a value; pairs with a comma between
     * @return the settings, empty where nothing is said
     * @throws BuildFileException with everything that is wrong
     */
    public static Settings read(List<String> changes) throws BuildFileException {
        List<Problem> problems = new ArrayList<>();
        Map<Input, Value> values = new EnumMap<>(Input.class);
        Set<Input> named = EnumSet.noneOf(Input.class);
        for (String change : changes) {
            int equals = change.indexOf('=');
            String key = equals < 0 ? change : change.substring(0, equals).strip();
            Optional<Input> input = Input.ofKey(SETTINGS + key);
            if (input.isPresent() && !named.add(input.get())) {
                problems.add(
                        new Problem(
                                0,
                                key,
                                "this is given twice",
                                "each setting once, for example --with " + example(input.get())));
                continue;
            }
            if (input.isEmpty()) {
                problems.add(
                        new Problem(
                                0,
                                key,
                                "this is no setting",
                                Nearest.key(key, keys())
                                        .map(nearest -> "the nearest known one is " + nearest)
                                        .orElse("one of " + String.join(", ", keys()))));
                continue;
            }
            try {
                String text = equals < 0 ? "" : change.substring(equals + 1);
                values.put(input.get(), OptionValue.read(Schema.of(input.get()), text));
            } catch (QuantityParser.NotAQuantity wrong) {
                problems.add(problem(input.get(), String.valueOf(wrong.getMessage())));
            }
        }
        Settings settings = assembled(values, problems);
        if (!problems.isEmpty()) {
            throw new BuildFileException(problems);
        }
        return settings;
    }

    /** A taper that runs the wrong way is told as the option has it. */
    private static Settings assembled(Map<Input, Value> values, List<Problem> problems) {
        List<Problem> found = new ArrayList<>();
        Settings settings =
                new SettingsAssembler(
                                "settings", new Values(values), new Attempts(Given.NOTHING, found))
                        .assemble();
        for (Problem each : found) {
            problems.add(problem(Input.ofKey(each.key()).orElseThrow(), each.wrong()));
        }
        return settings == null ? Settings.NONE : settings;
    }

    private static Problem problem(Input input, String wrong) {
        return new Problem(
                0,
                name(input),
                wrong,
                OptionValue.expected(Schema.of(input)) + ", for example --with " + example(input));
    }

    private static String example(Input input) {
        return name(input) + "=" + OptionValue.example(Schema.of(input));
    }

    private static String name(Input input) {
        return input.key().substring(SETTINGS.length());
    }

    private static Set<String> keys() {
        Set<String> keys = new TreeSet<>();
        for (Schema.Entry entry : Schema.all()) {
            if (entry.key().startsWith(SETTINGS)) {
                keys.add(entry.key().substring(SETTINGS.length()));
            }
        }
        return keys;
    }
}
