package brakewright.cli.buildfile;

import brakewright.spec.Input;
import brakewright.spec.Settings;
import java.util.ArrayList;
import java.util.EnumMap;
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
        for (String change : changes) {
            int equals = change.indexOf('=');
            String key = equals < 0 ? change : change.substring(0, equals).strip();
            Optional<Input> input = Input.ofKey(SETTINGS + key);
            if (input.isEmpty()) {
                problems.add(
                        new Problem(
                                0,
                                key,
                                "this is no setting",
                                Nearest.to(key, keys())
                                        .map(nearest -> "the nearest known one is " + nearest)
                                        .orElse("one of " + String.join(", ", keys()))));
                continue;
            }
            Schema.Entry entry = Schema.of(input.get());
            try {
                String text = equals < 0 ? "" : change.substring(equals + 1);
                values.put(input.get(), value(entry, text));
            } catch (QuantityParser.NotAQuantity wrong) {
                problems.add(
                        new Problem(
                                0,
                                key,
                                String.valueOf(wrong.getMessage()),
                                entry.kind().expected() + ", for example " + example(entry)));
            }
        }
        Settings settings = SettingsAssembler.ofProposal("--with", values, Given.NOTHING, problems);
        if (!problems.isEmpty()) {
            throw new BuildFileException(problems);
        }
        return settings;
    }

    private static Value value(Schema.Entry entry, String text) throws QuantityParser.NotAQuantity {
        Value value;
        if (entry.kind() instanceof Kind.MeasuredPair pair) {
            String[] parts = text.split(",", -1);
            if (parts.length != 2) {
                throw new QuantityParser.NotAQuantity("\"" + text + "\" is no pair of values");
            }
            value =
                    new Value.Pair(
                            QuantityParser.parse(parts[0], pair.dimension()).value(),
                            QuantityParser.parse(parts[1], pair.dimension()).value());
        } else if (entry.kind() instanceof Kind.Measured measured) {
            value = new Value.Number(QuantityParser.parse(text, measured.dimension()));
        } else {
            throw new IllegalStateException(entry.key());
        }
        String range = ValueReader.outOfRange(entry, value);
        if (!range.isEmpty()) {
            throw new QuantityParser.NotAQuantity(range);
        }
        return value;
    }

    private static String example(Schema.Entry entry) {
        String name = entry.key().substring(SETTINGS.length());
        return name
                + "="
                + entry.example()
                        .replace("[", "")
                        .replace("]", "")
                        .replace("\"", "")
                        .replace(" ", "");
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
