package brakewright.cli.json;

import brakewright.battery.BatteryModel;
import brakewright.battery.PackModel;
import brakewright.powertrain.ElectricDrive;
import brakewright.powertrain.PackState;
import brakewright.review.Sag;
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
        Sag sag = sheet.sag();
        json.startArray("sag");
        for (Sag.Case drawn : sag.cases()) {
            json.startObject();
            json.number("draw_A", drawn.draw());
            json.text("draw", drawn.isSet() ? "set" : "recommended");
            json.number("cells_C", drawn.cellsC());
            json.text("lasts", Double.isFinite(drawn.seconds()) ? "pulse" : "endless");
            json.number("pulse_s", drawn.seconds());
            voltages(drawn);
            meetings(sag, drawn);
            json.endObject();
        }
        json.endArray();
    }

    /** With the whole draw, as if no taper held it down; beside it what the taper leaves. */
    private void voltages(Sag.Case drawn) {
        ElectricDrive set = sheet.operation().drive();
        ElectricDrive drive =
                new ElectricDrive(set.powertrain(), set.motorCurrent(), drawn.draw(), set.taper());
        json.startArray("by_charge");
        for (PackRow row : sheet.pack()) {
            PackState pack = PackState.of(model, row.charge(), drawn.cellsC(), drawn.seconds());
            json.startObject();
            json.number("charge", row.charge());
            positive("pack_V", pack.terminalVoltage(-drawn.draw()));
            positive("cell_V", lowestCell(drawn, row.charge()));
            double left = drive.settledPackLimit(pack);
            json.number("settled_A", left);
            positive("settled_V", pack.terminalVoltage(-left));
            json.endObject();
        }
        json.endArray();
    }

    /** The average cell, joints left out, of the pack where it is lowest. */
    private double lowestCell(Sag.Case drawn, double charge) {
        double lowest = Double.POSITIVE_INFINITY;
        for (int place = 0; place < model.packs().size(); place++) {
            PackModel pack = model.packs().get(place);
            double own = model.chargeOf(place, charge);
            double current = drawn.draw() * model.share(place, charge, drawn.cellsC());
            double lost =
                    current
                            / pack.pack().parallel()
                            * pack.cellResistance(own, drawn.cellsC(), drawn.seconds());
            lowest = Math.min(lowest, pack.cellOpenCircuitVoltage(own) - lost);
        }
        return lowest;
    }

    private void positive(String name, double voltage) {
        if (voltage > 0.0) {
            json.number(name, voltage);
        }
    }

    private void meetings(Sag sag, Sag.Case drawn) {
        json.startArray("meetings");
        for (Sag.Meeting meeting : sag.meetings()) {
            if (meeting.drawn().equals(drawn)) {
                json.startObject();
                json.text("event", meeting.event().key());
                json.number("charge", meeting.charge());
                json.endObject();
            }
        }
        json.endArray();
        sag.first(drawn).ifPresent(first -> json.text("meets_first", first.event().key()));
    }
}
