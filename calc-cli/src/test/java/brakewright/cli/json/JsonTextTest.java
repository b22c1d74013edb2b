package brakewright.cli.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class JsonTextTest {

    private final JsonText json = new JsonText();

    private String written() {
        json.endObject();
        return json.finish().replaceAll("\\s+", "");
    }

    @Test
    void leavesOutWhatWasNotComputed() {
        json.startObject();
        json.number("never_s", OptionalDouble.empty());
        json.number("endless_s", Double.POSITIVE_INFINITY);
        json.number("unknown_s", OptionalDouble.of(Double.NaN));
        json.number("known_s", OptionalDouble.of(2.5));
        assertThat(written()).isEqualTo("{\"known_s\":2.5}");
    }

    @Test
    void writesWordsRowByRow() {
        json.startObject();
        json.textGrid("bound_by", List.of(List.of("grip", "tipping"), List.of()));
        json.texts("cautions", List.of("one"));
        assertThat(written())
                .isEqualTo("{\"bound_by\":[[\"grip\",\"tipping\"],[]],\"cautions\":[\"one\"]}");
    }
}
