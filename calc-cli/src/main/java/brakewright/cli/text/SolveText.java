package brakewright.cli.text;

import brakewright.buildfile.Changes;
import brakewright.cli.words.ChangeWords;
import brakewright.cli.words.Initial;
import brakewright.cli.words.InputWords;
import brakewright.cli.words.LimitWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.profile.FrontierRow;
import brakewright.profile.Solution;
import brakewright.profile.SolveSheet;
import brakewright.review.Evaluation;
import brakewright.review.Finding;
import brakewright.spec.Input;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The answer to a question for a value, as text. */
public final class SolveText {

    private final Input input;
    private final String name;
    private final boolean isCount;
    private final Changes changes;
    private final UnitSystem units;
    private final Ink ink;
    private final Page page;

    /**
     * Prepares the text.
     *
     * @param input what was asked for
     * @param name what it is called
     * @param isCount whether the smallest count is asked for, and not the highest value
     * @param changes what was put in place of values of the file
     * @param units for speeds
     * @param ink how to put it on the page
     */
    public SolveText(
            Input input, String name, boolean isCount, Changes changes, UnitSystem units, Ink ink) {
        this.input = input;
        this.name = name;
        this.isCount = isCount;
        this.changes = changes;
        this.units = units;
        this.ink = ink;
        this.page = new Page(ink);
    }

    /**
     * Writes the answer.
     *
     * @param title what the vehicle is called
     * @param sheet what was asked about, and the answer
     * @return its lines
     */
    public String text(String title, SolveSheet sheet) {
        page.paragraph("", 0, ink.heading(title + ": solved for " + name));
        situation();
        page.paragraph("", 2, answer(sheet.answer().nominal()));
        sheet.answer()
                .unfavourable()
                .ifPresent(
                        solution ->
                                page.paragraph(
                                        "",
                                        2,
                                        "With the tolerances stated, at their unfavourable corner: "
                                                + Initial.small(answer(solution))));
        if (!sheet.beside().isEmpty()) {
            page.paragraph(
                    "",
                    2,
                    "Mend that, too, which is no part of this answer: " + list(sheet.beside()));
        }
        if (input == Input.SETTINGS_SPEED_CAP) {
            page.paragraph(
                    "",
                    2,
                    "use.speed_max is moved along: set both, for the higher of them counts.");
        }
        if (isCount) {
            page.paragraph("", 2, mass(sheet));
        }
        page.blank();
        sheet.present()
                .ifPresent(
                        value ->
                                page.line(
                                        "  now          "
                                                + InputWords.nearest(input, value, units)));
        page.line("  asked about  " + shown(sheet.low()) + " to " + shown(sheet.high()));
        page.paragraph("", 2, way(sheet));
        page.blank();
        page.paragraph(
                "",
                2,
                "An estimate from the inputs given: makers' datasheets, local law and qualified"
                        + " practice come first. Approach it from the safe side, on closed ground.");
        return page.text();
    }

    private static String list(List<Finding> beside) {
        return beside.stream()
                        .map(
                                finding ->
                                        "the "
                                                + LimitWords.of(finding.subject().orElseThrow())
                                                + " is beyond what "
                                                + LimitWords.of(
                                                        finding.constraint().orElseThrow(),
                                                        finding.pack())
                                                + " permits")
                        .distinct()
                        .collect(Collectors.joining("; "))
                + ".";
    }

    private void situation() {
        if (!changes.isNone()) {
            page.paragraph("", 2, ChangeWords.situation(changes, units));
        }
    }

    private String way(SolveSheet sheet) {
        if (isCount) {
            return "Each count was tried in turn, from the smallest.";
        }
        return (sheet.isOrdered()
                        ? "Found"
                        : "Evenly spaced values were looked at from the highest downwards, for a"
                                + " lower one need not be milder in every check; then found")
                + " by a bracketing root search between a value that is within limits and one that"
                + " is not, to a part in a thousand million; within limits means every check"
                + (input.key().startsWith("settings.") ? " that this setting can move" : "")
                + ", at every charge state in use, at the pack's own, the coldest and the warmest"
                + " temperature.";
    }

    /** The mass of the vehicle stays what the file says, however many cells are added. */
    private static String mass(SolveSheet sheet) {
        String held =
                "The mass of the vehicle is held at "
                        + Numbers.nearest(sheet.vehicleMass(), 1)
                        + " kg";
        if (sheet.cellsNow().isEmpty()) {
            return held + ": correct vehicle.mass by what the cells weigh, and ask again.";
        }
        String now = Numbers.nearest(sheet.cellsNow().getAsDouble(), 1) + " kg";
        Solution answer = sheet.answer().counting();
        if (answer instanceof Solution.None none) {
            return held
                    + ". More than "
                    + Numbers.nearest(none.value(), 0)
                    + " in parallel were not looked at: their cells would weigh more than the whole"
                    + " vehicle.";
        }
        if (answer.value() == sheet.present().orElseThrow()) {
            return held + ", with " + now + " of cells in this pack.";
        }
        return held
                + "; "
                + Numbers.nearest(answer.value(), 0)
                + " in parallel weigh "
                + Numbers.nearest(sheet.cellsAnswered().orElseThrow(), 1)
                + " kg in cells alone, against "
                + now
                + " now. Correct vehicle.mass by the difference and ask again."
                + (sheet.isMostlyCells()
                        ? " That is more than half of the vehicle: rather ask for less elsewhere."
                        : "");
    }

    private String answer(Solution solution) {
        if (solution instanceof Solution.Found found) {
            return "The "
                    + kind()
                    + " within limits is "
                    + shown(found.value())
                    + ". "
                    + (isCount ? "With one less, " : "Beyond it, ")
                    + check(found.beyond())
                    + " would be exceeded"
                    + where(found.beyond())
                    + ".";
        }
        if (solution instanceof Solution.All all) {
            return (isCount ? "The smallest" : "The highest")
                    + " value asked about, "
                    + shown(all.value())
                    + ", is within limits; the tightest check is "
                    + check(all.there())
                    + ".";
        }
        Solution.None none = (Solution.None) solution;
        return "No value works, because at "
                + shown(none.value())
                + " "
                + check(none.there())
                + " is exceeded"
                + where(none.there())
                + ": that must be mended elsewhere.";
    }

    private String kind() {
        return input == Input.USE_CHARGE_FROM
                ? name
                : (isCount ? "smallest number of " : "highest ") + name;
    }

    private static String check(Evaluation evaluation) {
        return LimitWords.of(evaluation.worst(), evaluation.pack());
    }

    private static String where(Evaluation evaluation) {
        return evaluation.charge().isPresent()
                ? " at " + Numbers.percent(evaluation.charge().getAsDouble()) + " charge"
                : "";
    }

    private String shown(double value) {
        return InputWords.down(input, value, units);
    }

    /**
     * Writes a frontier: for each value of another key the answer.
     *
     * @param title what the vehicle is called
     * @param other the other key
     * @param otherName its name
     * @param rows the answers
     * @return its lines
     */
    public String frontier(String title, Input other, String otherName, List<FrontierRow> rows) {
        page.paragraph("", 0, ink.heading(title + ": " + name + " against " + otherName));
        situation();
        page.paragraph(
                "",
                2,
                "Each row is solved by itself: the "
                        + kind()
                        + " within limits with "
                        + otherName
                        + " held"
                        + (rows.stream().anyMatch(row -> row.answer().unfavourable().isPresent())
                                ? ", at the unfavourable corner of the tolerances stated."
                                : "."));
        page.blank();
        page.line(String.format(Locale.ROOT, "  %20s %22s  %s", otherName, name, "held by"));
        for (FrontierRow row : rows) {
            page.line(
                    String.format(
                            Locale.ROOT,
                            "  %20s %22s  %s",
                            InputWords.nearest(other, row.fixed(), units),
                            value(row.answer().counting()),
                            held(row.answer().counting())));
        }
        return page.text();
    }

    private String value(Solution solution) {
        if (solution instanceof Solution.Found found) {
            return shown(found.value());
        }
        return solution instanceof Solution.All all ? "any to " + shown(all.value()) : "none";
    }

    private static String held(Solution solution) {
        if (solution instanceof Solution.Found found) {
            return check(found.beyond()) + where(found.beyond());
        }
        return solution instanceof Solution.None none
                ? check(none.there()) + " is exceeded" + where(none.there())
                : "";
    }
}
