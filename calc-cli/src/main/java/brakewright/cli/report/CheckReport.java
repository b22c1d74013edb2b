package brakewright.cli.report;

import brakewright.buildfile.BuildFile;
import brakewright.cli.chart.Chart;
import brakewright.cli.doubt.Judged;
import brakewright.cli.text.CheckSection;
import brakewright.cli.text.CheckText;
import brakewright.cli.text.Manuscript;
import brakewright.cli.words.UnitSystem;
import brakewright.profile.Headrooms;
import brakewright.worksheet.CheckSheet;
import java.util.ArrayList;
import java.util.List;

/** A proposal beside the present settings as a document: the answer first. */
public final class CheckReport {

    private final BuildFile file;
    private final CheckSheet check;
    private final Headrooms headrooms;
    private final Judged judged;
    private final UnitSystem units;
    private final RecordBox record;

    /**
     * Takes what is told.
     *
     * @param file the build file with the proposal put in
     * @param check the comparison, with nominal inputs
     * @param headrooms how high the brake could be set, likewise
     * @param judged both verdicts on the proposal
     * @param units for speeds and distances
     * @param record what is known of how it was entered
     */
    public CheckReport(
            BuildFile file,
            CheckSheet check,
            Headrooms headrooms,
            Judged judged,
            UnitSystem units,
            RecordBox record) {
        this.file = file;
        this.check = check;
        this.headrooms = headrooms;
        this.judged = judged;
        this.units = units;
        this.record = record;
    }

    /**
     * Makes the document.
     *
     * @return the answer, then what it rests on
     */
    public Report report() {
        List<Chapter> chapters = new ArrayList<>();
        Manuscript answer = new Manuscript();
        text(answer).spoken();
        chapters.add(new Chapter("What it comes to", Chapters.of(answer.pieces()).get(0).blocks()));
        chapters.addAll(section(CheckSection.SETTINGS));
        List<Chapter> findings = section(CheckSection.FINDINGS);
        chapters.add(Findings.grave(findings.get(0)));
        chapters.add(Report.cautions());
        chapters.add(record.chapter());
        for (CheckSection section : CheckSection.values()) {
            if (section != CheckSection.SETTINGS && section != CheckSection.FINDINGS) {
                chapters.addAll(Chapters.pictured(section(section), pictures(section)));
            }
        }
        chapters.add(Findings.others(findings.get(0)));
        chapters.addAll(findings.subList(1, findings.size()));
        return new Report(
                file.title(),
                "A proposal, checked",
                List.of(),
                Banners.of(judged, units),
                chapters);
    }

    private CheckText text(Manuscript written) {
        return new CheckText(file, check, headrooms, judged, units, written.ink());
    }

    private List<Chapter> section(CheckSection section) {
        Manuscript written = new Manuscript();
        text(written).some(List.of(section));
        List<Chapter> chapters = Chapters.of(written.pieces());
        return chapters.subList(1, chapters.size());
    }

    private List<Chart> pictures(CheckSection section) {
        BrakePictures brake =
                new BrakePictures(
                        List.of(
                                new BrakePictures.Shown("present", check.present()),
                                new BrakePictures.Shown("proposed", check.proposed())),
                        units);
        return switch (section) {
            case BRAKE ->
                    List.of(
                            brake.map(
                                    check.present(),
                                    "What braking in full asks of the pack, as set now"),
                            brake.map(check.proposed(), "The same, as proposed"),
                            brake.deceleration());
            case STOPS -> List.of(brake.stops());
            case HEAT ->
                    new DrivePictures(check.proposed(), units)
                            .heat()
                            .map(List::of)
                            .orElse(List.of());
            case SETTINGS, PACK, FEEL, FIRST_STOP, LEFT, FINDINGS -> List.of();
        };
    }
}
