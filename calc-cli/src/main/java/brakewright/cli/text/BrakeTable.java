package brakewright.cli.text;

import brakewright.battery.BatteryModel;
import brakewright.braking.Deceleration;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.limit.Severity;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.worksheet.Worksheet;
import java.util.Locale;

/** The brake over speed and charge, as a small map. */
final class BrakeTable {

    private static final int COLUMNS = 7;
    private static final double[] CHARGES = {0.95, 0.9, 0.8, 0.7, 0.5, 0.3, 0.1};

    private final Worksheet sheet;
    private final UnitSystem units;
    private final Page page;
    private final ElectricBrake brake;
    private final BatteryModel model;
    private final double top;
    private final double[] speeds;

    BrakeTable(Worksheet sheet, UnitSystem units, Page page) {
        this.sheet = sheet;
        this.units = units;
        this.page = page;
        this.brake = sheet.operation().trusted(sheet.limits()).brake();
        this.model = new BatteryModel(sheet.build().battery());
        this.top = sheet.operation().topSpeed();
        this.speeds = ShownSpeeds.upTo(units, top, COLUMNS);
    }

    void print(Ink ink) {
        page.line(ink.heading("The brake over speed and charge"));
        page.line(
                "  current into the pack [A] at "
                        + Numbers.nearest(brake.motorCurrent(), 1)
                        + " A per motor and at most "
                        + Numbers.nearest(brake.packCurrent(), 1)
                        + " A into the pack");
        if (brake.taper().isPresent()) {
            page.line("  (the high-voltage taper, which holds back more near its end, included)");
        } else if (sheet.operation().brake().taper().isPresent()) {
            page.line("  (the high-voltage taper, too narrow to hold, is left out)");
        }
        if (brake.endsBelow() > 0.0) {
            page.line(
                    "  (below "
                            + units.speedText(brake.endsBelow())
                            + " the controllers do not brake)");
        }
        StringBuilder head =
                new StringBuilder(String.format(Locale.ROOT, "  %6s %9s  |", "charge", "may take"));
        for (double speed : speeds) {
            head.append(String.format(Locale.ROOT, "%8s", ShownSpeeds.head(units, speed, top)));
        }
        page.line(head + "  " + units.speedUnit());
        for (double charge : ShownCharges.with(sheet.build().use(), CHARGES)) {
            page.line(row(charge));
        }
        page.line(deceleration());
        page.line("  !  more than the pack may take     ~  held back by pack limit or taper");
        page.line(
                "  -  drawn from the pack             decel.: electric brake and road, all in m/s2");
    }

    private String row(double charge) {
        double temperature = sheet.build().battery().temperatureC();
        PackState state = PackState.of(model, charge, temperature);
        ElectricBrake settled = brake.settled(state);
        double mayTake = sheet.limits().packRegen().valueAt(charge, temperature);
        StringBuilder row =
                new StringBuilder(
                        String.format(
                                Locale.ROOT,
                                "  %6s %9s  |",
                                Numbers.percent(charge),
                                Numbers.down(mayTake, 1) + " A"));
        for (double speed : speeds) {
            double current = settled.packCurrent(speed, state);
            String mark =
                    Severity.isExceeded(current, mayTake)
                            ? "!"
                            : settled.motorCurrent(speed, state) < brake.motorCurrentAt(speed)
                                    ? "~"
                                    : " ";
            row.append(String.format(Locale.ROOT, "%7s%s", Numbers.nearest(current, 1), mark));
        }
        return row.toString();
    }

    private String deceleration() {
        Build build = sheet.build();
        double charge = build.use().chargeFrom();
        PackState state = PackState.of(model, charge, build.battery().temperatureC());
        ElectricBrake settled = brake.settled(state);
        StringBuilder row =
                new StringBuilder(
                        String.format(
                                Locale.ROOT, "  %-17s|", "decel. at " + Numbers.percent(charge)));
        for (double speed : speeds) {
            double slowing = Deceleration.electric(build, settled, speed, state);
            row.append(String.format(Locale.ROOT, "%7s ", Numbers.nearest(slowing, 2)));
        }
        return row.toString();
    }
}
