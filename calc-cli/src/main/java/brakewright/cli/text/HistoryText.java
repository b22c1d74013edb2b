package brakewright.cli.text;

import brakewright.cli.history.Change;
import brakewright.cli.history.History;
import brakewright.cli.history.PastSheet;
import brakewright.cli.history.Watched;
import brakewright.cli.words.HistoryWords;
import brakewright.cli.words.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Past worksheets one after another: how each was judged, and what changed since the one before.
 */
public final class HistoryText {

    private static final String ROW = "  %-34s %20s  %20s";
    private static final String NONE = "-";
    private static final String NAMELESS = "a build without a title";

    private final History history;
    private final HistoryWords words;
    private final Ink ink;
    private final Page page;

    /**
     * Prepares the text.
     *
     * @param history the worksheets
     * @param units for speeds and lengths
     * @param ink how to put it on the page
     */
    public HistoryText(History history, UnitSystem units, Ink ink) {
        this.history = history;
        this.words = new HistoryWords(units);
        this.ink = ink;
        this.page = new Page(ink);
    }

    /**
     * Writes the text.
     *
     * @return its lines
     */
    public String text() {
        List<PastSheet> sheets = history.sheets();
        page.line(ink.heading(HistoryWords.title(history) + ": what changed"));
        page.note(
                sheets.size()
                        + (sheets.size() == 1 ? " worksheet" : " worksheets")
                        + ", in the order of their names"
                        + (history.titles().size() > 1
                                ? "; they are of " + history.titles().size() + " builds"
                                : ""));
        if (!history.leftOut().isEmpty()) {
            page.note(
                    "left out, as they are no worksheets: " + String.join(", ", history.leftOut()));
        }
        for (int place = 0; place < sheets.size(); place++) {
            page.blank();
            sheet(place);
        }
        page.blank();
        page.note(
                "As they were judged then, by the edition of then: a worksheet made anew may differ.");
        return page.text();
    }

    private void sheet(int place) {
        PastSheet sheet = history.sheets().get(place);
        page.line(ink.nameHeading(sheet.name()));
        if (history.titles().size() > 1) {
            page.note("of " + (sheet.title().isEmpty() ? NAMELESS : sheet.title()));
        }
        page.note(
                "pack and parts "
                        + value(
                                Watched.VERDICT,
                                Optional.ofNullable(sheet.values().get(Watched.VERDICT)))
                        + ", brake "
                        + value(
                                Watched.BRAKE,
                                Optional.ofNullable(sheet.values().get(Watched.BRAKE))));
        if (place == 0) {
            return;
        }
        List<Change<Watched>> settings = history.changes(place, Watched.Kind.SETTING);
        List<Change<Watched>> results = history.changes(place, Watched.Kind.RESULT);
        List<Change<String>> inputs = history.inputs(place);
        if (settings.isEmpty() && results.isEmpty() && inputs.isEmpty()) {
            page.note("nothing changed");
            return;
        }
        page.row(ROW, "", "before", "then");
        settings.forEach(each -> row(HistoryWords.label(each.what()), each, this::value));
        for (Change<String> each : inputs) {
            row(each.what(), each, (what, value) -> input(place, what, value));
        }
        results.forEach(each -> row(HistoryWords.label(each.what()), each, this::value));
    }

    private interface Writing<K> {
        String of(K what, Optional<Object> value);
    }

    private <K> void row(String label, Change<K> change, Writing<K> writing) {
        page.row(
                ROW,
                ink.settle(label),
                ink.settle(writing.of(change.what(), change.before())),
                ink.settle(writing.of(change.what(), change.after())));
    }

    private String value(Watched what, Optional<Object> value) {
        return value.map(each -> words.value(what, each)).orElse(NONE);
    }

    private String input(int place, String key, Optional<Object> value) {
        Function<PastSheet, String> unit = sheet -> sheet.units().getOrDefault(key, "");
        String after = unit.apply(history.sheets().get(place));
        String known = after.isEmpty() ? unit.apply(history.sheets().get(place - 1)) : after;
        return value.map(each -> HistoryWords.input(each, known)).orElse(NONE);
    }
}
