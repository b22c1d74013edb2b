package brakewright.cli.describe;

import brakewright.cli.describe.Question.Condition;
import brakewright.cli.describe.Question.Unknown;
import de.siegmar.fastcsv.reader.CommentStrategy;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** Reads the table of questions. */
final class Questions {

    private static final String NAME = "questions.csv";

    private static final String TAKE = "take ";

    private Questions() {}

    /** All of them, in the order in which they are asked. */
    static List<Question> load() {
        InputStream bytes = Questions.class.getResourceAsStream(NAME);
        if (bytes == null) {
            throw new IllegalStateException(NAME + ": the table is missing");
        }
        try (CsvReader<CsvRecord> lines =
                CsvReader.builder()
                        .commentStrategy(CommentStrategy.SKIP)
                        .ofCsvRecord(new InputStreamReader(bytes, StandardCharsets.UTF_8))) {
            return lines.stream().skip(1).map(Questions::question).toList();
        } catch (IOException broken) {
            throw new IllegalStateException(NAME + ": cannot be read", broken);
        }
    }

    private static Question question(CsvRecord line) {
        return new Question(
                line.getField(0),
                words(line.getField(1), " or ").stream().map(Questions::condition).toList(),
                unknown(line.getField(2)),
                line.getField(3),
                words(line.getField(4), " "),
                line.getField(5));
    }

    private static Condition condition(String text) {
        int equals = text.indexOf('=');
        if (equals >= 0) {
            return new Condition(
                    text.substring(0, equals), Condition.Kind.IS, text.substring(equals + 1));
        }
        String id = text.substring(0, text.length() - 1);
        return new Condition(
                id, text.endsWith("?") ? Condition.Kind.UNKNOWN : Condition.Kind.KNOWN, "");
    }

    private static Unknown unknown(String text) {
        return text.startsWith(TAKE)
                ? new Unknown(Unknown.Kind.TAKE, text.substring(TAKE.length()))
                : new Unknown(
                        Unknown.Kind.valueOf(text.toUpperCase(Locale.ROOT).replace('-', '_')), "");
    }

    private static List<String> words(String text, String between) {
        return text.isEmpty() ? List.of() : Arrays.asList(text.split(between));
    }
}
