package brakewright.buildfile;

import static org.assertj.core.api.Assertions.assertThat;

import brakewright.assembly.Resolved;
import brakewright.assembly.Value;
import brakewright.spec.Input;
import brakewright.tables.ReferenceTables;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of keys says what the program takes where one is left out. */
class LeftOutKeysTest {

    private static final ReferenceTables TABLES = ReferenceTables.load();
    private static final KeyGuide GUIDE = new KeyGuide(TABLES);

    private static Map<Input, Resolved> single = Map.of();
    private static Map<Input, Resolved> joined = Map.of();

    static List<Schema.Entry> mayBeLeftOut() {
        return Schema.all().stream().filter(entry -> entry.need() == Schema.Need.OPTIONAL).toList();
    }

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
            if (PackPlace.holds(entry.input()) == ofPack && entry.need() != Schema.Need.OPTIONAL) {
                text.append(entry.key()).append(" = ").append(Spelling.literal(entry)).append('\n');
            }
        }
        return text.toString();
    }

    @ParameterizedTest
    @MethodSource("mayBeLeftOut")
    void theTableSaysWhatIsTakenWithoutAKey(Schema.Entry entry) {
        assertThat(entry.leftOut()).isEqualTo(taken(entry));
    }

    /** What the program takes. */
    private static String taken(Schema.Entry entry) {
        if (entry.key().startsWith("settings.")) {
            return entry.key().endsWith("_current") ? "as recommended" : "none";
        }
        if (!GUIDE.defaultsOf(entry.key()).isEmpty()) {
            return KeyGuide.ASSUMED;
        }
        return Optional.ofNullable(single.get(entry.input()))
                .or(() -> Optional.ofNullable(joined.get(entry.input())))
                .map(LeftOutKeysTest::derived)
                .orElse("none");
    }

    private static String derived(Resolved resolved) {
        if (resolved.value() instanceof Value.Word word) {
            return "`" + word.text() + "`";
        }
        return resolved.value() instanceof Value.Points
                ? "by chemistry"
                : resolved.note().replaceAll("\\b([a-z]+\\.[a-z_]+)\\b", "`$1`");
    }
}
