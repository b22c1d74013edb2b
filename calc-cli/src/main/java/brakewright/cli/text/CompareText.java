package brakewright.cli.text;

import brakewright.cli.words.MeasureWords;
import brakewright.cli.words.UnitSystem;
import brakewright.cli.words.VerdictWords;
import brakewright.limit.Limits;
import brakewright.profile.Comparison;
import brakewright.profile.Profile;
import brakewright.profile.Reading;
import brakewright.review.Operation;
import brakewright.review.Review;
import brakewright.review.Verdict;
import brakewright.spec.Build;
import java.util.List;
import java.util.Locale;

/** Profiles side by side, as text. */
public final class CompareText {

    private static final int LABEL = 28;
    private static final int WIDTH = 100;
    private static final int WIDEST = 24;
    private static final int COLUMNS = 4;

    private final String title;
    private final Comparison comparison;
    private final List<Build> judged;
    private final UnitSystem units;
    private final MeasureWords words;
    private final Ink ink;
    private final Page page;
    private final int column;

    /**
     * Prepares the text.
     *
     * @param title what the vehicle is called
     * @param comparison the profiles, only the rows that are wanted
     * @param judged the vehicles on which the verdicts rest, in the order of the profiles
     * @param units for speeds and distances
     * @param ink how to put it on the page
     */
    public CompareText(
            String title, Comparison comparison, List<Build> judged, UnitSystem units, Ink ink) {
        this.judged = List.copyOf(judged);
        this.title = title;
        this.comparison = comparison;
        this.units = units;
        this.words = new MeasureWords(units);
        this.ink = ink;
        this.page = new Page(ink);
        int columns = Math.min(COLUMNS, comparison.profiles().size());
        this.column = Math.min(WIDEST, (WIDTH - LABEL) / columns);
    }

    /**
     * Writes the text.
     *
     * @return lines of at most 100 columns; more than four profiles are told in several tables,
     *     each with the first profile again
     */
    public String text() {
        page.paragraph("", 0, ink.heading(title + ": profiles side by side"));
        page.paragraph(
                "",
                2,
                "* best of its row; in brackets the difference to "
                        + comparison.profiles().get(0).name()
                        + "; inputs nominal but for the verdict, pack at its own temperature, stops with the fullest pack in"
                        + " use.");
        int count = comparison.profiles().size();
        for (int from = 1; from == 1 || from < count; from += COLUMNS - 1) {
            table(from, Math.min(count, from + COLUMNS - 1));
        }
        page.blank();
        conditions();
        page.blank();
        page.paragraph(
                "",
                2,
                "Estimates from the inputs given: makers' datasheets, local law and qualified"
                        + " practice come first. Try a changed setting at walking pace, on closed"
                        + " ground, with gear on.");
        return page.text();
    }

    /** The first column, and those from one place up to another. */
    private void table(int from, int to) {
        page.blank();
        StringBuilder head = new StringBuilder(padded("", LABEL));
        column(head, comparison.profiles().get(0).name());
        for (int place = from; place < to; place++) {
            column(head, comparison.profiles().get(place).name());
        }
        page.line(head.toString());
        boolean settings = true;
        for (Comparison.Row row : comparison.rows()) {
            if (settings && !row.measure().quantity().isSetting()) {
                settings = false;
                page.blank();
            }
            row(row, from, to);
        }
    }

    private void row(Comparison.Row row, int from, int to) {
        StringBuilder line = new StringBuilder(padded("  " + words.label(row.measure()), LABEL));
        StringBuilder remarks = new StringBuilder(padded("", LABEL));
        cell(line, remarks, row, 0);
        for (int place = from; place < to; place++) {
            cell(line, remarks, row, place);
        }
        page.line(line.toString());
        if (!remarks.toString().isBlank()) {
            page.line(remarks.toString());
        }
    }

    private void cell(StringBuilder line, StringBuilder remarks, Comparison.Row row, int place) {
        Reading reading = row.readings().get(place);
        String value = words.value(row.measure().quantity(), reading.value());
        String difference =
                place == 0 ? "" : words.difference(row.measure().quantity(), row.difference(place));
        column(
                line,
                value
                        + (difference.isEmpty() ? "" : " (" + difference + ")")
                        + (row.isBest(place) ? "*" : ""));
        column(remarks, " " + words.remark(row.measure().quantity(), reading));
    }

    /** Under which condition each profile is within limits. */
    private void conditions() {
        page.line(ink.heading("Verdicts"));
        for (int place = 0; place < judged.size(); place++) {
            Profile profile = comparison.profiles().get(place);
            Build build = judged.get(place);
            Limits limits = Limits.of(build);
            Review review = Review.of(build, limits, Operation.of(build, limits));
            Ink.Tone tone =
                    switch (review.verdict().outcome()) {
                        case WITHIN_LIMITS -> Ink.Tone.GOOD;
                        case CONDITIONAL -> Ink.Tone.DOUBTFUL;
                        case OUTSIDE_LIMITS -> Ink.Tone.BAD;
                    };
            page.paragraph(
                    "",
                    2,
                    profile.name()
                            + ": "
                            + ink.paint(tone, name(review.verdict()))
                            + (build.equals(profile.build())
                                    ? ""
                                    : ", at the unfavourable corner of the tolerances stated"));
            for (String sentence : new VerdictWords(build, units).of(review)) {
                page.paragraph("", 4, sentence);
            }
        }
    }

    private static String name(Verdict verdict) {
        return verdict.outcome().key().replace('-', ' ').toUpperCase(Locale.ROOT);
    }

    private void column(StringBuilder line, String text) {
        line.append(padded(text.length() >= column ? text.substring(0, column - 1) : text, column));
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }
}
