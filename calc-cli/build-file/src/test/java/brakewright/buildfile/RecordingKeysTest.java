package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.tables.ReferenceTables;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.tomlj.Toml;

/** What is explained of the table of recordings is what a file may say, and nothing else. */
class RecordingKeysTest {

    private static final String ONE_OF = "one of ";
    private static final String QUOTED = ", in quotes";

    private static List<KeyGuide.Entry> explained() {
        return new KeyGuide(ReferenceTables.load()).find("recording");
    }

    private static Optional<Problem> read(KeyGuide.Entry entry, String literal) {
        String text = entry.key() + " = " + literal;
        assertThat(Toml.parse(text).errors()).isEmpty();
        FileKeys keys = FileKeys.parse(text, new ArrayList<>());
        WrittenTable.Item item = keys.values().get(entry.key());
        assertThat(item).as(text).isNotNull();
        return RecordingKeys.problem(entry.key(), item);
    }

    @ParameterizedTest
    @MethodSource("explained")
    void theExampleCanBeRead(KeyGuide.Entry entry) {
        assertThat(RecordingKeys.holds(entry.key())).isTrue();
        assertThat(read(entry, entry.example())).isEmpty();
        assertThat(entry.what()).isNotBlank();
        assertThat(entry.found()).isNotBlank();
        assertThat(entry.leftOut()).isNotBlank();
    }

    @ParameterizedTest
    @MethodSource("explained")
    void everyWordThatIsToldCanBeReadAndNoOther(KeyGuide.Entry entry) {
        boolean isOfWords = entry.expected().startsWith(ONE_OF);
        assertThat(read(entry, "\"furlongs\"").isPresent()).isEqualTo(isOfWords);
        assertThat(read(entry, "3")).isPresent();
        if (isOfWords) {
            String words =
                    entry.expected()
                            .substring(ONE_OF.length(), entry.expected().lastIndexOf(QUOTED));
            assertThat(words.split(", ", -1))
                    .allSatisfy(word -> assertThat(read(entry, '"' + word + '"')).isEmpty());
        }
    }

    /** A key that the reader refuses is told with those that are explained. */
    @Test
    void everyNameThatTheReaderProposesIsExplained() {
        String proposed =
                RecordingKeys.problem("recording.columns.wheel", new WrittenTable.Item("x", 1))
                        .orElseThrow()
                        .expected();
        for (String table : List.of("recording.columns", "recording.units")) {
            assertThat(
                            explained().stream()
                                    .filter(entry -> entry.table().equals(table))
                                    .map(KeyGuide.Entry::name)
                                    .collect(Collectors.joining(" ", ONE_OF, "")))
                    .isEqualTo(proposed);
        }
    }
}
