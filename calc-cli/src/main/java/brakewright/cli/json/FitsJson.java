package brakewright.cli.json;

import brakewright.fitting.Fit;
import brakewright.fitting.Fits;
import brakewright.fitting.WarmResistance;
import brakewright.spec.Unit;

/** Writes what a ride says of its vehicle. */
final class FitsJson {

    private final JsonText json;

    FitsJson(JsonText json) {
        this.json = json;
    }

    void write(Fits fits) {
        json.startArray("fits");
        for (Fit fit : fits.all()) {
            json.startObject();
            json.text("of", fit.what().key());
            if (fit instanceof Fit.Found found) {
                json.number("value" + unit(fit), found.value());
                json.number("doubt" + unit(fit), found.doubt());
                json.number("events", found.events());
            } else {
                json.text("refused", ((Fit.Refused) fit).reason());
            }
            json.endObject();
        }
        json.endArray();
        json.startArray("resistance_by_temperature");
        for (WarmResistance each : fits.byWarmth()) {
            json.startObject();
            json.number("from_C", each.fromC());
            json.number("to_C", each.toC());
            json.number("value_ohm", each.found().value());
            json.number("doubt_ohm", each.found().doubt());
            json.number("events", each.found().events());
            json.endObject();
        }
        json.endArray();
        json.texts(
                "for_build_file", fits.preferred().stream().map(fit -> fit.what().key()).toList());
    }

    private static String unit(Fit fit) {
        Unit unit = fit.what().unit();
        return unit == Unit.RATIO ? "" : "_" + unit.plain();
    }
}
