package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A build file may be an object of JSON: the same keys, the same texts, the same vehicle. */
class JsonBuildFileTest {

    /** A text, and of its one problem the line, what is met and what is expected there. */
    static List<Arguments> broken() {
        return List.of(
                broken("{\"title\": \"Cart\",", 1, "column 18: the text ends", "}"),
                broken("{\"title\":\n 'Cart'}", 2, "column 2: here stands 'Cart'", "in \" \""),
                broken(
                        "{\"title\": \"Cart\"\n\"x\": 1}",
                        2,
                        "column 1: here stands \"x\"",
                        "a comma"),
                broken(
                        "{\"title\": \"Cart\",}",
                        1,
                        "column 17: here stands ,",
                        "no comma before }"),
                broken("{\"title\" \"Cart\"}", 1, "column 10: here stands \"Cart\"", "a colon"),
                broken("{\"rider\" {}}", 1, "column 10: here stands {", "a colon"),
                broken("{\"title\"}", 1, "column 9: here stands }", "a colon and a value"),
                broken("{title: \"Cart\"}", 1, "column 2: here stands title", "a name in \" \""),
                broken("{\"title\" = \"Cart\"}", 1, "column 10: here stands =", "a colon"),
                broken("{\"title\": \"Cart}", 1, "column 11: here stands \"Cart", "in \" \""),
                broken("{\"title\": \"a\\qb\"}", 1, "column 11: \\q stands in a text", "\\\\"),
                broken(
                        "{\"title\": \"a\tb\"}",
                        1,
                        "column 11: the control character U+0009",
                        "\\t"),
                broken("{\"title\": Cart one}", 1, "column 11: here stands Cart", "in \" \""),
                broken(
                        "{\"rider\": {\"mass\": 92 kg}}",
                        1,
                        "column 23: here stands kg",
                        "unit stands in"),
                broken("{\"rider\": {\"mass\": }}", 1, "column 20: here stands }", "a value"),
                broken("{\"a\": 1\n// old\n}", 2, "column 1: here stands // old", "no comment"),
                broken(
                        "{\"title\": \"é\", , \"notes\": \"x\"}",
                        1,
                        "column 16: here stands ,",
                        "a name"),
                broken(
                        "{\"packs\": [{\"series\": 1],\n \"title\": \"x\"}",
                        1,
                        "column 24: here stands ]",
                        "}"),
                broken("{\"title\": \"x\", {\"a\": 1}}", 1, "column 16: here stands {", "a name"),
                broken("{\"title\": \"x\"} x", 1, "column 16: here stands x", "nothing behind"));
    }

    private static Arguments broken(String text, int line, String met, String expected) {
        return Arguments.of(text, line, met, expected);
    }

    static List<Path> vehicles() {
        return Vehicles.all();
    }

    @ParameterizedTest
    @MethodSource("vehicles")
    void saysTheSameAsToml(Path path) throws Exception {
        String toml = Vehicles.text(path);
        BuildFile expected = Vehicles.read(toml);
        BuildFile got = Vehicles.read(json(TomlText.read(toml, new ArrayList<>()).table()));
        assertThat(got.build()).isEqualTo(expected.build());
        assertThat(got.named()).isEqualTo(expected.named());
        assertThat(got.proposals()).isEqualTo(expected.proposals());
        assertThat(got.title()).isEqualTo(expected.title());
        assertThat(got.notes()).isEqualTo(expected.notes());
    }

    @Test
    void everyProblemHasItsLineAndKey() {
        BuildFileException wrong =
                wrong(
                        """
                        {"title": "Cart",
                         "rider": {"mass": 92,
                                   "stance": null},
                         "motor": {"kv": "170 rpm/V", "resistanc": "68 mΩ"},
                         "drive": {"motors": 1e300, "reduction": 3,
                         "motors": 2}}
                        """);
        assertThat(wrong.problems())
                .extracting(Problem::line, Problem::key, Problem::wrong)
                .contains(
                        tuple(2, "rider.mass", "the bare number 92 has no unit"),
                        tuple(3, "rider.stance", "null does not belong here"),
                        tuple(4, "motor.resistanc", "this key is not known"),
                        tuple(5, "drive.motors", "1.0E300 is no whole number"),
                        tuple(6, "motors", "this name stands in line 5 already"),
                        tuple(0, "vehicle.mass", "this required key is missing"));
    }

    /** Nothing is told as missing, as nobody knows what a text that is broken should hold. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("broken")
    void whatBreaksATextIsOneProblem(String text, int line, String met, String expected) {
        assertThat(wrong(text).problems())
                .filteredOn(problem -> problem.key().isEmpty())
                .singleElement()
                .satisfies(
                        problem -> {
                            assertThat(problem.line()).isEqualTo(line);
                            assertThat(problem.wrong()).startsWith(met);
                            assertThat(problem.expected()).contains(expected);
                        });
        assertThat(wrong(text).problems())
                .extracting(Problem::wrong)
                .doesNotContain("this required key is missing");
    }

    /** What breaks a text in one line keeps nothing of the others from being told. */
    @Test
    void aBrokenTextIsReadAllTheSame() {
        BuildFileException wrong =
                wrong(
                        """
                        {"title": "Cart",
                         "rider": {"mass": 92 kg, "stance": "lying"},
                         "vehicle": {"mass": "40 kg" "wheel_diameter": "0.25 A"},
                         "drive": {"motors": 1.5, "reduction": 4,},
                         "pack": {"parrallel": 4}
                        """);
        assertThat(wrong.problems())
                .extracting(Problem::line, Problem::key)
                .containsExactly(
                        tuple(2, ""),
                        tuple(2, "rider.stance"),
                        tuple(3, ""),
                        tuple(3, "vehicle.wheel_diameter"),
                        tuple(4, ""),
                        tuple(4, "drive.motors"),
                        tuple(5, "pack.parrallel"),
                        tuple(6, ""));
    }

    /** Nobody who writes JSON is told headings, keys with equals signs or the words of a parser. */
    @Test
    void problemsAreSpeltAsJsonIs() {
        String text =
                """
                {"title": 3,
                 "battery": {"fuse": 60},
                 "proposals": {"firm": {"motor_brake_current": 30, "use": {"charge_from": "90 A"}},
                               "as asked": {}, "odd": 1},
                 "use": [1],
                 "packs": [{"cell": "no such", "charge": "80 %"}]}
                """;
        assertThat(wrong(text).problems())
                .allSatisfy(
                        problem ->
                                assertThat(problem.expected())
                                        .doesNotContain(" = ", "[[", "[pack", "[prop", "heading"));
        assertThat(wrong(text).problems())
                .extracting(Problem::key, Problem::expected)
                .contains(
                        tuple(
                                "title",
                                "plain text in quotes, for example \"title\": \"Trail board\""),
                        tuple("use", "an object \"use\": { ... }"),
                        tuple("proposals.odd", "an object \"proposals\": { \"odd\": { ... } }"),
                        tuple(
                                "packs.1.series",
                                "a whole number, for example \"packs\": [{ \"series\": 10 }]"));
        assertThat(wrong("{\"packs\": {}}").problems())
                .extracting(Problem::wrong, Problem::expected)
                .contains(
                        tuple(
                                "this must be an array of objects",
                                "an object for each pack, \"packs\": [{ ... }, { ... }]"));
    }

    /** A text that is repaired is told of; one that needs no repair is left as it is. */
    @ParameterizedTest
    @MethodSource("vehicles")
    void nothingIsFoundInATextThatIsWhole(Path path) throws Exception {
        List<Problem> problems = new ArrayList<>();
        String toml = Vehicles.text(path);
        String whole = json(TomlText.read(toml, problems).table());
        assertThat(new JsonRepair(whole, problems).read()).contains(whole);
        assertThat(problems).isEmpty();
    }

    /** Whatever is cut out of a text: its parser takes it and nothing is told, or both do not. */
    @Test
    void tellsOfATextExactlyWhereAParserRefusesIt() throws Exception {
        String whole =
                "{\"a\": [1, -2.5e3, true, null, \"x\\n\\u00e9\"], \"b\": {}, \"c\": {\"d\": []}}";
        for (int from = 1; from < whole.length(); from++) {
            for (int to = from; to <= Math.min(from + 4, whole.length()); to++) {
                for (String put : List.of("", ",", "\"", "}", "]", ":", "1", "x")) {
                    String text = whole.substring(0, from) + put + whole.substring(to);
                    List<Problem> problems = new ArrayList<>();
                    Optional<String> meant = new JsonRepair(text, problems).read();
                    assertThat(problems.isEmpty()).as(text).isEqualTo(isJson(text));
                    assertThat(meant)
                            .as(text)
                            .hasValueSatisfying(
                                    repaired ->
                                            assertThat(isJson(repaired))
                                                    .as(text + " as " + repaired)
                                                    .isTrue());
                }
            }
        }
    }

    private static boolean isJson(String text) {
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            int depth = 0;
            boolean isBehind = false;
            for (JsonToken each = parser.nextToken(); each != null; each = parser.nextToken()) {
                if (isBehind) {
                    return false;
                }
                depth += each.isStructStart() ? 1 : each.isStructEnd() ? -1 : 0;
                parser.getText();
                isBehind = depth == 0;
            }
            return true;
        } catch (IOException refused) {
            return false;
        }
    }

    @Test
    void noLinesAreReplacedInIt() throws Exception {
        String toml = Vehicles.text(Vehicles.all().get(0));
        byte[] json =
                json(TomlText.read(toml, new ArrayList<>()).table())
                        .getBytes(StandardCharsets.UTF_8);
        assertThatThrownBy(
                        () ->
                                BuildFile.rewritten(
                                        json, Map.of("rider.mass", "\"80 kg\""), Vehicles.TABLES))
                .isInstanceOf(BuildFileException.class)
                .hasMessageContaining("a file of JSON is not replaced line by line");
    }

    @Test
    void nothingFollowsTheObject() {
        assertThat(wrong("{} {}").problems())
                .extracting(Problem::wrong)
                .contains("something stands behind the end of the object");
    }

    @Test
    void deepNestsAreRefused() {
        assertThat(wrong("{\"a\":" + "[".repeat(200_000)).problems()).hasSize(1);
    }

    @Test
    void theMessageTellsAll() {
        BuildFileException wrong = wrong("{\"title\": \"Cart\", \"rider\": {\"mass\": 92}}");
        assertThat(wrong)
                .hasMessageStartingWith(wrong.problems().size() + " problems\n")
                .hasMessageContaining(
                        """
                          line 1  rider.mass: the bare number 92 has no unit
                              expected: a mass with its unit, in quotes, for example "rider": { "mass": "92 kg" }
                        """
                                .stripTrailing());
        wrong.problems().forEach(each -> assertThat(wrong).hasMessageContaining(each.key()));
    }

    private static BuildFileException wrong(String text) {
        BuildFileException wrong =
                catchThrowableOfType(BuildFileException.class, () -> Vehicles.read(text));
        assertThat(wrong).isNotNull();
        return wrong;
    }

    private static String json(WrittenTable table) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = new JsonFactory().createGenerator(text)) {
            write(out, table);
        }
        return text.toString();
    }

    private static void write(JsonGenerator out, Object raw) throws IOException {
        if (raw instanceof WrittenTable table) {
            out.writeStartObject();
            for (Map.Entry<String, WrittenTable.Item> each : table.values().entrySet()) {
                out.writeFieldName(each.getKey());
                write(out, each.getValue().raw());
            }
            out.writeEndObject();
        } else if (raw instanceof WrittenTable.Row row) {
            out.writeStartArray();
            for (WrittenTable.Item each : row.items()) {
                write(out, each.raw());
            }
            out.writeEndArray();
        } else if (raw instanceof String text) {
            out.writeString(text);
        } else if (raw instanceof Long number) {
            out.writeNumber(number);
        } else {
            out.writeNumber((Double) raw);
        }
    }
}
