package brakewright.cli.json;

import brakewright.buildfile.Changes;
import brakewright.cli.words.MeasureWords;
import brakewright.profile.Comparison;
import brakewright.profile.JudgedProfile;
import brakewright.profile.Quantity;
import brakewright.profile.Reading;
import brakewright.review.Evaluation;
import java.util.List;
import java.util.Locale;

/** A comparison as JSON. Every reading tells its unit; what was not computed is absent. */
public final class ComparisonJson {

    private ComparisonJson() {}

    /**
     * Writes a comparison.
     *
     * @param title what the vehicle is called
     * @param comparison the profiles
     * @param judged the profiles with their verdicts, in the same order
     * @param changes what was put in place of values of their files, in the same order
     * @return JSON
     */
    public static String of(
            String title,
            Comparison comparison,
            List<JudgedProfile> judged,
            List<Changes> changes) {
        JsonText json = new JsonText();
        json.startObject();
        json.text("schema", "brakewright.comparison/1");
        json.text("title", title);
        json.startArray("profiles");
        for (int place = 0; place < judged.size(); place++) {
            JudgedProfile profile = judged.get(place);
            Evaluation evaluation = profile.evaluation();
            json.startObject();
            json.text("name", profile.profile().name());
            json.text("verdict", evaluation.outcome().key());
            json.text("verdict_nominal", profile.nominal().outcome().key());
            json.number("safe_charge", evaluation.safeCharge());
            DecisionJson verdicts = new DecisionJson(json);
            verdicts.brake(profile.brake());
            verdicts.brake("brake_verdict_wet", profile.brakeOnWetRoad());
            ChangesJson.write(json, changes.get(place));
            json.endObject();
        }
        json.endArray();
        json.startArray("rows");
        comparison.rows().forEach(row -> row(json, row));
        json.endArray();
        json.endObject();
        return json.finish();
    }

    private static void row(JsonText json, Comparison.Row row) {
        Quantity quantity = row.measure().quantity();
        json.startObject();
        json.text("id", MeasureWords.key(row.measure()));
        row.measure().speed().ifPresent(speed -> json.number("speed_m_per_s", speed));
        json.text("unit", quantity.unit().plain());
        json.text("better", quantity.sense().name().toLowerCase(Locale.ROOT));
        json.startArray("readings");
        for (int column = 0; column < row.readings().size(); column++) {
            reading(json, row, column);
        }
        json.endArray();
        json.endObject();
    }

    private static void reading(JsonText json, Comparison.Row row, int column) {
        Reading reading = row.readings().get(column);
        json.startObject();
        if (row.measure().quantity() == Quantity.VERDICT) {
            reading.value()
                    .ifPresent(place -> json.text("word", MeasureWords.outcome(place).key()));
        }
        reading.brake().ifPresent(word -> json.text("word", word.key()));
        reading.value().ifPresent(value -> json.number("value", value));
        row.difference(column).ifPresent(value -> json.number("difference", value));
        reading.boundBy().ifPresent(held -> json.text("bound_by", held.key()));
        reading.charge().ifPresent(charge -> json.number("charge", charge));
        reading.speed().ifPresent(speed -> json.number("speed_m_per_s", speed));
        if (row.isBest(column)) {
            json.text("best", "yes");
        }
        json.endObject();
    }
}
