package brakewright.cli.text;

import brakewright.battery.BatteryModel;
import brakewright.braking.Deceleration;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.limit.Severity;
import brakewright.powertrain.ElectricBrake;
import brakewright.powertrain.PackState;
import brakewright.spec.Build;
import brakewright.worksheet.CheckSheet;
import brakewright.worksheet.Worksheet;
import java.util.Locale;

/** The present and the proposed brake over speed and charge, one line under the other. */
final class CheckMap {

    private static final int COLUMNS = 6;

    private final CheckSheet check;
    private final UnitSystem units;
    private final Page page;
    private final Build build;
    private final BatteryModel pack;
    private final double top;
    private final double[] speeds;

    CheckMap(CheckSheet check, UnitSystem units, Page page) {
        this.check = check;
        this.units = units;
        this.page = page;
        this.build = check.proposed().build();
        this.pack = new BatteryModel(build.battery());
        this.top = check.proposed().operation().topSpeed();
        this.speeds = ShownSpeeds.upTo(units, top, COLUMNS);
    }

    void printCurrents(Ink ink, double[] charges) {
        page.line(ink.heading("Current into the pack over speed and charge"));
        page.line(
                "  asked: with no pack limit; sent: after it, the high-voltage taper included;"
                        + " braking in full [A]");
        heading("may take");
        for (double charge : charges) {
            PackState state = PackState.of(pack, charge, build.battery().temperatureC());
            double may =
                    check.proposed()
                            .limits()
                            .packRegen()
                            .valueAt(charge, build.battery().temperatureC());
            String at = Numbers.percent(charge);
            currents(at, "present asked", settled(check.present(), state), state, may, true);
            currents("", "present sent", settled(check.present(), state), state, may, false);
            currents("", "proposed asked", settled(check.proposed(), state), state, may, true);
            currents("", "proposed sent", settled(check.proposed(), state), state, may, false);
        }
        narrow(check.present(), "set at present");
        narrow(check.proposed(), "proposed");
        page.line("  !  sent, and more than the pack may take     -  drawn from the pack");
    }

    /** A taper too narrow to hold is taken as the worse of what it may do. */
    private void narrow(Worksheet sheet, String whose) {
        if (sheet.operation().brake().taper().isPresent()
                && sheet.operation().trusted(sheet.limits()).brake().taper().isEmpty()) {
            page.paragraph(
                    "",
                    2,
                    "The high-voltage taper "
                            + whose
                            + " is too narrow to hold: currents are told without it, forces and"
                            + " stopping distances with it, each the worse for its purpose.");
        }
    }

    void printForces(Ink ink) {
        double charge = build.use().chargeFrom();
        PackState state = PackState.of(pack, charge, build.battery().temperatureC());
        page.line(
                ink.heading("Electric brake over speed at " + Numbers.percent(charge) + " charge"));
        heading("");
        forces("present", check.present().operation().brake().settled(state), state);
        forces("proposed", check.proposed().operation().brake().settled(state), state);
    }

    /** As it is judged: a taper too narrow to hold is not counted. */
    private static ElectricBrake settled(Worksheet sheet, PackState state) {
        return sheet.operation().trusted(sheet.limits()).brake().settled(state);
    }

    private void heading(String bound) {
        StringBuilder head = new StringBuilder(row("", units.speedUnit(), bound));
        for (double speed : speeds) {
            head.append(String.format(Locale.ROOT, "%8s ", ShownSpeeds.head(units, speed, top)));
        }
        page.line(head.toString());
    }

    private void currents(
            String charge,
            String name,
            ElectricBrake brake,
            PackState state,
            double may,
            boolean asked) {
        StringBuilder line =
                new StringBuilder(
                        row(charge, name, charge.isEmpty() ? "" : Numbers.down(may, 1) + " A"));
        for (double speed : speeds) {
            double current =
                    asked ? brake.askedPackCurrent(speed, state) : brake.packCurrent(speed, state);
            line.append(
                    String.format(
                            Locale.ROOT,
                            "%8s%s",
                            Numbers.nearest(current, 1),
                            !asked && Severity.isExceeded(current, may) ? "!" : " "));
        }
        page.line(line.toString());
    }

    private void forces(String name, ElectricBrake brake, PackState state) {
        StringBuilder force = new StringBuilder(row("", name + ", wheel force [N]", ""));
        StringBuilder slowing = new StringBuilder(row("", name + ", with road [m/s²]", ""));
        for (double speed : speeds) {
            double newtons = brake.powertrain().brakeForce(brake.motorCurrent(speed, state), speed);
            force.append(String.format(Locale.ROOT, "%8s ", Numbers.nearest(newtons, 0)));
            slowing.append(
                    String.format(
                            Locale.ROOT,
                            "%8s ",
                            Numbers.nearest(Deceleration.electric(build, brake, speed, state), 2)));
        }
        page.line(force.toString());
        page.line(slowing.toString());
    }

    private static String row(String charge, String name, String bound) {
        return charge.isEmpty() && bound.isEmpty()
                ? String.format(Locale.ROOT, "  %-34s", name.isEmpty() ? "" : "        " + name)
                : String.format(Locale.ROOT, "  %6s  %-16s %8s ", charge, name, bound);
    }
}
