package brakewright.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads JSON into maps, lists, strings and doubles. Null, booleans, NaN and a name that comes twice
 * are refused: a worksheet has none of them.
 */
final class JsonMaps {

    private static final JsonFactory FACTORY =
            JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();

    private JsonMaps() {}

    static Map<String, Object> read(String text) {
        try (JsonParser parser = FACTORY.createParser(text)) {
            parser.nextToken();
            Map<String, Object> map = asObject(value(parser));
            if (parser.nextToken() != null) {
                throw new AssertionError("text after the end of the object");
            }
            return map;
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    private static Object value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> {
                Map<String, Object> map = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String name = parser.currentName();
                    parser.nextToken();
                    map.put(name, value(parser));
                }
                yield map;
            }
            case START_ARRAY -> {
                List<Object> list = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    list.add(value(parser));
                }
                yield list;
            }
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
                double number = parser.getDoubleValue();
                if (!Double.isFinite(number)) {
                    throw new AssertionError("a number that is not finite");
                }
                yield number;
            }
            default -> throw new AssertionError("unexpected " + parser.currentToken());
        };
    }

    @SuppressWarnings("unchecked")
    static Map<String, Object> asObject(Object value) {
        return (Map<String, Object>) value;
    }

    /** Follows names down to an object. */
    static Map<String, Object> object(Map<String, Object> map, String... path) {
        Map<String, Object> current = map;
        for (String name : path) {
            current = asObject(required(current, name));
        }
        return current;
    }

    @SuppressWarnings("unchecked")
    static List<Object> list(Map<String, Object> map, String name) {
        return (List<Object>) required(map, name);
    }

    static List<Map<String, Object>> objects(Map<String, Object> map, String name) {
        return list(map, name).stream().map(JsonMaps::asObject).toList();
    }

    static List<Double> numbers(Map<String, Object> map, String name) {
        return list(map, name).stream().map(Double.class::cast).toList();
    }

    static double number(Map<String, Object> map, String name) {
        return (Double) required(map, name);
    }

    static String text(Map<String, Object> map, String name) {
        return (String) required(map, name);
    }

    private static Object required(Map<String, Object> map, String name) {
        Object value = map.get(name);
        if (value == null) {
            throw new AssertionError("no \"" + name + "\" among " + map.keySet());
        }
        return value;
    }
}
