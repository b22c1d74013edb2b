package brakewright.cli.text;

import brakewright.buildfile.Changes;
import brakewright.buildfile.internal.Printable;
import brakewright.cli.words.ChangeWords;
import brakewright.cli.words.MeasureWords;
import brakewright.cli.words.Numbers;
import brakewright.cli.words.UnitSystem;
import brakewright.cli.words.VerdictWords;
import brakewright.profile.Comparison;
import brakewright.profile.JudgedProfile;
import brakewright.profile.Measure;
import brakewright.profile.Reading;
import brakewright.review.Review;
import brakewright.review.Verdict;
import brakewright.spec.Input;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Profiles side by side, as text. */
public final class CompareText {

    private static final int WIDEST = 30;

    /** So that names and what binds are not broken into crumbs. */
    private static final int NARROWEST = 14;

    /**
     * Longer labels go on below where lines are short, so that more profiles stand side by side.
     */
    private static final int NARROW_LABEL = 18;

    private static final String INDENT = "  ";

    private final String title;
    private final Comparison comparison;
    private final List<JudgedProfile> judged;
    private final List<Changes> uses;
    private final OptionalDouble stopCharge;
    private final UnitSystem units;
    private final MeasureWords words;
    private final Ink ink;
    private final Page page;

    /**
     * Prepares the text.
     *
     * @param title what the vehicle is called
     * @param comparison the profiles, only the rows that are wanted
     * @param judged the profiles with their verdicts, in the same order
     * @param changes what was put in place of values of their files, in the same order
     * @param stopCharge the charge state at which all stops begin; empty for each one's fullest
     * @param units for speeds and distances
     * @param ink how to put it on the page
     */
    public CompareText(
            String title,
            Comparison comparison,
            List<JudgedProfile> judged,
            List<Changes> changes,
            OptionalDouble stopCharge,
            UnitSystem units,
            Ink ink) {
        this.uses = changes.stream().map(Changes::ofUse).toList();
        this.judged = List.copyOf(judged);
        this.title = title;
        this.comparison = comparison;
        this.stopCharge = stopCharge;
        this.units = units;
        this.words = new MeasureWords(units);
        this.ink = ink;
        this.page = new Page(ink);
    }

    /**
     * Writes the text.
     *
     * @return its lines; profiles that do not fit beside each other are told in several tables,
     *     each with the first profile again
     */
    public String text() {
        page.paragraph("", 0, ink.heading(title + ": profiles side by side"));
        page.paragraph(
                "",
                2,
                "* best of its row, never a set outside limits or whose brake is NONE; in brackets the"
                        + " difference to "
                        + name(0)
                        + ".");
        page.paragraph(
                "",
                2,
                "Inputs nominal but for verdict and brake, pack at its own temperature, stops "
                        + (stopCharge.isPresent()
                                ? "at " + Numbers.percent(stopCharge.getAsDouble()) + " charge."
                                : "with the fullest pack in use."));
        uses();
        tables();
        page.blank();
        conditions();
        page.blank();
        bests();
        page.blank();
        page.paragraph(
                "",
                2,
                "Estimates from the inputs given: makers' datasheets, local law and qualified"
                        + " practice come first. Try a changed setting at walking pace, on closed"
                        + " ground, with gear on.");
        return page.text();
    }

    /** In which use the columns are judged, where it is not that of their file. */
    private void uses() {
        Changes common = Changes.common(uses);
        if (!common.isNone()) {
            page.paragraph(
                    "",
                    2,
                    "All are judged in the use asked for: "
                            + ChangeWords.list(common, units)
                            + ".");
        }
        for (int place = 0; place < uses.size(); place++) {
            Changes own = uses.get(place);
            for (Input input : common.all().keySet()) {
                own = own.without(input);
            }
            if (!own.isNone()) {
                page.paragraph(
                        "",
                        2,
                        comparison.profiles().get(place).name()
                                + " has a use of its own: "
                                + ChangeWords.list(own, units)
                                + ".");
            }
        }
    }

    /** As many columns as fit, the first profile again before each further table. */
    private void tables() {
        int count = comparison.profiles().size();
        if (ink.manuscript().isPresent()) {
            table(IntStream.range(0, count).boxed().toList());
            return;
        }
        int from = 1;
        while (from == 1 || from < count) {
            List<Integer> places = new ArrayList<>(List.of(0));
            List<Integer> widths = new ArrayList<>(List.of(label(), width(0)));
            for (int place = from; place < count; place++) {
                places.add(place);
                widths.add(width(place));
            }
            int fitting = Math.max(2, Columns.fitting(ink.columns() - INDENT.length(), widths) - 1);
            List<Integer> shown = places.subList(0, Math.min(fitting, places.size()));
            table(shown);
            from += Math.max(1, shown.size() - 1);
        }
    }

    private int label() {
        int longest =
                comparison.rows().stream().mapToInt(row -> name(row).length()).max().orElse(0);
        return ink.isNarrow() ? Math.min(NARROW_LABEL, longest) : longest;
    }

    private String name(Comparison.Row row) {
        return ink.settle(words.label(row.measure()));
    }

    /** As wide as its widest value; the name of a profile and what binds may be broken. */
    private int width(int place) {
        int widest =
                comparison.rows().stream()
                        .mapToInt(row -> value(row, place).length())
                        .max()
                        .orElse(0);
        return Math.min(WIDEST, Math.max(NARROWEST, widest));
    }

    private void table(List<Integer> places) {
        int[] widths = new int[places.size() + 1];
        widths[0] = label();
        for (int i = 0; i < places.size(); i++) {
            widths[i + 1] = width(places.get(i));
        }
        Columns columns = new Columns(widths);
        page.blank();
        line(columns, "", places, this::name);
        boolean settings = true;
        for (Comparison.Row row : comparison.rows()) {
            if (settings && !row.measure().quantity().isSetting()) {
                settings = false;
                page.gap();
            }
            line(
                    columns,
                    name(row),
                    places,
                    place -> value(row, place) + "\n" + remark(row, place));
        }
    }

    private void line(
            Columns columns, String label, List<Integer> places, IntFunction<String> entry) {
        List<String> cells = new ArrayList<>(List.of(label));
        places.forEach(place -> cells.add(ink.settle(entry.apply(place))));
        if (ink.manuscript().isPresent()) {
            page.row("", cells.stream().map(cell -> cell.strip().replace("\n", ", ")).toList());
            return;
        }
        columns.row(cells).forEach(line -> page.line(INDENT + line));
    }

    private String value(Comparison.Row row, int place) {
        Reading reading = row.readings().get(place);
        String value = words.value(row.measure().quantity(), reading.value());
        String difference =
                place == 0
                        ? ""
                        : words.difference(
                                row.measure().quantity(),
                                reading.value(),
                                row.readings().get(0).value());
        return ink.settle(
                value
                        + (difference.isEmpty() ? "" : " (" + difference + ")")
                        + (row.isBest(place) ? "*" : ""));
    }

    private String remark(Comparison.Row row, int place) {
        return words.remark(row.measure().quantity(), row.readings().get(place));
    }

    /** Which profile is best at what. */
    private void bests() {
        page.line(ink.heading("Best at"));
        for (int place = 0; place < judged.size(); place++) {
            List<Measure> rows = comparison.bestAt(place);
            boolean isOutside =
                    judged.get(place).evaluation().outcome() == Verdict.Outcome.OUTSIDE_LIMITS;
            boolean isRanked = judged.get(place).mayBeBest();
            named(
                    place,
                    isOutside
                            ? "not ranked, as it is outside limits"
                            : !isRanked
                                    ? "not ranked, as its brake is NONE where it is weakest"
                                    : rows.isEmpty()
                                            ? "no row"
                                            : rows.stream()
                                                    .map(words::label)
                                                    .collect(Collectors.joining("; ")));
        }
    }

    /** Under which condition each profile is within limits. */
    private void conditions() {
        page.line(ink.heading("Verdicts"));
        for (int place = 0; place < judged.size(); place++) {
            JudgedProfile profile = judged.get(place);
            Review review = profile.review();
            Ink.Tone tone =
                    switch (review.verdict().outcome()) {
                        case WITHIN_LIMITS -> Ink.Tone.GOOD;
                        case CONDITIONAL -> Ink.Tone.DOUBTFUL;
                        case OUTSIDE_LIMITS -> Ink.Tone.BAD;
                    };
            named(
                    place,
                    ink.paint(tone, name(review.verdict()))
                            + (profile.isAtCorner()
                                    ? ", at the unfavourable corner of the tolerances stated"
                                    : ""),
                    new VerdictWords(profile.build(), units).of(review));
        }
    }

    private void named(int place, String told) {
        named(place, told, List.of());
    }

    /** What is said of one profile; a document has its name as a label. */
    private void named(int place, String told, List<String> sentences) {
        if (ink.manuscript().isPresent()) {
            page.paragraph(
                    name(place),
                    2,
                    sentences.isEmpty() ? told : told + ". " + String.join(" ", sentences));
            return;
        }
        page.paragraph("", 2, name(place) + ": " + told);
        sentences.forEach(each -> page.paragraph("", 4, each));
    }

    /** May be the name of a file, which may hold anything. */
    private String name(int place) {
        return Printable.shown(comparison.profiles().get(place).name());
    }

    private static String name(Verdict verdict) {
        return verdict.outcome().key().replace('-', ' ').toUpperCase(Locale.ROOT);
    }
}
