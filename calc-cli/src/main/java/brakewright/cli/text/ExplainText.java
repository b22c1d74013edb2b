package brakewright.cli.text;

import brakewright.cli.buildfile.BuildFile;
import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.limit.Constraint;
import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.limit.Limits;
import brakewright.limit.PackLimit;
import brakewright.limit.TaperLimit;
import brakewright.limit.Term;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Locale;

/** How one limit came about: every constraint with its formula, numbers, result and source. */
public final class ExplainText {

    private final BuildFile file;
    private final Worksheet sheet;
    private final Ink ink;
    private final Page page;
    private final TermOrigin origin;

    /**
     * Prepares the explanation.
     *
     * @param file the build file
     * @param sheet its worksheet
     * @param ink how to put it on the page
     */
    public ExplainText(BuildFile file, Worksheet sheet, Ink ink) {
        this.file = file;
        this.sheet = sheet;
        this.ink = ink;
        this.page = new Page(ink);
        this.origin = new TermOrigin(file);
    }

    /**
     * Writes the explanation of a limit.
     *
     * @param id the limit
     * @return lines of at most 100 columns
     */
    public String text(LimitId id) {
        page.line(ink.heading(file.title() + ": " + LimitWords.of(id)));
        page.blank();
        Limits limits = sheet.limits();
        switch (id) {
            case MOTOR_DRIVE_CURRENT -> plain(limits.motorDrive(), "per motor");
            case MOTOR_BRAKE_CURRENT -> plain(limits.motorBrake(), "per motor");
            case SPEED_CAP -> plain(limits.speedCap(), "");
            case PACK_DISCHARGE_CURRENT -> pack(limits.packDischarge());
            case PACK_REGEN_CURRENT -> pack(limits.packRegen());
            case LOW_VOLTAGE_TAPER -> taper(limits.lowVoltageTaper());
            case HIGH_VOLTAGE_TAPER -> taper(limits.highVoltageTaper());
        }
        return page.text();
    }

    private void plain(Limit limit, String of) {
        page.line(
                "The limit is "
                        + Numbers.down(limit.value(), 2)
                        + " "
                        + limit.id().unit()
                        + (of.isEmpty() ? "" : " " + of)
                        + ", held down by "
                        + LimitWords.of(limit.binding())
                        + ".");
        constraints(limit.constraints(), limit.binding(), limit.id().unit());
    }

    private void pack(PackLimit packLimit) {
        double temperature = file.build().battery().temperatureC();
        boolean taking = packLimit.id() == LimitId.PACK_REGEN_CURRENT;
        Limit fixed = packLimit.staticPart(temperature);
        double bound = packLimit.chargeBound(fixed.value(), temperature);
        double worst = taking ? file.build().use().chargeFrom() : file.build().use().chargeTo();
        Limit there = packLimit.at(worst, temperature);
        page.paragraph(
                "",
                0,
                "The limit is "
                        + Numbers.down(fixed.value(), 2)
                        + " A for the pack, held down by "
                        + LimitWords.of(fixed.binding())
                        + (taking ? ", up to a charge of " : ", down to a charge of ")
                        + (taking ? Numbers.down(100.0 * bound, 1) : Numbers.up(100.0 * bound, 1))
                        + " %.");
        page.paragraph(
                "",
                0,
                "At "
                        + Numbers.percent(worst)
                        + " charge it is "
                        + Numbers.down(there.value(), 2)
                        + " A, held down by "
                        + LimitWords.of(there.binding())
                        + ". The constraints below are worked out there, cells at "
                        + Numbers.nearest(temperature, 0)
                        + " °C.");
        constraints(there.constraints(), there.binding(), "A");
    }

    private void taper(TaperLimit taper) {
        page.paragraph(
                "",
                0,
                taper.value()
                                .map(
                                        value ->
                                                "The taper runs from "
                                                        + Numbers.nearest(value.begins(), 2)
                                                        + " to "
                                                        + Numbers.nearest(value.ends(), 2)
                                                        + " V.")
                                .orElse("There is no current that a taper could fade.")
                        + " Its end is held by "
                        + LimitWords.of(taper.binding())
                        + ", its width by the loop gain.");
        constraints(taper.ends(), taper.binding(), "V");
        constraints(List.of(taper.band()), taper.band(), "V");
    }

    private void constraints(List<Constraint> constraints, Constraint binding, String unit) {
        for (Constraint constraint : constraints) {
            page.blank();
            page.line(
                    String.format(
                            Locale.ROOT,
                            "  %-32s %14s   %s",
                            constraint.id().key(),
                            Double.isInfinite(constraint.limit())
                                    ? "no bound"
                                    : value(constraint.limit(), unit),
                            constraint == binding ? "<- binds" : ""));
            page.paragraph("", 4, meaning(constraint) + ".");
            page.paragraph("", 4, "= " + constraint.derivation().formula());
            for (Term term : constraint.derivation().terms()) {
                page.line(
                        String.format(
                                Locale.ROOT,
                                "    %-8s %-34s %11s  %s",
                                term.symbol(),
                                term.meaning(),
                                number(term),
                                origin.of(term, constraint.pack())));
            }
            page.paragraph("    ", 4, "Formula: " + constraint.derivation().source() + ".");
        }
    }

    /**
     * Currents and speeds are limits and rounded down; a taper's voltages are shown as they are.
     */
    private static String value(double limit, String unit) {
        return (unit.equals("V") ? Numbers.nearest(limit, 2) : Numbers.down(limit, 2)) + " " + unit;
    }

    private static String number(Term term) {
        return Double.isInfinite(term.value())
                ? "no bound"
                : Numbers.significant(term.value())
                        + (term.unit().isEmpty() ? "" : " " + term.unit());
    }

    private static String meaning(Constraint constraint) {
        String meaning = constraint.id().meaning();
        return constraint.pack() > 0
                ? "Pack " + constraint.pack() + ": " + meaning
                : capital(meaning);
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
