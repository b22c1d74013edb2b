package brakewright.cli.text;

import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.spec.Build;
import brakewright.worksheet.Both;
import brakewright.worksheet.BrakeForce;
import brakewright.worksheet.BrakeRow;
import brakewright.worksheet.CheckSheet;
import brakewright.worksheet.CheckedCurrents;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The present and the proposed brake over speed and charge, one line under the other. */
final class CheckMap {

    private static final int COLUMNS = 6;

    private final CheckSheet check;
    private final UnitSystem units;
    private final Page page;
    private final Build build;
    private final double top;
    private final double[] speeds;

    CheckMap(CheckSheet check, UnitSystem units, Page page) {
        this.check = check;
        this.units = units;
        this.page = page;
        this.build = check.proposed().build();
        this.top = check.proposed().inEffect().topSpeed();
        this.speeds = ShownSpeeds.upTo(units, top, COLUMNS);
    }

    void printCurrents(Ink ink, double[] charges) {
        page.line(ink.heading("Current into the pack over speed and charge"));
        page.note(
                "asked: with no pack limit; sent: after it, the high-voltage taper included;"
                        + " braking in full [A]");
        page.line(heading("may take"));
        for (CheckedCurrents at : check.currents(charges, speeds)) {
            BrakeRow present = at.sent().present();
            BrakeRow proposed = at.sent().proposed();
            String charge = Numbers.percent(present.charge());
            String may = Numbers.down(present.mayTake(), 1) + " A";
            page.line(row(charge, "present asked", may) + cells(at.asked().present(), 1));
            page.line(row("", "present sent", "") + sent(present));
            page.line(row("", "proposed asked", "") + cells(at.asked().proposed(), 1));
            page.line(row("", "proposed sent", "") + sent(proposed));
        }
        narrow(check.present(), "set at present");
        narrow(check.proposed(), "proposed");
        page.legend("!  sent, and more than the pack may take     -  drawn from the pack");
    }

    /** A taper too narrow to hold is taken as the worse of what it may do. */
    private void narrow(Worksheet sheet, String whose) {
        if (sheet.inEffect().isHighVoltageTaperLeftOut()) {
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
        page.line(
                ink.heading("Electric brake over speed at " + Numbers.percent(charge) + " charge"));
        List<String> heads = new ArrayList<>(List.of("speed [" + units.speedUnit() + "]"));
        for (double speed : speeds) {
            heads.add(ShownSpeeds.head(units, speed, top));
        }
        page.row(heading(""), heads);
        Both<BrakeForce> forces = check.forces(speeds);
        forces("present", forces.present());
        forces("proposed", forces.proposed());
    }

    private String heading(String bound) {
        StringBuilder head = new StringBuilder(row("", units.speedUnit(), bound));
        for (double speed : speeds) {
            head.append(String.format(Locale.ROOT, "%8s ", ShownSpeeds.head(units, speed, top)));
        }
        return head.toString();
    }

    private static String sent(BrakeRow row) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < row.current().length; i++) {
            line.append(
                    String.format(
                            Locale.ROOT,
                            "%8s%s",
                            told(row.current()[i], 1),
                            row.isExceeded()[i] ? "!" : " "));
        }
        return line.toString();
    }

    private static String cells(double[] values, int digits) {
        StringBuilder line = new StringBuilder();
        for (double value : values) {
            line.append(String.format(Locale.ROOT, "%8s ", told(value, digits)));
        }
        return line.toString();
    }

    /** A brake that takes power from the pack may want more of it than there is. */
    private static String told(double value, int digits) {
        return Double.isInfinite(value) ? "too much" : Numbers.nearest(value, digits);
    }

    private void forces(String name, BrakeForce brake) {
        force(name + ", wheel force [N]", brake.wheelForce(), 0);
        force(name + ", with road [m/s²]", brake.deceleration(), 2);
    }

    private void force(String label, double[] values, int digits) {
        List<String> told = new ArrayList<>(List.of(label));
        for (double value : values) {
            told.add(told(value, digits));
        }
        page.row(row("", label, "") + cells(values, digits), told);
    }

    private static String row(String charge, String name, String bound) {
        return charge.isEmpty() && bound.isEmpty()
                ? String.format(Locale.ROOT, "  %-34s", name.isEmpty() ? "" : "        " + name)
                : String.format(Locale.ROOT, "  %6s  %-16s %8s ", charge, name, bound);
    }
}
