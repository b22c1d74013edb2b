package brakewright.cli.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.spec.Input;
import brakewright.tables.Default;
import brakewright.tables.ReferenceTables;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** README.md lists every key of a build file, with its example and what is taken without it. */
class ReadmeKeysTest {

    private static final ReferenceTables TABLES = ReferenceTables.load();
    private static final Pattern HEADING = Pattern.compile("\\*\\*(?:`\\[(.+)]`|Top)\\*\\*.*");
    private static final Pattern ROW =
            Pattern.compile("\\| `([a-z_]+)` \\| `(.+)` \\| (.+) \\| (.+) \\|");

    private static Map<Input, Resolved> single = Map.of();
    private static Map<Input, Resolved> joined = Map.of();

    /** A row of the list; what it says of the key is left to the reader. */
    private record Row(String key, String example, String without) {}

    @BeforeAll
    static void readTheSmallestFiles() throws BuildFileException {
        String top = "title = \"smallest\"\n" + required(false);
        String pack = required(true);
        single = read(top + pack).inputs();
        String several = "[[packs]]\n" + pack.replace("pack.", "");
        joined = read(top + several + several).inputs();
    }

    private static BuildFile read(String text) throws BuildFileException {
        return BuildFile.read(text.getBytes(StandardCharsets.UTF_8), TABLES);
    }

    /** Nothing but the required keys of the pack, or of the rest, with their examples. */
    private static String required(boolean ofPack) {
        StringBuilder text = new StringBuilder();
        for (Schema.Entry entry : Schema.all()) {
            if (PackPlace.holds(entry.input()) == ofPack && isRequired(entry)) {
                text.append(entry.key()).append(" = ").append(example(entry)).append('\n');
            }
        }
        return text.toString();
    }

    private static boolean isRequired(Schema.Entry entry) {
        return entry.need() != Schema.Need.OPTIONAL;
    }

    private static String example(Schema.Entry entry) {
        return ValueReader.example(entry).split(" = ", 2)[1];
    }

    @Test
    void listsEveryKeyWithItsExampleAndWhatIsTakenWithoutIt() throws IOException {
        List<Row> expected = new ArrayList<>();
        expected.add(new Row("title", "\"Trail board\"", "required"));
        expected.add(new Row("notes", "\"Built for gravel.\"", "none"));
        expected.add(new Row("pack.cell", "\"samsung-30q\"", "required, or `[pack.cell]`"));
        for (Schema.Entry entry : Schema.all()) {
            expected.add(new Row(entry.key(), example(entry), without(entry)));
        }
        assertThat(rows()).containsExactlyInAnyOrderElementsOf(expected);
    }

    /** What is taken where the key is left out. */
    private static String without(Schema.Entry entry) {
        if (isRequired(entry)) {
            return "required";
        }
        if (entry.key().startsWith("settings.")) {
            return entry.key().endsWith("_current") ? "as recommended" : "none";
        }
        List<Default> rows = defaults(entry.key());
        List<Default> low = defaults(entry.key() + "_low");
        if (!rows.isEmpty()) {
            return span(entry, rows);
        }
        if (!low.isEmpty()) {
            return span(entry, List.of(low.get(0), defaults(entry.key() + "_high").get(0)));
        }
        Optional<Resolved> derived =
                Optional.ofNullable(single.get(entry.input()))
                        .or(() -> Optional.ofNullable(joined.get(entry.input())));
        return derived.map(ReadmeKeysTest::derived).orElse("none");
    }

    private static String derived(Resolved resolved) {
        if (resolved.value() instanceof Value.Word word) {
            return "`" + word.text() + "`";
        }
        return resolved.value() instanceof Value.Points
                ? "by chemistry"
                : resolved.note().replaceAll("\\b([a-z]+\\.[a-z_]+)\\b", "`$1`");
    }

    private static List<Default> defaults(String key) {
        return TABLES.defaults().stream().filter(each -> each.key().equals(key)).toList();
    }

    /** One value, or the range of those that depend on something. */
    private static String span(Schema.Entry entry, List<Default> rows) {
        List<Default> ascending =
                rows.stream().sorted(Comparator.comparingDouble(Default::value)).toList();
        double low = ascending.get(0).value();
        double high = ascending.get(ascending.size() - 1).value();
        String unit =
                ascending
                        .get(0)
                        .figure()
                        .unit()
                        .replace("degC", "°C")
                        .replace("m2", "m²")
                        .replace("s2", "s²")
                        .replace("*", "·")
                        .replaceAll("^1(/km)?$", "");
        if (unit.isEmpty() && entry.example().contains("%")) {
            low *= 100.0;
            high *= 100.0;
            unit = "%";
        }
        String value = Plain.number(low) + (low == high ? "" : " to " + Plain.number(high));
        String fact =
                rows.stream()
                        .flatMap(row -> row.when().keySet().stream())
                        .findFirst()
                        .filter(any -> value.contains(" to "))
                        .map(name -> ", by " + name)
                        .orElse("");
        return (value + " " + unit).strip() + fact;
    }

    private static List<Row> rows() throws IOException {
        List<Row> rows = new ArrayList<>();
        String table = "";
        for (String line : Files.readAllLines(Path.of("..", "README.md"))) {
            Matcher heading = HEADING.matcher(line);
            Matcher row = ROW.matcher(line);
            if (heading.matches()) {
                table = heading.group(1) == null ? "" : heading.group(1) + ".";
            } else if (row.matches()) {
                rows.add(new Row(table + row.group(1), row.group(2), row.group(3)));
                assertThat(row.group(4).toLowerCase(Locale.ROOT)).as(line).isNotBlank();
            }
        }
        return rows;
    }
}
