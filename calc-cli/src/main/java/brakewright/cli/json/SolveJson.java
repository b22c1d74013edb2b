package brakewright.cli.json;

import brakewright.cli.buildfile.Changes;
import brakewright.cli.text.SolveText;
import brakewright.profile.Solution;
import brakewright.review.Evaluation;
import brakewright.review.Finding;
import java.util.List;
import java.util.Optional;

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
     * @param asked what was asked about
     * @param nominal the answer with nominal inputs
     * @param unfavourable the answer at the unfavourable corner; empty without tolerances
     * @param beside what other settings exceed
     * @return JSON
     */
    public static String of(
            String title,
            String name,
            String unit,
            Changes changes,
            SolveText.Asked asked,
            Solution nominal,
            Optional<Solution> unfavourable,
            List<Finding> beside) {
        JsonText json = begun(title, name, unit, changes);
        asked.present().ifPresent(now -> json.number("now", now));
        json.number("asked_from", asked.low());
        json.number("asked_to", asked.high());
        json.startObject("nominal");
        solution(json, nominal);
        json.endObject();
        unfavourable.ifPresent(
                solution -> {
                    json.startObject("unfavourable");
                    solution(json, solution);
                    json.endObject();
                });
        if (!beside.isEmpty()) {
            json.startArray("beside");
            beside.forEach(finding -> exceeded(json, finding));
            json.endArray();
        }
        json.endObject();
        return json.finish();
    }

    private static void exceeded(JsonText json, Finding finding) {
        json.startObject();
        json.text("setting", finding.subject().orElseThrow().key());
        json.text("bound_by", finding.constraint().orElseThrow().key());
        if (finding.pack() > 0) {
            json.number("pack", finding.pack());
        }
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
            String unit,
            Changes changes,
            String other,
            String otherUnit,
            List<SolveText.Row> rows) {
        JsonText json = begun(title, name, unit, changes);
        json.text("against", other);
        json.text("against_unit", otherUnit);
        json.startArray("frontier");
        for (SolveText.Row row : rows) {
            json.startObject();
            json.number("held", row.fixed());
            solution(json, row.nominal());
            row.unfavourable()
                    .ifPresent(
                            solution -> {
                                json.startObject("unfavourable");
                                solution(json, solution);
                                json.endObject();
                            });
            json.endObject();
        }
        json.endArray();
        json.endObject();
        return json.finish();
    }

    private static JsonText begun(String title, String name, String unit, Changes changes) {
        JsonText json = new JsonText();
        json.startObject();
        json.text("schema", "brakewright.solution/1");
        json.text("title", title);
        json.text("for", name);
        json.text("unit", unit);
        ChangesJson.write(json, changes);
        return json;
    }

    private static void solution(JsonText json, Solution solution) {
        if (solution instanceof Solution.Found found) {
            json.text("answer", "found");
            json.number("value", found.value());
            check(json, found.beyond());
        } else if (solution instanceof Solution.All all) {
            json.text("answer", "all");
            json.number("value", all.value());
            check(json, all.there());
        } else if (solution instanceof Solution.None none) {
            json.text("answer", "none");
            check(json, none.there());
        }
    }

    private static void check(JsonText json, Evaluation evaluation) {
        json.text("bound_by", evaluation.worst().key());
        if (evaluation.pack() > 0) {
            json.number("pack", evaluation.pack());
        }
        evaluation.charge().ifPresent(charge -> json.number("charge", charge));
    }
}
