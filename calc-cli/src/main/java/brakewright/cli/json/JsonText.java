package brakewright.cli.json;

import brakewright.buildfile.internal.Printable;
import brakewright.spec.WhichPack;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Writes JSON into a string. A number that is not finite is left out with its name: what was not
 * computed is absent.
 */
final class JsonText {

    private final StringWriter out = new StringWriter();
    private final JsonGenerator generator;

    JsonText() {
        try {
            generator = new JsonFactory().createGenerator(out);
            DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
            printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
            generator.setPrettyPrinter(printer);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** One step of writing; a string writer never fails. */
    private interface Step {
        void run() throws IOException;
    }

    private static void write(Step step) {
        try {
            step.run();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    void startObject() {
        write(generator::writeStartObject);
    }

    void startObject(String name) {
        write(() -> generator.writeObjectFieldStart(name));
    }

    void endObject() {
        write(generator::writeEndObject);
    }

    void startArray(String name) {
        write(() -> generator.writeArrayFieldStart(name));
    }

    void endArray() {
        write(generator::writeEndArray);
    }

    void text(String name, String value) {
        write(() -> generator.writeStringField(name, value));
    }

    void number(String name, double value) {
        if (Double.isFinite(value)) {
            write(() -> generator.writeNumberField(name, value));
        }
    }

    void number(String name, OptionalDouble value) {
        value.ifPresent(present -> number(name, present));
    }

    /** Tells which of several packs something is about. */
    void pack(WhichPack which) {
        which.number().ifPresent(number -> number("pack", number));
    }

    void numbers(String name, double[] values) {
        write(() -> generator.writeFieldName(name));
        numbers(values);
    }

    void numbers(double[] values) {
        write(() -> generator.writeArray(values, 0, values.length));
    }

    void grid(String name, double[][] values) {
        startArray(name);
        for (double[] row : values) {
            numbers(row);
        }
        endArray();
    }

    void texts(String name, List<String> values) {
        write(() -> generator.writeFieldName(name));
        texts(values);
    }

    private void texts(List<String> values) {
        write(generator::writeStartArray);
        for (String value : values) {
            write(() -> generator.writeString(value));
        }
        endArray();
    }

    void textGrid(String name, List<List<String>> values) {
        startArray(name);
        values.forEach(this::texts);
        endArray();
    }

    String finish() {
        write(generator::close);
        return Printable.inJson(out.append('\n').toString());
    }
}
