package brakewright.cli.json;

import brakewright.cli.buildfile.Changes;
import brakewright.cli.words.MeasureWords;
import brakewright.profile.Comparison;
import brakewright.profile.Profile;
import brakewright.profile.Quantity;
import brakewright.profile.Reading;
import brakewright.review.Evaluation;
import brakewright.spec.Build;
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
     * @param judged the vehicles on which the verdicts rest, in the order of the profiles
     * @param changes what was put in place of values of their files, in the same order
     * @return JSON
     */
    public static String of(
            String title, Comparison comparison, List<Build> judged, List<Changes> changes) {
        JsonText json = new JsonText();
        json.startObject();
        json.text("schema", "brakewright.comparison/1");
        json.text("title", title);
        json.startArray("profiles");
        for (int place = 0; place < judged.size(); place++) {
            Profile profile = comparison.profiles().get(place);
            Evaluation evaluation = Evaluation.of(judged.get(place));
            json.startObject();
            json.text("name", profile.name());
            json.text("verdict", evaluation.outcome().key());
            json.text("verdict_nominal", Evaluation.of(profile.build()).outcome().key());
            json.number("safe_charge", evaluation.safeCharge());
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
        json.text("unit", quantity.unit());
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
        reading.value().ifPresent(value -> json.number("value", value));
        row.difference(column).ifPresent(value -> json.number("difference", value));
        if (!reading.boundBy().isEmpty()) {
            json.text("bound_by", reading.boundBy());
        }
        reading.charge().ifPresent(charge -> json.number("charge", charge));
        if (row.isBest(column)) {
            json.text("best", "yes");
        }
        json.endObject();
    }
}
