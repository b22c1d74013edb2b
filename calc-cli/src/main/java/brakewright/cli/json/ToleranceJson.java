package brakewright.cli.json;

import brakewright.cli.doubt.Tolerated;
import brakewright.cli.words.MeasureWords;
import brakewright.profile.Tolerances;
import brakewright.review.Evaluation;
import brakewright.review.Verdict;

/** What the tolerances of a build file do, as JSON. */
final class ToleranceJson {

    private ToleranceJson() {}

    static void write(JsonText json, Verdict nominal, Tolerated tolerated) {
        Tolerances tolerances = tolerated.tolerances();
        json.startObject("tolerances");
        json.text("verdict_nominal", nominal.outcome().key());
        json.text("verdict_best", tolerances.best().evaluation().outcome().key());
        corner(json, "worst", tolerated, tolerances.worst());
        corner(json, "best", tolerated, tolerances.best());
        json.startArray("results");
        tolerances.spreads().forEach(spread -> result(json, spread));
        json.endArray();
        json.startArray("inputs");
        for (int i = 0; i < tolerated.places().size(); i++) {
            input(json, tolerated, i);
        }
        json.endArray();
        tolerated
                .distribution()
                .ifPresent(
                        cases -> {
                            json.startObject("cases");
                            json.number("points", cases.points());
                            json.number("seed", cases.seed());
                            json.number("within", cases.within());
                            json.number("conditional", cases.conditional());
                            json.number("outside", cases.outside());
                            json.endObject();
                        });
        json.endObject();
    }

    private static void corner(
            JsonText json, String name, Tolerated tolerated, Tolerances.Corner corner) {
        Evaluation evaluation = corner.evaluation();
        json.startObject(name);
        json.number("severity", evaluation.severity());
        json.text("worst_check", evaluation.worst().key());
        json.number("safe_charge", evaluation.safeCharge());
        json.startArray("values");
        for (int i = 0; i < tolerated.places().size(); i++) {
            json.startObject();
            json.text("key", tolerated.places().get(i).name());
            json.number("value", corner.values().get(i));
            json.text("unit", tolerated.places().get(i).input().unit().plain());
            json.endObject();
        }
        json.endArray();
        json.endObject();
    }

    private static void result(JsonText json, Tolerances.Spread spread) {
        json.startObject();
        json.text("id", MeasureWords.key(spread.measure()));
        spread.measure().speed().ifPresent(speed -> json.number("speed_m_per_s", speed));
        json.text("unit", spread.measure().quantity().unit().plain());
        spread.nominal().ifPresent(value -> json.number("nominal", value));
        spread.worst().ifPresent(value -> json.number("worst", value));
        spread.best().ifPresent(value -> json.number("best", value));
        json.endObject();
    }

    /** In the order of the file; each influence is found by its range. */
    private static void input(JsonText json, Tolerated tolerated, int index) {
        Tolerances tolerances = tolerated.tolerances();
        json.startObject();
        json.text("key", tolerated.places().get(index).name());
        json.text("unit", tolerated.places().get(index).input().unit().plain());
        json.number("nominal", tolerances.inputs().get(index).nominal());
        json.number("low", tolerances.inputs().get(index).low());
        json.number("high", tolerances.inputs().get(index).high());
        tolerances.influences().stream()
                .filter(each -> each.input() == tolerances.inputs().get(index))
                .findFirst()
                .ifPresent(
                        influence -> {
                            json.number("severity_at_low", influence.severityAtLow());
                            json.number("severity_at_high", influence.severityAtHigh());
                            json.number("safe_charge_at_low", influence.safeChargeAtLow());
                            json.number("safe_charge_at_high", influence.safeChargeAtHigh());
                            json.text("decides", influence.decides() ? "yes" : "no");
                        });
        json.endObject();
    }
}
