package brakewright.cli.json;

import brakewright.fitting.Fit;
import brakewright.fitting.Fits;
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
    }

    private static String unit(Fit fit) {
        Unit unit = fit.what().unit();
        return unit == Unit.RATIO ? "" : "_" + unit.plain();
    }
}
