package brakewright.cli.json;

import brakewright.buildfile.Changes;
import brakewright.profile.FrontierRow;
import brakewright.profile.SolveSheet;
import brakewright.review.Finding;
import brakewright.spec.Unit;
import java.util.List;

/** The answer to a question for a value, as JSON. */
public final class SolveJson {

    private SolveJson() {}

    /**
     * Writes an answer.
     *
     * @param title what the vehicle is called
     * @param name the key that was asked for
     * @param unit of its value
     * @param changes what was put in place of values of the file
     * @param sheet what was asked about, and the answer
     * @return JSON
     */
    public static String of(
            String title, String name, Unit unit, Changes changes, SolveSheet sheet) {
        JsonText json = begun(title, name, unit, changes);
        json.number("now", sheet.present());
        json.number("asked_from", sheet.low());
        json.number("asked_to", sheet.high());
        SolutionJson solution = new SolutionJson(json, "value");
        solution.write("nominal", sheet.answer().nominal());
        solution.unfavourable(sheet.answer());
        if (!sheet.beside().isEmpty()) {
            json.startArray("beside");
            sheet.beside().forEach(finding -> exceeded(json, finding));
            json.endArray();
        }
        json.endObject();
        return json.finish();
    }

    private static void exceeded(JsonText json, Finding finding) {
        json.startObject();
        json.text("setting", finding.subject().orElseThrow().key());
        json.text("bound_by", finding.constraint().orElseThrow().key());
        json.pack(finding.pack());
        json.number("value", finding.value());
        json.number("limit", finding.limit());
        json.endObject();
    }

    /**
     * Writes a frontier.
     *
     * @param title what the vehicle is called
     * @param name the key that was asked for
     * @param unit of its value
     * @param changes what was put in place of values of the file
     * @param other the key that is held
     * @param otherUnit of its value
     * @param rows the answers
     * @return JSON
     */
    public static String frontier(
            String title,
            String name,
            Unit unit,
            Changes changes,
            String other,
            Unit otherUnit,
            List<FrontierRow> rows) {
        JsonText json = begun(title, name, unit, changes);
        json.text("against", other);
        json.text("against_unit", otherUnit.plain());
        json.startArray("frontier");
        SolutionJson solution = new SolutionJson(json, "value");
        for (FrontierRow row : rows) {
            json.startObject();
            json.number("held", row.fixed());
            solution.write(row.answer().nominal());
            solution.unfavourable(row.answer());
            json.endObject();
        }
        json.endArray();
        json.endObject();
        return json.finish();
    }

    private static JsonText begun(String title, String name, Unit unit, Changes changes) {
        JsonText json = new JsonText();
        json.startObject();
        json.text("schema", "brakewright.solution/1");
        json.text("title", title);
        json.text("for", name);
        json.text("unit", unit.plain());
        ChangesJson.write(json, changes);
        return json;
    }
}
