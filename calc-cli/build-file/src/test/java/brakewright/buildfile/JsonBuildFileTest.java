package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A build file may be an object of JSON: the same keys, the same texts, the same vehicle. */
class JsonBuildFileTest {

    static List<Arguments> broken() {
        return List.of(
                Arguments.of("{\"title\": \"Cart\",", 1),
                Arguments.of("{\"title\":\n 'Cart'}", 2),
                Arguments.of("{\"title\": \"Cart\"\n\"x\": 1}", 2));
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

    /** What follows a break is not told as missing, as nobody knows whether it is. */
    @ParameterizedTest
    @MethodSource("broken")
    void aBrokenTextIsOneProblem(String text, int line) {
        assertThat(wrong(text).problems())
                .singleElement()
                .satisfies(
                        problem -> {
                            assertThat(problem.line()).isEqualTo(line);
                            assertThat(problem.expected()).startsWith("JSON");
                        });
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
                              expected: a mass with its unit, in quotes, for example mass = "92 kg"
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
