package brakewright.cli.text;

import brakewright.buildfile.BuildFile;
import brakewright.cli.doubt.AskedSheet;
import brakewright.cli.words.Cautions;
import brakewright.cli.words.ChangeWords;
import brakewright.cli.words.CornerWords;
import brakewright.cli.words.UnitSystem;
import java.util.Arrays;
import java.util.List;

/** The worksheet as text: one page, some of its sections, or all of it. */
public final class WorksheetText {

    private final AskedSheet asked;
    private final Showing showing;
    private final Ink ink;
    private final Page page;

    /**
     * Prepares the text.
     *
     * @param asked the worksheet with its verdicts and doubts
     * @param units for speeds and distances
     * @param ink how to put it on the page
     */
    public WorksheetText(AskedSheet asked, UnitSystem units, Ink ink) {
        this.asked = asked;
        this.ink = ink;
        this.page = new Page(ink);
        this.showing = new Showing(asked, units, ink, page);
    }

    /**
     * Writes the page that says what to do.
     *
     * @param more sections that are added to it
     * @return lines no wider than the ink says
     */
    public String onePage(List<SheetSection> more) {
        title();
        new OnePage(showing).print();
        sections(more);
        return page.text();
    }

    /**
     * Writes some sections.
     *
     * @param chosen which, in the order in which they are printed
     * @return lines no wider than the ink says
     */
    public String some(List<SheetSection> chosen) {
        title();
        new VerdictText(showing).printWords();
        corner();
        sections(chosen);
        return page.text();
    }

    /**
     * Writes all of it.
     *
     * @param doubts whether to tell what to measure first where the file states no tolerance
     * @return lines no wider than the ink says
     */
    public String all(boolean doubts) {
        title();
        new VerdictText(showing).print();
        corner();
        notes();
        page.blank();
        new SettingsTable(showing).print();
        sections(sections(asked, doubts));
        page.blank();
        page.line(ink.heading("Cautions"));
        page.list(Cautions.all());
        return page.text();
    }

    /**
     * Returns the sections that tell something of a vehicle.
     *
     * @param asked the worksheet
     * @param doubts whether to tell what to measure first where the file states no tolerance
     * @return in the order in which they are told
     */
    public static List<SheetSection> sections(AskedSheet asked, boolean doubts) {
        return Arrays.stream(SheetSection.values())
                .filter(
                        each ->
                                each != SheetSection.PACKS
                                        || !asked.sheet().build().battery().isOnePack())
                .filter(
                        each ->
                                each != SheetSection.DOUBTS
                                        || asked.tolerated().isPresent()
                                        || (doubts && asked.unmeasured().isPresent()))
                .toList();
    }

    /**
     * Writes what to enter, and what to measure or look up first.
     *
     * @return lines no wider than the ink says
     */
    public String settingsAndMeasures() {
        new SettingsTable(showing).print();
        page.blank();
        new MeasureLines(showing).print();
        return page.text();
    }

    private void sections(List<SheetSection> chosen) {
        for (SheetSection section : chosen) {
            page.blank();
            section.print(showing);
        }
    }

    private void title() {
        BuildFile file = asked.file();
        page.line(ink.heading(file.title()));
        if (!file.changes().isNone()) {
            page.note(ChangeWords.situation(file.changes(), showing.units()));
        }
    }

    private void corner() {
        CornerWords.ofDetails(asked.file()).ifPresent(page::note);
    }

    private void notes() {
        if (!asked.file().notes().isEmpty()) {
            page.blank();
            page.paragraph("", 0, asked.file().notes());
        }
    }
}
