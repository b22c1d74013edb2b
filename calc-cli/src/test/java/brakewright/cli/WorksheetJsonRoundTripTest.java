package brakewright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The inputs that a worksheet names make a build file with the same worksheet. */
class WorksheetJsonRoundTripTest {

    /** What rightly differs: all values of the second file come from the file. */
    /** What is typed in is not known from a table: how well it is known is another matter. */
    private static final Set<String> ORIGIN =
            Set.of(
                    "from",
                    "source",
                    "kind",
                    "verdict_from_memory",
                    "pack_end_cruise_low_C",
                    "pack_end_cruise_high_C");

    /** Of one pack; a list of packs is not written with dotted keys. */
    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "TOUR_BOARD")
    void theInputsOfAWorksheetGiveThatWorksheetAgain(Example example) {
        Map<String, Object> first = JsonMaps.read(example.json());
        CommandRun run = CommandRun.worksheet(buildFile(first), "--format", "json");
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isEqualTo(example.status());
        assertSame("", first, JsonMaps.read(run.out()));
    }

    private static String buildFile(Map<String, Object> sheet) {
        StringBuilder file = new StringBuilder();
        file.append("title = \"").append(JsonMaps.text(sheet, "title")).append("\"\n");
        JsonMaps.object(sheet, "inputs")
                .forEach(
                        (key, value) -> {
                            Map<String, Object> entry = JsonMaps.asObject(value);
                            if (!"recommended-limit".equals(entry.get("source"))) {
                                file.append(key).append(" = ").append(written(entry)).append('\n');
                            }
                        });
        return file.toString();
    }

    private static String written(Map<String, Object> entry) {
        String unit = JsonMaps.text(entry, "unit");
        Object value = entry.getOrDefault("value", "");
        if (value instanceof String word) {
            return '"' + word + '"';
        }
        if (value instanceof Double number) {
            return unit.equals("1") || unit.equals("1/km")
                    ? plain(number)
                    : '"' + plain(number) + ' ' + unit + tolerance(entry, unit) + '"';
        }
        List<?> list = (List<?>) value;
        return list.stream()
                .map(
                        each ->
                                each instanceof List<?> point
                                        ? point.toString()
                                        : '"' + plain((Double) each) + ' ' + unit + '"')
                .collect(Collectors.joining(", ", "[", "]"));
    }

    private static String tolerance(Map<String, Object> entry, String unit) {
        Object tolerance = entry.get("tolerance");
        return tolerance == null ? "" : " ± " + tolerance + ' ' + unit;
    }

    /** A count must be whole. */
    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }

    private static Object present(Map<?, ?> map, Object key) {
        Object value = map.get(key);
        if (value == null) {
            throw new AssertionError("no " + key);
        }
        return value;
    }

    private static Set<String> names(Map<?, ?> map) {
        return map.keySet().stream()
                .map(String::valueOf)
                .filter(key -> !ORIGIN.contains(key))
                .collect(Collectors.toSet());
    }

    private static void assertSame(String path, Object expected, Object got) {
        if (expected instanceof Map<?, ?> first && got instanceof Map<?, ?> second) {
            assertThat(names(second)).as(path).isEqualTo(names(first));
            first.forEach(
                    (key, value) -> {
                        if (!ORIGIN.contains(String.valueOf(key))) {
                            assertSame(path + "/" + key, value, present(second, key));
                        }
                    });
        } else if (expected instanceof List<?> first && got instanceof List<?> second) {
            assertThat(second).as(path).hasSameSizeAs(first);
            for (int i = 0; i < first.size(); i++) {
                assertSame(path + "/" + i, first.get(i), second.get(i));
            }
        } else if (expected instanceof Double first && got instanceof Double second) {
            assertThat(second)
                    .as(path)
                    .isCloseTo(first, within(1e-9 * Math.max(1e-3, Math.abs(first))));
        } else {
            assertThat(got).as(path).isEqualTo(expected);
        }
    }
}
