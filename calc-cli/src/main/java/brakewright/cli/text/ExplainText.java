package brakewright.cli.text;

import brakewright.buildfile.BuildFile;
import brakewright.cli.words.ChangeWords;
import brakewright.cli.words.CornerWords;
import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.PlainWords;
import brakewright.cli.words.UnitSystem;
import brakewright.formula.Derivation;
import brakewright.formula.Origin;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.limit.Constraint;
import brakewright.limit.Limit;
import brakewright.limit.LimitId;
import brakewright.limit.TaperLimit;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import brakewright.worksheet.LimitSheet;
import brakewright.worksheet.PackLimitSheet;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * How one limit came about: every constraint with its formula, numbers, result and source. Steps
 * that several constraints share are told once, before them.
 */
public final class ExplainText {

    private static final String ESTIMATE =
            "An estimate from the inputs given. Steps are worked out without rounding and shown with"
                    + " four digits.";

    private final BuildFile file;
    private final Worksheet sheet;
    private final UnitSystem units;
    private final Ink ink;
    private final Page page;
    private final TermOrigin origin;

    /**
     * Prepares the explanation.
     *
     * @param file the build file
     * @param sheet its worksheet
     * @param units for speeds
     * @param ink how to put it on the page
     */
    public ExplainText(BuildFile file, Worksheet sheet, UnitSystem units, Ink ink) {
        this.file = file;
        this.sheet = sheet;
        this.units = units;
        this.ink = ink;
        this.page = new Page(ink);
        this.origin = new TermOrigin(file);
    }

    /**
     * Writes the explanation of a limit.
     *
     * @param id the limit
     * @return its lines
     */
    public String text(LimitId id) {
        page.line(ink.heading(file.title() + ": " + LimitWords.of(id)));
        if (!file.changes().isNone()) {
            page.paragraph("", 2, ChangeWords.situation(file.changes(), units));
        }
        page.blank();
        LimitSheet limits = sheet.permitted();
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
                        + value(limit.value(), limit.id().unit())
                        + (of.isEmpty() ? "" : " " + of)
                        + ", held down by "
                        + LimitWords.of(limit.binding())
                        + ".");
        constraints(limit.constraints(), List.of(limit.binding()), limit.id().unit());
        inPlainWords(plainWords().of(limit));
    }

    private PlainWords plainWords() {
        return new PlainWords(file.build(), units);
    }

    private void inPlainWords(String sentence) {
        page.blank();
        page.paragraph("In plain words:", 0, sentence);
    }

    private void pack(PackLimitSheet limit) {
        Limit fixed = limit.fixed();
        Limit there = limit.atEndOfUse();
        double bound = 100.0 * limit.holdsTo();
        page.paragraph(
                "",
                0,
                "The limit is "
                        + Numbers.down(fixed.value(), 2)
                        + " A for the pack, held down by "
                        + LimitWords.of(fixed.binding())
                        + (limit.isTaking() ? ", up to a charge of " : ", down to a charge of ")
                        + (limit.isTaking() ? Numbers.down(bound, 1) : Numbers.up(bound, 1))
                        + " %.");
        page.paragraph(
                "",
                0,
                "At "
                        + Numbers.percent(limit.endOfUse())
                        + " charge it is "
                        + Numbers.down(there.value(), 2)
                        + " A, held down by "
                        + LimitWords.of(there.binding())
                        + ". The constraints below are worked out there, cells at "
                        + Numbers.nearest(file.build().battery().temperatureC(), 0)
                        + " °C.");
        constraints(there.constraints(), List.of(there.binding()), Unit.AMPERE);
        inPlainWords(plainWords().of(limit));
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
        List<Constraint> all = new ArrayList<>(taper.ends());
        all.add(taper.band());
        constraints(all, List.of(taper.binding(), taper.band()), Unit.VOLT);
        inPlainWords(plainWords().of(taper));
    }

    private void constraints(List<Constraint> constraints, List<Constraint> binding, Unit unit) {
        page.paragraph("", 0, ESTIMATE);
        CornerWords.ofWorking(file).ifPresent(each -> page.paragraph("", 0, each));
        List<Step> shared = shared(constraints);
        if (!shared.isEmpty()) {
            page.blank();
            page.note("Worked out once, for several of the constraints below");
            shared.forEach(step -> step(step, WhichPack.WHOLE));
        }
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
                            isAmong(binding, constraint) ? "<- binds" : ""));
            constraint(constraint, shared);
        }
    }

    private void constraint(Constraint constraint, List<Step> shared) {
        page.paragraph("", 4, meaning(constraint) + ".");
        if (!constraint.conditions().isEmpty()) {
            page.paragraph("", 4, "It holds for");
            constraint
                    .conditions()
                    .forEach(term -> term(6, term, condition(term, constraint.pack())));
        }
        for (Step step : constraint.steps()) {
            if (!shared.contains(step)) {
                step(step, constraint.pack());
            }
        }
        derivation(4, constraint.derivation(), constraint.pack());
    }

    private void step(Step step, WhichPack pack) {
        Term result = step.result();
        page.line(
                String.format(
                        Locale.ROOT,
                        "    %-42s %s",
                        ink.settle(capital(result.meaning())),
                        ink.settle(result.symbol() + " = " + number(result))));
        derivation(6, step.derivation(), step.pack().or(pack));
    }

    private void derivation(int indent, Derivation derivation, WhichPack pack) {
        page.paragraph("", indent, "= " + derivation.formula());
        for (Term term : derivation.terms()) {
            term(indent, term, found(term, pack));
        }
        page.paragraph("", indent, "Formula: " + derivation.source() + ".");
    }

    private void term(int indent, Term term, String from) {
        String label =
                String.format(
                        Locale.ROOT,
                        "%s%-6s %-34s %11s  ",
                        " ".repeat(indent),
                        ink.settle(term.symbol()),
                        ink.settle(term.meaning()),
                        ink.settle(number(term)));
        if (ink.isNarrow()) {
            page.line(label + from);
        } else {
            page.paragraph(label, label.length(), from);
        }
    }

    private String found(Term term, WhichPack pack) {
        return origin.of(
                term,
                pack,
                found ->
                        switch (found) {
                            case WORKED_OUT -> "worked out above";
                            case CONSTANT -> "by definition";
                            case ASSUMED -> "assumed for all";
                            case SEARCHED -> "the limit itself";
                            case ASKED -> "as said above";
                            case MODELLED -> "computed";
                        });
    }

    private String condition(Term term, WhichPack pack) {
        return origin.of(
                term, pack, found -> found == Origin.Found.ASKED ? "as said above" : "computed");
    }

    /** The steps that more than one constraint on the whole takes, in their order. */
    private static List<Step> shared(List<Constraint> constraints) {
        Map<Step, Integer> times = new LinkedHashMap<>();
        for (Constraint constraint : constraints) {
            if (constraint.pack().isWhole()) {
                constraint.steps().forEach(step -> times.merge(step, 1, Integer::sum));
            }
        }
        return times.entrySet().stream()
                .filter(entry -> entry.getValue() > 1)
                .map(Map.Entry::getKey)
                .toList();
    }

    @SuppressWarnings("ReferenceEquality") // equal constraints may stand beside each other
    private static boolean isAmong(List<Constraint> binding, Constraint constraint) {
        return binding.stream().anyMatch(each -> each == constraint);
    }

    /**
     * Currents and speeds are limits and rounded down; a taper's voltages are shown as they are.
     */
    private String value(double limit, Unit unit) {
        if (unit == Unit.METRE_PER_SECOND) {
            return units.speedDown(limit) + " (" + Numbers.down(limit, 2) + " m/s)";
        }
        return unit.behind(unit == Unit.VOLT ? Numbers.nearest(limit, 2) : Numbers.down(limit, 2));
    }

    private static String number(Term term) {
        return term.unit().behind(Numbers.significant(term.value()));
    }

    private static String meaning(Constraint constraint) {
        String meaning = constraint.id().meaning();
        return constraint
                .pack()
                .map(number -> "Pack " + number + ": " + meaning)
                .orElse(capital(meaning));
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
