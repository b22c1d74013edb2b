package brakewright.cli.text;

import brakewright.cli.doubt.Judged;
import brakewright.cli.words.AlikeWords;
import brakewright.cli.words.UnitSystem;
import brakewright.limit.Signal;
import brakewright.review.BrakeVerdict;
import brakewright.review.Topic;
import brakewright.worksheet.AlikeFindings;
import brakewright.worksheet.Worksheet;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Dangers and others within the lines that are left for them. Where they do not fit they are said
 * in fewer words, and then others are counted; a danger is always told.
 */
final class AlikeText {

    private static final int LABEL = 11;

    private final Ink ink;
    private final Page page;
    private final AlikeWords words;
    private final Predicate<AlikeFindings> isNew;
    private final List<AlikeFindings> dangers = new ArrayList<>();
    private final List<AlikeFindings> others = new ArrayList<>();
    private int cautions;
    private int notices;

    /**
     * Prepares the text.
     *
     * @param judged both verdicts: a weak brake that stands above is not told again
     * @param sheet the worksheet
     * @param isNew what is marked as new
     * @param units for speeds
     * @param page whose ink is used
     */
    AlikeText(
            Judged judged,
            Worksheet sheet,
            Predicate<AlikeFindings> isNew,
            UnitSystem units,
            Ink ink,
            Page page) {
        this.ink = ink;
        this.page = page;
        this.words = new AlikeWords(sheet.build(), units);
        this.isNew = isNew;
        for (AlikeFindings alike : judged.found(sheet)) {
            switch (alike.first().signal()) {
                case DANGER -> dangers.add(alike);
                case WARNING -> {
                    if (alike.first().topic() != Topic.BRAKE_WEAK
                            || judged.brake().word() == BrakeVerdict.Word.ENOUGH) {
                        others.add(alike);
                    }
                }
                case CAUTION -> {
                    if (isNew.test(alike)) {
                        others.add(alike);
                    } else {
                        cautions += alike.findings().size();
                    }
                }
                case NOTICE -> notices += alike.findings().size();
            }
        }
    }

    /**
     * How many lines it takes to say every danger and every warning; in as few words as there are,
     * every danger.
     */
    int least(Wording wording) {
        return switch (wording) {
            case FULL -> laidOut(words::of, words::brief, others.size()).length();
            case TIGHT -> laidOut(words::brief, words::brief, others.size()).length();
            case TERSE, CROWDED -> laidOut(words::brief, words::brief, 0).length();
        };
    }

    /** The findings in at most so many lines, or every danger in as few as it takes. */
    Page within(int room) {
        Page full = laidOut(words::of, words::of, others.size());
        if (full.length() <= room) {
            return full;
        }
        Page shorter = laidOut(words::of, words::brief, others.size());
        for (int shown = others.size(); shorter.length() > room && shown >= 0; shown--) {
            shorter = laidOut(words::brief, words::brief, shown);
        }
        return shorter;
    }

    private Page laidOut(
            Function<AlikeFindings, String> danger,
            Function<AlikeFindings, String> other,
            int shown) {
        Page laid = page.another();
        laid.line(ink.heading("Dangers and warnings"));
        dangers.forEach(each -> print(laid, each, danger));
        others.stream().limit(shown).forEach(each -> print(laid, each, other));
        laid.note(rest(others.subList(shown, others.size())));
        return laid;
    }

    private void print(Page laid, AlikeFindings alike, Function<AlikeFindings, String> told) {
        laid.paragraph(
                "  " + FindingsText.word(ink, alike.first().signal()),
                LABEL,
                (isNew.test(alike) ? "New: " : "") + told.apply(alike));
    }

    private String rest(List<AlikeFindings> left) {
        List<String> kinds = new ArrayList<>();
        long warnings =
                left.stream().filter(each -> each.first().signal() == Signal.WARNING).count();
        count(kinds, (int) warnings, "warning");
        count(kinds, cautions + left.size() - (int) warnings, "caution");
        count(kinds, notices, "notice");
        String none = dangers.isEmpty() && others.isEmpty() ? "None. " : "";
        return kinds.isEmpty()
                ? none + "Nothing else was found."
                : none
                        + (none.isEmpty() ? "Besides " : "There are ")
                        + String.join(", ", kinds)
                        + ": see --show findings.";
    }

    private static void count(List<String> kinds, int count, String kind) {
        if (count > 0) {
            kinds.add(count + " " + kind + (count > 1 ? "s" : ""));
        }
    }
}
