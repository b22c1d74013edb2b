package brakewright.cli.history;

import brakewright.buildfile.internal.Printable;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What stands in a worksheet that was kept.
 *
 * @param name of its file, as it may be printed
 * @param title what the vehicle is called, likewise as all other words
 * @param values a number or a word for each that stands in it
 * @param inputs number, word or list, by the key of the build file; settings left out. A list holds
 *     numbers and words, that of a curve a list for each point
 * @param units of the inputs that have one, by the same key
 */
public record PastSheet(
        String name,
        String title,
        Map<Watched, Object> values,
        Map<String, Object> inputs,
        Map<String, String> units) {

    private static final String SCHEMA = "brakewright.worksheet/1";
    private static final String INPUTS = "inputs/";
    private static final String SETTINGS = "settings.";

    /** The unit of what has none. */
    private static final String RATIO = "1";

    /** Our own choice: a hundred times what the largest worksheet takes [bytes]. */
    private static final long MOST = 20_000_000;

    /** Copies the values. */
    public PastSheet {
        values = Map.copyOf(values);
        inputs = Map.copyOf(inputs);
        units = Map.copyOf(units);
    }

    /**
     * Reads a file.
     *
     * @param file any
     * @return what stands in it; empty where it is no worksheet
     * @throws IOException if it cannot be read
     */
    public static Optional<PastSheet> read(Path file) throws IOException {
        if (Files.size(file) > MOST) {
            return Optional.empty();
        }
        Map<String, Object> flat = new LinkedHashMap<>();
        JsonFactory factory =
                JsonFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build();
        try (JsonParser parser = factory.createParser(Files.readAllBytes(file))) {
            parser.nextToken();
            flatten(parser, "", flat);
        } catch (com.fasterxml.jackson.core.JacksonException none) {
            return Optional.empty();
        }
        return SCHEMA.equals(flat.get("schema"))
                ? Optional.of(of(Printable.shown(String.valueOf(file.getFileName())), flat))
                : Optional.empty();
    }

    private static PastSheet of(String name, Map<String, Object> flat) {
        Map<Watched, Object> values = new HashMap<>();
        for (Watched each : Watched.values()) {
            Object value = flat.get(each.path());
            if (value != null) {
                values.put(each, value);
            }
        }
        Map<String, Object> inputs = new HashMap<>();
        Map<String, String> units = new HashMap<>();
        flat.forEach(
                (path, value) -> {
                    if (path.startsWith(INPUTS) && !path.startsWith(INPUTS + SETTINGS)) {
                        String[] names = path.substring(INPUTS.length()).split("/", 2);
                        if (names.length < 2) {
                            return;
                        }
                        if (names[1].equals("value")) {
                            inputs.put(names[0], value);
                        } else if (names[1].equals("unit")
                                && !value.equals("")
                                && !value.equals(RATIO)) {
                            units.put(names[0], String.valueOf(value));
                        }
                    }
                });
        return new PastSheet(
                name, String.valueOf(flat.getOrDefault("title", "")), values, inputs, units);
    }

    private static void flatten(JsonParser parser, String path, Map<String, Object> flat)
            throws IOException {
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String below = below(path, parser.currentName());
                parser.nextToken();
                flatten(parser, below, flat);
            }
        } else if (token == JsonToken.START_ARRAY && path.startsWith(INPUTS)) {
            flat.put(path, list(parser));
        } else if (token == JsonToken.START_ARRAY) {
            for (int place = 0; parser.nextToken() != JsonToken.END_ARRAY; place++) {
                flatten(parser, below(path, String.valueOf(place)), flat);
            }
        } else {
            single(parser).ifPresent(value -> flat.put(path, value));
        }
    }

    private static List<Object> list(JsonParser parser) throws IOException {
        List<Object> all = new ArrayList<>();
        for (JsonToken token = parser.nextToken();
                token != JsonToken.END_ARRAY;
                token = parser.nextToken()) {
            if (token == JsonToken.START_ARRAY) {
                all.add(list(parser));
            } else {
                single(parser).ifPresent(all::add);
                parser.skipChildren();
            }
        }
        return List.copyOf(all);
    }

    private static Optional<Object> single(JsonParser parser) throws IOException {
        JsonToken token = parser.currentToken();
        if (token != null && token.isNumeric()) {
            return Optional.of(parser.getDoubleValue());
        }
        return token == JsonToken.VALUE_STRING
                ? Optional.of(Printable.shown(parser.getText()))
                : Optional.empty();
    }

    private static String below(String path, String name) {
        return path.isEmpty() ? name : path + "/" + name;
    }
}
