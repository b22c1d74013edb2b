package brakewright.cli.text;

import brakewright.cli.words.Cautions;
import brakewright.cli.words.CornerWords;
import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * One page that says what to do: verdicts, what to enter, the brake where one rides, the first
 * stop, dangers and warnings, what to measure, cautions. Findings take the lines that are left.
 */
final class OnePage {

    /** What one page of paper holds. */
    static final int LINES = 66;

    private final Showing showing;
    private final Page page;

    OnePage(Showing showing) {
        this.showing = showing;
        this.page = showing.page();
    }

    /** Adds to a page that has its title. */
    void print() {
        AlikeText found =
                new AlikeText(
                        showing.asked().judged(),
                        showing.sheet(),
                        each -> false,
                        showing.units(),
                        showing.ink(),
                        page);
        for (Wording wording : Wording.values()) {
            Page before = before(wording);
            Page after = after(wording);
            int room = LINES - page.length() - before.length() - after.length();
            if (found.least(wording) <= room || wording == Wording.CROWDED) {
                page.all(before);
                page.all(found.within(room));
                page.all(after);
                return;
            }
        }
    }

    /** What stands above the findings; where these are many, in fewer words. */
    private Page before(Wording wording) {
        Page before = page.another();
        Showing there = showing.on(before);
        new VerdictText(there).printBrief(wording);
        gap(before, wording);
        new SettingsTable(
                        there,
                        wording.isTight() ? SettingsTable.Extent.TIGHT : SettingsTable.Extent.BRIEF)
                .print();
        gap(before, wording);
        new RideMap(there).print(wording);
        gap(before, wording);
        new FirstStopText(showing.sheet(), showing.units(), before)
                .printBrief(showing.ink(), wording);
        gap(before, wording);
        return before;
    }

    private static void gap(Page there, Wording wording) {
        if (wording != Wording.CROWDED) {
            there.blank();
        }
    }

    private Page after(Wording wording) {
        Page after = page.another();
        gap(after, wording);
        new MeasureLines(showing.on(after)).print();
        gap(after, wording);
        after.line(showing.ink().heading("Cautions"));
        after.list(wording.isTerse() ? Cautions.terse() : Cautions.brief());
        if (wording != Wording.CROWDED) {
            after.note(
                    new HorizonLine(showing.sheet()).text()
                            + CornerWords.ofPage(showing.asked().file())
                                    .map(" "::concat)
                                    .orElse(""));
        }
        after.note(
                "More: --show "
                        + Arrays.stream(SheetSection.values())
                                .map(SheetSection::key)
                                .collect(Collectors.joining(showing.ink().separator()))
                        + " or all");
        return after;
    }
}
