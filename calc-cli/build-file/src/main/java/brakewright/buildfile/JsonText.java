package brakewright.buildfile;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Takes an object of JSON apart (RFC 8259). Its names are those of the tables and keys of TOML:
 * {@code packs} is an array of objects.
 */
final class JsonText {

    private static final String EXPECTED = "JSON, for example {\"rider\": {\"mass\": \"92 kg\"}}";

    private static final JsonFactory FACTORY = new JsonFactory();

    private final List<Problem> problems;

    /** What is put where nothing is said. */
    private enum Nothing {
        NULL;

        @Override
        public String toString() {
            return "null";
        }
    }

    /**
     * Prepares the reading.
     *
     * @param problems to which is added what is no JSON
     */
    JsonText(List<Problem> problems) {
        this.problems = problems;
    }

    WrittenText read(String text) {
        List<Problem> noted = new ArrayList<>();
        try {
            WrittenTable table = new JsonText(noted).object(text);
            problems.addAll(noted);
            return new WrittenText(table, TomlComments.NONE, List.of(), Spelling.JSON);
        } catch (JsonProcessingException wrong) {
            return repaired(text, wrong);
        }
    }

    /** All that keeps a text from being JSON is told, and what can be read of it is read. */
    private WrittenText repaired(String text, JsonProcessingException wrong) {
        int before = problems.size();
        Optional<String> meant = new JsonRepair(text, problems).read();
        if (problems.size() == before) {
            JsonLocation place = wrong.getLocation();
            problem(
                    place == null ? 0 : place.getLineNr(),
                    "",
                    place == null
                            ? "this cannot be read"
                            : "column " + place.getColumnNr() + ": from here on it cannot be read");
        }
        try {
            return new WrittenText(
                    meant.isPresent() ? object(meant.get()) : WrittenTable.NOTHING,
                    TomlComments.NONE,
                    List.of(0),
                    Spelling.JSON);
        } catch (JsonProcessingException unreadable) {
            return WrittenText.unread(Spelling.JSON);
        }
    }

    private WrittenTable object(String text) throws JsonProcessingException {
        try (JsonParser parser = FACTORY.createParser(text)) {
            parser.nextToken();
            WrittenTable table = table(parser);
            if (parser.nextToken() != null) {
                problem(line(parser), "", "something stands behind the end of the object");
            }
            return table;
        } catch (JsonProcessingException wrong) {
            throw wrong;
        } catch (IOException impossible) {
            throw new UncheckedIOException("a text in memory", impossible);
        }
    }

    private WrittenTable table(JsonParser parser) throws IOException {
        Map<String, WrittenTable.Item> items = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            int line = line(parser);
            parser.nextToken();
            Object raw = raw(parser);
            if (isNotUnderstood(name) || isNotUnderstood(raw)) {
                continue;
            }
            WrittenTable.Item before = items.putIfAbsent(name, new WrittenTable.Item(raw, line));
            if (before != null) {
                problem(line, name, "this name stands in line " + before.line() + " already");
            }
        }
        return new WrittenTable(items);
    }

    private WrittenTable.Row row(JsonParser parser) throws IOException {
        List<WrittenTable.Item> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            int line = line(parser);
            items.add(new WrittenTable.Item(raw(parser), line));
        }
        return new WrittenTable.Row(items);
    }

    private static boolean isNotUnderstood(Object raw) {
        return raw.equals(JsonRepair.NOT_UNDERSTOOD);
    }

    private Object raw(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> table(parser);
            case START_ARRAY -> row(parser);
            case VALUE_STRING -> parser.getText();
            case VALUE_TRUE, VALUE_FALSE -> parser.getBooleanValue();
            case VALUE_NUMBER_INT -> whole(parser);
            case VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            default -> Nothing.NULL;
        };
    }

    private static Object whole(JsonParser parser) throws IOException {
        return parser.getNumberType() == JsonParser.NumberType.BIG_INTEGER
                ? (Object) parser.getDoubleValue()
                : (Object) parser.getLongValue();
    }

    private static int line(JsonParser parser) {
        return parser.currentTokenLocation().getLineNr();
    }

    private void problem(int line, String key, String wrong) {
        problems.add(new Problem(line, key, wrong, EXPECTED));
    }
}
