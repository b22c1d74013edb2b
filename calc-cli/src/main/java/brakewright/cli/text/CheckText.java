package brakewright.cli.text;

import brakewright.buildfile.BuildFile;
import brakewright.buildfile.Changes;
import brakewright.cli.doubt.Judged;
import brakewright.cli.words.Cautions;
import brakewright.cli.words.ChangeWords;
import brakewright.cli.words.CornerWords;
import brakewright.cli.words.EnteredWords;
import brakewright.cli.words.FindingWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.profile.Headrooms;
import brakewright.review.Finding;
import brakewright.spec.Build;
import brakewright.spec.Settings;
import brakewright.spec.Taper;
import brakewright.worksheet.Both;
import brakewright.worksheet.CheckSheet;
import brakewright.worksheet.ReturnRow;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A proposal beside the present settings, as text: the answer first. */
public final class CheckText {

    private static final double[] CHARGES = {0.95, 0.9, 0.8, 0.5};

    /** What stands below the findings. */
    private static final int LEFT = 7;

    private final BuildFile file;
    private final CheckSheet check;
    private final Headrooms headrooms;
    private final Judged judged;
    private final UnitSystem units;
    private final Ink ink;
    private final Build build;
    private final Page page;
    private final CheckRows rows;

    /**
     * Prepares the text.
     *
     * @param file the build file with the proposal put in
     * @param check the comparison, with nominal inputs
     * @param headrooms how high the brake could be set, likewise
     * @param judged both verdicts on the proposal
     * @param units for speeds and distances
     * @param ink how to put it on the page
     */
    public CheckText(
            BuildFile file,
            CheckSheet check,
            Headrooms headrooms,
            Judged judged,
            UnitSystem units,
            Ink ink) {
        this.file = file;
        this.check = check;
        this.headrooms = headrooms;
        this.judged = judged;
        this.units = units;
        this.ink = ink;
        this.page = new Page(ink);
        this.rows = new CheckRows(page, ink);
        this.build = check.proposed().build();
    }

    /**
     * Writes the answer and what changes.
     *
     * @return lines no wider than the ink says
     */
    public String onePage() {
        title();
        page.blank();
        new SpokenAnswer(file, check, headrooms, judged, units, page, ink).print();
        page.blank();
        new ChangesTable(check, units, rows).print();
        CornerWords.ofChanges(file).ifPresent(page::note);
        page.blank();
        List<Finding> added = check.findingsAdded();
        Page found =
                new AlikeText(
                                judged,
                                check.proposed(),
                                alike -> added.containsAll(alike.findings()),
                                units,
                                ink,
                                page)
                        .within(OnePage.LINES - page.length() - LEFT);
        page.all(found);
        page.blank();
        cautions(Cautions.briefBraking());
        page.note(
                "More: --show "
                        + Arrays.stream(CheckSection.values())
                                .map(CheckSection::key)
                                .collect(Collectors.joining(ink.separator()))
                        + " or all");
        return page.text();
    }

    /**
     * Writes the answer alone.
     *
     * @return lines no wider than the ink says
     */
    public String spoken() {
        use();
        new SpokenAnswer(file, check, headrooms, judged, units, page, ink).print();
        return page.text();
    }

    /**
     * Writes some sections.
     *
     * @param chosen which, in the order in which they are printed
     * @return lines no wider than the ink says
     */
    public String some(List<CheckSection> chosen) {
        title();
        page.paragraph("Answer: " + answer().verdict(), 2, "");
        CornerWords.ofDetails(file).ifPresent(page::note);
        for (CheckSection section : chosen) {
            page.blank();
            section.print(this);
        }
        return page.text();
    }

    /**
     * Writes all of it.
     *
     * @return lines no wider than the ink says
     */
    public String all() {
        title();
        page.blank();
        answer().print();
        for (CheckSection section : CheckSection.values()) {
            page.blank();
            section.print(this);
        }
        page.blank();
        cautions(Cautions.braking());
        return page.text();
    }

    private void title() {
        page.line(ink.heading(file.title() + ": the proposal"));
        use();
    }

    private CheckAnswer answer() {
        return new CheckAnswer(file, check, headrooms, judged, units, page, ink);
    }

    private void cautions(List<String> texts) {
        rows.heading("Cautions");
        page.list(texts);
    }

    void brake() {
        CheckMap map = new CheckMap(check, units, page);
        map.printCurrents(ink, charges());
        page.blank();
        map.printForces(ink);
    }

    void stops() {
        new CheckStops(check, units, rows, page, ink).printDistances();
    }

    void firstStop() {
        new CheckStops(check, units, rows, page, ink).printFirst();
    }

    void left() {
        new CheckStops(check, units, rows, page, ink).printLeft();
    }

    void feel() {
        new CheckRide(check, units, rows, page).printFeel();
    }

    void heat() {
        new CheckRide(check, units, rows, page).printHeatAndDescent();
    }

    /** A use that was asked for holds for what is set now too: so both can be compared. */
    private void use() {
        Changes use = file.changes().ofUse();
        if (!use.isNone()) {
            page.paragraph("", 2, ChangeWords.bothSides(use, units));
        }
    }

    void settings() {
        rows.heading("Settings");
        rows.row("", "present", "proposed", "");
        changed("motor drive current, per motor", Settings::motorDriveCurrent);
        changed("motor brake current, per motor", Settings::motorBrakeCurrent);
        changed("pack discharge current, per controller", Settings::packDischargeCurrent);
        changed("pack regen current, per controller", Settings::packRegenCurrent);
        taper("low-voltage taper", Settings::lowVoltageTaper);
        taper("high-voltage taper", Settings::highVoltageTaper);
        OptionalDouble before = check.present().build().settings().speedCap();
        OptionalDouble after = build.settings().speedCap();
        if (before.isPresent() || after.isPresent()) {
            rows.row("speed cap", speed(before), speed(after), mark(before, after));
        }
        rows.row(
                "safe for the pack up to a charge of",
                safe(check.safeChargePresent()),
                safe(check.safeChargeProposed()),
                "");
    }

    private static String safe(double charge) {
        return charge > 0.0 ? Numbers.down(100.0 * charge, 1) + " %" : "at none";
    }

    private void changed(String name, Function<Settings, OptionalDouble> setting) {
        OptionalDouble before = setting.apply(check.present().build().settings());
        OptionalDouble after = setting.apply(build.settings());
        rows.row(name, CheckRows.amperes(before), CheckRows.amperes(after), mark(before, after));
    }

    private static String mark(Object before, Object after) {
        return before.equals(after) ? "" : "changed";
    }

    private String speed(OptionalDouble cap) {
        return cap.isPresent() ? units.speedText(cap.getAsDouble()) : "not set";
    }

    private void taper(String name, Function<Settings, Optional<Taper>> setting) {
        Optional<Taper> before = setting.apply(check.present().build().settings());
        Optional<Taper> after = setting.apply(build.settings());
        rows.row(name, volts(before), volts(after), mark(before, after));
    }

    private static String volts(Optional<Taper> taper) {
        return taper.map(EnteredWords::volts).orElse("not set");
    }

    void packCurrents() {
        rows.heading("Current into the pack, each from its highest speed");
        rows.row("", "present", "proposed", "may take");
        for (ReturnRow row : check.returned(charges())) {
            Both<ReturnRow.Flow> flows = row.flows();
            rows.row(
                    "at " + Numbers.percent(row.charge()) + " charge",
                    CheckRows.flow(flows.present().current(), flows.present().isExceeded()),
                    CheckRows.flow(flows.proposed().current(), flows.proposed().isExceeded()),
                    Numbers.down(row.mayTake(), 1) + " A");
            cells("  into each cell", flows, flow -> Numbers.nearest(flow.cellCurrent(), 1) + " A");
            cells("  fullest cells", flows, flow -> Numbers.nearest(flow.cellVoltage(), 2) + " V");
        }
    }

    private void cells(
            String name, Both<ReturnRow.Flow> flows, Function<ReturnRow.Flow, String> told) {
        rows.row(name, told.apply(flows.present()), told.apply(flows.proposed()), "");
    }

    private double[] charges() {
        return ShownCharges.with(build.use(), CHARGES);
    }

    void findings() {
        rows.heading("Findings for the proposal");
        FindingWords words = new FindingWords(build, units);
        List<Finding> added = check.findingsAdded();
        for (Finding finding : check.proposed().review().findings()) {
            page.paragraph(
                    "  " + finding.signal().key().toUpperCase(Locale.ROOT),
                    12,
                    (added.contains(finding) ? "New: " : "") + words.of(finding));
        }
        List<Finding> mended = check.findingsMended();
        if (!mended.isEmpty()) {
            page.blank();
            rows.heading("Found at present, and mended by the proposal");
            FindingWords before = new FindingWords(check.present().build(), units);
            for (Finding finding : mended) {
                page.paragraph(
                        "  " + finding.signal().key().toUpperCase(Locale.ROOT),
                        12,
                        before.of(finding));
            }
        }
    }
}
