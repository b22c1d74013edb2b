package brakewright.cli.report;

import brakewright.cli.chart.Chart;
import brakewright.cli.doubt.AskedSheet;
import brakewright.cli.doubt.Remembered;
import brakewright.cli.report.Report.Banner;
import brakewright.cli.text.Manuscript;
import brakewright.cli.text.SheetSection;
import brakewright.cli.text.WorksheetText;
import brakewright.cli.words.ChangeWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.cli.words.VerdictWords;
import brakewright.profile.WetRoad;
import java.util.ArrayList;
import java.util.List;

/** The worksheet as a document. */
public final class SheetReport {

    private final AskedSheet asked;
    private final UnitSystem units;
    private final boolean doubts;
    private final RecordBox record;

    /**
     * Takes what is told.
     *
     * @param asked the worksheet with its verdicts and doubts
     * @param units for speeds and distances
     * @param doubts whether to tell what to measure first where the file states no tolerance
     * @param record what is known of how it was entered
     */
    public SheetReport(AskedSheet asked, UnitSystem units, boolean doubts, RecordBox record) {
        this.asked = asked;
        this.units = units;
        this.doubts = doubts;
        this.record = record;
    }

    /**
     * Makes the document.
     *
     * @return what to do first, then what that rests on
     */
    public Report report() {
        List<String> lead = new ArrayList<>();
        if (!asked.file().changes().isNone()) {
            lead.add(ChangeWords.situation(asked.file().changes(), units));
        }
        if (!asked.file().notes().isEmpty()) {
            lead.add(asked.file().notes());
        }
        Manuscript first = new Manuscript();
        new WorksheetText(asked, units, first.ink()).settingsAndMeasures();
        List<Chapter> firstTold = Chapters.of(first.pieces());
        List<Chapter> chapters = new ArrayList<>();
        List<Chapter> findings = section(SheetSection.FINDINGS);
        chapters.add(firstTold.get(0));
        chapters.addAll(section(SheetSection.FIRST_STOP));
        chapters.add(Findings.grave(findings.get(0)));
        chapters.addAll(pictured(SheetSection.BRAKE));
        chapters.add(Report.cautions());
        chapters.add(record.chapter());
        for (SheetSection section : WorksheetText.sections(asked, doubts)) {
            switch (section) {
                case FIRST_STOP, BRAKE -> {}
                case FINDINGS -> {
                    chapters.add(firstTold.get(1));
                    chapters.add(Findings.others(findings.get(0)));
                }
                default -> chapters.addAll(pictured(section));
            }
        }
        return new Report(asked.file().title(), "Worksheet", lead, banners(), chapters);
    }

    private List<Banner> banners() {
        List<Banner> banners = new ArrayList<>(Banners.of(asked.judged(), units));
        List<String> remembered = Remembered.in(asked.file(), asked.sheet());
        if (!remembered.isEmpty()) {
            Banner pack = banners.get(0);
            List<String> sentences = new ArrayList<>(pack.sentences());
            sentences.add(VerdictWords.fromMemory(remembered));
            banners.set(0, new Banner(pack.subject(), pack.word(), pack.gravity(), sentences));
        }
        WetRoad wet = asked.wet();
        if (wet.bindsBrake(asked.judged().brake())) {
            banners.add(
                    Banners.brake(
                            "Brake on a wet road, grip "
                                    + Numbers.significant(
                                            asked.sheet().build().vehicle().gripWet()),
                            wet.brake(),
                            new VerdictWords(asked.judged().build(), units)));
        }
        return banners;
    }

    private List<Chapter> section(SheetSection section) {
        Manuscript written = new Manuscript();
        new WorksheetText(asked, units, written.ink()).some(List.of(section));
        List<Chapter> chapters = Chapters.of(written.pieces());
        return chapters.subList(1, chapters.size());
    }

    private List<Chapter> pictured(SheetSection section) {
        return Chapters.pictured(section(section), pictures(section));
    }

    private List<Chart> pictures(SheetSection section) {
        DrivePictures drive = new DrivePictures(asked.sheet(), units);
        return switch (section) {
            case BRAKE -> brake();
            case SAG -> List.of(drive.sag());
            case DRIVE -> List.of(drive.thrust());
            case HEAT -> drive.heat().map(List::of).orElse(List.of());
            case RANGE -> drive.spending().map(List::of).orElse(List.of());
            case PACK, PACKS, FIRST_STOP, DOUBTS, FINDINGS, ASSUMED -> List.of();
        };
    }

    private List<Chart> brake() {
        BrakePictures pictures =
                new BrakePictures(
                        List.of(
                                new BrakePictures.Shown("set now", asked.sheet()),
                                new BrakePictures.Shown("as to be entered", asked.entered())),
                        units);
        return List.of(
                pictures.map(asked.sheet(), "What braking in full asks of the pack, as set now"),
                pictures.map(asked.entered(), "The same, entered as above"),
                pictures.deceleration(),
                pictures.stops());
    }
}
