package brakewright.cli.text;

import brakewright.buildfile.BuildFile;
import brakewright.cli.words.ChangeWords;
import brakewright.cli.words.CornerWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.PlainWords;
import brakewright.cli.words.UnitSystem;
import brakewright.explain.Working;
import brakewright.explain.WorkingMissing;
import brakewright.explain.WorkingOutcome;
import brakewright.formula.Step;
import brakewright.formula.Term;
import brakewright.spec.Unit;
import brakewright.spec.WhichPack;
import java.util.List;
import java.util.Locale;

/** How one result came about: every step with its formula, numbers, result and source. */
public final class WorkingText {

    private static final int ORIGIN = 64;
    private static final String ESTIMATE =
            "An estimate from the inputs given. Steps are worked out without rounding and shown with"
                    + " four digits.";

    private final BuildFile file;
    private final UnitSystem units;
    private final Ink ink;
    private final Page page;
    private final TermOrigin origin;

    /**
     * Prepares the text.
     *
     * @param file the build file
     * @param units for speeds and distances, beside those of the calculation
     * @param ink how to put it on the page
     */
    public WorkingText(BuildFile file, UnitSystem units, Ink ink) {
        this.file = file;
        this.units = units;
        this.ink = ink;
        this.page = new Page(ink);
        this.origin = new TermOrigin(file);
    }

    /**
     * Writes the working of a result.
     *
     * @param outcome the working, or why there is none
     * @return its lines
     */
    public String text(WorkingOutcome outcome) {
        page.line(ink.heading(file.title() + ": " + outcome.id().key().replace('-', ' ')));
        if (!file.changes().isNone()) {
            page.paragraph("", 2, ChangeWords.situation(file.changes(), units));
        }
        page.blank();
        if (outcome instanceof Working working) {
            working(working);
        } else if (outcome instanceof WorkingMissing missing) {
            page.paragraph("", 0, missing.reason());
        }
        return page.text();
    }

    private void working(Working working) {
        page.paragraph("", 0, working.meaning());
        page.line(headline(working));
        page.paragraph("", 0, ESTIMATE);
        CornerWords.ofWorking(file).ifPresent(each -> page.paragraph("", 0, each));
        page.blank();
        page.line("It holds for");
        for (Term term : working.conditions()) {
            term(term, origin(working.steps(), term, WhichPack.WHOLE, working.steps().size()));
        }
        for (int place = 0; place < working.steps().size(); place++) {
            page.blank();
            step(working.steps(), place);
        }
        page.blank();
        page.paragraph("In plain words:", 0, new PlainWords(file.build(), units).of(working));
    }

    /** What a person may rely on is rounded down, everything else to the nearest digit. */
    private String headline(Working working) {
        double value = working.value();
        String shown =
                switch (working.id()) {
                    case CONTINUOUS_CURRENT, JOINING ->
                            working.unit().behind(Numbers.down(value, 2));
                    case SHORT_CIRCUIT_CURRENT -> working.unit().behind(Numbers.up(value, 0));
                    case RANGE, TOWN_RANGE -> units.distanceNearest(value);
                    case CLIMB -> Numbers.down(100.0 * value, 1) + " %";
                    default -> shown(value, working.unit());
                };
        Step last = working.steps().get(working.steps().size() - 1);
        return capital(last.result().meaning()) + ": " + shown + ".";
    }

    private void step(List<Step> steps, int place) {
        Step step = steps.get(place);
        page.line(
                String.format(
                        Locale.ROOT,
                        "%3d  %-44s %s",
                        place + 1,
                        what(step),
                        ink.settle(
                                step.result().symbol()
                                        + " = "
                                        + shown(step.result().value(), step.result().unit()))));
        page.paragraph("", 5, "= " + step.derivation().formula());
        for (Term term : step.derivation().terms()) {
            term(term, origin(steps, term, step.pack(), place));
        }
        page.paragraph("     ", 5, "Formula: " + step.derivation().source() + ".");
        if (!step.note().isEmpty()) {
            page.paragraph("     ", 5, step.note());
        }
    }

    private String what(Step step) {
        String what = capital(step.result().meaning());
        return ink.settle(
                step.pack()
                        .map(number -> "pack " + number)
                        .filter(pack -> !what.contains(pack))
                        .map(pack -> capital(pack) + ": " + step.result().meaning())
                        .orElse(what));
    }

    private void term(Term term, String from) {
        String label =
                String.format(
                        Locale.ROOT,
                        "     %-7s %-34s %14s",
                        ink.settle(term.symbol()),
                        ink.settle(term.meaning()),
                        ink.settle(number(term.value(), term.unit())));
        if (ink.isNarrow()) {
            page.line(label + "  " + from);
        } else {
            page.paragraph(label + "  ", Math.max(ORIGIN, label.length() + 2), from);
        }
    }

    /** An input's key, the step that a number comes from, or how else it came. */
    private String origin(List<Step> steps, Term term, WhichPack pack, int place) {
        return origin.of(
                term,
                pack,
                found ->
                        switch (found) {
                            case WORKED_OUT, SEARCHED -> step(steps, term, place);
                            case CONSTANT -> "by definition";
                            case ASSUMED -> "assumed for all";
                            case ASKED, MODELLED -> "computed";
                        });
    }

    /** The last step before a place that finds a term, or the first from there on. */
    private static String step(List<Step> steps, Term term, int place) {
        List<Term> results = steps.stream().map(Step::result).toList();
        int before = results.subList(0, place).lastIndexOf(term);
        int after = results.indexOf(term);
        return before >= 0
                ? "step " + (before + 1)
                : after >= 0 ? "searched, see step " + (after + 1) : "searched";
    }

    private static String number(double value, Unit unit) {
        return unit.behind(Numbers.significant(value));
    }

    /** A number in the unit of the calculation, and in the one that riders use. */
    private String shown(double value, Unit unit) {
        String plain = number(value, unit);
        return switch (unit) {
            case METRE_PER_SECOND -> plain + " (" + units.speedText(value) + ")";
            case JOULE -> plain + " (" + Numbers.significant(value / 3600.0) + " Wh)";
            case JOULE_PER_METRE -> plain + " (" + Numbers.significant(value / 3.6) + " Wh/km)";
            case SECOND -> value < 120.0 ? plain : plain + " (" + Numbers.time(value) + ")";
            case METRE ->
                    value < 1000.0 ? plain : plain + " (" + units.distanceNearest(value) + ")";
            default -> plain;
        };
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
