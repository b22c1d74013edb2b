package brakewright.cli.markdown;

import brakewright.buildfile.internal.Printable;
import brakewright.cli.chart.Grid;
import brakewright.cli.report.Block;
import brakewright.cli.report.Chapter;
import brakewright.cli.report.Report;
import java.util.Collections;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Writes a document as Markdown with tables. A picture is told by its sentence and its numbers. */
public final class MarkdownText {

    /** All that could be taken for markup. */
    private static final Pattern MARKUP = Pattern.compile("[\\\\`*_\\[\\]#|~]");

    /** What would begin a list or a heading at the beginning of a line. */
    private static final Pattern BEGINNING = Pattern.compile("^([-+=]|[0-9]+[.)])");

    private final StringBuilder text = new StringBuilder();

    private MarkdownText() {}

    /**
     * Writes a document.
     *
     * @param report the document
     * @return its lines
     */
    public static String of(Report report) {
        MarkdownText written = new MarkdownText();
        written.write(report);
        return written.text.toString();
    }

    private void write(Report report) {
        paragraph("# " + safe(report.title()) + ": " + safe(report.kind()));
        report.lead().forEach(each -> paragraph(line(each)));
        for (Report.Banner banner : report.banners()) {
            paragraph(
                    "**"
                            + safe(banner.subject())
                            + ": "
                            + safe(banner.word())
                            + ".** "
                            + banner.sentences().stream()
                                    .map(MarkdownText::safe)
                                    .collect(Collectors.joining(" ")));
        }
        report.chapters().forEach(this::chapter);
    }

    private void chapter(Chapter chapter) {
        if (!chapter.heading().isEmpty()) {
            paragraph("## " + safe(chapter.heading()));
        }
        chapter.blocks().forEach(each -> block(each, chapter.heading()));
    }

    private void block(Block block, String heading) {
        if (block instanceof Block.Sentences told) {
            paragraph(line(told.text()));
        } else if (block instanceof Block.Entries told) {
            for (Block.Entry entry : told.entries()) {
                item("**" + safe(entry.label()) + "** " + safe(entry.text()));
            }
            text.append('\n');
        } else if (block instanceof Block.Items told) {
            told.sentences().forEach(each -> item(safe(each)));
            text.append('\n');
        } else if (block instanceof Block.Table table) {
            if (!table.caption().equals(heading)) {
                paragraph(line(table.caption()));
            }
            table(table.heads(), table.rows());
        } else if (block instanceof Block.Copy copy) {
            copy.lines().forEach(each -> text.append("    ").append(shown(each)).append('\n'));
            text.append('\n');
        } else if (block instanceof Block.Picture picture) {
            Grid numbers = picture.chart().numbers();
            paragraph(
                    "**"
                            + safe(picture.chart().title())
                            + ".** "
                            + safe(picture.chart().caption()));
            table(numbers.heads(), numbers.rows());
        } else if (block instanceof Block.Form form) {
            for (Block.Field field : form.fields()) {
                item(safe(field.label()) + ": " + safe(field.text()));
            }
            text.append('\n');
        }
    }

    private void table(List<String> heads, List<List<String>> rows) {
        int columns = rows.isEmpty() ? heads.size() : rows.get(0).size();
        row(heads.isEmpty() ? Collections.nCopies(columns, "") : heads);
        text.append("|").append(" --- |".repeat(columns)).append('\n');
        rows.forEach(this::row);
        text.append('\n');
    }

    private void row(List<String> cells) {
        text.append('|');
        cells.forEach(each -> text.append(' ').append(safe(each)).append(" |"));
        text.append('\n');
    }

    private void item(String sentence) {
        text.append("- ").append(sentence.stripTrailing()).append('\n');
    }

    private void paragraph(String line) {
        text.append(line).append("\n\n");
    }

    private static String line(String sentence) {
        return BEGINNING.matcher(safe(sentence)).replaceFirst("\\\\$1");
    }

    /** A text that is nothing but text, on one line. */
    private static String safe(String any) {
        return MARKUP.matcher(shown(any.replace('\n', ' ')))
                .replaceAll("\\\\$0")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;");
    }

    private static String shown(String any) {
        return Printable.shown(any);
    }
}
