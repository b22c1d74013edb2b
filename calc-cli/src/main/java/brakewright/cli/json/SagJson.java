package brakewright.cli.json;

import brakewright.battery.BatteryModel;
import brakewright.operation.Sag;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.worksheet.PackRow;
import brakewright.worksheet.Worksheet;

/** Writes how far the voltage sags while a current is drawn, and what it meets. */
final class SagJson {

    private final JsonText json;
    private final Worksheet sheet;
    private final BatteryModel model;

    SagJson(JsonText json, Worksheet sheet) {
        this.json = json;
        this.sheet = sheet;
        this.model = new BatteryModel(sheet.build().battery());
    }

    void write() {
        json.startArray("sag");
        for (Sag.Case each : sheet.sag().cases()) {
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
    }

    /** With the whole draw, as if no taper held it down; beside it what the taper leaves. */
    private void voltages(Sag.Draw drawn) {
        ElectricDrive set = sheet.operation().drive();
        ElectricDrive drive =
                new ElectricDrive(
                        set.powertrain(), set.motorCurrent(), drawn.current(), set.taper());
        json.startArray("by_charge");
        for (PackRow row : sheet.pack()) {
            PackState pack = drawn.pack(model, row.charge());
            json.startObject();
            json.number("charge", row.charge());
            positive("pack_V", pack.terminalVoltage(-drawn.current()));
            positive("cell_V", drawn.lowestCellVoltage(model, row.charge()));
            double left = drive.settledPackLimit(pack);
            json.number("settled_A", left);
            positive("settled_V", pack.terminalVoltage(-left));
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
