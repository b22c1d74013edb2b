package brakewright.cli.text;

import brakewright.cli.buildfile.BuildFile;
import brakewright.cli.buildfile.Resolved;
import brakewright.cli.buildfile.Value;
import brakewright.cli.doubt.HeatSpreads;
import brakewright.cli.doubt.Judged;
import brakewright.cli.doubt.Remembered;
import brakewright.cli.doubt.Tolerated;
import brakewright.cli.doubt.Unmeasured;
import brakewright.cli.words.Cautions;
import brakewright.cli.words.ChangeWords;
import brakewright.cli.words.FindingWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.cli.words.VerdictWords;
import brakewright.limit.Signal;
import brakewright.profile.Recommendation;
import brakewright.profile.WetRoad;
import brakewright.review.Finding;
import brakewright.review.Topic;
import brakewright.spec.Input;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The worksheet as text. */
public final class WorksheetText {

    private static final int LABEL = 12;

    private final BuildFile file;
    private final Worksheet sheet;
    private final Optional<Tolerated> tolerated;
    private final Optional<Unmeasured> unmeasured;
    private final Judged judged;
    private final Recommendation recommended;
    private final WetRoad wet;
    private final UnitSystem units;
    private final Ink ink;
    private final Page page;

    /**
     * Prepares the text.
     *
     * @param file the build file it is about
     * @param sheet its worksheet, with nominal inputs
     * @param tolerated what the tolerances stated do; empty where none is
     * @param unmeasured what values from tables and assumptions could do; empty where not asked for
     * @param judged both verdicts
     * @param recommended the set that holds together
     * @param wet what a wet road leaves
     * @param units for speeds and distances
     * @param ink how to put it on the page
     */
    public WorksheetText(
            BuildFile file,
            Worksheet sheet,
            Optional<Tolerated> tolerated,
            Optional<Unmeasured> unmeasured,
            Judged judged,
            Recommendation recommended,
            WetRoad wet,
            UnitSystem units,
            Ink ink) {
        this.file = file;
        this.sheet = sheet;
        this.tolerated = tolerated;
        this.unmeasured = unmeasured;
        this.judged = judged;
        this.recommended = recommended;
        this.wet = wet;
        this.units = units;
        this.ink = ink;
        this.page = new Page(ink);
    }

    /**
     * Writes the text.
     *
     * @return the worksheet, lines of at most 100 columns
     */
    public String text() {
        title();
        verdict();
        notes();
        page.blank();
        new SettingsTable(sheet, recommended, judged.limits(), wet, units, page).print(ink);
        page.blank();
        new PackTable(sheet, page).print(ink);
        if (!sheet.build().battery().isOnePack()) {
            page.blank();
            new SharingTable(sheet, page).print(ink);
        }
        page.blank();
        new BrakeTable(sheet, units, page).print(ink);
        page.blank();
        new FirstStopText(sheet, units, page).print(ink);
        page.blank();
        new DriveTable(sheet, units, page).print(ink);
        page.blank();
        new SagTable(sheet, sheet.sag(), page).print(ink);
        page.blank();
        new RangeTable(sheet, sheet.range(), units, page).print(ink);
        page.blank();
        new HeatText(sheet, HeatSpreads.of(file), units, page).print(ink);
        page.blank();
        if (tolerated.isPresent()) {
            new ToleranceTable(tolerated.get(), units, ink, page).print();
            page.blank();
        }
        if (unmeasured.isPresent()) {
            new UnmeasuredTable(unmeasured.get(), units, ink, page).print();
            page.blank();
        }
        findings();
        page.blank();
        assumed();
        page.blank();
        cautions();
        return page.text();
    }

    private void title() {
        page.line(ink.heading(file.title()));
        if (!file.changes().isNone()) {
            page.paragraph("", 2, ChangeWords.situation(file.changes(), units));
        }
    }

    private void notes() {
        if (!file.notes().isEmpty()) {
            page.blank();
            page.paragraph("", 0, file.notes());
        }
    }

    private void verdict() {
        page.line(
                "Pack and parts: "
                        + ink.paint(
                                DecisionText.tone(judged.review().verdict().outcome()),
                                judged.word().toUpperCase(Locale.ROOT))
                        + (tolerated.isPresent()
                                ? ", taken at the unfavourable corner of the tolerances stated"
                                : ""));
        for (String sentence : new VerdictWords(judged.build(), units).of(judged.review())) {
            page.paragraph("", 2, sentence);
        }
        if (!judged.word().equals(Judged.word(sheet.review()))) {
            page.paragraph(
                    "", 2, "With nominal values it would be: " + Judged.word(sheet.review()) + ".");
        }
        List<String> remembered = Remembered.in(file, sheet);
        if (!remembered.isEmpty()) {
            page.paragraph("", 2, VerdictWords.fromMemory(remembered));
        }
        page.paragraph(
                "Brake: "
                        + ink.paint(
                                DecisionText.tone(judged.brake().word()),
                                judged.brake().word().key().toUpperCase(Locale.ROOT)),
                2,
                "");
        page.paragraph("", 2, new VerdictWords(judged.build(), units).of(judged.brake()));
        if (wet.bindsBrake(judged.brake())) {
            page.paragraph(
                    "  On a wet road, grip "
                            + Numbers.significant(sheet.build().vehicle().gripWet())
                            + ": "
                            + ink.paint(
                                    DecisionText.tone(wet.brake().word()),
                                    wet.brake().word().key().toUpperCase(Locale.ROOT)),
                    2,
                    "");
            page.paragraph("", 2, new VerdictWords(judged.build(), units).of(wet.brake()));
        }
        for (Finding finding : sheet.review().findings()) {
            if (finding.topic() == Topic.SETTING_NOT_GIVEN && finding.signal() == Signal.WARNING) {
                page.paragraph(
                        "  " + ink.paint(Ink.Tone.BAD, "WARNING"),
                        LABEL,
                        new FindingWords(sheet.build(), units).of(finding));
            }
        }
    }

    private void findings() {
        page.line(ink.heading("Findings"));
        FindingWords words = new FindingWords(sheet.build(), units);
        for (Finding finding : sheet.review().findings()) {
            Ink.Tone tone =
                    switch (finding.signal()) {
                        case DANGER, WARNING -> Ink.Tone.BAD;
                        case CAUTION -> Ink.Tone.DOUBTFUL;
                        case NOTICE -> Ink.Tone.HEADING;
                    };
            page.paragraph(
                    "  " + ink.paint(tone, finding.signal().key().toUpperCase(Locale.ROOT)),
                    LABEL,
                    words.of(finding));
        }
    }

    private void assumed() {
        page.line(ink.heading("Assumed, because the build file does not say"));
        for (Map.Entry<String, Resolved> entry : file.named().entrySet()) {
            Resolved resolved = entry.getValue();
            if (resolved.from() == Resolved.From.ASSUMED) {
                page.line(
                        String.format(
                                Locale.ROOT,
                                "  %-36s %-20s %s",
                                entry.getKey(),
                                value(resolved),
                                origin(resolved)));
            }
        }
        page.paragraph(
                "",
                2,
                "Sources are explained by id in the reference tables, edition "
                        + file.tableVersion()
                        + ".");
    }

    private static String value(Resolved resolved) {
        Input input = resolved.input();
        if (resolved.value() instanceof Value.Number number) {
            return Numbers.significant(number.quantity().value()) + unit(input);
        }
        if (resolved.value() instanceof Value.Pair pair) {
            return Numbers.significant(pair.first())
                    + " to "
                    + Numbers.significant(pair.second())
                    + unit(input);
        }
        if (resolved.value() instanceof Value.Word word) {
            return word.text();
        }
        return "curve";
    }

    /** As the build file spells it. */
    private static String unit(Input input) {
        return switch (input.unit()) {
            case NONE, RATIO -> "";
            default -> " " + input.unit().plain();
        };
    }

    private static String origin(Resolved resolved) {
        if (resolved.kind().isEmpty()) {
            return resolved.note();
        }
        return resolved.source().equals(resolved.kind())
                ? resolved.kind()
                : resolved.kind() + ": " + resolved.source();
    }

    private void cautions() {
        page.line(ink.heading("Cautions"));
        for (String caution : Cautions.all()) {
            page.paragraph("  -", 4, caution);
        }
    }
}
