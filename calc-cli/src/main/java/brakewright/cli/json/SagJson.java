package brakewright.cli.json;

import brakewright.operation.HardPull;
import brakewright.operation.Sag;
import brakewright.worksheet.PackRow;
import brakewright.worksheet.SagSheet;
import brakewright.worksheet.Worksheet;
import java.util.Locale;

/** Writes how far the voltage sags while a current is drawn, and what it meets. */
final class SagJson {

    private final JsonText json;
    private final Worksheet sheet;
    private final SagSheet sag;

    SagJson(JsonText json, Worksheet sheet) {
        this.json = json;
        this.sheet = sheet;
        this.sag = sheet.sag();
    }

    void write() {
        json.startArray("sag");
        for (Sag.Case each : sag.cases()) {
            Sag.Draw drawn = each.draw();
            json.startObject();
            json.number("draw_A", drawn.current());
            json.text("draw", drawn.isSet() ? "set" : "recommended");
            json.number("cells_C", drawn.cellsC());
            json.text("lasts", Double.isFinite(drawn.seconds()) ? "pulse" : "endless");
            json.number("pulse_s", drawn.seconds());
            voltages(drawn);
            meetings(each);
            json.endObject();
        }
        json.endArray();
        pulls();
    }

    /** What opens soonest in a hard pull, for each cell temperature at which something does. */
    private void pulls() {
        json.startArray("hard_pull");
        for (HardPull.Opened opened : sheet.hardPulls()) {
            json.startObject();
            json.number("lasts_s", sheet.build().use().effort().hardPull());
            json.number("cells_C", opened.cellsC());
            json.number("charge", opened.charge());
            json.text("opens", opened.opening().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            if (!sheet.build().battery().isOnePack()) {
                json.number("pack", opened.place() + 1);
            }
            json.number("pack_current_A", opened.current());
            json.number("passed_after_s", opened.passedAfter());
            json.number(opened.isDelayTypical() ? "delay_typical_s" : "delay_s", opened.delay());
            json.number("opens_after_s", opened.after());
            json.endObject();
        }
        json.endArray();
    }

    /** With the whole draw, as if no taper held it down; beside it what the taper leaves. */
    private void voltages(Sag.Draw drawn) {
        json.startArray("by_charge");
        for (PackRow row : sheet.pack()) {
            SagSheet.Loaded loaded = sag.loaded(drawn, row.charge());
            SagSheet.Faded faded = sag.faded(drawn, row.charge());
            json.startObject();
            json.number("charge", row.charge());
            positive("pack_V", loaded.pack());
            positive("cell_V", loaded.cell());
            json.number("settled_A", faded.current());
            positive("settled_V", faded.pack());
            json.endObject();
        }
        json.endArray();
    }

    private void positive(String name, double voltage) {
        if (voltage > 0.0) {
            json.number(name, voltage);
        }
    }

    private void meetings(Sag.Case each) {
        json.startArray("meetings");
        each.charges()
                .forEach(
                        (event, charge) -> {
                            json.startObject();
                            json.text("event", event.key());
                            json.number("charge", charge);
                            json.endObject();
                        });
        json.endArray();
        each.first().ifPresent(first -> json.text("meets_first", first.event().key()));
    }
}
