package brakewright.buildfile;

import brakewright.buildfile.internal.Nearest;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads changes given one by one as {@code key=value}, without quotes. */
final class ChangeReader {

    /** A key may be written with its table or without. */
    private static final List<String> TABLES = List.of("", "settings.", "use.");

    private final List<Problem> problems = new ArrayList<>();
    private final Map<Input, Changes.Change> changes = new EnumMap<>(Input.class);
    private final Set<Input> named = EnumSet.noneOf(Input.class);

    private ChangeReader() {}

    static Changes read(List<String> texts) throws BuildFileException {
        ChangeReader reader = new ChangeReader();
        texts.forEach(reader::take);
        reader.checkTapers();
        if (!reader.problems.isEmpty()) {
            throw new BuildFileException(reader.problems);
        }
        return new Changes(reader.changes);
    }

    private void take(String text) {
        int equals = text.indexOf('=');
        String key = (equals < 0 ? text : text.substring(0, equals)).strip();
        Optional<Input> input = input(key);
        if (input.isEmpty()) {
            problems.add(
                    new Problem(
                            0,
                            key,
                            "this is no setting and no key of [use]",
                            Nearest.key(key, Changes.keys())
                                    .map(nearest -> "the nearest known one is " + nearest)
                                    .orElse("one of " + String.join(", ", Changes.keys()))));
        } else if (named.add(input.get())) {
            take(input.get(), equals < 0 ? "" : text.substring(equals + 1));
        } else {
            problems.add(
                    new Problem(
                            0,
                            Changes.keyOf(input.get()),
                            "this is given twice",
                            "each key once, for example "
                                    + OptionValue.assignment(Schema.of(input.get()))));
        }
    }

    private static Optional<Input> input(String key) {
        return TABLES.stream()
                .flatMap(table -> Input.ofKey(table + key).stream())
                .filter(Changes::isChangeable)
                .findFirst();
    }

    private void take(Input input, String text) {
        Schema.Entry entry = Schema.of(input);
        try {
            changes.put(input, new Changes.Change(OptionValue.read(entry, text), Optional.empty()));
        } catch (QuantityParser.NotAQuantity wrong) {
            problems.add(
                    new Problem(
                            0,
                            Changes.keyOf(input),
                            String.valueOf(wrong.getMessage()),
                            OptionValue.expected(entry)
                                    + ", for example "
                                    + OptionValue.assignment(entry)));
        }
    }

    /** A taper that runs the wrong way is told together with everything else. */
    private void checkTapers() {
        Changes all = new Changes(changes);
        problems.addAll(new Blame(Given.NOTHING, all, Consistency::ofSettings).problems());
    }
}
