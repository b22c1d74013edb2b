package brakewright.cli.text;

import brakewright.buildfile.KeyGuide;
import brakewright.tables.Default;
import brakewright.tables.ReferenceTables;
import brakewright.tables.Source;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a key of the build file means, how it is written and where its value is found. */
public final class KeyText {

    private static final int LABEL = 20;
    private static final int NAME = 30;

    private final ReferenceTables tables;
    private final Ink ink;

    /**
     * Prepares the text.
     *
     * @param tables where sources stand
     * @param ink how to put it on the page
     */
    public KeyText(ReferenceTables tables, Ink ink) {
        this.tables = tables;
        this.ink = ink;
    }

    /**
     * Writes one key in full.
     *
     * @param entry the key
     * @return its lines
     */
    public String one(KeyGuide.Entry entry) {
        Page page = new Page(ink);
        page.line(ink.heading(entry.key()));
        page.paragraph(label("what it is"), LABEL, unquoted(entry.what()));
        page.paragraph(
                label("in the file"),
                LABEL,
                entry.name() + " = " + entry.example() + place(entry.table()));
        page.paragraph(label("value"), LABEL, entry.expected());
        if (!entry.range().isEmpty()) {
            page.paragraph(
                    label("possible"),
                    LABEL,
                    entry.range() + "; what is outside is taken for a slip");
        }
        if (!entry.units().isEmpty()) {
            page.paragraph(label("units"), LABEL, String.join(", ", entry.units()));
        }
        if (!entry.found().isEmpty()) {
            page.paragraph(label("where to find it"), LABEL, unquoted(entry.found()));
        }
        page.paragraph(label("left out"), LABEL, unquoted(entry.leftOut()));
        entry.taken().forEach(taken -> taken(page, entry, taken));
        return page.text();
    }

    private void taken(Page page, KeyGuide.Entry entry, Default taken) {
        String end = taken.key().substring(entry.key().length()).replace('_', ' ').strip();
        String when =
                taken.when().entrySet().stream()
                        .map(fact -> fact.getKey() + " " + fact.getValue())
                        .sorted()
                        .collect(Collectors.joining(", "));
        Optional<Source> source = tables.source(taken.figure().source());
        String note = taken.figure().note();
        page.paragraph(
                "",
                LABEL,
                (end.isEmpty() ? "" : end + " ")
                        + KeyGuide.shown(entry, taken)
                        + (when.isEmpty() ? "" : " for " + when)
                        + ": "
                        + taken.figure().kind().text()
                        + source.filter(Source::isDocument)
                                .map(any -> ", " + any.title())
                                .orElse("")
                        + (note.isEmpty() ? "" : "; " + note));
    }

    /**
     * Writes several keys, a line or two each.
     *
     * @param entries the keys, those of one table together
     * @return its lines
     */
    public String list(List<KeyGuide.Entry> entries) {
        Page page = new Page(ink);
        String table = "-";
        for (KeyGuide.Entry entry : entries) {
            if (!entry.table().equals(table)) {
                if (!table.equals("-")) {
                    page.blank();
                }
                table = entry.table();
                page.line(
                        ink.paint(
                                Ink.Tone.HEADING,
                                table.isEmpty() ? "Top of the file" : "[" + table + "]"));
            }
            String need = entry.leftOut().startsWith("required") ? "*" : " ";
            page.paragraph("  " + need + " " + entry.name(), NAME, unquoted(entry.what()));
        }
        page.blank();
        page.paragraph(
                "",
                2,
                "* required. One key in full, with its range, its units and where to find it:"
                        + " brakewright keys KEY");
        return page.text();
    }

    private static String place(String table) {
        return table.isEmpty() ? "   at the top" : "   in [" + table + "]";
    }

    private static String label(String label) {
        return "  " + label;
    }

    /** Texts of the table of keys stand in Markdown, too. */
    private static String unquoted(String text) {
        return text.replace("`", "");
    }
}
