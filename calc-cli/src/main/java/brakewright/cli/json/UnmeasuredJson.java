package brakewright.cli.json;

import brakewright.cli.doubt.Unmeasured;
import brakewright.profile.Doubts;
import brakewright.review.Evaluation;

/** What to measure first, and what the verdict would be within usual spreads. */
final class UnmeasuredJson {

    private UnmeasuredJson() {}

    static void write(JsonText json, Unmeasured unmeasured) {
        Evaluation verdict = unmeasured.doubts().verdict();
        json.startObject("doubts");
        json.text("verdict_with_doubts", verdict.outcome().key());
        json.number("severity", verdict.severity());
        json.text("worst_check", verdict.worst().key());
        json.number("safe_charge", verdict.safeCharge());
        json.startArray("measure_first");
        unmeasured.doubts().weighed().forEach(weighed -> row(json, unmeasured, weighed));
        json.endArray();
        json.endObject();
    }

    private static void row(JsonText json, Unmeasured unmeasured, Doubts.Weighed weighed) {
        Unmeasured.Doubtful value = unmeasured.values().get(weighed.place());
        json.startObject();
        json.text("key", value.place().name());
        json.text("unit", value.place().input().unit().plain());
        json.text("known", value.kind());
        json.number("value", value.range().nominal());
        json.number("low", value.range().low());
        json.number("high", value.range().high());
        json.number("severity_at_low", weighed.atLow().severity());
        json.number("severity_at_high", weighed.atHigh().severity());
        json.number("safe_charge_at_low", weighed.atLow().safeCharge());
        json.number("safe_charge_at_high", weighed.atHigh().safeCharge());
        json.endObject();
    }
}
