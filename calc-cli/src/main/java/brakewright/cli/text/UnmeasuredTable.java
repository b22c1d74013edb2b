package brakewright.cli.text;

import brakewright.cli.doubt.Unmeasured;
import brakewright.cli.words.InputWords;
import brakewright.cli.words.LimitWords;
import brakewright.cli.words.MeasureWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.profile.Doubts;
import brakewright.profile.Quantity;
import brakewright.profile.Uncertain;
import brakewright.review.Evaluation;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** What to measure first of all that the build file leaves to tables and assumptions. */
final class UnmeasuredTable {

    private static final String ROW = "  %-31s %-26s %-16s %s";

    /** Assumption: our own choice; nobody measures more at once. */
    private static final int SHOWN = 6;

    private final Unmeasured unmeasured;
    private final UnitSystem units;
    private final Ink ink;
    private final Page page;

    UnmeasuredTable(Unmeasured unmeasured, UnitSystem units, Ink ink, Page page) {
        this.unmeasured = unmeasured;
        this.units = units;
        this.ink = ink;
        this.page = page;
    }

    void print() {
        page.line(ink.heading("What to measure first"));
        List<Doubts.Weighed> weighed = unmeasured.doubts().weighed();
        if (weighed.isEmpty()) {
            page.paragraph(
                    "",
                    2,
                    "Of the values that tables and assumptions give, none moves the verdict within"
                            + " its usual spread.");
            return;
        }
        page.paragraph(
                "",
                2,
                "Values that the build file leaves to tables and assumptions, each over its usual"
                        + " spread, in the order of how far it moves the verdict by itself.");
        page.line(line("value", "from .. to", "known", "brake safe to"));
        weighed.stream().limit(SHOWN).forEach(this::row);
        page.paragraph("", 2, wouldBe(unmeasured.doubts().verdict()));
    }

    private String line(String... cells) {
        Object[] settled = Arrays.stream(cells).map(ink::settle).toArray();
        return String.format(Locale.ROOT, ROW, settled).stripTrailing();
    }

    private void row(Doubts.Weighed weighed) {
        Unmeasured.Doubtful value = unmeasured.values().get(weighed.place());
        Uncertain range = value.range();
        page.line(
                line(
                        value.place().name(),
                        InputWords.nearest(range.input(), range.low(), units)
                                + " .. "
                                + InputWords.nearest(range.input(), range.high(), units),
                        value.kind().replace('-', ' '),
                        safe(weighed.atLow()) + " .. " + safe(weighed.atHigh())));
    }

    private String safe(Evaluation evaluation) {
        return new MeasureWords(units)
                .value(Quantity.SAFE_CHARGE, OptionalDouble.of(evaluation.safeCharge()));
    }

    private static String wouldBe(Evaluation verdict) {
        return "With these doubts, the weightiest of them on their unfavourable side at once, the"
                + " verdict would be "
                + verdict.outcome().key().replace('-', ' ')
                + (verdict.severity() > 0.0
                        ? ": "
                                + LimitWords.of(verdict.worst(), verdict.pack())
                                + " would be exceeded"
                                + (verdict.safeCharge() > 0.0
                                        ? ", and braking safe up to "
                                                + Numbers.down(100.0 * verdict.safeCharge(), 1)
                                                + " % charge"
                                        : ", and braking safe at no charge in use")
                        : "")
                + ". Stated tolerances alone decide the verdict above.";
    }
}
