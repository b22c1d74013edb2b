package brakewright.cli.text;

import brakewright.buildfile.Changes;
import brakewright.buildfile.internal.Printable;
import brakewright.cli.words.ChangeWords;
import brakewright.cli.words.UnitSystem;
import brakewright.review.Evaluation;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntFunction;

/** The results of a sweep, for other programs. */
public final class SweepText {

    private final List<String> names;
    private final List<String> units;
    private final List<String> reported;
    private final IntFunction<double[]> values;
    private final SweptCase[] results;

    /**
     * Prepares the text.
     *
     * @param names of the keys that vary
     * @param units of their values
     * @param reported the columns of what was asked for besides the verdict
     * @param values of the keys in each case
     * @param results in the order of the cases
     */
    public SweepText(
            List<String> names,
            List<String> units,
            List<String> reported,
            IntFunction<double[]> values,
            SweptCase[] results) {
        this.names = List.copyOf(names);
        this.units = List.copyOf(units);
        this.reported = List.copyOf(reported);
        this.values = values;
        this.results = results.clone();
    }

    /**
     * Writes comma-separated values, a line for each case, in calculation units; results have six
     * significant digits, the keys all of theirs.
     *
     * @return the lines, the names of the columns first
     */
    public String csv() {
        StringWriter out = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().build(out)) {
            List<String> head = new ArrayList<>();
            for (int i = 0; i < names.size(); i++) {
                head.add(CsvText.field(named(i)));
            }
            head.addAll(
                    List.of("verdict", "severity", "safe_charge", "worst_check", "pack", "charge"));
            head.addAll(reported);
            csv.writeRecord(head);
            List<String> line = new ArrayList<>();
            for (int index = 0; index < results.length; index++) {
                line.clear();
                for (double value : values.apply(index)) {
                    line.add(Double.toString(value));
                }
                Evaluation result = results[index].evaluation();
                line.add(result.outcome().key());
                line.add(CsvText.number(result.severity()));
                line.add(CsvText.number(result.safeCharge()));
                line.add(result.worst().key());
                line.add(Integer.toString(result.pack().number().orElse(0)));
                line.add(CsvText.number(result.charge()));
                results[index].reported().forEach(value -> line.add(CsvText.number(value)));
                csv.writeRecord(line);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toString();
    }

    /**
     * Writes JSON: a list of cases, in calculation units.
     *
     * @param title what the vehicle is called
     * @param changes what was put in place of values of the file
     * @return JSON
     */
    public String json(String title, Changes changes) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            json.writeStartObject();
            json.writeStringField("schema", "brakewright.sweep/1");
            json.writeStringField("title", title);
            if (!changes.isNone()) {
                json.writeStringField("situation", ChangeWords.list(changes, UnitSystem.SI));
            }
            json.writeArrayFieldStart("cases");
            for (int index = 0; index < results.length; index++) {
                write(json, values.apply(index), results[index]);
            }
            json.writeEndArray();
            json.writeEndObject();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return Printable.inJson(out.append('\n').toString());
    }

    private void write(JsonGenerator json, double[] of, SweptCase swept) throws IOException {
        Evaluation result = swept.evaluation();
        json.writeRaw('\n');
        json.writeStartObject();
        for (int i = 0; i < of.length; i++) {
            json.writeNumberField(named(i), of[i]);
        }
        json.writeStringField("verdict", result.outcome().key());
        json.writeNumberField("severity", result.severity());
        json.writeNumberField("safe_charge", result.safeCharge());
        json.writeStringField("worst_check", result.worst().key());
        if (result.pack().number().isPresent()) {
            json.writeNumberField("pack", result.pack().number().getAsInt());
        }
        if (result.charge().isPresent()) {
            json.writeNumberField("charge", result.charge().getAsDouble());
        }
        for (int i = 0; i < reported.size(); i++) {
            OptionalDouble value = swept.reported().get(i);
            if (value.isPresent() && Double.isFinite(value.getAsDouble())) {
                json.writeNumberField(reported.get(i), value.getAsDouble());
            }
        }
        json.writeEndObject();
    }

    /** The key, ending in its unit. */
    private String named(int index) {
        String unit = units.get(index);
        return names.get(index)
                + (unit.equals("1") || unit.isEmpty()
                        ? ""
                        : "_" + unit.replace("m/s", "m_per_s").replace('/', '_').replace('*', '_'));
    }
}
