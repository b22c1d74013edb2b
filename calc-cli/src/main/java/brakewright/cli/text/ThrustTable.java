package brakewright.cli.text;

import brakewright.battery.BatteryModel;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.powertrain.DriveState;
import brakewright.powertrain.PackState;
import brakewright.powertrain.TopSpeed;
import brakewright.road.RoadLoad;
import brakewright.worksheet.DriveSheet;
import brakewright.worksheet.Worksheet;
import java.util.Locale;

/** The thrust over speed and charge, as a small map. */
final class ThrustTable {

    private static final int COLUMNS = 8;

    private final Worksheet sheet;
    private final UnitSystem units;
    private final Page page;

    ThrustTable(Worksheet sheet, UnitSystem units, Page page) {
        this.sheet = sheet;
        this.units = units;
        this.page = page;
    }

    void print() {
        page.line("  thrust of all driven wheels [N] and what rules there");
        double top = Math.max(sheet.drive().topSpeedFlat().speed(), sheet.operation().topSpeed());
        double[] speeds = ShownSpeeds.upTo(units, top, COLUMNS);
        page.line(row("charge", speeds, speed -> ShownSpeeds.head(units, speed, top) + " "));
        BatteryModel model = new BatteryModel(sheet.build().battery());
        for (DriveSheet each : sheet.driveByCharge()) {
            PackState pack =
                    PackState.of(model, each.charge(), sheet.build().battery().temperatureC());
            page.line(
                    row(
                            Numbers.percent(each.charge()),
                            speeds,
                            speed -> pulled(sheet.operation().drive().at(speed, pack))));
        }
        RoadLoad load = RoadLoad.of(sheet.build());
        page.line(
                row(
                        "road takes",
                        speeds,
                        speed -> Numbers.nearest(load.force(speed, 0.0, 0.0), 0) + " "));
        page.line("  m  motor current     p  pack current, taper included     v  pack voltage");
    }

    /** What stands in a column. */
    private interface Entry {
        String at(double speed);
    }

    private String row(String label, double[] speeds, Entry entry) {
        StringBuilder row = new StringBuilder(String.format(Locale.ROOT, "  %10s |", label));
        row.append(String.format(Locale.ROOT, "%8s", entry.at(0.0)));
        for (double speed : speeds) {
            row.append(String.format(Locale.ROOT, "%8s", entry.at(speed)));
        }
        return label.equals("charge") ? row + " " + units.speedUnit() : row.toString();
    }

    private static String pulled(DriveState pull) {
        return Numbers.nearest(pull.thrust(), 0) + letter(pull.holder());
    }

    private static String letter(TopSpeed.Holder holder) {
        return switch (holder) {
            case MOTOR_CURRENT -> "m";
            case PACK_CURRENT -> "p";
            case VOLTAGE -> "v";
            case STANDSTILL -> " ";
        };
    }
}
