package brakewright.cli.text;

import brakewright.cli.words.Cautions;
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
        Page after = after();
        Page before = before(false);
        AlikeText found =
                new AlikeText(
                        showing.asked().judged(),
                        showing.sheet(),
                        each -> false,
                        showing.units(),
                        showing.ink(),
                        page);
        int room = LINES - page.length() - after.length();
        if (before.length() + found.least() > room) {
            before = before(true);
        }
        page.all(before);
        page.all(found.within(room - before.length()));
        page.all(after);
    }

    /** What stands above the findings; where these are many, in fewer words. */
    private Page before(boolean isTight) {
        Page before = page.another();
        Showing there = showing.on(before);
        new VerdictText(there).printBrief(isTight);
        before.blank();
        new SettingsTable(there, isTight ? SettingsTable.Extent.TIGHT : SettingsTable.Extent.BRIEF)
                .print();
        before.blank();
        new RideMap(there).print(isTight);
        before.blank();
        new FirstStopText(showing.sheet(), showing.units(), before)
                .printBrief(showing.ink(), isTight);
        before.blank();
        return before;
    }

    private Page after() {
        Page after = page.another();
        after.blank();
        new MeasureLines(showing.on(after)).print();
        after.blank();
        after.line(showing.ink().heading("Cautions"));
        Cautions.brief().forEach(caution -> after.paragraph("  -", 4, caution));
        after.note(
                "More: --show "
                        + Arrays.stream(SheetSection.values())
                                .map(SheetSection::key)
                                .collect(Collectors.joining(showing.ink().separator()))
                        + " or all");
        return after;
    }
}
