package brakewright.cli.text;

import brakewright.cli.words.FindingWords;
import brakewright.limit.Signal;
import brakewright.review.Finding;
import java.util.Locale;

/** Everything that was found, gravest first. */
final class FindingsText {

    private static final int LABEL = 12;

    private final Showing showing;

    FindingsText(Showing showing) {
        this.showing = showing;
    }

    void print() {
        Page page = showing.page();
        page.line(showing.ink().heading("Findings"));
        FindingWords words = new FindingWords(showing.sheet().build(), showing.units());
        for (Finding finding : showing.sheet().review().findings()) {
            page.paragraph("  " + word(showing.ink(), finding.signal()), LABEL, words.of(finding));
        }
    }

    /** The signal word in its colour. */
    static String word(Ink ink, Signal signal) {
        Ink.Tone tone =
                switch (signal) {
                    case DANGER, WARNING -> Ink.Tone.BAD;
                    case CAUTION -> Ink.Tone.DOUBTFUL;
                    case NOTICE -> Ink.Tone.HEADING;
                };
        return ink.paint(tone, signal.key().toUpperCase(Locale.ROOT));
    }
}
