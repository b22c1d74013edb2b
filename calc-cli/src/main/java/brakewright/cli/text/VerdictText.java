package brakewright.cli.text;

import brakewright.cli.doubt.AskedSheet;
import brakewright.cli.doubt.Judged;
import brakewright.cli.doubt.Remembered;
import brakewright.cli.words.FindingWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.cli.words.VerdictWords;
import brakewright.limit.Signal;
import brakewright.profile.WetRoad;
import brakewright.review.BrakeVerdict;
import brakewright.review.Finding;
import brakewright.review.Topic;
import brakewright.review.Verdict;
import brakewright.worksheet.Worksheet;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/** Both verdicts and what they depend on. */
final class VerdictText {

    private static final int LABEL = 12;

    private final AskedSheet asked;
    private final Worksheet sheet;
    private final Judged judged;
    private final VerdictWords words;
    private final UnitSystem units;
    private final Ink ink;
    private final Page page;

    VerdictText(Showing showing) {
        this.asked = showing.asked();
        this.sheet = asked.sheet();
        this.judged = asked.judged();
        this.units = showing.units();
        this.ink = showing.ink();
        this.page = showing.page();
        this.words = new VerdictWords(judged.build(), units);
    }

    /** In full. */
    void print() {
        pack(words.of(judged.review()), VerdictWords::fromMemory);
        page.line("Brake: " + word(judged.brake()));
        page.note(words.of(judged.brake()));
        WetRoad wet = asked.wet();
        if (wet.bindsBrake(judged.brake())) {
            page.line("  " + onWetRoad() + word(wet.brake()));
            page.note(words.of(wet.brake()));
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

    /** In few lines. */
    void printBrief(Wording wording) {
        pack(
                switch (wording) {
                    case FULL -> words.brief(judged.review());
                    case TIGHT -> words.tight(judged.review());
                    case TERSE, CROWDED -> words.terse(judged.review());
                },
                VerdictWords::fromMemoryInBrief);
        page.paragraph("Brake: " + word(judged.brake()) + ".", 2, words.of(judged.brake()));
        WetRoad wet = asked.wet();
        if (wet.bindsBrake(judged.brake())) {
            page.paragraph("  " + onWetRoad() + word(wet.brake()) + ".", 2, words.of(wet.brake()));
        }
    }

    /** Both words alone, above a section. */
    void printWords() {
        page.line(
                "Pack and parts: "
                        + outcome()
                        + (judged.review().verdict().outcome() == Verdict.Outcome.OUTSIDE_LIMITS
                                        && !judged.review().verdict().conditions().isEmpty()
                                ? ", with conditions besides"
                                : "")
                        + ". Brake: "
                        + word(judged.brake())
                        + ".");
    }

    private void pack(List<String> sentences, Function<List<String>, String> fromMemory) {
        page.line(
                "Pack and parts: "
                        + outcome()
                        + (asked.tolerated().isPresent()
                                ? ", taken at the unfavourable corner of the tolerances stated"
                                : ""));
        sentences.forEach(page::note);
        if (!judged.word().equals(Judged.word(sheet.review()))) {
            page.note("With nominal values it would be: " + Judged.word(sheet.review()) + ".");
        }
        List<String> remembered = Remembered.in(asked.file(), sheet);
        if (!remembered.isEmpty()) {
            page.note(fromMemory.apply(remembered));
        }
    }

    private String outcome() {
        return ink.paint(
                DecisionText.tone(judged.review().verdict().outcome()),
                judged.word().toUpperCase(Locale.ROOT));
    }

    private String onWetRoad() {
        return "On a wet road, grip "
                + Numbers.significant(sheet.build().vehicle().gripWet())
                + ": ";
    }

    private String word(BrakeVerdict brake) {
        return ink.paint(
                DecisionText.tone(brake.word()), brake.word().key().toUpperCase(Locale.ROOT));
    }
}
